import { define } from '../define.ts';
import { soundSpeed } from '../air.ts';
import { usual } from '../usual.ts';
import { angle, sd } from './piston.ts';

const waveNumber = (frequency: number): number => (2 * Math.PI * frequency) / soundSpeed;
const sinc = (x: number): number => (Math.abs(x) < 1e-4 ? 1 - x ** 2 / 6 : Math.sin(x) / x);
const deepest = -60;

export const pistonNear = define({
  name: 'PISTON.NEAR',
  summary: 'What a microphone close to a piston reads on its axis, over the level that falls as 1/distance.',
  parameters: {
    sd,
    frequency: { ...usual.frequency, summary: 'frequency' },
    distance: { quantity: 'distance', min: 1e-4, max: 1000, summary: 'from the cone to the microphone' },
  },
  returns: { quantity: 'level', summary: 'error of the reading, negative when it is too low' },
  source: { source: 'beranek1954', at: 'pressure on the axis of a piston, 2·ρ·c·u·sin(k·(√(r²+a²) − r)/2)' },
  example: { formula: '=PISTON.NEAR("136.85 cm²", "3 kHz", "25 cm")', gives: -0.23 },
  remarks:
    'A piston in a wide wall. Say from it how far to stand: twice the diameter is enough for a tenth of a decibel at low ka. Cut off at −60 dB.',
  compute(given) {
    const k = waveNumber(given.frequency);
    const r = given.distance;
    const square = given.sd / Math.PI;
    const path = square / (Math.sqrt(r ** 2 + square) + r);
    const over = (2 * r * path) / square;
    return Math.max(deepest, 20 * Math.log10(Math.abs(over * sinc((k * path) / 2))));
  },
});

export const lineLoss = define({
  name: 'LINE.LOSS',
  summary: 'How much quieter a tall narrow source, a ribbon or a column, is at an angle than on its axis.',
  parameters: {
    length: { ...usual.length, summary: 'height of the source' },
    frequency: { ...usual.frequency, summary: 'frequency' },
    angle,
  },
  returns: { quantity: 'level', summary: 'loss against the axis, never negative' },
  source: { source: 'beranek1954', at: 'line source, sin(x)/x with x = k·l·sin θ/2' },
  example: { formula: '=LINE.LOSS("12 cm", "3 kHz", "30°")', gives: 4.36 },
  remarks:
    'In the plane of its length, from far away. For drivers in a column take the height of the whole column when they stand closer than half a wavelength. Nulls are cut off at 60 dB.',
  compute: (given) =>
    Math.max(
      0,
      -Math.max(
        deepest,
        20 * Math.log10(Math.abs(sinc((waveNumber(given.frequency) * given.length * Math.sin(given.angle)) / 2))),
      ),
    ),
});

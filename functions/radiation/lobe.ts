import { define } from '../define.ts';
import { soundSpeed } from '../air.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import { frequency, spacing } from './spacing.ts';

const half = { min: -Math.PI / 2, max: Math.PI / 2 } as const;
const phase = {
  quantity: 'angle',
  min: -Math.PI,
  max: Math.PI,
  default: 0,
  summary: 'by how much the upper driver leads on the axis; 0 for LR2 and LR4, 90° for BW1 and BW3',
} as const;
const fall = {
  quantity: 'level',
  min: 0.01,
  max: 60,
  default: 3,
  summary: 'fall below full summing at the edges',
} as const;

/** Half the difference of phase of two equal sources towards an angle. */
const halfAngle = (given: { spacing: number; frequency: number; phase: number }, sine: number): number =>
  (Math.PI * given.spacing * given.frequency * sine) / soundSpeed + given.phase / 2;

const sineFor = (given: { spacing: number; frequency: number; phase: number }, reached: number): number =>
  Math.min(1, Math.max(-1, ((reached - given.phase / 2) * soundSpeed) / (Math.PI * given.spacing * given.frequency)));

/** The lower and the upper edge of the lobe that faces the listener, angles. */
function edgesOf(given: {
  spacing: number;
  frequency: number;
  phase: number;
  fall: number;
}): readonly [number, number] {
  const reached = Math.acos(10 ** (-given.fall / 20));
  return [Math.asin(sineFor(given, -reached)), Math.asin(sineFor(given, reached))];
}

const source = { source: 'linkwitz1976', at: 'noncoincident drivers: |cos((k·d·sin θ + φ)/2)|' } as const;

export const spacingLobe = define({
  name: 'SPACING.LOBE',
  summary: 'The level of two drivers together at an angle above the axis, over their full sum.',
  parameters: {
    spacing,
    frequency,
    angle: { quantity: 'angle', ...half, summary: 'angle above the axis, negative below' },
    phase,
  },
  returns: { quantity: 'level', summary: 'level over full summing, 0 or below' },
  source,
  example: { formula: '=SPACING.LOBE("139 mm", "1808 Hz", "15°")', gives: -1.6 },
  remarks: 'Both drivers equally loud, as at the hand-over. Cut off at −60 dB.',
  compute: (given) => Math.max(-60, 20 * Math.log10(Math.abs(Math.cos(halfAngle(given, Math.sin(given.angle)))))),
});

export const spacingTilt = define({
  name: 'SPACING.TILT',
  summary: 'The angle to which the lobe of two drivers leans when one of them leads.',
  parameters: { spacing, frequency, phase },
  returns: { quantity: 'angle', summary: 'angle above the axis, negative below' },
  source,
  example: { formula: '=SPACING.TILT("139 mm", "1808 Hz", "90°")', gives: -0.348 },
  remarks: 'It leans towards the driver that is late. Straight up or down when no angle brings both in step.',
  compute: (given) => Math.asin(sineFor(given, 0)),
});

export const spacingWindow = define({
  name: 'SPACING.WINDOW',
  summary: 'The whole vertical angle in which two drivers together fall less than an amount.',
  parameters: { spacing, frequency, fall, phase },
  returns: { quantity: 'angle', summary: 'angle from the lower to the upper edge' },
  source,
  example: { formula: '=SPACING.WINDOW("139 mm", "1808 Hz")', gives: 0.696 },
  remarks: 'In the lobe that faces the listener, at the one frequency; usually asked for at the hand-over.',
  compute(given) {
    const [low, high] = edgesOf(given);
    return high - low;
  },
});

/** Where an edge of the lobe passes a distance, or why it never does. */
function heightAt(angle: number, distance: number): number | Problem {
  if (Math.abs(angle) < Math.PI / 2 - 1e-9) return distance * Math.tan(angle);
  return new Problem(
    say`At this frequency and spacing the sum does not fall by so much at any angle: every ear height will do. Ask at a higher frequency or for a smaller fall.`,
    'fall',
  );
}

const ears = {
  spacing,
  frequency,
  distance: { quantity: 'distance', min: 0.01, max: 1000, summary: 'from the loudspeaker to the ear' },
  fall,
  phase,
} as const;

export const spacingEarsLow = define({
  name: 'SPACING.EARS_LOW',
  summary: 'How far below the middle of two drivers an ear may be before their sum has fallen by an amount.',
  parameters: ears,
  returns: { quantity: 'distance', summary: 'height of the lower edge over the middle of the drivers, negative below' },
  source,
  example: { formula: '=SPACING.EARS_LOW("139 mm", "1808 Hz", "2.8 m")', gives: -1.02 },
  remarks: 'Add the height of the drivers over the floor. Standing and sitting ears differ by half a metre and more.',
  compute: (given) => heightAt(edgesOf(given)[0], given.distance),
});

export const spacingEarsHigh = define({
  name: 'SPACING.EARS_HIGH',
  summary: 'How far above the middle of two drivers an ear may be before their sum has fallen by an amount.',
  parameters: ears,
  returns: { quantity: 'distance', summary: 'height of the upper edge over the middle of the drivers' },
  source,
  example: { formula: '=SPACING.EARS_HIGH("139 mm", "1808 Hz", "2.8 m")', gives: 1.02 },
  remarks: 'Add the height of the drivers over the floor. Standing and sitting ears differ by half a metre and more.',
  compute: (given) => heightAt(edgesOf(given)[1], given.distance),
});

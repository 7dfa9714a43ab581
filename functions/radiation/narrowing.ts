import { define } from '../define.ts';
import { soundSpeed } from '../air.ts';
import { pistonArgument } from '../numeric/bessel.ts';
import { usual } from '../usual.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import { frequencyOfSize, pistonSource, sd, sizeOf } from './piston.ts';

export const pistonNarrowing = define({
  name: 'PISTON.NARROWING',
  summary: 'The frequency at which a piston has become a given amount quieter at an angle.',
  parameters: {
    sd,
    angle: { quantity: 'angle', min: 0.01, max: Math.PI / 2, default: Math.PI / 4, summary: 'angle from the axis' },
    loss: { quantity: 'level', min: 0.01, max: 60, default: 3, summary: 'loss that is reached there' },
  },
  returns: { quantity: 'frequency', summary: 'frequency where the loss is first reached' },
  source: pistonSource,
  example: { formula: '=PISTON.NARROWING("132 cm²", "45°", "3 dB")', gives: 1923 },
  remarks:
    'Inside the main lobe, so the first frequency going up. The 3 dB at 45° in common use is a choice, not a law: bend it where the seats are near the axis. Give the radiating area, not the size of the frame.',
  compute(given) {
    const x = pistonArgument(10 ** (-given.loss / 20));
    if (x === undefined) return new Problem(say`No frequency has such a loss; ask for less, such as 3 dB.`, 'loss');
    return frequencyOfSize(given.sd, x / Math.sin(given.angle));
  },
});

export const pistonByDiameter = define({
  name: 'PISTON.NARROWING_BY_DIAMETER',
  summary: 'The frequency whose wavelength equals the radiating diameter.',
  parameters: { sd },
  returns: { quantity: 'frequency', summary: 'frequency where wavelength equals diameter' },
  source: { source: 'practice', at: 'wavelength equal to the diameter, ka = π' },
  example: { formula: '=PISTON.NARROWING_BY_DIAMETER("137 cm²")', gives: 2599 },
  remarks:
    'A quick rule that does not know the angle: a piston is then about 6 dB down at 45°. PISTON.NARROWING is stricter and says what it means.',
  compute: (given) => soundSpeed / (2 * Math.sqrt(given.sd / Math.PI)),
});

export const pistonBySize = define({
  name: 'PISTON.NARROWING_BY_KA',
  summary: 'The frequency at which the circumference of a piston is a number of wavelengths, ka.',
  parameters: {
    sd,
    ka: { quantity: 'ratio', min: 0.01, max: 1000, default: 2, summary: 'circumference over wavelength' },
  },
  returns: { quantity: 'frequency', summary: 'frequency where ka is reached' },
  source: { source: 'practice', at: 'ka = 1 as the strict rule, ka = 2 as the usual one' },
  example: { formula: '=PISTON.NARROWING_BY_KA("137 cm²", 2)', gives: 1654 },
  remarks:
    'At ka = 1 a piston is half a decibel down at 45°, at ka = 2 it is 2.3 dB, at ka = π (wavelength equals diameter) 6 dB. Say which rule you mean: they lie more than an octave and a half apart.',
  compute: (given) => frequencyOfSize(given.sd, given.ka),
});

export const pistonSize = define({
  name: 'PISTON.KA',
  summary: 'The circumference of a piston in wavelengths, ka.',
  parameters: { sd, frequency: { ...usual.frequency, summary: 'frequency' } },
  returns: { quantity: 'ratio', summary: 'circumference over wavelength' },
  source: { source: 'beranek1954', at: 'k·a = 2πf/c times the radius' },
  example: { formula: '=PISTON.KA("137 cm²", "1654 Hz")', gives: 2.0 },
  remarks: 'Well under 1 a driver sends sound everywhere alike; above 2 it begins to beam.',
  compute: (given) => sizeOf(given.sd, given.frequency),
});

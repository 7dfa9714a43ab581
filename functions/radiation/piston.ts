import { define } from '../define.ts';
import { soundSpeed } from '../air.ts';
import { pistonArgument, pistonFactor } from '../numeric/bessel.ts';
import { usual } from '../usual.ts';
import { frequencies } from '../values/grid.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';

/** The level of the deepest null, dB: below it no measurement agrees with the model. */
const deepest = -60;

const argument = (sd: number, frequency: number, angle: number): number =>
  ((2 * Math.PI * frequency) / soundSpeed) * Math.sqrt(sd / Math.PI) * Math.sin(angle);

const levelAt = (sd: number, frequency: number, angle: number): number =>
  Math.max(20 * Math.log10(Math.abs(pistonFactor(argument(sd, frequency, angle)))), deepest);

const sd = { ...usual.area, summary: 'radiating area of the cone', typical: [1e-4, 0.2] } as const;
const angle = { quantity: 'angle', min: 0, max: Math.PI / 2, summary: 'angle from the axis' } as const;
const source = {
  source: 'beranek1954',
  at: 'piston in an infinite baffle, directivity 2·J1(ka·sin θ)/(ka·sin θ)',
} as const;

export const pistonLoss = define({
  name: 'PISTON.LOSS',
  summary: 'How much quieter a flat piston is at an angle than on its axis.',
  parameters: { sd, frequency: { ...usual.frequency, summary: 'frequency' }, angle },
  returns: { quantity: 'level', summary: 'loss against the axis, never negative' },
  source,
  example: { formula: '=PISTON.LOSS("132 cm²", "1923 Hz", "45°")', gives: 3.0 },
  remarks:
    'For a stiff flat piston in a wide wall. Real cones are conical and soften as they break up, so trust it up to the first break-up. Nulls are cut off at 60 dB.',
  compute: (given) => Math.max(0, -levelAt(given.sd, given.frequency, given.angle)),
});

export const pistonNarrowing = define({
  name: 'PISTON.NARROWING',
  summary: 'The frequency at which a piston has become a given amount quieter at an angle.',
  parameters: {
    sd,
    angle: { quantity: 'angle', min: 0.01, max: Math.PI / 2, default: Math.PI / 4, summary: 'angle from the axis' },
    loss: { quantity: 'level', min: 0.01, max: 60, default: 3, summary: 'loss that is reached there' },
  },
  returns: { quantity: 'frequency', summary: 'frequency where the loss is first reached' },
  source,
  example: { formula: '=PISTON.NARROWING("132 cm²", "45°", "3 dB")', gives: 1923 },
  remarks:
    'Inside the main lobe, so the first frequency going up. The 3 dB at 45° in common use is a choice, not a law: bend it where the seats are near the axis. Give the radiating area, not the size of the frame.',
  compute(given) {
    const x = pistonArgument(10 ** (-given.loss / 20));
    if (x === undefined) return new Problem(say`No frequency has such a loss; ask for less, such as 3 dB.`, 'loss');
    return (x * soundSpeed) / (2 * Math.PI * Math.sqrt(given.sd / Math.PI) * Math.sin(given.angle));
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

export const pistonOffAxis = define({
  name: 'PISTON.OFF_AXIS',
  summary: 'The level of a piston at an angle relative to its axis, as a curve.',
  parameters: { sd, angle },
  returns: { record: 'curve', summary: 'level in dB, 0 on the axis' },
  source,
  example: {
    formula: '=PISTON.OFF_AXIS("132 cm²", "45°")',
    gives: { quantity: 'level', title: 'Level off the axis of a piston' },
  },
  remarks:
    'For a stiff flat piston in a wide wall; nulls are cut off at −60 dB. Add it to a response with CURVE.ADD to see the response at that angle.',
  compute: (given) => ({
    kind: 'curve' as const,
    title: 'Level off the axis of a piston',
    quantity: 'level' as const,
    y: frequencies.map((frequency) => levelAt(given.sd, frequency, given.angle)),
    from: frequencies[0]!,
    to: frequencies[frequencies.length - 1]!,
  }),
});

import { define } from '../define.ts';
import { soundSpeed } from '../air.ts';
import { firstZeroOfJ1, pistonArgument, pistonFactor } from '../numeric/bessel.ts';
import { usual } from '../usual.ts';
import { frequencies } from '../values/grid.ts';
import { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';

/** The level of the deepest null, dB: below it no measurement agrees with the model. */
const deepest = -60;

/** Radius of a circle of the radiating area times the wave number, ka. */
export const sizeOf = (sd: number, frequency: number): number =>
  ((2 * Math.PI * frequency) / soundSpeed) * Math.sqrt(sd / Math.PI);

/** The frequency at which a piston has a size ka. */
export const frequencyOfSize = (sd: number, ka: number): number =>
  (ka * soundSpeed) / (2 * Math.PI * Math.sqrt(sd / Math.PI));

const levelAt = (sd: number, frequency: number, angle: number): number =>
  Math.max(20 * Math.log10(Math.abs(pistonFactor(sizeOf(sd, frequency) * Math.sin(angle)))), deepest);

export const sd = { ...usual.area, summary: 'radiating area of the cone', typical: [1e-4, 0.2] } as const;
export const angle = { quantity: 'angle', min: 0, max: Math.PI / 2, summary: 'angle from the axis' } as const;
export const pistonSource = {
  source: 'beranek1954',
  at: 'piston in an infinite baffle, directivity 2·J1(ka·sin θ)/(ka·sin θ)',
} as const;

const frequency = { ...usual.frequency, summary: 'frequency' } as const;

export const pistonLoss = define({
  name: 'PISTON.LOSS',
  summary: 'How much quieter a flat piston is at an angle than on its axis.',
  parameters: { sd, frequency, angle },
  returns: { quantity: 'level', summary: 'loss against the axis, never negative' },
  source: pistonSource,
  example: { formula: '=PISTON.LOSS("132 cm²", "1923 Hz", "45°")', gives: 3.0 },
  remarks:
    'For a stiff flat piston in a wide wall. Real cones are conical and soften as they break up, so trust it up to the first break-up. Nulls are cut off at 60 dB.',
  compute: (given) => Math.max(0, -levelAt(given.sd, given.frequency, given.angle)),
});

export const pistonOffAxis = define({
  name: 'PISTON.OFF_AXIS',
  summary: 'The level of a piston at an angle relative to its axis, as a curve.',
  parameters: { sd, angle },
  returns: { record: 'curve', of: 'level', summary: 'level in dB, 0 on the axis' },
  source: pistonSource,
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
    y: frequencies.map((each) => levelAt(given.sd, each, given.angle)),
    from: frequencies[0]!,
    to: frequencies[frequencies.length - 1]!,
  }),
});

/** The angle at which ka·sin θ reaches a value, or why it never does. */
function angleWhere(area: number, at: number, reached: number, what: string): number | Problem {
  const sine = reached / sizeOf(area, at);
  if (sine <= 1) return Math.asin(sine);
  return new Problem(
    say`At ${measured(at, 'frequency')} a piston of ${measured(area, 'area')} has no ${what} in front of it: it is too small for that; ask at ${measured(frequencyOfSize(area, reached), 'frequency')} or above.`,
    'frequency',
  );
}

export const pistonNull = define({
  name: 'PISTON.NULL',
  summary: 'The angle at which a piston is first silent.',
  parameters: { sd, frequency },
  returns: { quantity: 'angle', summary: 'angle of the first null' },
  source: { source: 'beranek1954', at: 'first zero of J1: ka·sin θ = 3.83' },
  example: { formula: '=PISTON.NULL("132 cm²", "4 kHz")', gives: 0.939 },
  remarks: 'Below ka = 3.83 there is none. A real cone fills the null in part.',
  compute: (given) => angleWhere(given.sd, given.frequency, firstZeroOfJ1, 'null'),
});

export const pistonWidth = define({
  name: 'PISTON.WIDTH',
  summary: 'The whole angle in front of a piston inside which it loses less than an amount.',
  parameters: {
    sd,
    frequency,
    loss: { quantity: 'level', min: 0.01, max: 60, default: 6, summary: 'loss at the edges of the angle' },
  },
  returns: { quantity: 'angle', summary: 'angle from edge to edge, 180° when the loss is never reached' },
  source: pistonSource,
  example: { formula: '=PISTON.WIDTH("132 cm²", "2989 Hz")', gives: 1.347 },
  remarks:
    'The coverage angle of datasheets, from −6 dB to −6 dB. Inside the main lobe of a flat piston in a wide wall.',
  compute(given) {
    const x = pistonArgument(10 ** (-given.loss / 20));
    if (x === undefined) return new Problem(say`No angle has such a loss; ask for less, such as 6 dB.`, 'loss');
    return 2 * Math.asin(Math.min(1, x / sizeOf(given.sd, given.frequency)));
  },
});

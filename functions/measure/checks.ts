import { soundSpeed } from '../air.ts';
import { define } from '../define.ts';
import { usual } from '../usual.ts';
import { measured, say } from '../values/say.ts';
import type { Verdict } from '../values/verdict.ts';

const practice = (at: string) => ({ source: 'practice', at }) as const;
const percent = (share: number): string => `${Number((100 * share).toPrecision(2))} %`;
const limit = (share: number, summary: string) =>
  ({ quantity: 'ratio', min: 0, max: 1, default: share, summary }) as const;
const good = (reason: Verdict['reason']): Verdict => ({ kind: 'verdict', status: 'good', word: 'Plausible', reason });
const doubtful = (reason: Verdict['reason']): Verdict => ({
  kind: 'verdict',
  status: 'caution',
  word: 'Measure again',
  reason,
});

export const checkSymmetry = define({
  name: 'MEASURE.CHECK_SYMMETRY',
  summary: 'Whether the two frequencies beside an impedance peak lie evenly about it.',
  parameters: {
    fs: { ...usual.frequency, summary: 'frequency of the peak' },
    f1: { ...usual.frequency, summary: 'frequency below it' },
    f2: { ...usual.frequency, summary: 'frequency above it' },
    most: limit(0.02, 'largest deviation allowed'),
  },
  returns: { record: 'verdict', summary: 'verdict with the deviation' },
  source: practice('√(f1·f2) = fs holds for a pure resonance; 2 % allowed'),
  example: { formula: '=MEASURE.CHECK_SYMMETRY("38 Hz", "26.53 Hz", "54.44 Hz")', gives: { status: 'good' } },
  compute(given): Verdict {
    const middle = Math.sqrt(given.f1 * given.f2);
    const off = Math.abs(middle / given.fs - 1);
    const found = say`√(f1·f2) is ${measured(middle, 'frequency')}, ${percent(off)} off the peak at ${measured(given.fs, 'frequency')}`;
    return off <= given.most
      ? good(say`${found}.`)
      : doubtful(say`${found}, more than ${percent(given.most)}: read both again at √(Re·Zmax), at a lower level.`);
  },
});

export const checkMass = define({
  name: 'MEASURE.CHECK_MASS',
  summary: 'Whether an added mass has shifted the resonance by a useful amount.',
  parameters: {
    fs: { ...usual.frequency, summary: 'resonance without it' },
    loaded: { ...usual.frequency, summary: 'resonance with the mass' },
    least: limit(0.15, 'least shift'),
    most: limit(0.4, 'largest shift'),
  },
  returns: { record: 'verdict', summary: 'verdict with the shift' },
  source: practice('a shift of 15 to 40 % is neither lost in reading errors nor bends the suspension'),
  example: { formula: '=MEASURE.CHECK_MASS("38 Hz", "29.51 Hz")', gives: { status: 'good' } },
  compute(given): Verdict {
    const shift = 1 - given.loaded / given.fs;
    const found = say`The mass lowers the resonance by ${percent(shift)}`;
    if (shift < given.least)
      return doubtful(say`${found}, less than ${percent(given.least)}: take more, or a reading error counts too much.`);
    return shift > given.most
      ? doubtful(say`${found}, more than ${percent(given.most)}: take less, or the suspension is bent.`)
      : good(say`${found}.`);
  },
});

export const checkOhms = define({
  name: 'MEASURE.CHECK_OHMS',
  summary: 'Whether the resistance in a sweep agrees with the meter.',
  parameters: {
    fitted: { ...usual.ohms, summary: 'resistance from the sweep' },
    meter: { ...usual.ohms, summary: 'resistance by a meter, its leads taken off' },
    most: limit(0.03, 'largest deviation allowed'),
  },
  returns: { record: 'verdict', summary: 'verdict with the deviation' },
  source: practice('3 % allowed'),
  example: { formula: '=MEASURE.CHECK_OHMS("5.85 Ω", "5.8 Ω")', gives: { status: 'good' } },
  compute(given): Verdict {
    const off = given.fitted / given.meter - 1;
    const found = say`The sweep tends to ${measured(given.fitted, 'resistance')}, ${percent(Math.abs(off))} ${off < 0 ? 'below' : 'above'} the meter’s ${measured(given.meter, 'resistance')}`;
    return Math.abs(off) <= given.most
      ? good(say`${found}.`)
      : doubtful(say`${found}: check the reference resistor, the wiring of the jig and the leads of the meter.`);
  },
});

export const checkCurve = define({
  name: 'MEASURE.CHECK_CURVE',
  summary: 'What a measured curve is good for: levels only, or sums too, and from where to where.',
  parameters: {
    curve: { record: 'curve', summary: 'measured curve' },
    from: { ...usual.frequency, summary: 'lowest frequency that it is wanted for' },
    to: { ...usual.frequency, summary: 'highest frequency that it is wanted for' },
  },
  returns: { record: 'verdict', summary: 'verdict' },
  source: { source: 'own', at: 'band and phase of the curve' },
  example: {
    formula: '=MEASURE.CHECK_CURVE(MEASURE.LEVEL("100 88\n1000 90"), "200 Hz", "800 Hz")',
    gives: { status: 'caution', word: 'Levels only' },
  },
  compute({ curve, from, to }): Verdict {
    const holds = say`“${curve.title}” holds from ${measured(curve.from, 'frequency')} to ${measured(curve.to, 'frequency')}`;
    if (from < curve.from * (1 - 1e-9) || to > curve.to * (1 + 1e-9))
      return {
        kind: 'verdict',
        status: 'fail',
        word: 'Band too narrow',
        reason: say`${holds}, but ${measured(from, 'frequency')} to ${measured(to, 'frequency')} is wanted; measure further or join another curve.`,
      };
    return curve.phase
      ? good(say`${holds}, with phase.`)
      : {
          kind: 'verdict',
          status: 'caution',
          word: 'Levels only',
          reason: say`${holds}, but without phase: levels only, no summing.`,
        };
  },
});

export const gateLimit = define({
  name: 'MEASURE.GATE_LIMIT',
  summary: 'The lowest frequency that a window before the first echo can show.',
  parameters: {
    window: { quantity: 'time', min: 1e-5, max: 10, typical: [1e-3, 0.05], summary: 'time before the first echo' },
  },
  returns: { quantity: 'frequency', summary: 'one over the time' },
  source: practice('one whole period fits in the window'),
  example: { formula: '=MEASURE.GATE_LIMIT("4 ms")', gives: 250 },
  remarks: 'And points stand no closer than this, so that up to twice or thrice the limit the curve is coarse.',
  compute: (given) => 1 / given.window,
});

const sd = { ...usual.area, typical: [2e-4, 0.2], summary: 'radiating area' } as const;

export const nearLimit = define({
  name: 'MEASURE.NEAR_LIMIT',
  summary: 'The highest frequency up to which a microphone close to a cone tells its far response.',
  parameters: { sd },
  returns: { quantity: 'frequency', summary: 'frequency of ka = 1' },
  source: { source: 'keele1974', at: 'near pressure follows the far one up to about ka = 1' },
  example: { formula: '=MEASURE.NEAR_LIMIT("132 cm²")', gives: 843 },
  remarks: 'The step of the cabinet edge is not in a near measurement: add EDGE.STEP, then join the far one above it.',
  compute: (given) => soundSpeed / (2 * Math.PI * Math.sqrt(given.sd / Math.PI)),
});

export const nearOffset = define({
  name: 'MEASURE.NEAR_OFFSET',
  summary: 'What is added to a level close to a cone to have that at a distance, in half space.',
  parameters: { sd, distance: { quantity: 'distance', min: 0.01, max: 1000, default: 1, summary: 'distance' } },
  returns: { quantity: 'level', summary: 'decibels, negative' },
  source: { source: 'keele1974', at: 'pressure at a distance over that at the centre of the cone, a/(2r)' },
  example: { formula: '=MEASURE.NEAR_OFFSET("132 cm²", "1 m")', gives: -29.79 },
  remarks: 'For a distance of several diameters of the cone; nearer to it PISTON.NEAR tells.',
  compute: (given) => 20 * Math.log10(Math.sqrt(given.sd / Math.PI) / (2 * given.distance)),
});

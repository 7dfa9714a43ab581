import { soundSpeed } from '../air.ts';
import { define } from '../define.ts';
import { pistonLoss } from '../radiation/piston.ts';
import { pistonMatch } from '../radiation/directivity.ts';
import { usual } from '../usual.ts';
import { measured, say, type Measured } from '../values/say.ts';
import { judge } from './judge.ts';

const returns = { record: 'verdict', summary: 'verdict with its reason' } as const;
const handover = { ...usual.frequency, summary: 'hand-over' } as const;
const practice = (at: string) => ({ source: 'practice', at }) as const;
const ratio = (value: number): Measured => measured(value, 'ratio');
const level = (value: number): Measured => measured(value, 'level');
const octaves = (value: number): Measured => measured(value, 'octaves');
const threshold = { quantity: 'ratio', min: 0, max: 1000 } as const;

export const ruleResonance = define({
  name: 'RULE.RESONANCE',
  summary: 'Whether a driver is handed over far enough above its resonance.',
  parameters: {
    handover,
    fs: { ...usual.frequency, summary: 'resonance of the upper driver, in its chamber if it has one' },
    good: { ...threshold, default: 2, summary: 'hand-over over resonance that is good' },
    caution: { ...threshold, default: 1.5, summary: 'below it, fail' },
  },
  returns,
  source: practice('twice the resonance; one and a half as a stretch'),
  example: { formula: '=RULE.RESONANCE("1808 Hz", "850 Hz")', gives: { status: 'good' } },
  remarks: 'The hump of the resonance bends the filter and costs travel; steep filters and low levels forgive more.',
  compute: (given) =>
    judge({
      subject: say`Hand-over ${measured(given.handover, 'frequency')} over the resonance ${measured(given.fs, 'frequency')}`,
      value: given.handover / given.fs,
      show: ratio,
      sense: 1,
      good: given.good,
      caution: given.caution,
      means: {
        caution: 'the hump of the resonance bends the filter',
        fail: 'this is below a safe start; hand over higher or take a driver with a lower resonance',
      },
    }),
});

export const ruleTravel = define({
  name: 'RULE.TRAVEL',
  summary: 'Whether a driver stays within a share of its travel.',
  parameters: {
    travel: { ...usual.travel, min: 0, summary: 'largest one-way travel' },
    xmax: { ...usual.travel, summary: 'one-way travel that the driver allows' },
    good: { ...threshold, default: 0.7, summary: 'share that is good' },
    caution: { ...threshold, default: 1, summary: 'share above which it fails' },
  },
  returns,
  source: practice('seven tenths of the travel'),
  example: { formula: '=RULE.TRAVEL("0.245 mm", "0.35 mm")', gives: { status: 'good' } },
  remarks: 'TREBLE.TRAVEL_AT gives the travel of a tweeter through its filter, BOX.TRAVEL that of a woofer in its box.',
  compute: (given) =>
    judge({
      subject: say`Travel of ${measured(given.travel, 'travel')} as a share of ${measured(given.xmax, 'travel')}`,
      value: given.travel / given.xmax,
      show: ratio,
      sense: -1,
      good: given.good,
      caution: given.caution,
      means: {
        caution: 'the cone comes near its stops',
        fail: 'it runs out of travel; hand over higher, play softer or filter the lows',
      },
    }),
});

export const ruleNarrowing = define({
  name: 'RULE.NARROWING',
  summary: 'Whether the lower driver is still wide enough where it is handed over.',
  parameters: {
    handover,
    sd: { ...usual.area, summary: 'radiating area of the lower driver' },
    angle: { quantity: 'angle', min: 0.01, max: Math.PI / 2, default: Math.PI / 4, summary: 'angle that counts' },
    good: { quantity: 'level', min: 0, max: 60, default: 3, summary: 'loss there that is good' },
    caution: { quantity: 'level', min: 0, max: 60, default: 6, summary: 'loss above which it fails' },
  },
  returns,
  source: practice('3 dB at 45°; 6 dB as a stretch'),
  example: { formula: '=RULE.NARROWING("1808 Hz", "132 cm²")', gives: { status: 'good' } },
  compute: (given, context) =>
    judge({
      subject: say`Loss at ${measured(given.angle, 'angle')} where it is handed over at ${measured(given.handover, 'frequency')}`,
      value: pistonLoss.compute({ sd: given.sd, frequency: given.handover, angle: given.angle }, context) as number,
      show: level,
      sense: -1,
      good: given.good,
      caution: given.caution,
      means: {
        caution: 'the width changes at the hand-over',
        fail: 'off to the side there is an audible hole; hand over lower or take a smaller driver',
      },
    }),
});

export const ruleDirectivity = define({
  name: 'RULE.DIRECTIVITY',
  summary: 'Whether two drivers are about as directive as one another where they are handed over.',
  parameters: {
    handover,
    lower: { ...usual.area, summary: 'radiating area of the driver that plays below' },
    upper: { ...usual.area, summary: 'radiating area of the driver that plays above' },
    good: { quantity: 'level', min: 0, max: 60, default: 3.5, summary: 'difference that is good' },
    caution: { quantity: 'level', min: 0, max: 60, default: 5, summary: 'difference above which it fails' },
  },
  returns,
  source: practice('a step in the power of 3 to 4 dB goes unnoticed by most'),
  example: { formula: '=RULE.DIRECTIVITY("1808 Hz", "132 cm²", "7 cm²")', gives: { status: 'good' } },
  remarks: 'Piston models in a wall. AROUND.INDEX shows it for the whole loudspeaker, filters and cabinet included.',
  compute: (given, context) =>
    judge({
      subject: say`Difference of directivity at ${measured(given.handover, 'frequency')}`,
      value: Math.abs(
        pistonMatch.compute({ lower: given.lower, upper: given.upper, frequency: given.handover }, context) as number,
      ),
      show: level,
      sense: -1,
      good: given.good,
      caution: given.caution,
      means: {
        caution: 'the power in the room steps at the hand-over',
        fail: 'the room hears a dip and then a rise; hand over lower or choose sizes nearer to each other',
      },
    }),
});

export const ruleBreakup = define({
  name: 'RULE.BREAKUP',
  summary: 'Whether a driver is handed over far enough below its first strong cone resonance.',
  parameters: {
    handover,
    breakup: { ...usual.frequency, summary: 'first strong cone resonance' },
    good: { ...threshold, default: 2, summary: 'resonance over hand-over that is good' },
    caution: { ...threshold, default: 1.5, summary: 'below it, fail' },
  },
  returns,
  source: practice('half of the break-up; two thirds as a stretch'),
  example: { formula: '=RULE.BREAKUP("1808 Hz", "5200 Hz")', gives: { status: 'good' } },
  remarks: 'Read it off a measured curve: a printed range that reaches far up says nothing of peaks.',
  compute: (given) =>
    judge({
      subject: say`Break-up ${measured(given.breakup, 'frequency')} over the hand-over ${measured(given.handover, 'frequency')}`,
      value: given.breakup / given.handover,
      show: ratio,
      sense: 1,
      good: given.good,
      caution: given.caution,
      means: { caution: 'the peak wants a notch', fail: 'the peak stays audible; hand over lower' },
    }),
});

export const ruleSpacing = define({
  name: 'RULE.SPACING',
  summary: 'Whether two drivers are close enough together where they are handed over.',
  parameters: {
    handover,
    spacing: { ...usual.length, summary: 'distance between their centres' },
    good: { ...threshold, default: 1, summary: 'wavelengths that are good' },
    caution: { ...threshold, default: 1.4, summary: 'wavelengths above which it fails' },
  },
  returns,
  source: practice('one wavelength; some ask for half of it, some are content with 1.2'),
  example: { formula: '=RULE.SPACING("1808 Hz", "139 mm")', gives: { status: 'good' } },
  compute: (given) =>
    judge({
      subject: say`Spacing of ${measured(given.spacing, 'length')} in wavelengths at ${measured(given.handover, 'frequency')}`,
      value: (given.spacing * given.handover) / soundSpeed,
      show: ratio,
      sense: -1,
      good: given.good,
      caution: given.caution,
      means: {
        caution: 'the window for ear heights is narrow',
        fail: 'there are several nulls; move the drivers together or hand over lower',
      },
    }),
});

export const ruleNull = define({
  name: 'RULE.NULL',
  summary: 'Whether the first vertical null of two drivers stays far enough from the axis.',
  parameters: {
    angle: { quantity: 'angle', min: 0, max: Math.PI / 2, summary: 'angle of the null, as SPACING.NULL gives it' },
    good: { quantity: 'angle', min: 0, max: Math.PI / 2, default: Math.PI / 6, summary: 'angle that is good' },
    caution: { quantity: 'angle', min: 0, max: Math.PI / 2, default: Math.PI / 9, summary: 'below it, fail' },
  },
  returns,
  source: practice('30°; 20° as a stretch'),
  example: { formula: '=RULE.NULL("43.1°")', gives: { status: 'good' } },
  compute: (given) =>
    judge({
      subject: say`First null above and below the axis`,
      value: given.angle,
      show: (value) => measured(value, 'angle'),
      sense: 1,
      good: given.good,
      caution: given.caution,
      means: {
        caution: 'keep the ear at the height of the drivers',
        fail: 'standing up or sitting low falls into it; move the drivers together or hand over lower',
      },
    }),
});

export const ruleOverlap = define({
  name: 'RULE.OVERLAP',
  summary: 'Whether the ranges of two drivers overlap widely enough.',
  parameters: {
    lowerTop: { ...usual.frequency, summary: 'up to where the lower driver is usable' },
    upperBottom: { ...usual.frequency, summary: 'from where the upper driver is usable' },
    good: { quantity: 'octaves', min: -10, max: 10, default: 2, summary: 'octaves that are good' },
    caution: { quantity: 'octaves', min: -10, max: 10, default: 1, summary: 'below it, fail' },
  },
  returns,
  source: practice('two octaves, an octave on each side of the hand-over; one as a stretch'),
  example: { formula: '=RULE.OVERLAP("3.2 kHz", "800 Hz")', gives: { status: 'good' } },
  remarks: 'For usable ranges; PAIR.WINDOW is about limits that have their margin in them already.',
  compute: (given) =>
    judge({
      subject: say`Overlap from ${measured(given.upperBottom, 'frequency')} to ${measured(given.lowerTop, 'frequency')}`,
      value: Math.log2(given.lowerTop / given.upperBottom),
      show: octaves,
      sense: 1,
      good: given.good,
      caution: given.caution,
      means: { caution: 'only steep slopes fit', fail: 'take a partner that reaches further' },
    }),
});

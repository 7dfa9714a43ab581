import { define } from '../define.ts';
import { usual } from '../usual.ts';
import { measured, say } from '../values/say.ts';
import { judge } from './judge.ts';

const returns = { record: 'verdict', summary: 'verdict with its reason' } as const;
const practice = (at: string) => ({ source: 'practice', at }) as const;
const threshold = { quantity: 'ratio', min: 0, max: 1000 } as const;

export const rulePad = define({
  name: 'RULE.PAD',
  summary: 'Whether a driver can be brought to the level of the system with a pad of sound size.',
  parameters: {
    system: { ...usual.level, summary: 'level of the system, woofer less make-up' },
    level: { ...usual.level, summary: 'level of the driver on the same basis' },
    most: { quantity: 'level', min: 0, max: 60, default: 10, summary: 'pad above which there is a caution' },
  },
  returns,
  source: practice('a passive loudspeaker is as loud as its quietest driver; pads up to 10 dB'),
  example: { formula: '=RULE.PAD("84.7 dB", "90 dB")', gives: { status: 'good' } },
  remarks:
    'Both levels for 2.83 V at 1 m, that of the system less what the cabinet edge takes. A driver that is too quiet cannot be turned up by a passive filter.',
  compute(given) {
    const pad = given.level - given.system;
    const show = (value: number) => measured(value, 'level');
    const means = {
      caution: '',
      fail: 'it cannot be turned up without active drive; lower the system or choose another',
    };
    if (pad < -1e-9)
      return judge({
        subject: say`The driver over the system`,
        value: pad,
        show,
        sense: 1,
        good: 0,
        caution: 0,
        means,
      });
    const large = { caution: 'most of its power becomes heat in the pad', fail: '' };
    return judge({ subject: say`Pad`, value: pad, show, sense: -1, good: given.most, caution: 1e9, means: large });
  },
});

export const ruleBand = define({
  name: 'RULE.BAND',
  summary: 'Whether a driver between two hand-overs has a band worth its place.',
  parameters: {
    low: { ...usual.frequency, summary: 'hand-over below it' },
    high: { ...usual.frequency, summary: 'hand-over above it' },
    good: { quantity: 'octaves', min: 0, max: 12, default: 3, summary: 'octaves that are good' },
    caution: { quantity: 'octaves', min: 0, max: 12, default: 1, summary: 'below it, fail' },
  },
  returns,
  source: practice('three octaves for a midrange'),
  example: { formula: '=RULE.BAND("300 Hz", "2.4 kHz")', gives: { status: 'good' } },
  compute: (given) =>
    judge({
      subject: say`Band from ${measured(given.low, 'frequency')} to ${measured(given.high, 'frequency')}`,
      value: Math.log2(given.high / given.low),
      show: (value) => measured(value, 'octaves'),
      sense: 1,
      good: given.good,
      caution: given.caution,
      means: {
        caution: 'fewer ways may do the same job',
        fail: 'the filters on both sides run into each other; move the hand-overs apart',
      },
    }),
});

export const ruleChamber = define({
  name: 'RULE.CHAMBER',
  summary: 'Whether a driver in its chamber resonates far enough below its lower hand-over.',
  parameters: {
    handover: { ...usual.frequency, summary: 'lower hand-over' },
    resonance: { ...usual.frequency, summary: 'resonance of the driver in its chamber' },
    good: { ...threshold, default: 2, summary: 'hand-over over resonance that is good' },
    caution: { ...threshold, default: 1, summary: 'below it, fail' },
  },
  returns,
  source: practice('chamber resonance no higher than half the hand-over'),
  example: { formula: '=RULE.CHAMBER("300 Hz", "104 Hz")', gives: { status: 'good' } },
  remarks: 'A driver with a closed back brings its own chamber: give its printed resonance and no litres.',
  compute: (given) =>
    judge({
      subject: say`Hand-over ${measured(given.handover, 'frequency')} over the resonance in the chamber, ${measured(given.resonance, 'frequency')},`,
      value: given.handover / given.resonance,
      show: (value) => measured(value, 'ratio'),
      sense: 1,
      good: given.good,
      caution: given.caution,
      means: {
        caution: 'the resonance sits inside the slope of the filter',
        fail: 'the driver rolls off before it is handed over; give it more litres or hand over higher',
      },
    }),
});

export const ruleBoxByRatio = define({
  name: 'RULE.BOX_BY_RATIO',
  summary: 'The kind of box that the ratio of resonance to electrical Q hints at.',
  parameters: {
    fs: { ...usual.frequency, summary: 'free-air resonance' },
    qes: { ...usual.q, summary: 'electrical Q' },
    closedBelow: { ...usual.frequency, default: 50, summary: 'ratio below which a closed box is meant' },
    ventedAbove: { ...usual.frequency, default: 100, summary: 'ratio above which a vented box is meant' },
  },
  returns: { text: true, summary: 'closed, either or vented' },
  source: practice('Fs/Qes below 50 Hz closed, above 100 Hz vented; others put the upper limit at 90 Hz'),
  example: { formula: '=RULE.BOX_BY_RATIO("38 Hz", 0.42)', gives: 'either' },
  remarks: 'A hint, never a reason to rule a driver out: draw both boxes and look at the curves.',
  compute(given) {
    const ratio = given.fs / given.qes;
    if (ratio < given.closedBelow) return 'closed';
    return ratio > given.ventedAbove ? 'vented' : 'either';
  },
});

export const ruleBoxByQ = define({
  name: 'RULE.BOX_BY_Q',
  summary: 'The kind of box that the total Q of a driver hints at.',
  parameters: {
    qts: { ...usual.q, summary: 'total Q in free air' },
    ventedTo: { ...usual.q, default: 0.4, summary: 'Q up to which a vented box is meant' },
    closedTo: { ...usual.q, default: 0.7, summary: 'Q below which a closed box is meant' },
  },
  returns: { text: true, summary: 'vented, closed or open' },
  source: practice('Qts up to 0.4 vented, up to 0.7 closed, above it an open or endless baffle'),
  example: { formula: '=RULE.BOX_BY_Q(0.386)', gives: 'vented' },
  remarks: 'A hint, never a reason to rule a driver out: draw both boxes and look at the curves.',
  compute(given) {
    if (given.qts <= given.ventedTo) return 'vented';
    return given.qts < given.closedTo ? 'closed' : 'open';
  },
});

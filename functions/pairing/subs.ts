import { define } from '../define.ts';
import { demoClosed } from '../enclosure/parameters.ts';
import { usual } from '../usual.ts';
import { bandOf, extremeIn } from '../values/interpolate.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';

const one = { ...usual.level, summary: 'most that one of them gives at the frequency that counts' } as const;
const together = { source: 'own', at: 'sources closer than a quarter of a wavelength add their pressures' } as const;

export const subsLevel = define({
  name: 'SUBS.LEVEL',
  summary: 'The level of several equal subs together, from that of one.',
  parameters: {
    one,
    count: { quantity: 'ratio', whole: true, min: 1, max: 1000, summary: 'how many' },
    drive: {
      choice: ['same volts', 'same watts'],
      default: 'same volts',
      summary: 'each gets what the one had, or they share its power',
    },
  },
  returns: { quantity: 'level', summary: 'level of all together' },
  source: together,
  example: { formula: '=SUBS.LEVEL("101.7 dB", 2)', gives: 107.7 },
  remarks:
    'Doubling gives 6 dB when each gets the same volts, and 3 dB when the same power is shared: two stories that are often mixed. For long waves; higher up and far apart it is 3 dB less.',
  compute: (given) => given.one + (given.drive === 'same watts' ? 10 : 20) * Math.log10(given.count),
});

export const subsCount = define({
  name: 'SUBS.COUNT',
  summary: 'How many equal subs a level needs.',
  parameters: {
    one,
    target: { ...usual.level, summary: 'level that is wanted at that frequency, on the same basis' },
    lift: { quantity: 'level', min: -40, max: 40, default: 0, summary: 'lift by walls and room that is counted on' },
  },
  returns: { quantity: 'ratio', summary: 'a whole number, at least 1' },
  source: together,
  example: { formula: '=SUBS.COUNT("101.7 dB", "106 dB")', gives: 2 },
  remarks:
    'Each with its own amplifier of the same size. The ceiling of one is its travel, its heat or its volts, the lowest.',
  compute(given) {
    const missing = given.target - given.lift - given.one;
    return Math.max(1, Math.ceil(10 ** (missing / 20) - 1e-9));
  },
});

export const subsRelief = define({
  name: 'SUBS.RELIEF',
  summary: 'How much louder mains can play when their lows are taken by a sub, as far as travel rules.',
  parameters: {
    before: { record: 'curve', summary: 'travel of the mains over the whole range' },
    after: { record: 'curve', summary: 'travel through the high-pass, for the same volts' },
    from: { ...usual.frequency, default: 20, summary: 'lowest frequency of the music' },
    to: { ...usual.frequency, default: 500, summary: 'highest frequency looked at' },
  },
  returns: { quantity: 'level', summary: 'ratio of the largest travels in decibels' },
  source: { source: 'own', at: 'travel is in proportion to volts' },
  example: {
    formula: `=SUBS.RELIEF(BOX.TRAVEL(${demoClosed}), BOX.TRAVEL(BOX.HIGH_PASS(${demoClosed}, "80 Hz", 2)))`,
    gives: 7.2,
  },
  compute(given) {
    const { before: without, after: through } = given;
    if (without.quantity === 'level' || without.quantity !== through.quantity)
      return new Problem(
        say`“${without.title}” and “${through.title}” are not both travel; give curves as BOX.TRAVEL makes them.`,
        'before',
      );
    const largest = [];
    for (const curve of [without, through]) {
      const band = bandOf(curve, given.from, given.to);
      if (band instanceof Problem) return band;
      largest.push(extremeIn(curve, band, 1).value);
    }
    const [before, after] = largest as [number, number];
    if (before > 0 && after > 0) return 20 * Math.log10(before / after);
    return new Problem(say`There is no travel between these frequencies; look at another band.`, 'from');
  },
});

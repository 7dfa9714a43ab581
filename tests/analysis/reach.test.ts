import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ventedAligned } from '../../functions/enclosure/aligned.ts';
import { boxCutoff, responseFunction } from '../../functions/enclosure/box-figures.ts';
import { closedBox, closedVolume } from '../../functions/enclosure/closed.ts';
import { ventedBox } from '../../functions/enclosure/vented.ts';
import type { Box } from '../../functions/values/box.ts';
import type { Driver } from '../../functions/values/driver.ts';
import { Problem } from '../../functions/values/problem.ts';
import { driverOfCandidate } from '../../src/analysis/shortlist/candidate-driver.ts';
import { bassOf, heatLevelOf } from '../../src/analysis/shortlist/reach.ts';
import { shortlist } from '../../src/analysis/shortlist/shortlist.ts';
import type { Candidate } from '../../src/analysis/types.ts';
import { usualRules } from '../../src/analysis/shortlist/usual-rules.ts';
import { tweeterOf, wooferOf } from './candidates.ts';

const context = { quantity: 'ratio' } as const;
const driverOf = (candidate: Candidate): Driver => {
  const driver = driverOfCandidate(candidate);
  if ('why' in driver) throw new Error(driver.why);
  return driver;
};

/** The 3 dB point read from the response of the box as a circuit. */
const cutoffOf = (box: Box | Problem): number | undefined => {
  if (box instanceof Problem) return undefined;
  const cutoff = boxCutoff.compute({ box, drop: 3.0103 }, context);
  return cutoff instanceof Problem ? undefined : cutoff;
};

const cutoffIn = (driver: Driver, box: 'closed' | 'vented'): number | undefined => {
  const bass = bassOf(driver, box, usualRules);
  return 'why' in bass ? undefined : bass.cutoff;
};

test.each([
  ['vented', 40, 35, 7],
  ['vented', 15, 60, 20],
  ['vented', 120, 25, 3],
  ['closed', 20, undefined, 7],
  ['closed', 5, undefined, 7],
] as const)(
  'a %s box of %d L, tuned to %d Hz, with a leakage Q of %d is that of the circuit',
  (style, litres, tuning, leakage) => {
    const driver = driverOf({
      id: 'W',
      name: 'W',
      rows: { Fs: '32 Hz', Qms: '4', Qes: '0.45', Vas: '60 L', Re: '5.8 Ω', Sd: '220 cm²' },
    });
    const volume = litres / 1000;
    const bass = bassOf(driver, style, { ...usualRules, leakage, volume, ...(tuning && { tuning }) });
    const rest = { driver, volume, seriesResistance: 0, fill: 1, absorptionQ: undefined };
    const box =
      tuning === undefined
        ? closedBox.compute({ ...rest, leakageQ: undefined }, context)
        : ventedBox.compute({ ...rest, tuning, leakageQ: leakage, portQ: undefined }, context);
    if ('why' in bass || box instanceof Problem) throw new Error('no box');
    const response = responseFunction(box);
    for (const frequency of [12, 20, 31, 44, 63, 90, 140, 300])
      expect(bass.response(frequency)).toBeCloseTo(response(frequency), 9);
    expect(bass.cutoff / (cutoffOf(box) ?? 0)).toBeCloseTo(1, 5);
  },
);

test('the reach is the 3 dB point of the box as a circuit', () => {
  fc.assert(
    fc.property(wooferOf, (candidate) => {
      const driver = driverOf(candidate);
      const vented = cutoffIn(driver, 'vented');
      const box = ventedAligned.compute(
        { driver, family: 'flattest', leakageQ: 7, seriesResistance: 0, fill: 1 },
        context,
      );
      expect(typeof vented === 'number').toBe(!(box instanceof Problem));
      const circuit = cutoffOf(box);
      if (typeof vented === 'number' && circuit !== undefined) expect(vented / circuit).toBeCloseTo(1, 4);

      const closed = cutoffIn(driver, 'closed');
      const qts = driver.qts ?? 0;
      expect(typeof closed === 'number').toBe(qts < usualRules.qtc);
      if (typeof closed !== 'number' || qts > 0.7) return;
      const { vas = 0 } = driver;
      const volume = closedVolume.compute({ qts, vas, qtc: usualRules.qtc }, context);
      if (volume instanceof Problem) throw new Error('no volume');
      const closedCircuit = cutoffOf(
        closedBox.compute(
          { driver, volume, seriesResistance: 0, fill: 1, leakageQ: undefined, absorptionQ: undefined },
          context,
        ),
      );
      if (closedCircuit !== undefined) expect(closed / closedCircuit).toBeCloseTo(1, 4);
    }),
    { numRuns: 60 },
  );
});

test('the level by heat is that of the rated power into the nominal ohms', () => {
  // 89 dB at 2.83 V and 8 Ω is 89 dB at 1 W; 100 W are 20 dB more.
  const driver = { kind: 'driver', name: 'D', level: 89, nominal: 8, pe: 100, derived: [], doubts: [] } as const;
  expect(heatLevelOf(driver)).toBeCloseTo(109, 2);
  // The same volts give 4 Ω twice the watts, so that the same watts give half the power in the room.
  const [eight, four] = [heatLevelOf(driver), heatLevelOf({ ...driver, nominal: 4 })].map(Number);
  expect((eight ?? 0) - (four ?? 0)).toBeCloseTo(10 * Math.log10(2), 10);
});

test('what is listed keeps the limits, and nothing that keeps them is left out', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(wooferOf, { minLength: 1, maxLength: 5 }),
      fc.array(tweeterOf, { minLength: 1, maxLength: 5 }),
      fc.record(
        {
          price: fc.integer({ min: 50, max: 600 }),
          reach: fc.integer({ min: 20, max: 90 }),
          plays: fc.integer({ min: 90, max: 112 }),
        },
        { requiredKeys: [] },
      ),
      async (woofers, tweeters, limits) => {
        const question = { lists: [woofers, tweeters], rules: usualRules, ranking: 'window', most: 1000 };
        const all = await shortlist(question);
        const kept = await shortlist({ ...question, limits });
        const keeps = all.rows.filter(
          ({ price, reach, plays }) =>
            price <= (limits.price ?? Infinity) &&
            (limits.reach === undefined || reach <= limits.reach) &&
            (limits.plays === undefined || plays >= limits.plays),
        );
        expect(kept.rows.map(({ members }) => members)).toEqual(keeps.map(({ members }) => members));
        expect(kept.judged).toBe(keeps.length);
        expect(kept.judged + kept.outside + kept.counts.problem).toBe(woofers.length * tweeters.length);
        for (const list of kept.partners)
          for (const { best, why } of list) expect(best === undefined).toBe(why !== undefined);
      },
    ),
    { numRuns: 80 },
  );
}, 60_000);

import { define } from '../define.ts';
import { usual } from '../usual.ts';
import type { Curve } from '../values/curve.ts';
import { bandOf, extremeIn, type Extreme } from '../values/interpolate.ts';
import { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';
import type { Verdict } from '../values/verdict.ts';
import { notOhms } from './impedance.ts';

/** The lowest magnitude over the rated value. */
const leastShare = 0.8;
const ratings = [1, 2, 4, 6, 8, 16, 32] as const;

const curve = { record: 'curve', summary: 'impedance curve' } as const;
const band = {
  from: { ...usual.frequency, default: 20, summary: 'lower end of the band' },
  to: { ...usual.frequency, default: 20000, summary: 'upper end of the band' },
} as const;
const source = {
  source: 'iec60268_5',
  at: 'rated impedance: the lowest magnitude in the rated band is at least 80 % of it (a restatement was read)',
} as const;
const six = 'CURVE.READ(1 kHz, 6 Ω, "resistance")';

function lowestOf(given: { curve: Curve; from: number; to: number }): Extreme | Problem {
  const wrong = notOhms(given.curve, 'curve');
  if (wrong) return wrong;
  const within = bandOf(given.curve, given.from, given.to);
  return within instanceof Problem ? within : extremeIn(given.curve, within, -1);
}

export const loadNominal = define({
  name: 'LOAD.NOMINAL',
  summary: 'The highest nominal ohms that an impedance curve may be sold under.',
  parameters: { curve, ...band },
  returns: { quantity: 'resistance', summary: 'lowest ohms over 0.8' },
  source,
  example: { formula: `=LOAD.NOMINAL(${six})`, gives: 7.5 },
  compute(given) {
    const lowest = lowestOf(given);
    return lowest instanceof Problem ? lowest : lowest.value / leastShare;
  },
});

export const loadRating = define({
  name: 'LOAD.RATING',
  summary: 'The usual nominal value that an impedance curve may carry: 1, 2, 4, 6, 8, 16 or 32 Ω.',
  parameters: { curve, ...band },
  returns: { quantity: 'resistance', summary: 'largest usual value whose 80 % are kept' },
  source,
  example: { formula: `=LOAD.RATING(${six})`, gives: 6 },
  remarks: 'A loudspeaker of 8 Ω units in parallel, or with a deep dip at a hand-over, is seldom one of 8 Ω.',
  compute(given) {
    const lowest = lowestOf(given);
    if (lowest instanceof Problem) return lowest;
    const kept = ratings.filter((rating) => lowest.value >= leastShare * rating * (1 - 1e-9)).at(-1);
    return (
      kept ??
      new Problem(
        say`The load falls to ${measured(lowest.value, 'resistance')} at ${measured(lowest.frequency, 'frequency')}, too low for any usual rating; wire fewer units in parallel.`,
        'curve',
      )
    );
  },
});

export const loadPermitted = define({
  name: 'LOAD.PERMITTED',
  summary: 'The lowest ohms to which a loudspeaker of stated nominal ohms may fall.',
  parameters: { nominal: { ...usual.ohms, summary: 'nominal ohms' } },
  returns: { quantity: 'resistance', summary: '80 % of them' },
  source,
  example: { formula: '=LOAD.PERMITTED("8 Ω")', gives: 6.4 },
  compute: (given) => leastShare * given.nominal,
});

export const loadVerdict = define({
  name: 'LOAD.VERDICT',
  summary: 'Whether an amplifier is happy with a load, and where it is lowest.',
  parameters: {
    curve,
    minimum: { ...usual.ohms, typical: [2, 8], summary: 'nominal ohms down to which the amplifier is rated' },
    ...band,
    good: { quantity: 'ratio', min: 0.1, max: 2, default: leastShare, summary: 'share of them that is good' },
    caution: { quantity: 'ratio', min: 0.1, max: 2, default: 0.7, summary: 'share below which it fails' },
  },
  returns: { record: 'verdict', summary: 'verdict with lowest ohms and frequency' },
  source: { source: 'iec60268_5', at: '80 % of the rating; caution down to 70 % is common practice, no source' },
  example: {
    formula: '=LOAD.VERDICT(CURVE.READ(1 kHz, 2.91 Ω, "resistance"), "4 Ω")',
    gives: { status: 'caution', word: 'Low load' },
  },
  remarks:
    'A dip between 100 Hz and 1 kHz counts most, for there music is strong. Both shares are yours to set; some amplifiers are rated down to the true lowest ohms, then use 1.',
  compute(given): Verdict | Problem {
    if (given.caution > given.good)
      return new Problem(
        say`The share for caution, ${String(given.caution)}, is above that for good, ${String(given.good)}; change one.`,
        'caution',
      );
    const lowest = lowestOf(given);
    if (lowest instanceof Problem) return lowest;
    const [good, caution] = [given.good * given.minimum, given.caution * given.minimum];
    const ohms = measured(lowest.value, 'resistance');
    const dip = say`The load falls to ${ohms} at ${measured(lowest.frequency, 'frequency')}`;
    const strong = lowest.frequency >= 50 && lowest.frequency <= 2000 ? ', where music is strong' : '';
    const needed = measured(good, 'resistance');
    if (lowest.value >= good * (1 - 1e-9))
      return {
        kind: 'verdict',
        status: 'good',
        word: 'Good load',
        reason: say`${dip}, not below the ${needed} that the amplifier is good for.`,
      };
    const note = say`Below what the maker allows do not connect it. Check the wiring with a meter before power.`;
    return lowest.value >= caution * (1 - 1e-9)
      ? {
          kind: 'verdict',
          status: 'caution',
          word: 'Low load',
          reason: say`${dip}${strong}: below ${needed}, but not below ${measured(caution, 'resistance')}. Keep the level moderate or wire in series.`,
          note,
        }
      : {
          kind: 'verdict',
          status: 'fail',
          word: 'Load too low',
          reason: say`${dip}${strong}: below ${measured(caution, 'resistance')}. Wire in series, use units of more ohms, or another amplifier.`,
          note,
        };
  },
});

import { define } from '../define.ts';
import { demoDriver } from '../enclosure/parameters.ts';
import { percentile } from '../numeric/percentile.ts';
import { quantities } from '../quantities.ts';
import { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';

const sample = { record: 'sample', summary: 'values of many runs' } as const;
const example = `SPREAD.RESONANCE(CLOSED.BOX(${demoDriver}, "12.1 L"))`;

export const spreadPercentile = define({
  name: 'SPREAD.PERCENTILE',
  summary: 'The value that a share of the runs stays below.',
  parameters: { sample, share: { quantity: 'ratio', min: 0, max: 1, summary: 'share of the runs, 0.95 for 95 %' } },
  returns: { quantity: 'curve', summary: 'value in the quantity of the sample' },
  source: { source: 'hyndman1996', at: 'definition 7' },
  example: { formula: `=SPREAD.PERCENTILE(${example}, 0.5)`, gives: 69.6 },
  compute: (given) =>
    percentile(given.sample.values, given.share) ?? new Problem(say`No run of the sample has a value.`, 'sample'),
});

export const spreadOdds = define({
  name: 'SPREAD.ODDS',
  summary: 'The share of the runs that lie between two limits; runs without a value count as outside.',
  parameters: {
    sample,
    from: { quantity: 'any', min: -1e15, max: 1e15, optional: true, summary: 'lower limit; none when left out' },
    to: { quantity: 'any', min: -1e15, max: 1e15, optional: true, summary: 'upper limit; none when left out' },
  },
  returns: { quantity: 'ratio', summary: 'share between 0 and 1' },
  source: { source: 'own', at: 'counting' },
  example: { formula: `=SPREAD.ODDS(${example}, "60 Hz", "80 Hz")`, gives: 1 },
  compute(given, context) {
    const { values, quantity } = given.sample;
    const wanted = JSON.stringify(quantities[quantity].dimension);
    if (context.quantity !== 'ratio' && JSON.stringify(quantities[context.quantity].dimension) !== wanted)
      return new Problem(
        say`“${given.sample.title}” holds ${quantities[quantity].noun}, not ${quantities[context.quantity].noun}; give the limits as ${quantities[quantity].noun}.`,
        'from',
      );
    const { from = -Infinity, to = Infinity } = given;
    if (from > to)
      return new Problem(
        say`The limits run from ${measured(from, quantity)} to ${measured(to, quantity)}; put the lower one first.`,
        'from',
      );
    return values.filter((value) => value >= from && value <= to).length / values.length;
  },
});

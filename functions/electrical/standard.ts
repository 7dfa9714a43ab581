import { define } from '../define.ts';
import type { QuantityName } from '../quantities.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import { seriesNames, standardAround, standardNear, toleranceOf, type Series } from './preferred.ts';

const value = { quantity: 'any', min: 1e-15, max: 1e15, summary: 'wanted value' } as const;
const series = { choice: seriesNames, default: 'E12', summary: 'series of preferred numbers' } as const;
const source = { source: 'iec60063', at: 'series E3 to E192' } as const;

const slack = 1e-9;

export const standardNearest = define({
  name: 'STANDARD.NEAREST',
  summary: 'The nearest value that resistors, coils or capacitors are made in.',
  parameters: { value, series },
  returns: { quantity: 'any', summary: 'preferred value, nearest by ratio' },
  source,
  example: { formula: '=STANDARD.NEAREST("2.78 Ω", "E12")', gives: 2.7 },
  remarks:
    'Nearest by ratio, not by difference. E12 is sold everywhere; E24 and finer less so in large resistors. Coils are often made in other values.',
  compute: (given) =>
    standardAround(given.value, given.series).reduce((best, next) =>
      Math.abs(Math.log(next / given.value)) < Math.abs(Math.log(best / given.value)) ? next : best,
    ),
});

export const standardBelow = define({
  name: 'STANDARD.BELOW',
  summary: 'The largest standard value that is not above a value.',
  parameters: { value, series },
  returns: { quantity: 'any', summary: 'preferred value, at most the given one' },
  source,
  example: { formula: '=STANDARD.BELOW("7.27 Ω", "E12")', gives: 6.8 },
  remarks: 'A value that is itself standard stays.',
  compute: (given) =>
    standardAround(given.value, given.series)
      .filter((each) => each <= given.value * (1 + slack))
      .at(-1)!,
});

export const standardAbove = define({
  name: 'STANDARD.ABOVE',
  summary: 'The smallest standard value that is not below a value.',
  parameters: { value, series },
  returns: { quantity: 'any', summary: 'preferred value, at least the given one' },
  source,
  example: { formula: '=STANDARD.ABOVE("7.27 Ω", "E12")', gives: 8.2 },
  remarks: 'A value that is itself standard stays.',
  compute: (given) => standardAround(given.value, given.series).find((each) => each >= given.value * (1 - slack))!,
});

export const standardTolerance = define({
  name: 'STANDARD.TOLERANCE',
  summary: 'The tolerance that a series of preferred numbers goes with.',
  parameters: { series: { choice: seriesNames, summary: 'series of preferred numbers' } },
  returns: { quantity: 'ratio', summary: 'largest deviation, as a share of the value' },
  source: { source: 'iec60063', at: 'tolerances beside the series; E3 stands for anything coarser than 20 %' },
  example: { formula: '=STANDARD.TOLERANCE("E24")', gives: 0.05 },
  remarks:
    'Neighbours of a series lie about twice the tolerance apart, so that every value is within it of some standard one. Parts are sold tighter than their series.',
  compute: (given) => toleranceOf[given.series],
});

interface Pair {
  readonly first: number;
  readonly second: number;
  readonly together: number;
}

/** For every standard value within three decades the ones that complete it, the nearest pair first. */
function pairsFor(wanted: number, joined: 'sum' | 'reciprocal', series: Series): readonly Pair[] {
  const add = (a: number, b: number): number => (joined === 'sum' ? a + b : 1 / (1 / a + 1 / b));
  const firsts = standardAround(wanted, series, 3);
  const farthest = [joined === 'sum' ? firsts[0]! : firsts.at(-1)!];
  const pairs: Pair[] = [];
  for (const first of firsts) {
    const rest = joined === 'sum' ? wanted - first : 1 / (1 / wanted - 1 / first);
    // Where the first part alone is right or too much already, the second must disturb as little as can be.
    const isOpen = rest > 0 && Number.isFinite(rest) && rest < 1e3 * wanted && rest > 1e-3 * wanted;
    for (const second of isOpen ? standardNear(rest, series, 2) : farthest)
      if (second >= first || !isOpen) pairs.push({ first, second, together: add(first, second) });
  }
  const off = ({ together }: Pair): number => Math.abs(Math.log(together / wanted));
  return pairs.sort((one, other) => off(one) - off(other));
}

/** A value with its unit says itself what it is of. */
const isCapacitor = (quantity: QuantityName, part: string): boolean =>
  quantity === 'capacitance' || (part === 'capacitor' && quantity !== 'resistance' && quantity !== 'inductance');

/** Up to four digits, without an exponent where the number is of human size. */
const digits = (number: number): string => String(Number(number.toPrecision(4)));

const inUsualUnit = (value: number, quantity: QuantityName): string =>
  quantity === 'capacitance'
    ? `${digits(value * 1e6)} µF`
    : quantity === 'inductance'
      ? `${digits(value * 1e3)} mH`
      : digits(value);

export const standardPairs = define({
  name: 'STANDARD.PAIRS',
  summary: 'The pairs of standard values that together come nearest to a value.',
  parameters: {
    value,
    wiring: { choice: ['parallel', 'series'], default: 'parallel', summary: 'how the two are joined' },
    series,
    count: { quantity: 'ratio', whole: true, min: 1, max: 100, default: 10, summary: 'number of pairs' },
    part: {
      choice: ['resistor', 'coil', 'capacitor'],
      default: 'resistor',
      summary: 'what a plain number stands for: capacitors add in parallel, the others in series',
    },
  },
  returns: { record: 'table', summary: 'pairs, nearest by ratio first: First, Second, Together, Off, Made of' },
  source: { source: 'own', at: 'search through the preferred numbers of IEC 60063' },
  example: { formula: '=TABLE.AT(STANDARD.PAIRS("2.5 Ω"), 1, "Together", 1 Ω)', gives: 2.4958 },
  remarks:
    'Parts from a thousandth to a thousand times the value are looked at. Two parts also share the heat: in parallel the smaller resistor takes more. Coils must stand apart and at right angles, or they couple.',
  compute(given, context) {
    const adds = (given.wiring === 'parallel') === isCapacitor(context.quantity, given.part);
    const found = pairsFor(given.value, adds ? 'sum' : 'reciprocal', given.series).slice(0, given.count);
    if (found.length === 0)
      return new Problem(say`No pair of ${given.series} comes near; choose a finer series.`, 'series');
    return {
      kind: 'table' as const,
      title: `Pairs of ${given.series} in ${given.wiring}`,
      columns: [
        { name: 'First', quantity: context.quantity },
        { name: 'Second', quantity: context.quantity },
        { name: 'Together', quantity: context.quantity },
        { name: 'Off', quantity: 'ratio' as const },
        { name: 'Made of', quantity: 'text' as const },
      ],
      rows: found.map(({ first, second, together }) => [
        first,
        second,
        together,
        together / given.value - 1,
        [first, second].map((each) => inUsualUnit(each, context.quantity)).join(' and '),
      ]),
    };
  },
});

import fc from 'fast-check';
import type { AnyFunction, CellDatum, NumberParameter, Parameter } from '../../functions/define.ts';
import type { CellRecord, RecordKind } from '../../functions/values/record.ts';

/** Of every kind of record what there is to draw from. */
export type Pool = Readonly<Partial<Record<RecordKind, readonly CellRecord[]>>>;

/** Numbers over all that a declaration allows: its ends, what is plausible, and every size between. */
function numbers({ min, max, above, below, typical, whole }: NumberParameter): fc.Arbitrary<number> {
  const low = min ?? above ?? -1e15;
  const high = max ?? below ?? 1e15;
  const allowed = (value: number): boolean =>
    value >= low &&
    value <= high &&
    !(above !== undefined && value <= above) &&
    !(below !== undefined && value >= below);
  const sizes = fc
    .tuple(fc.double({ min: -15, max: 15, noNaN: true }), fc.constantFrom(1, -1))
    .map(([size, sign]) => sign * 10 ** size);
  const plausible = typical === undefined ? [] : [fc.double({ min: typical[0], max: typical[1], noNaN: true })];
  const between = Math.max(low, 1e-12) < high ? [logarithmic(Math.max(low, 1e-12), high)] : [];
  return fc
    .oneof(fc.double({ min: low, max: high, noNaN: true }), fc.constantFrom(low, high), sizes, ...between, ...plausible)
    .map((value) => Math.min(Math.max(whole ? Math.round(value) : value, low), high))
    .filter(allowed);
}

const logarithmic = (low: number, high: number): fc.Arbitrary<number> =>
  fc.double({ min: Math.log(low), max: Math.log(high), noNaN: true }).map(Math.exp);

const words = [
  'series',
  'across',
  'tank',
  'fs',
  'Qts',
  '1+2 | 3',
  'low',
  'LR4',
  '100 5 0\n200 6 10\n',
  '',
  '-',
  '5 mm',
];

/** What may stand in a cell of a range. */
const datum = (pool: Pool): fc.Arbitrary<CellDatum> =>
  fc.oneof(
    fc.constantFrom<CellDatum>(...words, null, true),
    fc.double({ noNaN: true, min: -1e9, max: 1e9 }),
    fc.integer({ min: -3, max: 300 }),
    fc.constantFrom(...Object.values(pool).flat()),
  );

function single(parameter: Parameter, pool: Pool): fc.Arbitrary<unknown> {
  if ('quantity' in parameter) return numbers(parameter);
  if ('choice' in parameter) return fc.constantFrom(...parameter.choice);
  if ('text' in parameter) return fc.oneof(fc.constantFrom(...words), fc.string({ maxLength: 8 }));
  if ('truth' in parameter) return fc.boolean();
  if ('table' in parameter) return fc.array(fc.array(datum(pool), { maxLength: 5 }), { maxLength: 5 });
  return fc.constantFrom(...(parameter.record === 'any' ? Object.values(pool).flat() : (pool[parameter.record] ?? [])));
}

/** Arguments as the engine hands them to compute: inside the declared ranges, otherwise anything. */
export function argumentsOf({ parameters }: AnyFunction, pool: Pool): fc.Arbitrary<Readonly<Record<string, unknown>>> {
  const each = Object.entries(parameters).map(([name, parameter]) => {
    const one = single(parameter, pool);
    if (parameter.many) return [name, fc.array(one, { maxLength: 3 })] as const;
    return [name, parameter.optional && !('default' in parameter) ? fc.option(one, { nil: undefined }) : one] as const;
  });
  return fc.record(Object.fromEntries(each));
}

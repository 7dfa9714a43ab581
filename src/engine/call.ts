import {
  wantsQuantity,
  type AnyFunction,
  type CellDatum,
  type Context,
  type Parameter,
} from '../../functions/define.ts';
import type { Currency, QuantityName } from '../../functions/quantities.ts';
import { fieldOf } from '../../functions/values/fields.ts';
import { Problem } from '../../functions/values/problem.ts';
import { speak } from '../units/show.ts';
import { doubtOf, isRecord, readArgument, readMany, Refused, type Evaluated, type Named } from './arguments.ts';
import type { RecordStore } from './record-store.ts';

export type RawDatum = number | string | boolean | null;
/** An argument as the engine hands it over: records still handles. */
export type RawValue = RawDatum | readonly (readonly RawDatum[])[];

/** What a call gives back to the engine. */
export type Outcome = number | string | boolean | readonly number[] | Refused;

/** Where a call stands. */
export interface Site {
  /** The address of an argument that is one cell. */
  cellOf(index: number): string | undefined;
  /** Hears what is implausible among the arguments, an empty list where nothing is. */
  doubt(messages: readonly string[]): void;
}

/** A parameter, made ready for being read thousands of times. */
interface Slot {
  readonly name: string;
  readonly parameter: Parameter;
  /** A number between these two needs no further look. */
  readonly sound: readonly [number, number];
}

/** A function of the catalogue with what its calls need, found out once. */
export interface Callable {
  readonly definition: AnyFunction;
  /** Whether it is told by a hidden last argument of which quantity its numbers are. */
  readonly isTold: boolean;
  readonly slots: readonly Slot[];
}

export function callable(definition: AnyFunction): Callable {
  const slots = Object.entries(definition.parameters).map(([name, parameter]) => ({
    name,
    parameter,
    sound: soundRange(parameter),
  }));
  return {
    definition,
    isTold: wantsQuantity(definition.parameters),
    slots,
  };
}

/** Between these two a number is inside every limit and plausible; nothing is said of those outside. */
function soundRange(parameter: Parameter): readonly [number, number] {
  if (!('quantity' in parameter) || parameter.many || parameter.whole) return [Infinity, -Infinity];
  const { above = -Infinity, below = Infinity, min = -Infinity, max = Infinity } = parameter;
  const [low, high] = parameter.typical ?? [-Infinity, Infinity];
  return [Math.max(above, min, low), Math.min(below, max, high)];
}

const NO_DOUBTS: readonly string[] = [];

const UNTOLD: Context = { quantity: 'ratio' };

/** What compute is told by a call, in its hidden last argument where the function has one. */
export function toldBy({ isTold }: Callable, given: unknown[]): Context {
  if (!isTold) return UNTOLD;
  const [quantity, money] = String(given.pop()).split(' ') as [QuantityName, Currency?];
  return { quantity, money };
}

/** Runs one call of a catalogue function: reads the arguments, computes, interns records. Never throws.
 *  @param given - The arguments as evaluated; one left out is undefined.
 *  @param told - The quantity of the arguments that take any, and the sign of their money. */
export function call(
  { definition, slots }: Callable,
  given: readonly (RawValue | undefined)[],
  told: Context,
  store: RecordStore,
  site: Site,
): Outcome {
  const values: Record<string, unknown> = {};
  let doubts = NO_DOUBTS;
  for (let index = 0; index < slots.length; index++) {
    const { name, parameter, sound } = slots[index] as Slot;
    const raw = given[index];
    if (typeof raw === 'number' && raw > sound[0] && raw < sound[1]) {
      values[name] = raw;
      continue;
    }
    const quantity = 'quantity' in parameter && parameter.quantity !== 'any' ? parameter.quantity : told.quantity;
    const named: Named = { definition, name, parameter, cell: site.cellOf(index), quantity, before: values };
    const read = parameter.many
      ? readMany(
          given.slice(index).flatMap((each) => present(each, store)),
          named,
        )
      : readArgument(resolve(raw, store), named);
    if (read instanceof Refused) return read;
    const doubtful = doubtOf(read, named);
    if (doubtful !== undefined) doubts = [...doubts, doubtful];
    values[name] = read;
  }
  site.doubt(doubts);
  // Only now is a record made before taken: its arguments may be doubtful in this cell too.
  const key = 'record' in definition.returns ? keyOf(definition.name, given, told) : '';
  const known = key === '' ? undefined : store.find(key);
  if (known !== undefined) return known;
  return finish(definition, safely(definition, values, told), key, store);
}

function safely(definition: AnyFunction, values: Readonly<Record<string, unknown>>, told: Context): unknown {
  try {
    return definition.compute(values, told);
  } catch (error) {
    return new Refused(
      `${definition.name} has failed inside (${String(error)}). That is a mistake of the program, not yours.`,
    );
  }
}

function finish(definition: AnyFunction, result: unknown, key: string, store: RecordStore): Outcome {
  if (result instanceof Refused) return result;
  if (result instanceof Problem) return new Refused(problemText(definition, result));
  if (typeof result === 'number') return finite(definition, result);
  if (typeof result === 'string' || typeof result === 'boolean') return result;
  if (Array.isArray(result)) return finiteColumn(definition, result as number[]);
  if (isRecord(result)) return store.keep(key, result);
  return new Refused(`${definition.name} gave nothing. That is a mistake of the program, not yours.`);
}

const finite = (definition: AnyFunction, value: number): number | Refused =>
  Number.isFinite(value) ? value : new Refused(`${definition.name} has no finite result for these arguments.`);

const finiteColumn = (definition: AnyFunction, values: readonly number[]): readonly number[] | Refused =>
  values.every((value) => Number.isFinite(value))
    ? values
    : new Refused(`${definition.name} has no finite result for some of these rows.`);

function problemText(definition: AnyFunction, problem: Problem): string {
  const { parameter } = problem;
  const summary = parameter === undefined ? undefined : definition.parameters[parameter]?.summary;
  const subject = parameter === undefined ? '' : `, ${parameter}${summary === undefined ? '' : ` (${summary})`}`;
  const said = speak(problem.message, 'metric');
  return `${definition.name}${subject}: ${said}${/[.?!]$/.test(said) ? '' : '.'}`;
}

/** A part of a record, by its name. */
export function readField(record: RawDatum, name: RawDatum, store: RecordStore): number | string | Refused {
  const held = typeof record === 'string' ? store.record(record) : undefined;
  if (!held)
    return new Refused(
      `A part “${String(name)}” is asked of something that is no record: refer to a driver, a box, a curve, a window or a verdict.`,
    );
  const value = fieldOf(held, String(name));
  if (value !== undefined) return value;
  const title = 'name' in held ? held.name : `This ${held.kind}`;
  return new Refused(
    `${title} has no “${String(name)}”: it was not given and cannot be found from the rest. Add it where the ${held.kind} is made.`,
  );
}

function present(raw: RawValue | undefined, store: RecordStore): Evaluated[] {
  const value = resolve(raw, store);
  return value === undefined ? [] : [value];
}

/** Puts records in the place of handles. */
function resolve(value: RawValue | undefined, store: RecordStore): Evaluated | undefined {
  if (Array.isArray(value))
    return (value as readonly (readonly RawDatum[])[]).map((row) => row.map((each) => datum(each, store)));
  return value === undefined ? undefined : datum(value as RawDatum, store);
}

const datum = (value: RawDatum, store: RecordStore): CellDatum =>
  typeof value === 'string' ? (store.record(value) ?? value) : value;

/** Stands in a key for an argument left out; no value of a cell is written like it. */
const LEFT_OUT = { leftOut: true } as const;

const keyOf = (name: string, given: readonly (RawValue | undefined)[], told: Context): string =>
  JSON.stringify([name, told, given.map((value) => (value === undefined ? LEFT_OUT : value))]);

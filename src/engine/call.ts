import type { AnyFunction, CellDatum } from '../../functions/define.ts';
import type { QuantityName } from '../../functions/quantities.ts';
import { fieldOf } from '../../functions/values/fields.ts';
import { Problem } from '../../functions/values/problem.ts';
import { speak } from '../units/show.ts';
import { doubtOf, isRecord, readArgument, readMany, Refused, type Evaluated, type Named } from './arguments.ts';
import type { RecordStore } from './record-store.ts';

/** An argument as the engine hands it over: records still handles. `cell` is its address where it is one cell. */
export interface RawArgument {
  readonly value: RawValue | undefined;
  readonly cell: string | undefined;
}

export type RawDatum = number | string | boolean | null;
export type RawValue = RawDatum | readonly (readonly RawDatum[])[];

/** What a call gives back to the engine. */
export type Outcome = number | string | boolean | readonly number[] | Refused;

/** Runs one call of a catalogue function: reads the arguments, computes, interns records. Never throws. `doubt` hears of each
 *  argument whether it is outside what is plausible. */
export function call(
  definition: AnyFunction,
  given: readonly RawArgument[],
  quantity: QuantityName,
  store: RecordStore,
  doubt: (argument: string, message: string | undefined) => void,
): Outcome {
  const values: Record<string, unknown> = {};
  const parameters = Object.entries(definition.parameters);
  for (const [index, [name, parameter]] of parameters.entries()) {
    const raw = given[index];
    const declared = 'quantity' in parameter && parameter.quantity !== 'any' ? parameter.quantity : quantity;
    const named: Named = { definition, name, parameter, cell: raw?.cell, quantity: declared };
    const read = parameter.many
      ? readMany(
          given.slice(index).flatMap((each) => present(each, store)),
          named,
        )
      : readArgument(resolve(raw?.value, store), named);
    if (read instanceof Refused) return read;
    if ('typical' in parameter) doubt(name, doubtOf(read, named));
    values[name] = read;
  }
  // Only now is a record made before taken: its arguments may be doubtful in this cell too.
  const key = 'record' in definition.returns ? keyOf(definition.name, given, quantity) : '';
  const known = key === '' ? undefined : store.find(key);
  if (known !== undefined) return known;
  return finish(definition, safely(definition, values, quantity), key, store);
}

function safely(definition: AnyFunction, values: Readonly<Record<string, unknown>>, quantity: QuantityName): unknown {
  try {
    return definition.compute(values, { quantity });
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
  if (Array.isArray(result)) return result as number[];
  if (isRecord(result)) return store.keep(key, result);
  return new Refused(`${definition.name} gave nothing. That is a mistake of the program, not yours.`);
}

const finite = (definition: AnyFunction, value: number): number | Refused =>
  Number.isFinite(value) ? value : new Refused(`${definition.name} has no finite result for these arguments.`);

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

function present(raw: RawArgument, store: RecordStore): Evaluated[] {
  const value = resolve(raw.value, store);
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

const keyOf = (name: string, given: readonly RawArgument[], quantity: QuantityName): string =>
  JSON.stringify([name, quantity, given.map(({ value }) => (value === undefined ? LEFT_OUT : value))]);

import type { AnyFunction, Context } from '../../../functions/define.ts';
import { fieldOf } from '../../../functions/values/fields.ts';
import { Problem } from '../../../functions/values/problem.ts';
import { isRecord, readArgument, readMany, Refused, type Evaluated, type Named } from '../../engine/arguments.ts';
import { callable, toldBy, type Callable } from '../../engine/call.ts';
import { speak } from '../../units/show.ts';
import { isTable, type Given, type Held } from './datum.ts';
import { OnlyEngine, single } from './operators.ts';
import type { Run } from './plain-calls.ts';

/** A call of a catalogue function. Given the same arguments as the last time, it answers at once: in most runs most of a
 *  sheet stays as it is. Nothing for functions whose columns spill. */
export function ownCall(definition: AnyFunction, parts: readonly (Run | undefined)[]): Run | undefined {
  if ('column' in definition.returns && definition.returns.column) return undefined;
  const called = callable(definition);
  let last: readonly Given[] | undefined;
  let answer: Held = null;
  return () => {
    const given: Given[] = [];
    for (const part of parts) {
      const value = part?.();
      if (value instanceof Refused) return value;
      given.push(value);
    }
    if (last && sameGiven(last, given)) return answer;
    last = [...given];
    answer = computed(called, given, toldBy(called, given));
    return answer;
  };
}

function computed({ definition, slots }: Callable, given: readonly Given[], told: Context): Held {
  const values: Record<string, unknown> = {};
  for (const [index, { name, parameter, sound }] of slots.entries()) {
    const raw = given[index];
    if (typeof raw === 'number' && raw > sound[0] && raw < sound[1]) {
      values[name] = raw;
      continue;
    }
    const own = 'quantity' in parameter && parameter.quantity !== 'any' ? parameter.quantity : told.quantity;
    const named: Named = { definition, name, parameter, cell: undefined, quantity: own, before: values };
    const read = parameter.many
      ? readMany(given.slice(index).filter((each) => each !== undefined) as Evaluated[], named)
      : readArgument(raw as Evaluated | undefined, named);
    if (read instanceof Refused) return read;
    values[name] = read;
  }
  const result = definition.compute(values, told);
  if (result instanceof Problem) return new Refused(`${definition.name}: ${speak(result.message, 'metric')}`);
  if (typeof result === 'number')
    return Number.isFinite(result)
      ? result
      : new Refused(`${definition.name} has no finite result for these arguments.`);
  if (typeof result === 'string' || typeof result === 'boolean' || isRecord(result)) return result;
  throw new OnlyEngine();
}

function sameGiven(a: readonly Given[], b: readonly Given[]): boolean {
  return a.length === b.length && a.every((value, index) => same(value, b[index]));
}

function same(a: Given, b: Given): boolean {
  if (Object.is(a, b)) return true;
  if (!isTable(a) || !isTable(b) || a.length !== b.length) return false;
  return a.every((row, index) => {
    const other = b[index];
    return row.length === other?.length && row.every((cell, column) => Object.is(cell, other[column]));
  });
}

/** `FIELD(record, "name")`. */
export function fieldCall([record, name]: readonly (Run | undefined)[]): Run | undefined {
  if (!record || !name) return undefined;
  return () => {
    const held = single(record());
    const named = single(name());
    if (held instanceof Refused) return held;
    if (named instanceof Refused) return named;
    const field = isRecord(named) ? named.kind : String(named);
    if (!isRecord(held)) return new Refused(`A part “${field}” is asked of something that is no record.`);
    return fieldOf(held, field) ?? new Refused(`This ${held.kind} has no “${field}”.`);
  };
}

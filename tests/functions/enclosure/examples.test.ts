import { describe, expect, test } from 'vitest';
import type { Parameter } from '../../../functions/define.ts';
import { driverFunctions } from '../../../functions/driver/index.ts';
import { enclosureFunctions } from '../../../functions/enclosure/index.ts';
import { fieldOf } from '../../../functions/values/fields.ts';
import { Problem } from '../../../functions/values/problem.ts';
import type { CellRecord } from '../../../functions/values/record.ts';
import { parseQuantity } from '../../../src/units/parse.ts';
import { all, call } from './call.ts';

/** Splits at commas outside quotes, braces and brackets. */
function parts(text: string, separator = ','): string[] {
  const found: string[] = [''];
  let depth = 0;
  let quoted = false;
  for (const sign of text) {
    if (sign === '"') quoted = !quoted;
    if (!quoted && '({'.includes(sign)) depth += 1;
    if (!quoted && ')}'.includes(sign)) depth -= 1;
    if (sign === separator && depth === 0 && !quoted) found.push('');
    else found[found.length - 1] += sign;
  }
  return found.map((each) => each.trim());
}

/** Evaluates the small language of worked examples: calls, numbers, texts that are quantities where one is wanted, columns. */
function evaluate(text: string, wanted?: Parameter): unknown {
  if (text.startsWith('{')) return parts(text.slice(1, -1), ';').map((cell) => [evaluate(cell)]);
  if (text.startsWith('"')) {
    const inner = text.slice(1, -1);
    return wanted !== undefined && 'quantity' in wanted ? parseQuantity(inner)?.value : inner;
  }
  const called = /^([A-Z0-9_.]+)\((.*)\)$/s.exec(text);
  if (called === null) return Number(text);
  const parameters = Object.entries(all.find(({ name }) => name === called[1])!.parameters);
  const given = parts(called[2]!).map((each, index) => [parameters[index]![0], evaluate(each, parameters[index]![1])]);
  const result = call(called[1]!, Object.fromEntries(given) as Record<string, unknown>);
  if (result instanceof Problem) throw new Error(JSON.stringify(result.message));
  return result;
}

/** Half a unit of the last digit that a number is written with. */
const halfDigit = (value: number): number => 0.5 * 10 ** -(String(value).split('.')[1]?.length ?? 0) * 1.0001;

function hold(actual: unknown, wanted: unknown): void {
  if (typeof wanted === 'number') expect(Math.abs((actual as number) - wanted)).toBeLessThanOrEqual(halfDigit(wanted));
  else expect(actual).toBe(wanted);
}

describe('worked examples', () => {
  test.each([...driverFunctions, ...enclosureFunctions])('$name', ({ name, example }) => {
    expect(example.formula).toContain(`${name}(`);
    const result = evaluate(example.formula.slice(1));
    if (typeof example.gives !== 'object') return hold(result, example.gives);
    for (const [field, wanted] of Object.entries(example.gives)) hold(fieldOf(result as CellRecord, field), wanted);
  });
});

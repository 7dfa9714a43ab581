import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { expect } from 'vitest';

export interface Reference {
  readonly id: string;
  readonly quantity: string;
  readonly inputs: Readonly<Record<string, unknown>>;
  readonly expected: number | readonly number[];
  readonly unit: string;
  readonly tolerance: { readonly relative?: number; readonly absolute?: number };
  readonly confirmed: string;
}

/** A file of outside values with their sources, from `tests/references`. */
export const references = (topic: string): readonly Reference[] =>
  (
    JSON.parse(readFileSync(resolve(import.meta.dirname, `../../references/${topic}.json`), 'utf8')) as {
      values: Reference[];
    }
  ).values;

export const withId = (list: readonly Reference[], pattern: RegExp): readonly Reference[] =>
  list.filter(({ id }) => pattern.test(id));

/** An input by name; `'infinite'` is Infinity. */
export function input({ inputs, id }: Reference, name: string): number {
  const value = inputs[name];
  if (value === 'infinite') return Infinity;
  if (typeof value !== 'number') throw new Error(`${id} has no number ${name}`);
  return value;
}

/** Holds a value against the reference at the tolerance stated there. */
export function expectClose(actual: number, { expected, tolerance, id }: Reference, index?: number): void {
  const wanted = typeof expected === 'number' ? expected : expected[index ?? 0]!;
  const allowed = (tolerance.relative ?? 0) * Math.abs(wanted) + (tolerance.absolute ?? 0);
  expect(Math.abs(actual - wanted), `${id}: ${String(actual)} for ${String(wanted)}`).toBeLessThanOrEqual(allowed);
}

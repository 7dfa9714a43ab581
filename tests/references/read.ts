import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect } from 'vitest';

/** One value from outside, with where it comes from and how sure that is. */
export interface Reference {
  readonly id: string;
  readonly quantity: string;
  readonly inputs: Readonly<
    Record<string, { readonly value: number | string | readonly number[]; readonly unit: string }>
  >;
  readonly expected: { readonly value: number | readonly number[]; readonly unit: string };
  readonly tolerance: { readonly relative?: number; readonly absolute?: number };
  readonly source: { readonly citation: string; readonly where: string };
  readonly confirmed: string;
}

/** The references of a topic whose id begins so. */
export function references(topic: string, start: string): readonly Reference[] {
  const file = join(import.meta.dirname, `${topic}.json`);
  const found = (JSON.parse(readFileSync(file, 'utf8')) as { values: Reference[] }).values.filter((each) =>
    each.id.startsWith(start),
  );
  if (found.length === 0) throw new Error(`no reference ${start} in ${topic}`);
  return found;
}

/** A numeric input of a reference. */
export const input = (reference: Reference, name: string): number => reference.inputs[name]!.value as number;

/** Holds a number against a reference, within the reference's own tolerance. */
export function agrees(actual: unknown, reference: Reference): void {
  const expected = reference.expected.value as number;
  const { relative = 0, absolute = 0 } = reference.tolerance;
  expect(actual, reference.id).toBeTypeOf('number');
  expect(Math.abs((actual as number) - expected), reference.id).toBeLessThanOrEqual(
    Math.max(relative * Math.abs(expected), absolute, 1e-12),
  );
}

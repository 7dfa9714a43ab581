import type { CellDatum, Table } from '../../../functions/define.ts';
import { Refused } from '../../engine/arguments.ts';
import type { CellValue } from '../../engine/types.ts';

/** What a cell holds while a compiled sheet runs: a problem is a value too. */
export type Held = CellDatum | Refused;

/** What a part of a formula gives: a cell's content, the rows of a range, or nothing for an argument left out. */
export type Given = Held | Table | undefined;

export const isTable = (value: Given): value is Table => Array.isArray(value);

export function heldOf(value: CellValue | undefined): Held {
  switch (value?.kind) {
    case 'number':
      return value.value;
    case 'text':
      return value.text;
    case 'truth':
      return value.truth;
    case 'record':
      return value.record;
    case 'problem':
      return new Refused(value.message);
    default:
      return null;
  }
}

export function cellValueOf(held: Held): CellValue {
  if (held === null) return { kind: 'empty' };
  if (held instanceof Refused) return { kind: 'problem', message: held.message };
  switch (typeof held) {
    case 'number':
      return { kind: 'number', value: held };
    case 'string':
      return { kind: 'text', text: held };
    case 'boolean':
      return { kind: 'truth', truth: held };
    default:
      return { kind: 'record', record: held };
  }
}

/** The engine rounds what it tells to fifteen digits, and sums may be built up in another order. */
const TOLERANCE = 1e-11;

/** Whether two ways of calculating came to the same. Problems need not be worded alike. */
export function sameResult(a: CellValue, b: CellValue): boolean {
  if (a.kind !== b.kind) return false;
  return a.kind === 'problem' || sameContent(a, b);
}

function sameContent(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a === 'number' && typeof b === 'number') return closeTo(a, b, TOLERANCE);
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (a instanceof Float64Array)
    return b instanceof Float64Array && a.length === b.length && a.every((value, index) => isNear(value, b[index], a));
  const left = Object.entries(a).filter(([, part]) => part !== undefined);
  const right = new Map(Object.entries(b).filter(([, part]) => part !== undefined));
  return left.length === right.size && left.every(([name, part]) => sameContent(part, right.get(name)));
}

/** Points of a curve near a zero are compared by the height of the curve. */
function isNear(a: number, b: number | undefined, all: Float64Array): boolean {
  if (b === undefined) return false;
  if (Object.is(a, b) || closeTo(a, b, TOLERANCE)) return true;
  const height = all.reduce((most, value) => (Number.isFinite(value) ? Math.max(most, Math.abs(value)) : most), 0);
  return Math.abs(a - b) <= TOLERANCE * height;
}

export const closeTo = (a: number, b: number, tolerance: number): boolean =>
  a === b || Math.abs(a - b) <= tolerance * Math.max(Math.abs(a), Math.abs(b));

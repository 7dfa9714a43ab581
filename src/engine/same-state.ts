import type { CellRecord } from '../../functions/values/record.ts';
import { sameType } from '../formula/type-of.ts';
import type { Finding } from '../formula/types.ts';
import type { CellState, CellValue } from './types.ts';

/** Whether two states of a cell show the same to a reader. */
export const sameState = (a: CellState, b: CellState): boolean =>
  sameValue(a.value, b.value) &&
  (a.type === b.type || sameType(a.type, b.type)) &&
  a.unit === b.unit &&
  (a.findings === b.findings || sameFindings(a.findings, b.findings));

export function sameValue(a: CellValue, b: CellValue): boolean {
  switch (a.kind) {
    case 'empty':
      return b.kind === 'empty';
    case 'number':
      return b.kind === 'number' && Object.is(a.value, b.value);
    case 'text':
      return b.kind === 'text' && a.text === b.text;
    case 'truth':
      return b.kind === 'truth' && a.truth === b.truth;
    case 'record':
      return b.kind === 'record' && sameRecord(a.record, b.record);
    case 'problem':
      return b.kind === 'problem' && a.message === b.message && samePlace(a.origin, b.origin);
  }
}

const sameRecord = (a: CellRecord, b: CellRecord): boolean => a === b || sameContent(a, b);

const samePlace = (a: { readonly sheet: string; readonly cell: string } | undefined, b: typeof a): boolean =>
  a === b || (a?.sheet === b?.sheet && a?.cell === b?.cell);

const sameFindings = (a: readonly Finding[], b: readonly Finding[]): boolean =>
  a.length === b.length && a.every((finding, index) => sameContent(finding, b[index]));

/** Plain data, compared part by part. */
function sameContent(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (a instanceof Float64Array) return b instanceof Float64Array && sameNumbers(a, b);
  const left = a as Readonly<Record<string, unknown>>;
  const right = b as Readonly<Record<string, unknown>>;
  const names = Object.keys(left);
  return (
    names.length === Object.keys(right).length &&
    names.every((name) => Object.hasOwn(right, name) && sameContent(left[name], right[name]))
  );
}

const sameNumbers = (a: Float64Array, b: Float64Array): boolean =>
  a.length === b.length && a.every((value, index) => Object.is(value, b[index]));

import type { AnyFunction } from '../define.ts';
import { tableAt, tableExtremeRow, tableRow, tableRows, tableText, tableTotal } from './table.ts';

export const tableFunctions: readonly AnyFunction[] = [
  tableAt,
  tableText,
  tableRows,
  tableTotal,
  tableRow,
  tableExtremeRow,
];

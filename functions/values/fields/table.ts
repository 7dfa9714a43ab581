import type { TableRecord } from '../table.ts';
import { field, type ReadableField } from './field.ts';

export const ofTable: readonly ReadableField<TableRecord>[] = [
  field('title', 'Title', 'text', (table) => table.title),
  field('rows', 'Rows', 'ratio', (table) => table.rows.length),
  field('columns', 'Columns', 'text', (table) => table.columns.map(({ name }) => name).join(', ')),
];

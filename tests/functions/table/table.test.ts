import { describe, expect, test } from 'vitest';
import {
  tableAt,
  tableExtremeRow,
  tableRow,
  tableRows,
  tableText,
  tableTotal,
} from '../../../functions/table/table.ts';
import { Problem } from '../../../functions/values/problem.ts';
import type { TableRecord } from '../../../functions/values/table.ts';

const table: TableRecord = {
  kind: 'table',
  title: 'Cut list',
  columns: [
    { name: 'Panel', quantity: 'text' },
    { name: 'Length', quantity: 'length' },
    { name: 'Price', quantity: 'price' },
  ],
  rows: [
    ['Side', 0.36, 12],
    ['Top', 0.22, null],
    ['Back', 0.33, 9],
  ],
};
const plain = { quantity: 'ratio' } as const;
const length = { quantity: 'length' } as const;
const said = (problem: unknown): string => (problem as Problem).message.map(String).join('');

describe('reading', () => {
  test('by name in any case, by number, from row 1', () => {
    expect(tableAt.compute({ table, row: 1, column: 'length', like: 1 }, length)).toBe(0.36);
    expect(tableAt.compute({ table, row: 3, column: '3', like: undefined }, plain)).toBe(9);
    expect(tableText.compute({ table, row: 2, column: 'Panel' }, plain)).toBe('Top');
    expect(tableRows.compute({ table }, plain)).toBe(3);
  });
  test('sums leave out what is empty; rows are found by words, by size and within limits', () => {
    expect(tableTotal.compute({ table, column: 'Price', like: undefined }, plain)).toBe(21);
    expect(tableRow.compute({ table, column: 'Panel', words: ' back' }, plain)).toBe(3);
    const given = { table, column: 'Length', least: undefined, most: undefined } as const;
    expect(tableExtremeRow.compute({ ...given, which: 'highest' }, plain)).toBe(1);
    expect(tableExtremeRow.compute({ ...given, which: 'lowest' }, plain)).toBe(2);
    expect(tableExtremeRow.compute({ ...given, which: 'lowest', least: 0.3 }, length)).toBe(3);
  });
  test.each([
    ['an unknown column', () => tableAt.compute({ table, row: 1, column: 'Width', like: undefined }, plain), 'Panel'],
    ['a row too far', () => tableAt.compute({ table, row: 4, column: 'Price', like: undefined }, plain), '3 rows'],
    ['a broken row', () => tableAt.compute({ table, row: 1.5, column: 'Price', like: undefined }, plain), 'row 1.5'],
    ['words as a number', () => tableAt.compute({ table, row: 1, column: 'Panel', like: undefined }, plain), 'TEXT'],
    ['numbers as words', () => tableText.compute({ table, row: 1, column: 'Price' }, plain), 'TABLE.AT'],
    ['an empty place', () => tableAt.compute({ table, row: 2, column: 'Price', like: undefined }, plain), 'Nothing'],
    ['another kind', () => tableAt.compute({ table, row: 1, column: 'Price', like: 1 }, length), 'a price'],
    ['a total of words', () => tableTotal.compute({ table, column: 'Panel', like: undefined }, plain), 'TEXT'],
    ['words not there', () => tableRow.compute({ table, column: 'Panel', words: 'Door' }, plain), 'Door'],
    [
      'a limit too high',
      () => tableExtremeRow.compute({ table, column: 'Length', which: 'highest', least: 1, most: undefined }, length),
      'at least',
    ],
  ] as const)('%s is refused', (_, read, words) => {
    const problem = read();
    expect(problem).toBeInstanceOf(Problem);
    expect(said(problem)).toContain(words);
  });
});

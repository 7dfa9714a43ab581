import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { DriverEntry } from '../../../src/document/shelf/entry.ts';
import { mergeShelves } from '../../../src/document/shelf/merge.ts';
import { anyShelf, entry } from './demo.ts';

describe('merging', () => {
  test('keeps both of the same name with different numbers, and tells', () => {
    const { entries, told } = mergeShelves([entry('W-1', ['Fs', '38 Hz'])], [entry('W-1', ['Fs', '40 Hz'])]);
    expect(entries.map(({ name, rows }) => [name, rows[0]?.text])).toEqual([
      ['W-1', '38 Hz'],
      ['W-1 (2)', '40 Hz'],
    ]);
    expect(told.join(' ')).toContain('both are kept, the second as W-1 (2)');
  });

  test('joins sources and tables of the same numbers', () => {
    const held = { ...entry('W-1', ['Fs', '38 Hz']), source: 'sheet', tables: [{ title: 'Response', text: '20 80' }] };
    const their = { ...held, source: 'measured', tables: [{ title: 'Impedance', text: '20 8' }] };
    const { entries } = mergeShelves([held], [their]);
    expect(entries).toEqual([{ ...held, source: 'sheet\nmeasured', tables: [...held.tables, ...their.tables] }]);
  });

  test('loses neither side, gives each its own id, and does nothing a second time', () => {
    fc.assert(
      fc.property(anyShelf, anyShelf, (mine, theirs) => {
        const { entries } = mergeShelves(mine, theirs);
        const has = ({ rows, tables, invented }: DriverEntry): boolean =>
          entries.some(
            (each) =>
              each.invented === invented &&
              JSON.stringify(each.rows) === JSON.stringify(rows) &&
              tables.every((table) =>
                each.tables.some(({ title, text }) => title === table.title && text === table.text),
              ),
          );
        for (const each of [...mine, ...theirs]) expect(has(each)).toBe(true);
        expect(new Set(entries.map(({ id }) => id)).size).toBe(entries.length);
        expect(mergeShelves(entries, theirs).changed).toEqual([]);
      }),
    );
  });
});

import { expect, test } from 'vitest';
import { Clipboard } from '../../src/app/grid/clipboard.ts';
import { newSheet } from '../../src/document/create.ts';
import { readTable } from '../../src/document/table-text.ts';
import type { Workbook } from '../../src/document/workbook.ts';

test('one value from elsewhere goes into every cell that is selected, a table to where the selection begins', () => {
  const clipboard = new Clipboard();
  const over = { sheet: 's', cells: 'B2:C3' };
  const written = new Map(['B2', 'C2', 'B3', 'C3'].map((cell) => [cell, '12 L']));
  expect(clipboard.paste('12 L\r\n', over)).toEqual({ kind: 'write', sheet: 's', texts: written });
  for (const text of ['1\t2', '1\n2'])
    expect(clipboard.paste(text, over)).toEqual({ kind: 'paste-text', to: { sheet: 's', cell: 'B2' }, text });
  expect(clipboard.paste('12 L', { sheet: 's', cells: 'B2' })).toMatchObject({ kind: 'paste-text' });
  // A whole column is not filled by a slip of the hand.
  expect(clipboard.paste('12 L', { sheet: 's', cells: 'B1:B50000' })).toMatchObject({ kind: 'paste-text' });
});

test('cut cells are moved; where they have changed since, other cells stand there, and what was cut is copied', () => {
  const clipboard = new Clipboard();
  const cells = new Map([['B2', { text: '5 mm' }]]);
  const sheet = { ...newSheet('Sheet'), cells };
  const area = { sheet: sheet.id, cells: 'B2' };
  const workbook = { document: { sheets: [sheet] }, asText: () => '5 mm' } as unknown as Workbook;
  const to = { sheet: sheet.id, cells: 'C3' };
  clipboard.take(workbook, area, true);
  const moved = { ...sheet, cells: new Map([['B3', { text: '5 mm' }]]) };
  expect(clipboard.paste('5 mm', to, [moved])).toMatchObject({ kind: 'paste', clip: { contents: cells } });
  expect(clipboard.paste('5 mm', to, [sheet])).toMatchObject({ kind: 'move', from: area });
});

test('a text with a line end or a quote in front is copied out so that it is read back as one cell', () => {
  const sheet = { ...newSheet('Sheet'), cells: new Map([['B2', { text: 'x' }]]) };
  const copied = (text: string): string =>
    new Clipboard().take(
      { document: { sheets: [sheet] }, asText: () => text } as unknown as Workbook,
      { sheet: sheet.id, cells: 'B2:C2' },
      false,
    );
  for (const text of ['two\nlines', '"quoted" word', '12" woofer', 'a\tb']) {
    const [row, ...more] = readTable(copied(text));
    expect([row, more]).toEqual([[text, ''], []]);
  }
  expect(copied('12" woofer')).toBe('12" woofer\t');
});

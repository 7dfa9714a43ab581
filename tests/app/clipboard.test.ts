import { expect, test } from 'vitest';
import { Clipboard } from '../../src/app/grid/clipboard.ts';

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

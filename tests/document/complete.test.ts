import { expect, test } from 'vitest';
import { completed, withUnit } from '../../src/document/complete.ts';

test.each([
  ['85', 'cm²', '85 cm²'],
  [' 12,1 ', 'L', '12,1 L'],
  ['-1.5', 'dB', '-1.5 dB'],
  ['45', '°', '45 °'],
  ['85', undefined, '85'],
  ['85', '', '85'],
  ['85 mm', 'cm²', '85 mm'],
  ['=B4*2', 'Hz', '=B4*2'],
  ['LR4', 'Hz', 'LR4'],
  ['', 'Hz', ''],
  ['7', 'kg^2·m', '7'],
])('"%s" over a cell that shows %s is stored as "%s"', (text, unit, stored) => {
  expect(withUnit(text, unit)).toBe(stored);
});

test('every text of a command is completed by the cell that it goes to', () => {
  const units = new Map([
    ['A1', 'Hz'],
    ['B2', 'L'],
  ]);
  const unitShown = ({ cell }: { cell: string }): string | undefined => units.get(cell);
  const paste = { kind: 'paste-text', to: { sheet: 's', cell: 'A1' }, text: '38\t4.8\nword\t12' } as const;
  expect(completed({ kind: 'all', commands: [paste, { kind: 'title', title: '7' }] }, unitShown)).toEqual({
    kind: 'all',
    commands: [
      {
        kind: 'write',
        sheet: 's',
        texts: new Map([
          ['A1', '38 Hz'],
          ['B1', '4.8'],
          ['A2', 'word'],
          ['B2', '12 L'],
        ]),
      },
      { kind: 'title', title: '7' },
    ],
  });
});

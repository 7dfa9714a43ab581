import { expect, test } from 'vitest';
import { withShortNames } from '../../.config/short-names.ts';

const sources = new Map([
  [
    'cells',
    'export const made = { rowsOfCells: 1, heightOfRows: 2, SUMS: 3, toFixed: 4, knownOutside: 5, inWords: 6 };',
  ],
  ['sum', "export const sum = (each) => each.rowsOfCells + each['inWords'];"],
]);
const short = withShortNames(sources, ['cells.knownOutside']);

test('names that only a program knows are short in it, the same in all its modules', () => {
  const renamed = /=>\s*\w+\.(\w+)/.exec(short.get('sum') ?? '')?.[1] ?? '';
  expect(renamed).toMatch(/^\w{1,2}$/);
  expect(short.get('cells')).toContain(`${renamed}:1`);
  expect(short.get('cells')).not.toContain('heightOfRows');
});

test.each([
  ['in capitals', 'SUMS:3'],
  ['of the language', 'toFixed:4'],
  ['said elsewhere', 'knownOutside:5'],
  ['said in a text', 'inWords:6'],
])('names %s stay', (_, kept) => {
  expect(short.get('cells')).toContain(kept);
});

import { describe, expect, test } from 'vitest';
import type { Consequence } from '../../../src/document/consequences.ts';
import { ranked, wordsOf } from '../../../src/components/consequences/data.ts';

const TURNED = { from: 'good', to: 'caution' } as const;

const row = (cell: string, more: Partial<Consequence> = {}): Consequence => ({
  place: { sheet: 's', cell },
  label: cell,
  before: { kind: 'number', number: '1', unit: 'Hz' },
  after: { kind: 'number', number: '2', unit: 'Hz' },
  isCause: false,
  change: 1,
  doubts: [],
  ...more,
});
const cells = (rows: readonly Consequence[]): string[] => rows.map(({ place }) => place.cell);

describe('what changed', () => {
  test('begins with the cause, then verdicts that turned, then values in the order given', () => {
    const { first } = ranked([row('A1'), row('B1', { flip: TURNED }), row('A2'), row('C1', { isCause: true })]);
    expect(cells(first)).toEqual(['C1', 'B1', 'A1', 'A2']);
  });

  test('hides values beyond the first rows, but never a cause, a flip or a doubt', () => {
    const turns = [{ flip: TURNED }, { doubts: ['Is 132 mm² right?'] }];
    const flips = Array.from({ length: 8 }, (_, index) => row(`F${index}`, turns[index % 2]));
    const values = Array.from({ length: 5 }, (_, index) => row(`V${index}`));
    const { first, smaller } = ranked([...values, ...flips, row('C', { isCause: true })]);
    expect(first).toHaveLength(9);
    expect(cells(smaller)).toEqual(['V0', 'V1', 'V2', 'V3', 'V4']);
  });

  test('does not hide a single row', () => {
    const { first, smaller } = ranked(Array.from({ length: 7 }, (_, index) => row(`V${index}`)));
    expect(first).toHaveLength(7);
    expect(smaller).toHaveLength(0);
  });
});

test('every kind of cell has words', () => {
  expect(wordsOf({ kind: 'empty' })).toBe('empty');
  expect(wordsOf({ kind: 'number', number: '0.7', unit: '' })).toBe('0.7');
  expect(wordsOf({ kind: 'verdict', status: 'fail', word: 'No shared window', reason: '', note: '' })).toBe(
    'No shared window',
  );
  expect(wordsOf({ kind: 'problem', message: 'vb must be above 0.' })).toBe('no result');
});

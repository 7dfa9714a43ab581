import { expect, test } from 'vitest';
import type { Curve } from '../../../functions/values/curve.ts';
import { lookKey, type CellLook } from '../../../src/components/grid/cell-view.ts';

const curve = { kind: 'curve' } as unknown as Curve;
const other = { kind: 'curve' } as unknown as Curve;

const plain: CellLook = {
  cell: { text: '8 ohm' },
  shown: { kind: 'number', number: '8', unit: 'Ω' },
  before: undefined,
  finding: undefined,
  tally: undefined,
  line: undefined,
};

test('looks that would draw the same have one key', () => {
  expect(lookKey({ ...plain, cell: { text: '8.0 ohm' } })).toBe(lookKey(plain));
  expect(lookKey({ ...plain, shown: { kind: 'number', number: '8', unit: 'Ω' } })).toBe(lookKey(plain));
});

test('an empty cell has the empty key', () => {
  expect(lookKey({ ...plain, cell: undefined, shown: { kind: 'empty' } })).toBe('');
});

test('every difference that can be seen or heard gives another key', () => {
  const looks: CellLook[] = [
    plain,
    { ...plain, shown: { kind: 'number', number: '8', unit: '' } },
    // Parts of a look must not run together.
    { ...plain, shown: { kind: 'number', number: '8Ω', unit: '' } },
    { ...plain, shown: { kind: 'text', text: '8' } },
    { ...plain, shown: { kind: 'waiting', text: '8' } },
    { ...plain, shown: { kind: 'problem', message: '8' } },
    { ...plain, shown: { kind: 'record', title: '8', text: '' } },
    { ...plain, shown: { kind: 'record', title: '8', text: '9' } },
    { ...plain, shown: { kind: 'verdict', status: 'good', word: 'Good', reason: 'a', note: '' } },
    { ...plain, shown: { kind: 'verdict', status: 'good', word: 'Good', reason: '', note: 'a' } },
    { ...plain, shown: { kind: 'verdict', status: 'fail', word: 'Good', reason: 'a', note: '' } },
    { ...plain, shown: { kind: 'curve', curve, text: '' } },
    { ...plain, shown: { kind: 'curve', curve: other, text: '' } },
    { ...plain, shown: { kind: 'curve', curve, text: 'a' } },
    { ...plain, cell: { text: '=B2' } },
    { ...plain, cell: { text: '8 ohm', look: 'note' } },
    { ...plain, before: '' },
    { ...plain, before: '7' },
    { ...plain, finding: 'doubt' },
    { ...plain, finding: 'error' },
    { ...plain, line: 'woofer' },
    { ...plain, tally: { good: 1, caution: 0, fail: 0 } },
    { ...plain, tally: { good: 0, caution: 1, fail: 0 } },
  ];
  expect(new Set(looks.map(lookKey)).size).toBe(looks.length);
});

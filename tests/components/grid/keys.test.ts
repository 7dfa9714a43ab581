import { describe, expect, test } from 'vitest';
import { extended, gridKeys, keyFor, stepped, type Step } from '../../../src/components/grid/keys.ts';
import { formatAddress, parseAddress } from '../../../src/formula/address.ts';
import { table } from './table.ts';

//    A  B  C  D  E
// 1  x  x  .  x  .
// 2  x  .  .  .  .
// 3  x  .  x  .  .
// 4  .  .  x  .  .
// 5  x  .  .  .  .
const sheet = table(6, 5, { A1: 'a', B1: 'b', D1: 'd', A2: 'a', A3: 'a', C3: 'c', C4: 'c', A5: 'a' });

const from = (address: string, step: Step): string => formatAddress(stepped(parseAddress(address)!, step, sheet, 3));

describe('a step', () => {
  test.each<[string, Step, string]>([
    ['B2', 'up', 'B1'],
    ['B1', 'up', 'B1'],
    ['B6', 'down', 'B6'],
    ['A2', 'left', 'A2'],
    ['E2', 'right', 'E2'],
    ['B1', 'page-down', 'B4'],
    ['B5', 'page-down', 'B6'],
    ['B5', 'page-up', 'B2'],
    ['B2', 'page-up', 'B1'],
    ['C1', 'row-start', 'A1'],
    ['A1', 'row-end', 'D1'],
    ['D6', 'row-end', 'A6'],
    ['C3', 'start', 'A1'],
    ['A1', 'end', 'E6'],
  ])('from %s %s leads to %s', (at, step, to) => expect(from(at, step)).toBe(to));
});

describe('a jump to the edge of data', () => {
  test.each<[string, Step, string, string]>([
    ['A1', 'edge-right', 'B1', 'to the end of a run'],
    ['B1', 'edge-right', 'D1', 'from the end of a run over the gap'],
    ['D1', 'edge-right', 'E1', 'to the border where nothing follows'],
    ['A1', 'edge-down', 'A3', 'down a run'],
    ['A3', 'edge-down', 'A5', 'down over a gap'],
    ['A5', 'edge-down', 'A6', 'down to the border'],
    ['C1', 'edge-down', 'C3', 'from an empty cell to the first filled one'],
    ['C4', 'edge-up', 'C3', 'up a run'],
    ['C3', 'edge-up', 'C1', 'up to the border'],
    ['E3', 'edge-left', 'C3', 'left over a gap'],
    ['B6', 'edge-left', 'A6', 'left to the border of an empty row'],
    ['A1', 'edge-left', 'A1', 'nowhere at the border'],
  ])('from %s %s leads to %s: %s', (at, step, to) => expect(from(at, step)).toBe(to));
});

test('Shift keeps the far corner, without it the selection is one cell', () => {
  const [a, b, c] = ['B2', 'C3', 'E5'].map((address) => parseAddress(address)!) as [never, never, never];
  expect(extended({ anchor: a, focus: b }, c, true)).toEqual({ anchor: a, focus: c });
  expect(extended({ anchor: a, focus: b }, c, false)).toEqual({ anchor: c, focus: c });
});

describe('the table of keys', () => {
  const pressed = (key: string, held: Partial<KeyboardEvent> = {}): string | undefined => {
    const event = { key, ctrlKey: false, metaKey: false, altKey: false, shiftKey: false, ...held };
    const found = keyFor(event as KeyboardEvent);
    return found?.step ?? found?.act;
  };

  test.each<[string, Partial<KeyboardEvent>, string | undefined]>([
    ['ArrowDown', {}, 'down'],
    ['ArrowDown', { shiftKey: true }, 'down'],
    ['ArrowDown', { ctrlKey: true }, 'edge-down'],
    ['ArrowDown', { metaKey: true }, 'edge-down'],
    ['ArrowDown', { altKey: true }, 'nudge-down'],
    ['ArrowDown', { altKey: true, shiftKey: true }, 'nudge-down'],
    ['ArrowRight', { altKey: true, shiftKey: true }, 'wider'],
    ['ArrowLeft', { altKey: true, shiftKey: true }, 'narrower'],
    // Alone with Alt the arrows belong to the browser's history.
    ['ArrowLeft', { altKey: true }, undefined],
    ['D', { ctrlKey: true }, 'fill-down'],
    ['d', {}, undefined],
    ['F10', {}, undefined],
    ['F10', { shiftKey: true }, 'menu'],
    ['x', { ctrlKey: true }, undefined],
  ])('%s with %o is %s', (key, held, what) => expect(pressed(key, held)).toBe(what));

  test('has no key twice', () => {
    const names = gridKeys.map(({ key, control, alt, shift }) => [key, control, alt, shift].join('+'));
    expect(new Set(names).size).toBe(names.length);
  });
});

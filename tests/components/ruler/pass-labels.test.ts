import { describe, expect, test } from 'vitest';
import { placePasses } from '../../../src/components/ruler/pass-labels.ts';
import { spoken } from '../../../src/components/ruler/words.ts';

describe('the name of a window on the rule', () => {
  test('stands left of it where there is room', () => {
    const [label] = placePasses([{ label: 'checks pass', from: 250, to: 260, width: 150 }], 300, 500);
    expect(label!.x + 150).toBeLessThan(250);
    expect(label!.row).toBe(0);
  });

  test('stands right of it at the left end', () => {
    const [label] = placePasses([{ label: 'checks pass', from: 10, to: 40, width: 150 }], 5, 500);
    expect(label!.x).toBeGreaterThan(40);
  });

  test('keeps clear of the needle', () => {
    const [label] = placePasses([{ label: 'checks pass', from: 250, to: 260, width: 150 }], 180, 500);
    expect(label!.x).toBeGreaterThan(260);
  });

  test('stands over the middle of one that leaves no room beside it', () => {
    const [label] = placePasses([{ label: 'checks pass', from: 0, to: 500, width: 150 }], 120, 500);
    expect(label).toMatchObject({ x: 175, row: 1, leader: [250, 250] });
  });

  test('goes a row up rather than over another', () => {
    const windows = [0, 1].map((index) => ({ label: 'checks pass', from: 240 + index * 5, to: 300, width: 220 }));
    const [first, second] = placePasses(windows, 320, 500);
    expect(first!.row === second!.row && Math.abs(first!.x - second!.x) < 224).toBe(false);
  });
});

test.each([
  ['2\u2009150', 'Hz', '2150 hertz'],
  ['\u22124.7', 'dB', 'minus 4.7 decibels'],
  ['0.7', '', '0.7'],
  ['3', 'dB/oct', '3 decibels an octave'],
])('%s %s is spoken as %s', (number, unit, words) => expect(spoken(number, unit)).toBe(words));

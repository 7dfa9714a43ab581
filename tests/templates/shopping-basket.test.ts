import { describe, expect, test } from 'vitest';
import { openTemplate } from './open-template.ts';

describe('the shopping basket', () => {
  test('the drivers of a pair cost 192, and the groups add up to the total', async () => {
    const opened = await openTemplate('shopping-basket');
    expect(opened.number('PairPrice')).toBe(192);
    // Line by line, by hand.
    expect(opened.number('PartsPrice')).toBe(2 * 9 + 2 * 6 + 4 * 5 + 8 * 1 + 2 * 8);
    expect(opened.number('WoodPrice')).toBe(48 + 2 * 5 + 2 * 6);
    expect(opened.number('UsedPrice')).toBe(7 + 6 + 28);
    expect(opened.number('Total')).toBe(192 + 74 + 70 + 41 + 15);
  });

  test('the other tweeter costs 68 more and turns Tight into Comfortable', async () => {
    const opened = await openTemplate('shopping-basket');
    expect(opened.number('D64')).toBe(68);
    expect(opened.text('F62')).toMatch(/^Tight.*resonance.*narrowing/i);
    expect(opened.text('F64')).toMatch(/^Comfortable/);
  });

  test.each([
    ['B62', 0.18],
    ['B63', 0.495],
    ['B64', 0.83],
    ['B65', 1.15],
  ] as const)('%s is %d octaves wide', async (cell, octaves) => {
    const opened = await openTemplate('shopping-basket');
    expect(Math.abs(opened.number(cell) - octaves)).toBeLessThanOrEqual(0.03);
  });

  test('above the cap it names the swap that saves and does not narrow the window', async () => {
    const opened = await openTemplate('shopping-basket');
    await opened.write({ WholeCap: '380 ¤' });
    expect(opened.text('F57')).toMatch(/^Caution.*with the other woofer saves most, with a window no worse/);
    await opened.write({ D21: '90 ¤' });
    expect(opened.text('F57')).toMatch(/No swap below saves anything/);
  });

  test('forgotten coils are asked for; what is owned costs nothing; spares are whole pieces', async () => {
    const opened = await openTemplate('shopping-basket');
    await opened.write({ D37: 'yes', D38: 'yes', D39: 'yes' });
    expect(opened.number('PartsPrice')).toBe(8 + 16);
    expect(opened.text('F58')).toMatch(/^Caution.*coils and resistors/);
    await opened.write({ Spares: '10 %' });
    expect(opened.number('PartsPrice')).toBe(9 * 1 + 3 * 8);
  });
});

import { describe, expect, test } from 'vitest';
import { typedDriver } from '../references/demo-drivers.ts';
import { openTemplate, type OpenTemplate } from './open-template.ts';

const woofers = ['W-130 A', 'W-165 A', 'W-220 A'] as const;
const tweeters = ['T-19 C', 'T-25 A', 'T-28 B'] as const;

/** The cell of a pair in a named grid; both counted from 0. */
function cellOf(opened: OpenTemplate, grid: string, woofer: number, tweeter: number): string {
  const [, row] = /^B(\d+):M\d+$/u.exec(opened.sheet().names.get(grid) ?? '') ?? [];
  return `${'BCDEFGHIJKLM'[tweeter] ?? ''}${String(Number(row) + woofer)}`;
}
const place = (pair: string): [number, number] => {
  const [woofer, tweeter] = pair.split(' + ');
  return [woofers.findIndex((id) => id === woofer), tweeters.findIndex((id) => id === tweeter)];
};
const octavesOf = (opened: OpenTemplate, pair: string): number =>
  opened.number(cellOf(opened, 'Octaves', ...place(pair)));
const verdictOf = (opened: OpenTemplate, pair: string): string =>
  opened.text(cellOf(opened, 'Verdicts', ...place(pair)));

/** The lower limit of a pair in hertz, and what sets it. */
async function lowOf(opened: OpenTemplate, pair: string): Promise<[number, string]> {
  const window = opened.state(cellOf(opened, 'Windows', ...place(pair)))?.value;
  if (window?.kind !== 'record' || window.record.kind !== 'window') throw new Error(`${pair} has no window`);
  return [window.record.low.at, window.record.low.name];
}
const near = (actual: number, expected: number, tolerance: number): void =>
  expect(Math.abs(actual - expected), `${String(actual)}, not ${String(expected)}`).toBeLessThanOrEqual(tolerance);

// The acceptance table of these drivers; octaves within 0.03, hertz within 2 %.
describe('the shortlist of three woofers and three tweeters', { timeout: 60_000 }, () => {
  test('has every window and its word', async () => {
    const opened = await openTemplate('shortlist-grid');
    for (const [pair, octaves, word] of [
      ['W-130 A + T-19 C', -0.46, 'Stretch'],
      ['W-130 A + T-25 A', 0.495, 'Tight'],
      ['W-130 A + T-28 B', 1.15, 'Comfortable'],
      ['W-165 A + T-19 C', -0.78, 'Stretch'],
      ['W-165 A + T-25 A', 0.18, 'Tight'],
      ['W-165 A + T-28 B', 0.83, 'Comfortable'],
      ['W-220 A + T-19 C', -1.15, 'No shared window'],
      ['W-220 A + T-25 A', -0.2, 'Stretch'],
      ['W-220 A + T-28 B', 0.46, 'Tight'],
    ] as const) {
      near(octavesOf(opened, pair), octaves, 0.03);
      expect(verdictOf(opened, pair)).toMatch(new RegExp(`^${word}`, 'u'));
    }
  });

  test('counts 2 comfortable, 3 tight, 3 stretch and 1 without a shared window', async () => {
    const opened = await openTemplate('shortlist-grid');
    expect(['Comfortable', 'Tight', 'Stretch', 'Apart'].map(opened.number)).toEqual([2, 3, 3, 1]);
  });

  test('finds the cheapest comfortable pair, also where another pair costs the same', async () => {
    const opened = await openTemplate('shortlist-grid');
    expect(['B7', 'C7'].map(opened.text)).toEqual(['W-130 A', 'T-28 B']);
    expect(opened.number('CheapestPrice')).toBe(106);
    // W-220 A with T-19 C for 106 too: no shared window, so it is not asked.
    const [price] = [...opened.sheet().cells].filter(([cell, { text }]) => cell.startsWith('D') && text === '98 ¤');
    await opened.write({ [price![0]]: '90 ¤' });
    expect(opened.number(cellOf(opened, 'Prices', 2, 0))).toBe(106);
    expect(['B7', 'C7'].map(opened.text)).toEqual(['W-130 A', 'T-28 B']);
  });

  test('says so where no pair is comfortable', async () => {
    const opened = await openTemplate('shortlist-grid');
    await opened.write({ ComfortableFrom: '2 oct' });
    expect(opened.text('B7')).toBe('none');
    expect(opened.text('B2')).toMatch(/^Caution/u);
    expect(opened.problems()).toEqual([]);
  });

  test('a louder target moves the limit from resonance to travel', async () => {
    const opened = await openTemplate('shortlist-grid');
    expect((await lowOf(opened, 'W-165 A + T-25 A'))[1]).toBe('resonance');
    await opened.write({ Target: '109 dB' });
    const [small, why] = await lowOf(opened, 'W-165 A + T-25 A');
    near(small, 1753, 35);
    expect(why).toBe('travel');
    near((await lowOf(opened, 'W-165 A + T-28 B'))[0], 1208, 24);
    near(octavesOf(opened, 'W-165 A + T-25 A'), 0.13, 0.03);
  });

  test('second order at 103 dB needs √2 the frequency', async () => {
    const opened = await openTemplate('shortlist-grid');
    await opened.write({ Target: '103 dB', Slope: 'LR2' });
    near((await lowOf(opened, 'W-165 A + T-25 A'))[0], 1755, 35);
    near((await lowOf(opened, 'W-165 A + T-28 B'))[0], 1209, 24);
  });

  test('at 30° the spacing binds', async () => {
    const opened = await openTemplate('shortlist-grid');
    await opened.write({ Angle: '30°' });
    near(octavesOf(opened, 'W-165 A + T-25 A'), 0.54, 0.03);
    expect(verdictOf(opened, 'W-165 A + T-25 A')).toMatch(/^Comfortable.*spacing/u);
  });
});

describe('the ranking', { timeout: 60_000 }, () => {
  test('is that of the scores, and the weights turn it round', async () => {
    const opened = await openTemplate('shortlist-grid');
    expect(['B6', 'C6'].map(opened.text)).toEqual(['W-130 A', 'T-28 B']);
    await opened.write({ WindowWeight: '0', LevelWeight: '0', PriceWeight: '1' });
    expect(['B6', 'C6'].map(opened.text)).toEqual(['W-130 A', 'T-19 C']);
    await opened.write({ LevelWeight: '1', PriceWeight: '0' });
    expect(opened.text('B6')).toBe('W-220 A');
  });

  test('gives every pair one place, equals too, and every row a pair', async () => {
    const opened = await openTemplate('shortlist-grid');
    await opened.write({ WindowWeight: '0', LevelWeight: '0', PriceWeight: '0' });
    const ranked = Array.from({ length: 9 }, (_, row) => opened.number(`L${String(47 + row)}`));
    // The lists have room for twelve, so that a row of pairs is numbered on from twelve.
    expect(ranked.toSorted((one, other) => one - other)).toEqual([1, 2, 3, 13, 14, 15, 25, 26, 27]);
    expect(opened.problems()).toEqual([]);
  });

  test('shows the pair that is asked for', async () => {
    const opened = await openTemplate('shortlist-grid');
    expect(opened.text('Tweeter')).toMatch(/^T-28 B/u);
    await opened.write({ Look: '3' });
    expect([opened.text('Woofer'), opened.text('Tweeter')].map((text) => text.slice(0, 7).replace(':', ''))).toEqual([
      'W-130 A',
      'T-25 A',
    ]);
  });
});

describe('the lists', { timeout: 60_000 }, () => {
  test('take twelve of each', async () => {
    const opened = await openTemplate('shortlist-grid');
    const blocks = [...opened.sheet().cells]
      .filter(([, { text }]) => text === 'Name')
      .map(([cell]) => Number(cell.slice(1)));
    const ids = [woofers, tweeters];
    const texts = blocks.flatMap((first, block) =>
      [...'BCDEFGHIJKLM'].flatMap((column, index) =>
        typedDriver(ids[block]![index % 3]!).map((text, row) => [`${column}${String(first + row)}`, text] as const),
      ),
    );
    await opened.write(Object.fromEntries(texts));
    expect(opened.problems()).toEqual([]);
    expect(opened.number('Pairs')).toBe(144);
    expect(['Comfortable', 'Tight', 'Stretch', 'Apart'].map(opened.number)).toEqual([32, 48, 48, 16]);
  });

  test('name the limit where a woofer or tweeter has no partner', async () => {
    const opened = await openTemplate('shortlist-grid');
    await opened.write({ Target: '115 dB' });
    const notes = [...opened.sheet().cells.keys()]
      .map((cell) => opened.text(cell))
      .filter((text) => text.startsWith('No partner'));
    expect(notes.length).toBeGreaterThan(0);
    for (const note of notes)
      expect(note).toMatch(/^No partner here: (resonance|travel) \d+ Hz, (narrowing|break-up|spacing) \d+ Hz$/u);
  });
});

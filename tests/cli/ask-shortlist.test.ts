import { expect, test } from 'vitest';
import type { Row } from '../../src/analysis/types.ts';
import { readAsking } from '../../src/cli/ask-arguments.ts';
import { Flags } from '../../src/cli/ask-flags.ts';
import { askShortlist } from '../../src/cli/ask-shortlist.ts';
import { newDocument } from '../../src/document/create.ts';
import { decodeShelf } from '../../src/exchange/shelf-file.ts';
import type { DriverEntry } from '../../src/document/shelf/entry.ts';
import drivers from '../../templates/drivers.json' with { type: 'json' };

const shelf = decodeShelf(drivers) as readonly DriverEntry[];

const asked = async (...given: string[]): Promise<readonly (Row & { readonly why?: readonly string[] })[]> =>
  (await answer(...given)).rows;

function answer(...given: string[]): ReturnType<typeof askShortlist> {
  const asking = readAsking(['two-driver-check', 'shortlist', ...given]);
  if (!asking || 'wrong' in asking) throw new Error(asking?.wrong ?? 'no question');
  return askShortlist(new Flags(newDocument('Own'), asking), shelf);
}

test('a wish asks what its flags ask, and the best three say why', async () => {
  const wished = await asked('--wish', 'a two-way under 300 that reaches 45 Hz and plays 103 dB', '--works');
  const flagged = await asked('--ways', '2', '--price', '300', '--reach', '45', '--plays', '103 dB', '--works');
  expect(wished).toEqual(flagged);
  expect(wished.map(({ why }) => why !== undefined)).toEqual(wished.map((_, index) => index < 3));
  const told = wished[0]?.why?.join(' ') ?? '';
  for (const part of [
    'Hand over between 1 080 Hz and 1 923 Hz: 0.83 oct, 0.33 oct more than comfortable.',
    'Bound by resonance of T-28 B from below and by narrowing of W-165 A from above.',
    'Reaches 41.2 Hz, 3.76 Hz lower than asked, in a vented box of ',
    'Plays 103.1 dB, 0.1 dB to spare.',
    'Costs 260 ¤ for the drivers of a pair, 40 ¤ under the limit.',
    'a pad of 8.8 dB',
    'Place 1 by window*10-price/100',
  ])
    expect(told.replaceAll('\u2009', ' ')).toContain(part);
});

test('each hand-over of a three-way is explained', async () => {
  const [team] = await asked('--ways', '3');
  expect(team?.why?.slice(0, 2).map((each) => each.split(' between ')[0])).toEqual(['Low hand-over', 'High hand-over']);
  const apart = (await asked('--ways', '3', '--ranking', '-window'))[0];
  expect(apart?.why?.join(' ')).toMatch(/(Low|High) hand-over: by the rules .* are missing/);
});

test('mains with subs are counted with as many subs as the level takes', async () => {
  const rows = await asked('--wish', 'mains with subs that reach 30 Hz and play 100 dB');
  expect(rows.length).toBeGreaterThan(0);
  for (const { subs = 0, names, price } of rows) {
    const [sub = 0, mains = 0] = names.map((name) => priceOf(name));
    expect(price).toBe(subs * sub + 2 * mains);
  }
  // As the sheet of mains and subs has it: two of them for 106 dB at 30 Hz.
  expect(rows.find(({ names: [sub] }) => sub === 'L-250 T')?.subs).toBe(2);
});

const priceOf = (name: string): number =>
  parseFloat(shelf.find((entry) => entry.name === name)?.rows.find(({ label }) => /price/i.test(label))?.text ?? '');

test('where nothing keeps all limits, what comes nearest to each is told', async () => {
  const wish = ['--works', '--wish', 'a two-way under 100 that reaches 45 Hz and plays 103 dB'];
  const { rows, nearest } = await answer(...wish);
  expect(rows).toEqual([]);
  // Other limits alone do not help: nothing that works costs so little.
  const [best] = await asked('--works', '--reach', '45 Hz', '--plays', '103 dB', '--ranking', '-price');
  expect(nearest).toEqual([`Without the limit on the price: ${best?.names.join(' + ')} costs ${best?.price} ¤.`]);
  expect((await answer('--works', '--price', '10', '--reach', '10 Hz')).nearest).toEqual([
    'No single limit keeps all of them out: ease two or more.',
  ]);
});

test('a rule of one’s own is kept', async () => {
  const [usual] = await asked('--rows', '1', '--ranking', 'window');
  const [strict] = await asked('--rows', '1', '--ranking', 'window', '--rule', 'resonance=3, 2.5');
  expect(strict?.windows[0]?.octaves).toBeLessThan(usual?.windows[0]?.octaves ?? 0);
});

test.each([
  [['--wish', 'a two-way in walnut'], 'this is not understood: walnut'],
  [['--rule', 'luck=1'], '--rule knows slope, target'],
  [['--rule', 'travel=much'], 'is no quantity'],
  [['--price', '30 Hz'], 'a price is wanted'],
])('%j is refused with the reason', async (given, reason) => {
  await expect(asked(...given)).rejects.toThrow(reason);
});

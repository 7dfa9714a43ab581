import { expect, test } from 'vitest';
import { catalogue } from '../../functions/index.ts';
import { run } from '../../src/cli/run.ts';
import { createEngine } from '../../src/engine/direct.ts';
import drivers from '../../templates/drivers.json' with { type: 'json' };
import { templates } from '../../templates/index.ts';

async function outcome(...given: string[]): Promise<{ status: number; out: string; error: string }> {
  const out: string[] = [];
  const error: string[] = [];
  const status = await run(given, {
    out: (text) => out.push(text),
    error: (text) => error.push(text),
    read: () => Promise.resolve(undefined),
    newEngine: createEngine,
    catalogue,
    templates: new Map(templates.map(({ id, content }) => [id, content])),
    drivers,
  });
  return { status, out: out.join('\n'), error: error.join('\n') };
}

const box = 'closed-box-bench';

test('a value is sought in words and by flags alike', async () => {
  const words = await outcome(box, 'seek', '--ask', 'which litres give Qtc 0.707?');
  const flags = await outcome(box, 'seek', '--input', 'Volume', '--result', 'Qtc', '--target', '0.707');
  const found = (text: string): string[] =>
    (JSON.parse(text) as { found: { set: { text: string } }[] }).found.map(({ set }) => set.text);
  expect(found(words.out)).toEqual(found(flags.out));
  expect(found(words.out)).toHaveLength(1);
});

test('a sweep, a scatter and what drives a result come as JSON', async () => {
  const sweep = await outcome(
    box,
    'sweep',
    '--input=Volume',
    '--from',
    '5 L',
    '--to',
    '20 L',
    '--steps',
    '4',
    '--result',
    'Qtc',
  );
  expect(JSON.parse(sweep.out)).toMatchObject({
    values: [0.005, 0.01, 0.015, 0.02].map((value) => expect.closeTo(value, 12) as number),
  });
  const scatter = await outcome(
    box,
    'scatter',
    '--spread',
    'Woofer=cms 0.1',
    '--spread',
    'Volume=0.02',
    '--result',
    'Qtc',
    '--runs',
    '20',
  );
  expect(JSON.parse(scatter.out)).toMatchObject({ runs: 20, seed: 1, isCompiled: true });
  const drives = await outcome(box, 'drives', '--result', 'Qtc');
  expect(JSON.parse(drives.out)).toMatchObject({ result: { name: 'Qtc' } });
});

test('a map, every combination and the best within bounds come as JSON', async () => {
  const map = await outcome(box, 'map', '--across', 'Volume=5 L..20 L/3', '--up', 'B10=0.3..0.5/2', '--result', 'Qtc');
  expect(JSON.parse(map.out)).toMatchObject({ acrossValues: [0.005, 0.0125, 0.02], upValues: [0.3, 0.5] });
  const combine = await outcome(box, 'combine', '--vary', 'Volume=8 L,12,5 L', '--result', 'Qtc', '--least', 'Qtc');
  const { rows, of } = JSON.parse(combine.out) as { rows: { set: { text: string }[] }[]; of: number };
  expect(of).toBe(2);
  expect(rows.map(({ set }) => set[0]?.text)).toEqual(['12.5 L', '8 L']);
  const best = await outcome(box, 'best', '--vary', 'Volume=5 L..20 L', '--least', 'Qtc');
  expect(JSON.parse(best.out)).toMatchObject({ found: { set: [{ text: '20 L' }] } });
});

test('a sentence may ask for the best, and for the cheapest change', async () => {
  const words = await outcome(box, 'seek', '--ask', 'lowest F3 by Volume from 10 L to 20 L');
  const flags = await outcome(box, 'best', '--vary', 'Volume=10 L..20 L', '--least', 'Fall3');
  const found = (text: string): unknown => (JSON.parse(text) as { found: { set: unknown } }).found.set;
  expect(found(words.out)).toMatchObject([{ label: 'Net volume' }]);
  expect((found(flags.out) as { text: string }[])[0]?.text).toBe((found(words.out) as { text: string }[])[0]?.text);
  const change = await outcome('two-driver-check', 'seek', '--ask', 'fewest changes that pass');
  expect((JSON.parse(change.out) as { said: string }).said).toMatch(/Nothing fails|Found|Not found/);
});

test('a bound on a result, by flag and by sentence', async () => {
  const flags = await outcome(box, 'best', '--vary', 'Volume', '--least', 'Volume', '--limit', 'Qtc<=0.8');
  const words = await outcome(box, 'seek', '--ask', 'smallest box with Qtc at most 0.8');
  const found = (text: string) => (JSON.parse(text) as { found: { set: { text: string }[] } }).found.set[0]?.text;
  expect(found(words.out)).toMatch(/^8\.\d+ L$/);
  expect(found(words.out)).toBe(found(flags.out));
  const set = await outcome('two-driver-check', 'seek', '--ask', 'fewest changes that pass at 80 dB');
  expect(JSON.parse(set.out)).toMatchObject({ given: [{ text: '80 dB' }] });
});

test('what is nearest to a number, and changes counted by a price of the sheet', async () => {
  const nearest = await outcome(box, 'best', '--vary', 'Volume', '--nearest', 'Qtc=0.8');
  const { found } = JSON.parse(nearest.out) as { found: { result: { value: number } } };
  expect(found.result.value).toBeCloseTo(0.8, 3);
  const failing = ['two-driver-check', 'cheapest', '--vary', 'HandOver=1 kHz, 2 kHz', '--part', 'PriceCap'];
  const { status, out } = await outcome(...failing, '--cost', 'PairPrice', '--changes', '1');
  expect(status).toBe(0);
  expect((JSON.parse(out) as { said: string }).said).toMatch(/Nothing fails|Found|Not found/);
});

test('a shelf is shortlisted, and the cheapest change is told in words', async () => {
  const given = ['--price', '300', '--reach', '45 Hz', '--plays', '103 dB', '--works', '--rows', '3'];
  const list = await outcome('two-driver-check', 'shortlist', ...given);
  const { rows } = JSON.parse(list.out) as { rows: { names: string[]; price: number; reach: number; plays: number }[] };
  expect(rows[0]?.names).toEqual(['W-165 A', 'T-28 B']);
  for (const row of rows) {
    expect(row.price).toBeLessThanOrEqual(300);
    expect(row.reach).toBeLessThanOrEqual(45);
    expect(row.plays).toBeGreaterThanOrEqual(103);
  }
  const cheapest = await outcome('two-driver-check', 'cheapest', '--changes', '1');
  expect((JSON.parse(cheapest.out) as { said: string }).said).toMatch(/Nothing fails|Found|Not found/);
});

test('a number without a unit is in the unit of the cell that it is typed for', async () => {
  const swept = async (from: string, to: string): Promise<unknown> => {
    const given = [box, 'sweep', '--input', 'Volume', '--from', from, '--to', to, '--steps', '4', '--result', 'Qtc'];
    return (JSON.parse((await outcome(...given)).out) as { values: unknown }).values;
  };
  expect(await swept('5', '20')).toEqual(await swept('5 L', '20 L'));
  const best = async (limit: string): Promise<unknown> => {
    const { out } = await outcome(box, 'best', '--vary', 'Volume', '--least', 'Volume', '--limit', limit);
    return (JSON.parse(out) as { found: { set: { text: string }[] } }).found.set.map(({ text }) => text);
  };
  expect(await best('Fall3<=70')).toEqual(await best('Fall3<=70 Hz'));
});

test.each([
  [['two-driver-check', 'shortlist', '--ways', '4'], 'one of 2, 3'],
  [[box, 'best', '--vary', 'Volume', '--least', 'Volume', '--limit', 'Qtc'], 'NAME<=Q'],
  [['two-driver-check', 'cheapest', '--shelf', 'none.json'], 'There is no file'],
  [[box, 'combine', '--vary', 'Volume', '--result', 'Qtc'], 'NAME=VALUES'],
  [[box, 'best', '--vary', 'Volume=5 L', '--least', 'Qtc'], 'no two ends'],
  [[box, 'map', '--across', 'Volume=5 L..6 L/1', '--up', 'B10=1..2', '--result', 'Qtc'], 'steps over'],
  [[box, 'seek', '--sideways'], 'does not take --sideways'],
  [[box, 'seek', '--input', 'Volume'], 'wants --result'],
  [[box, 'seek', '--input', 'Volume', '--result', 'Qtc'], 'wants --target'],
  [[box, 'seek', '--input', 'Volume', '--result', 'Qtc', '--target', '3 L'], 'L is the unit of a volume, but a plain'],
  [[box, 'sweep', '--input', 'Volume', '--from', '5 Hz', '--to', '9 L', '--result', 'Qtc'], 'Hz is the unit of a freq'],
  [
    [box, 'sweep', '--input', 'Volume', '--from', '5', '--to', '9', '--steps', 'few', '--result', 'Qtc'],
    'as in --steps 20',
  ],
  [
    [box, 'sweep', '--input', 'Volume', '--from', '5', '--to', '9', '--spacing', 'odd', '--result', 'Qtc'],
    '--spacing is one of linear, logarithmic, but got “odd”',
  ],
  [[box, 'best', '--vary', 'Volume=5 Hz..9 L', '--least', 'Qtc'], 'Hz is the unit of a frequency'],
  [[box, 'best', '--vary', 'Volume', '--least', 'Volume', '--limit', 'Fall3<=9 L'], 'L is the unit of a volume'],
  [['seek', box, '--ask', 'which litres give Qtc 0.707?'], 'The file comes before the question: calc FILE seek'],
  [[box, 'seek', '--ask', 'which bananas give Qtc 1?'], 'No input that fits'],
  [[box, 'sweep', '--input', 'Volume', '--from', 'low', '--to', '1 L', '--result', 'Qtc'], 'is no quantity'],
  [[box, 'scatter', '--spread', 'Woofer=luck 1', '--result', 'Qtc'], 'names no causes'],
  [[box, 'best', '--vary', 'Volume', '--nearest', 'Qtc'], 'NAME=VALUE'],
  [[box, 'combine', '--vary', 'Qtc=1,2', '--result', 'Qtc'], 'no input'],
  [['two-driver-check', 'cheapest', '--cost', 'Bananas'], 'Bananas'],
  [['two-driver-check', 'cheapest', '--vary', 'Gap=4 mm', '--price', 'Gap'], "as in 'Coil=4 + 0.9 * value'"],
  [['two-driver-check', 'cheapest', '--vary', 'Gap=4 mm', '--price', 'HandOver=3'], 'by --part or --vary too'],
  [
    ['two-driver-check', 'cheapest', '--vary', 'Target=106 dB', '--vary', 'Gap=4 mm', '--price', 'Gap=3*'],
    'write a formula of value',
  ],
  [['none', 'drives', '--result', 'Qtc'], 'There is no file'],
])('%j is refused with the reason', async (given, reason) => {
  const { status, error } = await outcome(...given);
  expect(status).toBe(1);
  expect(error).toContain(reason);
});

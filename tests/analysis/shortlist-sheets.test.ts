import { expect, test } from 'vitest';
import { Problem } from '../../functions/values/problem.ts';
import { heatLevelOf } from '../../src/analysis/shortlist/reach.ts';
import { shortlist } from '../../src/analysis/shortlist/shortlist.ts';
import { DocumentModel } from '../../src/analysis/model/document-model.ts';
import { ruleFields, rulesTyped, usualTexts } from '../../src/analysis/shortlist/rule-fields.ts';
import { nothingAsked } from '../../src/analysis/shortlist/asked.ts';
import { usualRules, usualSubRules } from '../../src/analysis/shortlist/usual-rules.ts';
import { readWish } from '../../src/analysis/shortlist/wish.ts';
import { sheetsOfRows, starterOf } from '../../src/app/shortlist/open.ts';
import { placesOf, shortlistQuestion } from '../../src/app/shortlist/question.ts';
import type { Wanted } from '../../src/components/shortlist/data.ts';
import { apply } from '../../src/document/apply.ts';
import { isRefusal } from '../../src/document/command.ts';
import { newDocument } from '../../src/document/create.ts';
import { driverOf } from '../../src/document/shelf/driver-of.ts';
import type { DriverEntry } from '../../src/document/shelf/entry.ts';
import type { OctavoDocument } from '../../src/document/types.ts';
import { decodeShelf } from '../../src/exchange/shelf-file.ts';
import type { CellValue } from '../../src/engine/types.ts';
import drivers from '../../templates/drivers.json' with { type: 'json' };
import { templateNamed } from './documents.ts';

const shelf = decodeShelf(drivers) as readonly DriverEntry[];
async function values(document: OctavoDocument, sheet: string, names: readonly string[]): Promise<CellValue[]> {
  const model = await DocumentModel.open(document);
  try {
    const held = document.sheets.find(({ id }) => id === sheet);
    return names.map((name) => model.present({ sheet, cell: held?.names.get(name) ?? name }));
  } finally {
    model.dispose();
  }
}

test('the usual rules are those of the two-driver sheet', async () => {
  const document = templateNamed('two-driver-check');
  const [sheet] = document.sheets;
  const numbers = (await values(document, sheet?.id ?? '', ['Angle', 'Gap', 'MakeUp', 'Target', 'F41'])).map((value) =>
    value.kind === 'number' ? value.value : Number.NaN,
  );
  expect(numbers[0]).toBeCloseTo(usualRules.angle, 12);
  expect(numbers.slice(1)).toEqual([usualRules.gap, usualRules.makeUp, usualRules.target, usualRules.comfortable]);
  const { resonance, travel, narrowing, breakup, spacing } = usualRules;
  for (const [index, rule] of [resonance, travel, narrowing, breakup, spacing].entries()) {
    const row = [33, 34, 36, 37, 38][index] ?? 0;
    const ends = await values(document, sheet?.id ?? '', [`F${row}`, `G${row}`]);
    expect(ends.map((end) => (end.kind === 'number' ? end.value : end))).toEqual(rule);
  }
});

const windowName = { 2: 'Window', 3: 'HighWindow', subs: undefined } as const;

/** The best rows on the usual rules, opened as sheets. */
async function opened(asked: Wanted, most: number) {
  const places = placesOf(shelf, asked.ways, new Map());
  const question = shortlistQuestion(asked, shelf, places);
  const { rows } = await shortlist({ ...question, most });
  const document = newDocument('Own');
  const made = sheetsOfRows(
    document,
    document.sheets[0]!.id,
    templateNamed(starterOf(asked.ways)),
    rows.map((row) => ({
      row,
      drivers: Object.fromEntries(
        places.map(({ place }, index) => [place, shelf.find(({ name }) => name === row.names[index])!]),
      ),
    })),
    asked,
    question,
  );
  if (isRefusal(made)) throw new Error(made.refused);
  const done = apply(document, made.command);
  if (isRefusal(done)) throw new Error(done.refused);
  return { rows, question, document: done.document, sheets: made.sheets };
}

test.each([
  [2, {}],
  [2, { resonance: ['1.8', '1.4'], travel: ['0.6', ''], angle: ['40°'], spacing: ['1.2', '1.6'], slope: ['LR2'] }],
  [3, {}],
  [3, { resonance: ['2.2', ''], breakup: ['0.4', '0.6'], gap: ['6 mm'] }],
] as const)('each row opens as a sheet that judges as the row does: %s, %j', async (ways, rules) => {
  const { rows, document, sheets } = await opened({ ...nothingAsked, ways, rules }, 4);
  expect(rows.length).toBeGreaterThan(2);
  expect(document.sheets.map(({ name }) => name)).toEqual(['Sheet 1', ...rows.map(({ names }) => names.join(', '))]);
  const roles = ways === 3 ? ['Woofer', 'Mid', 'Tweeter'] : ['Woofer', 'Tweeter'];
  for (const [index, row] of rows.entries()) {
    const sheet = sheets[index] ?? '';
    const [window, level, ...gathered] = await values(document, sheet, [windowName[ways], 'SystemLevel', ...roles]);
    expect(gathered.map((each) => (each.kind === 'record' ? (each.record as { name?: string }).name : each))).toEqual(
      row.names,
    );
    const { octaves = 0, floor, ceiling } = row.windows.at(-1) ?? {};
    expect(window).toMatchObject({
      record: { octaves: expect.closeTo(octaves, 9) as number, low: { name: floor }, high: { name: ceiling } },
    });
    expect(level).toMatchObject({ value: expect.closeTo(row.level, 9) as number });
  }
});

function heatOf(name = ''): number {
  const driver = driverOf(shelf.find((entry) => entry.name === name)!);
  return driver instanceof Problem ? Number.NaN : Number(heatLevelOf(driver));
}

test.each([
  { box: 'closed', rules: { sag: ['1.2', ''] } },
  { box: 'vented', rules: {} },
  { box: 'vented', rules: { port: ['80 cm²'], air: ['20 m/s'], leakage: ['10'] } },
  { box: 'vented', rules: { volume: ['80 L'], tuning: ['28 Hz'], port: ['200 cm²'] } },
  { box: 'closed', rules: { volume: ['50 L'] } },
] as const)('mains with subs open as a sheet that counts and judges as the row does: %j', async ({ box, rules }) => {
  const asked = { ...nothingAsked, ways: 'subs', plays: '98 dB', reach: '30 Hz', box, rules } as const;
  const { rows, document, sheets } = await opened(asked, 4);
  expect(rows.length).toBeGreaterThan(0);
  const names = ['Count', 'Qtc', 'SubVolume', 'SubHandOver', 'Fall3', 'MainsLevel', 'SubLevel', 'SubsCeiling', 'F36'];
  for (const [index, row] of rows.entries()) {
    const { subs = 0, windows, pads, word, plays } = row;
    const sheet = sheets[index] ?? '';
    const found = (await values(document, sheet, names)).map((each) => (each.kind === 'number' ? each.value : NaN));
    const [count, qtc, volume = 0, handOver = 0, fall3 = 0, mains = 0, sub = 0, most = 0, rule] = found;
    const at = `${row.names.join(' + ')}: ${word}`;
    expect(count, at).toBe(subs);
    expect(qtc).toBeCloseTo(usualRules.qtc, 2);
    expect(volume / (row.box.volume ?? 0), at).toBeCloseTo(1, 4);
    const [low = 0, high = 0] = [windows[0]?.low, windows[0]?.high];
    // Between the two ends, where the mains sag no more than the rule allows if they share a window.
    expect(handOver).toBeCloseTo(Math.sqrt(low * high), 1);
    if (word === 'Comfortable') expect(fall3 / handOver).toBeLessThanOrEqual(rule ?? 0);
    expect(sub + 20 * Math.log10(subs) - mains).toBeCloseTo(pads[0] ?? 0, 6);
    // The row counts up to the highest hand-over that the rules allow: a box that lifts the lows gives it less than the sheet.
    const told = Math.min(most - 6, heatOf(row.names[1])) - plays;
    expect(told, at).toBeGreaterThan(-0.1);
    if (!('tuning' in rules)) expect(told, at).toBeLessThan(0.1);
    expect(most, at).toBeGreaterThanOrEqual(104);
    for (const verdict of await values(document, sheet, ['E36', 'E62', 'E68']))
      expect(verdict).not.toMatchObject({ record: { status: 'fail' } });
    const [style] = await values(document, sheet, ['SubBox']);
    expect(style).toMatchObject({
      record: { style: box, ...(row.box.tuning && { tuning: expect.closeTo(row.box.tuning, 2) as number }) },
    });
  }
});

test('a two-way under 300 that reaches 45 Hz and plays 103 dB is found among the invented drivers', async () => {
  const { wish } = readWish('a two-way under 300 that reaches 45 Hz and plays 103 dB');
  const { rows } = await opened({ ...nothingAsked, ...wish }, 20);
  expect(rows.length).toBeGreaterThan(2);
  for (const { price, reach, plays, status } of rows) {
    expect(price).toBeLessThanOrEqual(300);
    expect(reach).toBeLessThanOrEqual(45);
    expect(plays).toBeGreaterThanOrEqual(103);
    expect(status).not.toBe('fail');
  }
});

test.each([
  [{ price: 'cheap' }, '“cheap” is no quantity'],
  [{ reach: '45 L' }, 'but a frequency is wanted'],
  [{ plays: '103 Hz' }, 'Hz is the unit of'],
  [{ rules: { travel: ['', 'all'] } }, 'Share of Xmax that the upper driver moves: “all” is no quantity'],
  [{ rules: { spacing: ['-1', ''] } }, '-1 is out of reach; take something like 1.'],
])('%j is refused with the reason', (part, reason) => {
  expect(() => shortlistQuestion({ ...nothingAsked, ...part }, shelf, [])).toThrow(reason);
});

test('the rules as they can be set are the usual ones, typed back too', () => {
  for (const ways of [2, 'subs'] as const) {
    const usual = rulesTyped(ways, {});
    expect(usual).toEqual(ways === 2 ? { rules: usualRules } : { rules: usualRules, subs: usualSubRules });
    const texts = Object.fromEntries(ruleFields(ways).map((field) => [field.name, usualTexts(field, 'metric')]));
    const { rules, subs } = rulesTyped(ways, texts);
    for (const [name, value] of Object.entries({ ...rules, ...subs }))
      for (const [index, each] of [value].flat().entries())
        if (typeof each === 'number')
          expect(each, name).toBeCloseTo([{ ...usual.rules, ...usual.subs }[name as 'travel']].flat()[index] ?? 0, 12);
  }
});

import { expect, test } from 'vitest';
import { Problem } from '../../functions/values/problem.ts';
import { shortlist } from '../../src/analysis/shortlist.ts';
import { SheetModel } from '../../src/analysis/sheet-model.ts';
import { usualRules } from '../../src/analysis/usual-rules.ts';
import { sheetOfRow } from '../../src/app/shortlist-sheet.ts';
import { placesOf, shortlistQuestion } from '../../src/app/shortlist-question.ts';
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
const read = (entry: DriverEntry) => {
  const driver = driverOf(entry);
  return driver instanceof Problem ? undefined : driver;
};
const wanted = {
  ways: 2,
  price: '300',
  reach: '45 Hz',
  box: 'vented',
  plays: '103 dB',
  ranking: 'window*10-price/100',
} as const;

async function values(document: OctavoDocument, sheet: string, names: readonly string[]): Promise<CellValue[]> {
  const model = await SheetModel.open(document);
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

test('each row opens as a sheet that judges as the row does', async () => {
  for (const ways of [2, 3] as const) {
    const asked = { ...wanted, ways, price: '', reach: '', plays: '' };
    const places = placesOf(shelf, read, ways, new Map());
    const question = shortlistQuestion(asked, shelf, places);
    if ('wrong' in question) throw new Error(question.wrong);
    const { rows } = await shortlist({ ...question, most: 8 });
    expect(rows.length).toBeGreaterThan(4);
    for (const row of rows) {
      const document = newDocument('Own');
      const entries = row.names.map((name) => shelf.find((entry) => entry.name === name)!);
      const roles = ways === 3 ? ['Woofer', 'Mid', 'Tweeter'] : ['Woofer', 'Tweeter'];
      const starter = templateNamed(ways === 3 ? 'three-way-team' : 'two-driver-check');
      const made = sheetOfRow(
        document,
        document.sheets[0]!.id,
        starter,
        row,
        Object.fromEntries(roles.map((role, index) => [role, entries[index]!])),
        { Target: '100 dB' },
      );
      const done = apply(document, made.command);
      if (isRefusal(done)) throw new Error(done.refused);
      const applied = done.document;
      expect(applied.sheets.map(({ name }) => name)).toEqual(['Sheet 1', row.names.join(', ')]);
      const [window, ...gathered] = await values(applied, made.sheet, [ways === 3 ? 'HighWindow' : 'Window', ...roles]);
      expect(gathered.map((each) => (each.kind === 'record' ? (each.record as { name?: string }).name : each))).toEqual(
        row.names,
      );
      expect(window).toMatchObject({
        record: { octaves: expect.closeTo(row.windows.at(-1)?.octaves ?? 0, 9) as number },
      });
    }
  }
});

test('a two-way under 300 that reaches 45 Hz and plays 103 dB is found among the invented drivers', async () => {
  const question = shortlistQuestion(wanted, shelf, placesOf(shelf, read, 2, new Map()));
  if ('wrong' in question) throw new Error(question.wrong);
  const { rows } = await shortlist(question);
  expect(rows.length).toBeGreaterThan(2);
  for (const { price, reach, plays, status } of rows) {
    expect(price).toBeLessThanOrEqual(300);
    expect(reach).toBeLessThanOrEqual(45);
    expect(plays).toBeGreaterThanOrEqual(103);
    expect(status).not.toBe('fail');
  }
});

test.each([
  [{ price: 'cheap' }, '“cheap” is not a price'],
  [{ reach: '45 L' }, 'but a frequency is wanted'],
  [{ plays: '103 Hz' }, 'Hz is the unit of'],
])('%j is refused with the reason', (part, reason) => {
  const question = shortlistQuestion({ ...wanted, ...part }, shelf, []);
  expect('wrong' in question ? question.wrong : '').toContain(reason);
});

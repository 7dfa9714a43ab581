import { describe, expect, test } from 'vitest';
import { createAnalyst } from '../../src/analysis/analyst.ts';
import { DocumentModel } from '../../src/analysis/model/document-model.ts';
import { standingOf } from '../../src/analysis/subject/types.ts';
import { answerTo } from '../../src/app/ask/analyst.ts';
import { readSentence } from '../../src/app/ask/sentence.ts';
import { sheetOfAnswer } from '../../src/app/ask/sheet.ts';
import { firstWish } from '../../src/app/ask/wish.ts';
import type { Answer, Setting, Varied, Wish } from '../../src/components/ask/data.ts';
import { apply } from '../../src/document/apply.ts';
import { isRefusal } from '../../src/document/command.ts';
import type { DriverEntry } from '../../src/document/shelf/entry.ts';
import { withText } from '../../src/document/sheets.ts';
import type { OctavoDocument } from '../../src/document/types.ts';
import type { CellValue, Place } from '../../src/engine/types.ts';
import { decodeShelf } from '../../src/exchange/shelf-file.ts';
import drivers from '../../templates/drivers.json' with { type: 'json' };
import { documentOf, named, templateNamed } from '../analysis/documents.ts';

const analyst = createAnalyst();
const shelf = decodeShelf(drivers) as readonly DriverEntry[];
const bench = templateNamed('closed-box-bench');
const qtc = named(bench, 'Qtc');
const volume = named(bench, 'Volume');
const idOf = ({ sheet, cell }: Place): string => `${sheet}!${cell}`;
const moving = (values: string, from = '5 L', to = '60 L'): Varied => ({
  id: idOf(volume),
  label: 'Net volume',
  from,
  to,
  values,
});

async function asked(document: OctavoDocument, change: Partial<Wish>, from: Place): Promise<Answer> {
  const subject = await analyst.subject(document);
  const wish = { ...firstWish(document, subject, from), ...change };
  return answerTo(analyst, { document, subject, wish }, [], {}, () => Promise.resolve(shelf));
}

async function valuesWith(document: OctavoDocument, sets: readonly Setting[], places: readonly Place[]) {
  const model = await DocumentModel.open(document);
  const values = await model.read(sets, places.length > 0 ? places : model.verdicts);
  model.dispose();
  return values;
}
const numberIn = (value: CellValue | undefined): number => (value?.kind === 'number' ? value.value : Number.NaN);

describe('the best within bounds', () => {
  test('the litres nearest to a Qtc are those of the closed form, and the sheet gives it', async () => {
    const { found, said, tables } = await asked(
      bench,
      { kind: 'best', aim: 'nearest', result: idOf(qtc), target: '0.8', keep: 'any', varied: [moving('')] },
      qtc,
    );
    const [value] = await valuesWith(bench, found[0]?.sets ?? [], [qtc]);
    expect(numberIn(value)).toBeCloseTo(0.8, 3);
    expect(said).toMatch(/distance from the target: .* as the sheet stands/);
    expect(tables[0]?.table.rows.map(([what]) => what)).toContain('Net volume');
  });

  test('one of the inputs that move can be what is least, and an end of the bounds is named', async () => {
    const { said, found } = await asked(
      bench,
      { kind: 'best', aim: 'least', result: idOf(volume), keep: 'any', varied: [moving('')] },
      qtc,
    );
    expect(found[0]?.sets.map(({ text }) => text)).toEqual(['5 L']);
    expect(said).toContain('Net volume stands at an end of the bounds.');
  });

  test('a sentence is read into the form, and what stands there is found again', async () => {
    const subject = await analyst.subject(bench);
    const { wish } = await readSentence(analyst, bench, subject, 'lowest F3 by Volume from 10 L to 60 L');
    expect(wish).toMatchObject({ kind: 'best', aim: 'least', keep: 'any', varied: [{ from: '10 L', to: '60 L' }] });
    const { found } = await asked(bench, wish, qtc);
    const fall = named(bench, 'Fall3');
    const tried = await Promise.all(
      [10, 20, 30, 40, 50, 60].map(async (litres) =>
        numberIn((await valuesWith(bench, [{ ...volume, label: '', text: `${litres} L` }], [fall]))[0]),
      ),
    );
    const [best] = await valuesWith(bench, found[0]?.sets ?? [], [fall]);
    expect(numberIn(best)).toBeLessThanOrEqual(Math.min(...tried) * 1.001);
  });

  test.each([
    [{ aim: 'nearest', target: '' }, /^Type a value for/],
    [{ aim: 'flattest', band: ['200 Hz', '50 Hz'] }, /must begin below its end/],
    [{ varied: [{ ...moving(''), from: '9 L', to: '3 L' }] }, /must begin below its end/],
    [{ varied: [] }, /inputs may vary/],
  ] as readonly (readonly [Partial<Wish>, RegExp])[])('%j is refused in words', async (change, words) => {
    await expect(asked(bench, { kind: 'best', result: idOf(qtc), ...change }, qtc)).rejects.toThrow(words);
  });
});

describe('every combination', () => {
  test('each row, when it is set, gives the numbers that stand in it', async () => {
    const { tables } = await asked(
      bench,
      {
        kind: 'combine',
        result: idOf(qtc),
        listed: [idOf(named(bench, 'Fall3'))],
        order: 'least',
        rows: '3',
        keep: 'any',
        varied: [moving('8 L, 12 L, 20 L, 30 L')],
      },
      qtc,
    );
    const [{ table, sets = [] } = { table: undefined }] = tables;
    expect(table?.rows.map(([litres]) => litres)).toEqual(['30 L', '20 L', '12 L']);
    for (const [index, row] of (table?.rows ?? []).entries()) {
      const values = await valuesWith(bench, sets[index] ?? [], [qtc, named(bench, 'Fall3')]);
      expect(values.map(numberIn)).toEqual([row[1], row[2]].map((each) => expect.closeTo(Number(each), 9) as number));
    }
  });
});

describe('the cheapest change', () => {
  test('a part costs what its price says; the bill of a pair is told, and a formula that is none is refused', async () => {
    const coil = documentOf({
      A1: { text: '2.2 mH', range: ['1 mH', '9 mH'] },
      B1: '=CHECK.AT_LEAST(A1/1 mH,3,3,"Coil","More.")',
    });
    const priced = (price: string) =>
      asked(
        coil,
        {
          kind: 'cheapest',
          settings: [{ id: 's!A1', label: 'Coil', from: '', to: '', values: '3.3 mH, 4.7 mH', unit: 'mH', price }],
        },
        { sheet: 's', cell: 'A1' },
      );
    const { found, said, note } = await priced('4 + 0.5 * value');
    expect(found[0]).toMatchObject({ consequence: 'a pair costs 1.10 ¤ more; 1 change', sets: [{ text: '3.3 mH' }] });
    expect(said).toContain('Counted is what a pair of cabinets costs more than as the sheet stands.');
    expect(note).toContain('one costs 4 + 0.5 * value');
    expect((await priced(' ')).said).toContain('counted as 0: no price is given.');
    await expect(priced('cheap')).rejects.toThrow('write a formula of value, the number in mH');
  });

  const check = templateNamed('two-driver-check');
  const sheet = check.sheets[0]?.id ?? '';
  // A tweeter that cannot begin so low.
  const failing = withText(check, { sheet, cell: 'C5' }, '2400 Hz');
  const at = { sheet, cell: 'E2' };

  test('what is found, when it is set, leaves nothing failing; each step says what it turns', async () => {
    const answer = await asked(failing, { kind: 'cheapest', keep: 'clear' }, at);
    expect(answer.said).toMatch(/^6 fail now: .* Found: /);
    const after = (await valuesWith(failing, answer.found[0]?.sets ?? [], [])).map(standingOf);
    expect(after).not.toContain('fail');
    expect(after).not.toContain('problem');
    expect(answer.tables[0]?.table.rows.length).toBeGreaterThan(0);
    expect(answer.found[0]?.consequence).toMatch(/^a pair costs \d+ ¤ (?:more|less); \d changes?$/);
  });

  test('kept as a sheet, beside each verdict stands what it says now', async () => {
    const answer = await asked(failing, { kind: 'cheapest', keep: 'clear' }, at);
    const { command, sheet: kept } = sheetOfAnswer(failing, sheet, 'Cheapest change', answer);
    const applied = apply(failing, command);
    if (isRefusal(applied)) throw new Error(applied.refused);
    const model = await DocumentModel.open(applied.document);
    const cells = [...(applied.document.sheets.find(({ id }) => id === kept)?.cells ?? [])];
    const live = cells.filter(([, { text }]) => text.startsWith('=')).map(([cell]) => ({ sheet: kept, cell }));
    expect(live.map((place) => standingOf(model.present(place)))).toContain('fail');
    model.dispose();
  });

  test('by the price that the sheet counts', async () => {
    const price = named(failing, 'PairPrice');
    const { found } = await asked(failing, { kind: 'cheapest', keep: 'clear', cost: idOf(price) }, at);
    expect(found[0]?.consequence).toMatch(/^Drivers for a pair of cabinets .* ¤, .* ¤ as the sheet stands/);
  });

  test('nothing is offered where nothing fails', async () => {
    const answer = await asked(check, { kind: 'cheapest' }, at);
    expect(answer).toMatchObject({ said: 'Nothing fails as the sheet stands.', found: [] });
  });
});

import { describe, expect, test } from 'vitest';
import { catalogue } from '../../functions/index.ts';
import { createAnalyst } from '../../src/analysis/analyst.ts';
import { sameResult } from '../../src/analysis/model/datum.ts';
import { DocumentModel } from '../../src/analysis/model/document-model.ts';
import { answerTo } from '../../src/app/ask/analyst.ts';
import { liveWay } from '../../src/app/ask/live.ts';
import { sheetOfAnswer } from '../../src/app/ask/sheet.ts';
import { firstWish, movedOf, variedOf } from '../../src/app/ask/wish.ts';
import type { Wish } from '../../src/components/ask/data.ts';
import { apply } from '../../src/document/apply.ts';
import { isRefusal } from '../../src/document/command.ts';
import { sheetOf } from '../../src/document/sheets.ts';
import type { OctavoDocument } from '../../src/document/types.ts';
import { keyOf } from '../../src/engine/cell-index.ts';
import type { CellValue, Place } from '../../src/engine/types.ts';
import { formatAddress } from '../../src/formula/address.ts';
import { functionsByName } from '../../src/formula/types.ts';
import { at, documentOf, templateNamed } from '../analysis/documents.ts';

const analyst = createAnalyst();
const functions = functionsByName(catalogue);

/** The rows of the kept sheet: what each holds, and what the document gives with the inputs of that row. */
async function rowsOf(document: OctavoDocument, change: Partial<Wish>, inputs: readonly Place[], result: Place) {
  const subject = await analyst.subject(document);
  const wish = { ...firstWish(document, subject, result), result: keyOf(result), ...change };
  const answer = await answerTo(analyst, { document, subject, wish }, [], {});
  const { command, sheet } = sheetOfAnswer(document, result.sheet, 'Kept', answer, functions);
  const applied = apply(document, command);
  if (isRefusal(applied)) throw new Error(applied.refused);
  const { cells } = sheetOf(applied.document, sheet);
  const column = inputs.length;
  const model = await DocumentModel.open(applied.document);
  const rows: { readonly live: CellValue; readonly wanted: CellValue | undefined }[] = [];
  for (let row = 0; row < 60; row++) {
    const cell = formatAddress({ row, column });
    if (!cells.get(cell)?.text.startsWith('=')) continue;
    const texts = inputs.map((place, index) => ({
      ...place,
      text: cells.get(formatAddress({ row, column: index }))?.text ?? '',
    }));
    const [wanted] = await model.read(texts, [result]);
    rows.push({ live: model.present({ sheet, cell }), wanted });
  }
  model.dispose();
  return rows;
}

describe('results kept with the values they follow from', () => {
  test.each([
    ['closed-box-bench', 'Volume', 'Qtc'],
    ['closed-box-bench', 'Volume', 'Fall3'],
    ['vented-box', 'Tuning', 'PortLength'],
    ['loud-enough', 'Distance', 'SeatLevel'],
    ['two-driver-check', 'HandOver', 'OhmsAtHandOver'],
  ])('%s: a sweep of %s and %s is live, and each row is what the sheet gives', async (id, from, to) => {
    const document = templateNamed(id);
    const { inputs, results } = await analyst.subject(document);
    const input = inputs.find(({ name }) => name === from);
    const result = results.find(({ name }) => name === to);
    if (!input || !result) throw new Error(`There is no ${from} or no ${to}.`);
    const rows = await rowsOf(document, { kind: 'sweep', input: movedOf(input), steps: '5' }, [input], result);
    expect(rows).toHaveLength(5);
    for (const { live, wanted } of rows) expect(wanted && sameResult(live, wanted)).toBe(true);
  });

  test('so is every combination', async () => {
    const document = documentOf({ A1: '2', A2: '3', A3: '5', B1: '=A1*A2', B2: '=B1^2+A3', B3: '=B2-B1+A1' });
    const { inputs } = await analyst.subject(document);
    const varied = inputs.slice(0, 2).map((input) => ({ ...variedOf(input), values: '1, 4, 6' }));
    const change: Partial<Wish> = { kind: 'combine', varied, order: 'typed', keep: 'any' };
    const rows = await rowsOf(document, change, [at('A1'), at('A2')], at('B3'));
    expect(rows.map(({ live }) => live)).toEqual(
      [1, 4, 6].flatMap((x) => [1, 4, 6].map((y) => ({ kind: 'number', value: (x * y) ** 2 + 5 - x * y + x }))),
    );
  });
});

describe('what cannot be written in a row stays a value', () => {
  test.each([
    ['a range takes in what changes', { A1: '1', A2: '2', B1: '=SUM(A1:A2)' }],
    ['a formula fills more cells than its own', { A1: '1', A2: '2', B1: '=SORT(A1)', B3: '=A1+B2' }],
    ['it hangs on where it stands', { A1: '1', B1: '=A1+ROW()' }],
    ['nothing follows', { A1: '1', A2: '2', B1: '=A2' }],
    ['it depends on itself', { A1: '1', B1: '=B1+A1*0+B3', B3: '=B1+SUM(A1:B1)' }],
  ])('where %s', (_, cells) => {
    expect(
      liveWay(documentOf(cells), functions, [at('A1')], [at(cells.B1 === '=SORT(A1)' ? 'B3' : 'B1')]),
    ).toBeUndefined();
  });
});

import { describe, expect, test } from 'vitest';
import { createAnalyst } from '../../src/analysis/analyst.ts';
import { DocumentModel } from '../../src/analysis/model/document-model.ts';
import { EVERY } from '../../src/analysis/seek/types.ts';
import { answerTo } from '../../src/app/ask/analyst.ts';
import { readSentence } from '../../src/app/ask/sentence.ts';
import { sheetOfAnswer } from '../../src/app/ask/sheet.ts';
import { firstWish } from '../../src/app/ask/wish.ts';
import { kinds, type Answer, type Kind, type Setting, type Wish } from '../../src/components/ask/data.ts';
import { apply } from '../../src/document/apply.ts';
import { isRefusal } from '../../src/document/command.ts';
import type { OctavoDocument } from '../../src/document/types.ts';
import { at, documentOf, named, templateNamed } from '../analysis/documents.ts';

const analyst = createAnalyst();

/** Two verdicts that both hold from 20 to 40, or nowhere. */
const bounded = (most: number): OctavoDocument =>
  documentOf({
    A1: 'Size',
    B1: { text: '10', range: ['1', '100'] },
    A2: 'Large enough',
    B2: '=CHECK.AT_LEAST(B1, 20, 15, "Size", "Take more.")',
    A3: 'Small enough',
    B3: `=CHECK.AT_MOST(B1, ${most}, ${most * 2}, "Size", "Take less.")`,
    A4: 'Twice',
    B4: '=B1*2',
  });

async function asked(document: OctavoDocument, change: Partial<Wish>, from = at('B1')): Promise<Answer> {
  const subject = await analyst.subject(document);
  return answerTo(analyst, { document, subject, wish: { ...firstWish(document, subject, from), ...change } }, [], {});
}

async function statusesWith(document: OctavoDocument, sets: readonly Setting[]): Promise<string[]> {
  const model = await DocumentModel.open(document);
  const values = await model.read(sets, model.verdicts);
  model.dispose();
  return values.map((value) =>
    value.kind === 'record' && value.record.kind === 'verdict' ? value.record.status : '?',
  );
}

describe('every verdict together', () => {
  test('the nearest value at which all are good, checked as it would be typed', async () => {
    const document = bounded(40);
    const { found } = await asked(document, { result: EVERY });
    expect(found).toHaveLength(1);
    const [set] = found[0]?.sets ?? [];
    // From 10 upwards the first that holds is 20.
    expect(set?.text).toBe('20');
    expect(await statusesWith(document, found[0]?.sets ?? [])).toEqual(['good', 'good']);
  });

  test('where there is none, nothing is called found and the nearest is named', async () => {
    const { said, found } = await asked(bounded(12), { result: EVERY });
    expect(said).toMatch(
      /^No value of Size was found between 1 and 100 that brings every verdict to good; nearest is .* 1 verdict falls short: “/,
    );
    expect(found.map(({ consequence }) => consequence)).toEqual([expect.stringMatching(/^Nearest: a verdict/)]);
  });

  test('a sentence can ask for it under a condition, which is set with what is found', async () => {
    const document = templateNamed('two-driver-check');
    const subject = await analyst.subject(document);
    const { wish, given } = await readSentence(
      analyst,
      document,
      subject,
      'which Xmax makes every verdict good at 106 dB?',
    );
    expect(wish.result).toBe(EVERY);
    expect(given.map(({ cell, text }) => [cell, text])).toEqual([[named(document, 'Target').cell, '106 dB']]);
    const first = firstWish(document, subject, named(document, 'Target'));
    const { found } = await answerTo(analyst, { document, subject, wish: { ...first, ...wish } }, given, {});
    expect(found[0]?.sets.map(({ cell }) => cell)).toEqual(['D22', 'C12']);
  });
});

describe('a sentence', () => {
  test('is read into the form as it would be typed', async () => {
    const document = templateNamed('closed-box-bench');
    const subject = await analyst.subject(document);
    const { wish } = await readSentence(analyst, document, subject, 'which litres give Qtc 0.707?');
    expect(wish).toMatchObject({ kind: 'seek', target: '0.707', input: { from: '1 L', to: '300 L' }, given: '' });
  });

  test('that names nothing of the sheet says what it could name', async () => {
    const document = templateNamed('closed-box-bench');
    const subject = await analyst.subject(document);
    await expect(readSentence(analyst, document, subject, 'which litres give Zebra 0.707?')).rejects.toThrow(/Zebra/);
  });
});

describe('what stands in the form', () => {
  const document = templateNamed('closed-box-bench');
  const qtc = named(document, 'Qtc');

  test.each([
    [{ target: '30 Hz', result: `${qtc.sheet}!C27` }, /Hz is the unit of/],
    [{ target: '', result: `${qtc.sheet}!C27` }, /^Type a value for Damping Qtc/],
    [{ target: 'much', result: `${qtc.sheet}!C27` }, /“much” is no quantity/],
    [{ kind: 'sweep', steps: 'some' }, /“some” is no whole number/],
    [{ kind: 'sweep', input: { id: `${qtc.sheet}!B24`, from: '30 L', to: '3 L' } }, /must begin below its end/],
    [
      {
        kind: 'scatter',
        spreads: [{ id: `${qtc.sheet}!B24`, label: 'Net volume', texts: [{ name: 'by', label: '', text: 'a bit' }] }],
      },
      /“a bit” is no quantity/,
    ],
  ] as readonly (readonly [Partial<Wish>, RegExp])[])('%j is refused in words', async (change, words) => {
    await expect(asked(document, change, qtc)).rejects.toThrow(words);
  });

  test('a number alone is in the unit of its cell', async () => {
    const range = { id: `${qtc.sheet}!B24`, from: '5', to: '40' };
    const alone = await asked(document, { kind: 'sweep', input: range }, qtc);
    const typed = await asked(document, { kind: 'sweep', input: { ...range, from: '5 L', to: '40 L' } }, qtc);
    expect(alone.tables).toEqual(typed.tables);
  });

  test('a small spread of one input passes on in proportion to its effect', async () => {
    const spreads = [{ id: `${qtc.sheet}!B24`, label: 'Net volume', texts: [{ name: 'by', label: '', text: '1 %' }] }];
    const { tables } = await asked(
      document,
      { kind: 'scatter', spreads, runs: '2000', result: `${qtc.sheet}!C27` },
      qtc,
    );
    const deviation = tables[0]?.table.rows.at(-1)?.[1];
    // Qtc = Qts √(1 + Vas/Vb): what one per cent more of Vb does, by the sheet's own numbers.
    const model = await DocumentModel.open(document);
    const [now, more] = [12.1, 12.1 * 1.01].map((litres) =>
      model.read([{ sheet: qtc.sheet, cell: 'B24', text: `${litres} L` }], [qtc]),
    );
    const numberOf = async (values: typeof now): Promise<number> => {
      const [value] = (await values) ?? [];
      return value?.kind === 'number' ? value.value : Number.NaN;
    };
    const effect = Math.abs((await numberOf(more)) - (await numberOf(now)));
    expect(Math.abs(Number(deviation) / effect - 1)).toBeLessThan(0.05);
    model.dispose();
  });
});

describe('an answer kept as a sheet', () => {
  const document = templateNamed('closed-box-bench');
  const qtc = named(document, 'Qtc');

  test.each(Object.keys(kinds) as Kind[])(
    '%s: without a problem in any cell, and with what was asked',
    async (kind) => {
      const input = { id: `${qtc.sheet}!B24`, from: '5 L', to: '40 L' };
      const varied = [{ ...input, label: 'Net volume', values: '8 L, 10 L' }];
      const change = { kind, input, target: '0.707', runs: '50', steps: '11', varied, keep: 'any' } as const;
      const answer = await asked(document, change, qtc);
      const { command, sheet } = sheetOfAnswer(document, qtc.sheet, `${kinds[kind]}: Qtc`, answer);
      const applied = apply(document, command);
      if (isRefusal(applied)) throw new Error(applied.refused);
      const kept = applied.document.sheets.find(({ id }) => id === sheet);
      const model = await DocumentModel.open(applied.document);
      const values = [...(kept?.cells ?? [])].map(([cell]) => model.present({ sheet, cell }));
      model.dispose();
      expect(values.filter(({ kind: each }) => each === 'problem')).toEqual([]);
      expect([...(kept?.cells.values() ?? [])].map(({ text }) => text)).toContain(answer.note);
      // Nothing fails here, so that no change has steps to list.
      expect(kept?.cells.size).toBeGreaterThan(kind === 'cheapest' ? 2 : 5);
    },
  );

  test('what stands beside each row is live', async () => {
    const answer = await asked(document, { kind: 'follows', input: { id: `${qtc.sheet}!B24`, from: '', to: '' } }, qtc);
    const { command, sheet } = sheetOfAnswer(document, qtc.sheet, 'What follows', answer);
    const applied = apply(document, command);
    if (isRefusal(applied)) throw new Error(applied.refused);
    const model = await DocumentModel.open(applied.document);
    const kept = applied.document.sheets.find(({ id }) => id === sheet);
    const live = [...(kept?.cells ?? [])].find(([, { text }]) => text.endsWith('!C27'))?.[0] ?? '';
    expect(model.present({ sheet, cell: live })).toEqual(model.present(qtc));
    const [moved] = await model.read([{ sheet: qtc.sheet, cell: 'B24', text: '30 L' }], [{ sheet, cell: live }]);
    expect(moved).not.toEqual(model.present(qtc));
    model.dispose();
  });
});

import { describe, expect, test } from 'vitest';
import { isRefusal } from '../../src/document/command.ts';
import { differenceText, groupsOf, moveText } from '../../src/document/difference-text.ts';
import { betweenSheets, sinceBaseline, type Differences } from '../../src/document/sheet-differences.ts';
import type { OctavoDocument } from '../../src/document/types.ts';
import { Workbook } from '../../src/document/workbook.ts';
import { createEngine } from '../../src/engine/direct.ts';
import { decodeDocument } from '../../src/exchange/decode.ts';
import { templates } from '../../templates/index.ts';

function template(): OctavoDocument {
  const document = decodeDocument(templates.find(({ id }) => id === 'two-driver-check')?.content);
  if (isRefusal(document)) throw new Error(document.refused);
  return document;
}

async function opened(): Promise<Workbook> {
  const workbook = new Workbook(createEngine(), template());
  await workbook.ready;
  return workbook;
}

/** The sheet and a copy of it with some texts changed. */
async function withCopy(texts: Record<string, string>): Promise<Workbook> {
  const workbook = await opened();
  const sheet = workbook.document.sheets[0]?.id ?? '';
  await workbook.do({ kind: 'duplicate-sheet', sheet, id: 'copy' });
  await workbook.do({ kind: 'write', sheet: 'copy', texts: new Map(Object.entries(texts)) });
  return workbook;
}

const between = (workbook: Workbook): Differences => {
  const [first, second] = workbook.document.sheets;
  return betweenSheets(workbook, first!, second!);
};

const labels = (rows: Differences['flips']): string[] => rows.map(({ label }) => label);
const all = ({ flips, inputs, results, alone }: Differences): number =>
  flips.length + inputs.length + results.length + alone.length;

describe('two sheets', () => {
  test('that are copies of one another differ in nothing', async () => {
    const workbook = await withCopy({});
    expect(all(between(workbook))).toBe(0);
    expect(differenceText(between(workbook), { first: 'A', second: 'B' })).toBe('A → B\n\nNothing differs.\n');
    workbook.dispose();
  });

  test('are told apart by their verdicts first, the worse turns before the better', async () => {
    const workbook = await withCopy({ D24: '4000 Hz' });
    const { flips, inputs, results } = between(workbook);
    expect(labels(inputs)).toEqual(['Hand-over frequency']);
    expect(flips.length).toBeGreaterThan(2);
    expect(flips.map(({ flip }) => flip?.to)).toContain('fail');
    const grades = { good: 0, caution: 1, fail: 2 };
    const turns = flips.map(({ flip }) => grades[flip!.to] - grades[flip!.from]);
    expect(turns).toEqual(turns.toSorted((a, b) => b - a));
    expect(results.every(({ before, after }) => JSON.stringify(before) !== JSON.stringify(after))).toBe(true);
    const [first] = groupsOf(between(workbook), { first: 'A', second: 'B' });
    expect(first?.heading).toBe('Verdicts that turn');
    workbook.dispose();
  });

  test('turned round tell the same, turned round', async () => {
    const workbook = await withCopy({ D24: '4000 Hz', B8: '3.2 Ω' });
    const [first, second] = workbook.document.sheets;
    const there = betweenSheets(workbook, first!, second!);
    const back = betweenSheets(workbook, second!, first!);
    expect(all(back)).toBe(all(there));
    const turned = back.flips.map(({ label, flip }) => `${label} ${flip!.to} ${flip!.from}`);
    expect(turned.toSorted()).toEqual(
      there.flips.map(({ label, flip }) => `${label} ${flip!.from} ${flip!.to}`).toSorted(),
    );
    workbook.dispose();
  });

  test('are matched by name and label where rows have moved', async () => {
    const workbook = await withCopy({ D27: '260 mm' });
    await workbook.do({ kind: 'insert', sheet: 'copy', axis: 'rows', at: 9, count: 3 });
    const { inputs, alone } = between(workbook);
    expect(labels(inputs)).toEqual(['Cabinet width']);
    expect(alone).toEqual([]);
    workbook.dispose();
  });

  test('what stands only in one is told apart', async () => {
    const workbook = await withCopy({ A80: 'Own check', D80: '=2*Width', D30: '' });
    const { alone } = between(workbook);
    const groups = groupsOf({ ...between(workbook) }, { first: 'A', second: 'B' });
    expect(alone.find(({ label }) => label === 'Own check')).toMatchObject({
      before: { kind: 'empty' },
      place: { sheet: 'copy' },
    });
    expect(groups.find(({ heading }) => heading === 'Only in A')?.rows.map(({ label }) => label)).toContain(
      'Price cap for a pair',
    );
    workbook.dispose();
  });
});

describe('a sheet and its baseline', () => {
  test('nothing differs until something is typed, and then only what follows', async () => {
    const workbook = await opened();
    const sheet = workbook.document.sheets[0]?.id ?? '';
    await workbook.pin();
    expect(all(sinceBaseline(workbook, sheet))).toBe(0);
    await workbook.do({ kind: 'write', sheet, texts: new Map([['D24', '4000 Hz']]) });
    const { flips, inputs } = sinceBaseline(workbook, sheet);
    expect(labels(inputs)).toEqual(['Hand-over frequency']);
    expect(flips.length).toBeGreaterThan(2);
    expect(sinceBaseline(workbook, 'another').flips).toEqual([]);
    workbook.dispose();
  });
});

test('as text it says both sides and how far they are apart', async () => {
  const workbook = await withCopy({ D24: '2712 Hz', D22: '103 dB' });
  const text = differenceText(between(workbook), { first: 'Two drivers', second: 'Two drivers 2' });
  expect(text).toMatch(/^Two drivers → Two drivers 2\n\nVERDICTS THAT TURN\n- /);
  expect(text).toContain('\n- Hand-over frequency: 1\u2009808 Hz → 2\u2009712 Hz (+50 %)\n');
  expect(text).toContain('\n- Target level at 1 m: 100 dB → 103 dB (+3.0 dB)\n');
  expect(text).toMatch(/GOOD → FAIL\. /);
  workbook.dispose();
});

test.each([
  ['38', 'Hz', '19', '\u221250 %'],
  ['\u22122', 'dB', '1', '+3.0 dB'],
  ['0', 'mm', '4', ''],
  ['1\u2009000', 'Hz', '1\u2009005', '+0.5 %'],
])('from %s %s to %s is %s', (before, unit, after, words) => {
  const side = (number: string) => ({ kind: 'number', number, unit }) as const;
  expect(
    moveText({
      place: { sheet: 's', cell: 'B4' },
      label: '',
      before: side(before),
      after: side(after),
      isCause: false,
      change: 1,
      doubts: [],
    }),
  ).toBe(words);
});

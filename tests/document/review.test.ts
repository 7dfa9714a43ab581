import { describe, expect, test } from 'vitest';
import { isRefusal } from '../../src/document/command.ts';
import { apply } from '../../src/document/apply.ts';
import { markInvented } from '../../src/document/review/origins.ts';
import { reviewOf } from '../../src/document/review/review.ts';
import type { Review } from '../../src/document/review/types.ts';
import type { OctavoDocument } from '../../src/document/types.ts';
import { Workbook } from '../../src/document/workbook.ts';
import { createEngine } from '../../src/engine/direct.ts';
import { decodeDocument } from '../../src/exchange/decode.ts';
import { encodeDocument } from '../../src/exchange/encode.ts';
import { reviewText } from '../../src/exchange/review-text.ts';
import { templates } from '../../templates/index.ts';

function template(id: string): OctavoDocument {
  const document = decodeDocument(templates.find((each) => each.id === id)?.content);
  if (isRefusal(document)) throw new Error(document.refused);
  return markInvented(document);
}

async function reviewed(
  document: OctavoDocument,
  change?: (workbook: Workbook, sheet: string) => Promise<unknown>,
): Promise<Review> {
  const workbook = new Workbook(createEngine(), document);
  await workbook.learnWords();
  const id = document.sheets[0]?.id ?? '';
  await change?.(workbook, id);
  const sheet = workbook.document.sheets.find((each) => each.id === id);
  const review = reviewOf(workbook, sheet!, new Date('2026-11-25T10:00:00Z'));
  workbook.dispose();
  return review;
}

const write = (texts: Record<string, string>) => (workbook: Workbook, sheet: string) =>
  workbook.do({ kind: 'write', sheet, texts: new Map(Object.entries(texts)) });

const inputIn = (review: Review, label: string): readonly { text: string; origin?: string }[] =>
  review.inputs.flatMap(({ rows }) => rows).find((row) => row.label === label)?.cells ?? [];

const originOf = (review: Review, origin: string): readonly string[] =>
  review.origins.find((each) => each.origin === origin)?.inputs ?? [];

describe('the review of the two-driver check', () => {
  test('has every verdict with its reason and what it is held against, failures first', async () => {
    const review = await reviewed(template('two-driver-check'), write({ D24: '4000 Hz' }));
    const statuses = review.verdicts.map(({ status }) => status);
    expect(statuses).toEqual(
      statuses.toSorted((a, b) => 'fail caution good'.indexOf(a) - 'fail caution good'.indexOf(b)),
    );
    expect(review.counts.fail).toBeGreaterThan(0);
    expect(statuses.filter((status) => status === 'fail')).toHaveLength(review.counts.fail);
    const travel = review.verdicts.find(({ label }) => label === 'travel');
    expect(travel?.limits).toEqual(['rule 0.7 ×', 'stretched 1 ×']);
    expect(travel?.reason).toMatch(/^Tweeter travel .+ mm to spare\.$/);
    expect(review.verdicts).toHaveLength(20);
  });

  test('has inputs by heading with unit and basis, and no limits, heads or labels among them', async () => {
    const review = await reviewed(template('two-driver-check'));
    expect(review.inputs.map(({ title }) => title)).toEqual([
      'Drivers, invented: type yours over them',
      'Target',
      'Plain rules of the trade',
    ]);
    expect(review.inputs[0]?.columns).toEqual(['Woofer', 'Tweeter']);
    expect(inputIn(review, 'Level at 1 m').map(({ text }) => text)).toEqual(['89.2 dB at 2.83 V', '90 dB at 2.83 V']);
    expect(inputIn(review, 'Level basis')).toEqual([]);
    expect(inputIn(review, 'Hand-over frequency').map(({ text }) => text)).toEqual(['1\u2009808 Hz']);
    expect(inputIn(review, 'Lower limits')).toEqual([]);
  });

  test('says which numbers are invented, and which nobody vouches for once one is typed over', async () => {
    const fresh = await reviewed(template('two-driver-check'));
    expect(originOf(fresh, 'invented')).toContain('Resonance Fs');
    expect(originOf(fresh, 'unstated')).toEqual([]);
    expect(fresh.doubts).toEqual([]);
    const typed = await reviewed(template('two-driver-check'), write({ B5: '41 Hz' }));
    expect(originOf(typed, 'unstated')).toEqual(['Resonance Fs, Woofer']);
    expect(originOf(typed, 'invented')).toContain('Resonance Fs, Tweeter');
    expect(typed.doubts).toEqual([
      'One number of a driver does not say whether it was measured or comes from a datasheet.',
    ]);
  });

  test('tells measured numbers from those of a datasheet, as the reader marked them', async () => {
    const review = await reviewed(template('two-driver-check'), async (workbook, sheet) => {
      await workbook.do({ kind: 'describe', sheet, cells: 'B5:B19', attributes: { origin: 'measured' } });
      await workbook.do({ kind: 'describe', sheet, cells: 'C5:C19', attributes: { origin: 'datasheet' } });
      await workbook.do({ kind: 'describe', sheet, cells: 'D25', attributes: { origin: 'assumed' } });
    });
    expect(originOf(review, 'measured')).toContain('Moving mass Mms, Woofer');
    expect(originOf(review, 'datasheet')).toContain('Moving mass Mms, Tweeter');
    expect(inputIn(review, 'Resonance Fs').map(({ origin }) => origin)).toEqual(['measured', 'datasheet']);
    expect(review.assumptions[0]).toBe('Off-axis angle: 45 °');
    expect(originOf(review, 'chosen')).toContain('Hand-over frequency');
  });

  test('asks about a missing basis, a doubtful driver, a value out of its range and a cell without a result', async () => {
    const review = await reviewed(
      template('two-driver-check'),
      write({ B15: '', D24: '9 kHz', D44: '=PAIR.CENTRE(HandOver)', B7: '20' }),
    );
    const found = (words: RegExp): boolean => review.doubts.some((doubt) => words.test(doubt));
    expect(found(/^Level at 1 m, Woofer: no basis is given/)).toBe(true);
    expect(found(/^Hand-over frequency: 9 kHz lies outside its plausible range, 800 Hz to 6000 Hz\./)).toBe(true);
    expect(found(/^Centre of the window: /)).toBe(true);
    expect(found(/^Electrical Q, Qes, Woofer: 20 lies outside/)).toBe(true);
    expect(new Set(review.doubts).size).toBe(review.doubts.length);
  });

  test('tells what functions took for granted, the rules of thumb, the sources and the notes', async () => {
    const review = await reviewed(template('two-driver-check'));
    expect(review.assumptions).toContain('Lower end of the band looked at: 20 Hz (LOAD.LOWEST, LOAD.LOWEST_AT)');
    expect(review.rules.some((rule) => rule.endsWith('(SPACING.LIMIT)'))).toBe(true);
    expect(review.sources.find(({ title }) => title.includes('Small'))?.functions).toContain('DRIVER');
    expect(review.notes.some((note) => note.startsWith('Predicted from datasheets'))).toBe(true);
    expect(review.plots.map(({ title }) => title)).toContain('Impedance');
  });
});

test('before it is known where functions come from, the review says so', async () => {
  const workbook = new Workbook(createEngine(), template('two-driver-check'));
  await workbook.ready;
  const review = reviewOf(workbook, workbook.document.sheets[0]!, new Date('2026-11-25T10:00:00Z'));
  workbook.dispose();
  expect(review.rules).toEqual([]);
  expect(review.sources.map(({ title }) => title)).toEqual(['Cannot be fetched just now and is asked for again']);
  expect(review.sources[0]?.functions).toContain('DRIVER');
});

test('every starter sheet has a review without a problem, and all its verdicts', async () => {
  for (const { id } of templates) {
    const review = await reviewed(template(id));
    expect(review.doubts.filter((doubt) => /not computed|Problem/.test(doubt))).toEqual([]);
    expect(review.inputs.length).toBeGreaterThan(0);
    expect(review.made).toBe('2026-11-25T10:00:00.000Z');
  }
});

test.each(['three-way-team', 'shortlist-grid', 'many-cones'])(
  'verdicts of one name are told apart in %s',
  async (id) => {
    const labels = (await reviewed(template(id))).verdicts.map(({ label }) => label);
    expect(new Set(labels).size).toBe(labels.length);
    if (id === 'three-way-team') expect(labels).toContain('Low window, travel');
  },
);

test('as text it reads without mark-up, one thing a line', async () => {
  const text = reviewText(await reviewed(template('two-driver-check')));
  expect(text.split('\n').slice(0, 3)).toEqual([
    'Two-driver check, Two drivers',
    'Will these two drivers work together? Replace both datasheets with your own.',
    '2026-11-25: 0 fail, 2 caution, 18 good',
  ]);
  expect(text).toContain('\n- Resonance Fs: Woofer 38 Hz, Tweeter 850 Hz\n');
  expect(text).toContain('\n- CAUTION Do they work together? Tight. Resonance at 1\u2009700 Hz');
  expect(text).toContain('\n- GOOD Target level at 1 m: Target level 100.0 dB is');
  expect(text).toContain('\n- CAUTION Shared window: Tight. Resonance at 1\u2009700 Hz and narrowing');
  expect(text).toContain('\n  Held against: rule 0.7 ×, stretched 1 ×\n');
  expect(text).toContain('\nWHERE THE NUMBERS COME FROM\n- invented: Resonance Fs, ');
  expect(text).not.toMatch(/undefined|NaN|\[object|[<>]|\*\*|\n\n\n/);
});

describe('where a number comes from', () => {
  test('is kept by a file, and lost with the text that it was said of', () => {
    const document = template('closed-box-bench');
    const again = decodeDocument(JSON.parse(JSON.stringify(encodeDocument(document))));
    if (isRefusal(again)) throw new Error(again.refused);
    const marked = (each: OctavoDocument): number =>
      [...(each.sheets[0]?.cells.values() ?? [])].filter(({ origin }) => origin === 'invented').length;
    expect(marked(again)).toBe(marked(document));
    expect(marked(document)).toBeGreaterThan(5);
    const sheet = document.sheets[0]!;
    const [address, cell] = [...sheet.cells].find(([, { origin }]) => origin)!;
    const written = (text: string): OctavoDocument => {
      const outcome = apply(document, { kind: 'write', sheet: sheet.id, texts: new Map([[address, text]]) });
      if (isRefusal(outcome)) throw new Error(outcome.refused);
      expect(apply(outcome.document, outcome.undo)).toHaveProperty('document', document);
      return outcome.document;
    };
    expect(marked(written(cell.text))).toBe(marked(document));
    expect(marked(written('1'))).toBe(marked(document) - 1);
  });
});

describe('a sheet that heads its columns by rows of labels', () => {
  test.each(['shopping-basket', 'shortlist-grid'])(
    'of %s has those heads in the review, and no bare letters',
    async (id) => {
      const review = await reviewed(template(id));
      // A single column is shown without a head.
      const heads = [...review.inputs, ...review.results].flatMap(({ columns }) => (columns.length > 1 ? columns : []));
      expect(heads.filter((head) => /^[A-Z]$/.test(head))).toEqual([]);
      expect(review.notes.filter((note) => note === '' || note.startsWith('='))).toEqual([]);
      expect(
        review.verdicts.filter(({ label, limits }) => /^[A-Z]+\d+$/.test(label) || /^[A-Z] /.test(limits.join())),
      ).toEqual([]);
    },
  );

  test('keeps them below a row that only names what follows', async () => {
    const review = await reviewed(template('shopping-basket'));
    const basket = review.inputs.find(({ title }) => title === 'Basket for a pair');
    expect(basket?.columns).toEqual(['how many', 'price each', 'owned?']);
    expect(basket?.rows.find(({ label }) => label === 'Capacitors')?.cells.map(({ text }) => text)).toEqual([
      '4 pcs',
      '5 ¤',
      'no',
    ]);
  });
});

import { describe, expect, test } from 'vitest';
import { createAnalyst } from '../../src/analysis/analyst.ts';
import { sharedScatter } from '../../src/analysis/pool.ts';
import { scatter } from '../../src/analysis/scatter/scatter.ts';
import { DocumentModel, withModel } from '../../src/analysis/model/document-model.ts';
import type { Analyst, Scatter, Scattered, ScatterQuestion, Spread } from '../../src/analysis/types.ts';
import { at, documentOf, named, templateNamed } from './documents.ts';

async function scattered(question: ScatterQuestion): Promise<Scatter> {
  return withModel(question.document, (model) => scatter(model, question));
}

function numbersOf({ results: [first] }: Scatter): Extract<Scattered, { kind: 'number' }> {
  if (first?.kind !== 'number') throw new Error('no number');
  return first;
}

const amount = (cell: string, deviation: number): Spread => ({ kind: 'amount', at: at(cell), deviation });
const product = documentOf({
  A1: '2',
  A2: '3',
  B1: '=A1*A2',
  B2: '=CHECK.AT_LEAST(A1,2,1.9,"A","b")',
  B3: '=IF(A1>1,"large","small")',
});

describe('a scatter', () => {
  test('of small spreads is linear error propagation', async () => {
    const answer = numbersOf(
      await scattered({
        document: product,
        spreads: [amount('A1', 0.01), amount('A2', 0.03)],
        results: [at('B1')],
        runs: 20_000,
        seed: 7,
      }),
    );
    // σ² = (y σx)² + (x σy)²; the estimate of σ is good to 1/√(2n), half a per cent here, three of them are allowed.
    const deviation = Math.hypot(3 * 0.01, 2 * 0.03);
    expect(Math.abs(answer.deviation / deviation - 1)).toBeLessThan(3 / Math.sqrt(2 * 20_000));
    expect(answer.causes.map(({ label, share }) => [label, share.toFixed(6)])).toEqual([
      ['A2', (0.06 ** 2 / deviation ** 2).toFixed(6)],
      ['A1', (0.03 ** 2 / deviation ** 2).toFixed(6)],
    ]);
    // 5 and 95 % of a normal distribution lie 1.6449 standard deviations out (Abramowitz and Stegun, Table 26.1).
    expect((answer.percentiles.high - answer.mean) / deviation).toBeCloseTo(1.6449, 1);
    expect((answer.percentiles.low - answer.mean) / deviation).toBeCloseTo(-1.6449, 1);
  });

  test('the odds of a verdict are those of the normal distribution', async () => {
    const { results } = await scattered({
      document: product,
      spreads: [amount('A1', 0.1)],
      results: [at('B2')],
      runs: 20_000,
      seed: 3,
    });
    const [first] = results;
    if (first?.kind !== 'verdict') throw new Error('no verdict');
    // Below the mean one half; below one standard deviation under it 0.1587 (Abramowitz and Stegun, Table 26.1).
    expect(first.odds.good).toBeCloseTo(0.5, 1);
    expect(Math.abs(first.odds.fail - 0.1587)).toBeLessThan(0.01);
    expect(first.odds.good + first.odds.caution + first.odds.fail + first.odds.problem).toBeCloseTo(1, 12);
  });

  test('the same seed gives the same runs, another seed others', async () => {
    const question = { document: product, spreads: [amount('A1', 0.1)], results: [at('B1')], runs: 50 };
    const [first, again, other] = [
      await scattered({ ...question, seed: 1 }),
      await scattered({ ...question, seed: 1 }),
      await scattered({ ...question, seed: 2 }),
    ].map((each) => numbersOf(each).values);
    expect(again).toEqual(first);
    expect(other).not.toEqual(first);
  });

  test('causes linked through a sheet give run by run what the spread function of the catalogue gives', async () => {
    const template = templateNamed('closed-box-bench');
    const [sheet] = template.sheets;
    if (!sheet) throw new Error('no sheet');
    const sample = { text: '=SPREAD.FALL(Box,"3 dB",0.12,0.03,0.03,0.02,0.05,200,11)' };
    const document = { ...template, sheets: [{ ...sheet, cells: new Map(sheet.cells).set('H1', sample) }] };
    const causes = { cms: 0.12, bl: 0.03, mms: 0.03, re: 0.02 };
    const fall = named(document, 'C31');
    const answer = await scattered({
      document,
      spreads: [
        { kind: 'driver', at: named(document, 'Woofer'), causes },
        { kind: 'share', at: named(document, 'Volume'), deviation: 0.05 },
      ],
      results: [fall, named(document, 'Response')],
      runs: 200,
      seed: 11,
    });
    const model = await DocumentModel.open(document);
    const wanted = model.present(named(document, 'H1'));
    model.dispose();
    if (wanted.kind !== 'record' || wanted.record.kind !== 'sample') throw new Error(JSON.stringify(wanted));
    const { values } = numbersOf(answer);
    for (const [run, value] of wanted.record.values.entries()) expect((values[run] ?? 0) / value).toBeCloseTo(1, 9);
    const [, response] = answer.results;
    if (response?.kind !== 'curve') throw new Error('no curve');
    expect(response.low.every((value, index) => value <= (response.high[index] ?? 0))).toBe(true);
  });

  test('of the two-driver check is compiled', async () => {
    const document = templateNamed('two-driver-check');
    const causes = { cms: 0.12, bl: 0.03, mms: 0.03, re: 0.02 };
    const question: ScatterQuestion = {
      document,
      spreads: ['Woofer', 'Tweeter'].map((name) => ({ kind: 'driver', at: named(document, name), causes })),
      results: ['E2', 'Load', 'WindowWidth'].map((name) => named(document, name)),
      runs: 20,
      seed: 1,
    };
    expect((await scattered(question)).isCompiled).toBe(true);
  });

  test.each([
    [{ runs: 3 }, 'whole number from 10'],
    [{ spreads: [] }, 'Nothing spreads'],
    [{ spreads: [amount('B1', 1)] }, 'no number that was typed'],
    [{ spreads: [amount('A1', -1)] }, 'at least 0'],
    [{ spreads: [{ kind: 'driver', at: at('A1'), causes: {} }] satisfies Spread[] }, 'no driver'],
    [{ results: [at('B3')] }, 'no number, curve or verdict'],
  ])('refuses %o', async (part, message) => {
    const question = { document: product, spreads: [amount('A1', 1)], results: [at('B1')], runs: 10, seed: 1, ...part };
    await expect(scattered(question)).rejects.toThrow(message);
  });

  test('shared out gives what one thread gives, however many do it', async () => {
    const document = templateNamed('two-driver-check');
    const causes = { cms: 0.12, bl: 0.03, mms: 0.03, re: 0.02 };
    const question: ScatterQuestion = {
      document,
      spreads: [
        ...['Woofer', 'Tweeter'].map((name): Spread => ({ kind: 'driver', at: named(document, name), causes })),
        { kind: 'share', at: named(document, 'HandOver'), deviation: 0.02 },
      ],
      results: await withModel(document, async ({ subject }) => subject.results.filter(({ kind }) => kind !== 'other')),
      runs: 37,
      seed: 5,
    };
    const alone = await scattered(question);
    expect(new Set(alone.results.map(({ kind }) => kind))).toEqual(new Set(['number', 'curve', 'verdict']));
    for (const threads of [2, 3]) {
      const analysts = Array.from({ length: threads }, () => createAnalyst());
      const progress: number[] = [];
      const shared = await sharedScatter(analysts, question, { progress: ({ done }) => progress.push(done) });
      expect(shared).toEqual(alone);
      expect(progress.every((done) => done <= question.runs)).toBe(true);
    }
  }, 60_000);

  test('shared out and given up, or broken off by one, ends for all', async () => {
    const question = { document: product, spreads: [amount('A1', 0.1)], results: [at('B1')], runs: 20, seed: 1 };
    const control = new AbortController();
    const analysts = [createAnalyst(), createAnalyst()];
    // Thousands of runs with drivers last longer than it takes to say how far they are, however fast the machine.
    const document = templateNamed('two-driver-check');
    const long: ScatterQuestion = {
      document,
      spreads: [{ kind: 'driver', at: named(document, 'Woofer'), causes: { cms: 0.12 } }],
      results: [named(document, 'LowestOhms')],
      runs: 20_000,
      seed: 1,
    };
    const answer = sharedScatter(analysts, long, { signal: control.signal, progress: () => control.abort() });
    await expect(answer).rejects.toThrow('given up');
    const broken: Pick<Analyst, 'scatterPart' | 'scatterSummary'> = {
      ...createAnalyst(),
      scatterPart: () => Promise.reject(new Error('The analysis broke off.')),
    };
    await expect(sharedScatter([createAnalyst(), broken], question)).rejects.toThrow('broke off');
  });
});

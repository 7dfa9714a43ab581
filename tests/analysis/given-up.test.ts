import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createAnalyst } from '../../src/analysis/analyst.ts';
import { isAborted } from '../../src/analysis/breathe.ts';
import { sharedScatter } from '../../src/analysis/pool.ts';
import { DocumentModel } from '../../src/analysis/model/document-model.ts';
import { EVERY } from '../../src/analysis/seek/types.ts';
import { standingOf, type SetInput, type Watch } from '../../src/analysis/subject/types.ts';
import type { OctavoDocument } from '../../src/document/types.ts';
import { at, documentOf } from './documents.ts';

const analyst = createAnalyst();
const whole = (min: number, max: number) => fc.integer({ min, max });

/** A bowl over two inputs, a bend over one, and verdicts with limits anywhere. */
const sheet = fc
  .record({
    x: whole(-9, 9),
    y: whole(-9, 9),
    steep: whole(1, 5),
    most: whole(-5, 30),
    least: whole(-5, 30),
    root: fc.boolean(),
  })
  .map(({ x, y, steep, most, least, root }) =>
    documentOf({
      A1: { text: '1', range: ['-10', '10'] },
      A2: { text: '2', range: ['-10', '10'] },
      B1: `=(A1-(${x}))^2+${steep}*(A2-(${y}))^2`,
      B2: root ? '=SQRT(A1)+A2' : '=ABS(A1)-A2/3',
      B3: `=CHECK.AT_MOST(B1,${most},${most + 5},"Bowl","Less.")`,
      B4: `=CHECK.AT_LEAST(B2,${least / 10},${least / 10 - 1},"Bend","More.")`,
    }),
  );

/** Gives up at the so manieth time that it is asked whether to. */
function givingUpAfter(looks: number): Watch {
  let left = looks;
  const { signal } = new AbortController();
  Object.defineProperty(signal, 'aborted', { get: () => left-- <= 0 });
  return { signal };
}

type Ask = (document: OctavoDocument, watch: Watch) => Promise<void>;
const inputs = [at('A1'), at('A2')];

async function holds(document: OctavoDocument, set: readonly SetInput[], cells: readonly string[]) {
  const model = await DocumentModel.open(document);
  const values = await model.read(set, cells.map(at));
  model.dispose();
  return values;
}

/** Each asks, and where something is called found, types it into the sheet anew. */
const questions: Readonly<Record<string, fc.Arbitrary<Ask>>> = {
  seek: whole(-20, 60).map((value) => async (document, watch) => {
    const target = { kind: 'number', value } as const;
    const { found } = await analyst.seek({ document, result: at('B1'), input: at('A1'), target }, watch);
    for (const { set } of found) {
      const [result] = await holds(document, [set], ['B1']);
      expect(result).toEqual({ kind: 'number', value: expect.closeTo(value, 3) as number });
    }
  }),
  every: fc.boolean().map((orCaution) => async (document, watch) => {
    const target = { kind: 'good', orCaution } as const;
    const { found, nearest } = await analyst.seek({ document, result: EVERY, input: at('A1'), target }, watch);
    for (const { set } of found)
      for (const value of await holds(document, [set], ['B3', 'B4']))
        expect(orCaution ? ['good', 'caution'] : ['good']).toContain(standingOf(value));
    if (nearest) expect(nearest.short.length).toBeGreaterThan(0);
  }),
  best: fc.constantFrom('good' as const, 'clear' as const, undefined).map((keep) => async (document, watch) => {
    const { found } = await analyst.optimise(
      { document, inputs, objective: { kind: 'least', result: at('B1') }, ...(keep && { keep }) },
      watch,
    );
    if (!found) return;
    const [result, ...verdicts] = await holds(document, found.set, ['B1', 'B3', 'B4']);
    expect(result).toEqual(found.result);
    if (keep)
      for (const verdict of verdicts)
        expect(keep === 'good' ? ['good'] : ['good', 'caution']).toContain(standingOf(verdict));
  }),
  bounded: fc.tuple(whole(-9, 9), fc.constantFrom('least' as const, 'most' as const)).map(([value, bound]) => {
    const limits = [{ ...at('B2'), at: bound, value }];
    return async (document, watch) => {
      const { found } = await analyst.optimise(
        { document, inputs, objective: { kind: 'least', result: at('B1') }, limits },
        watch,
      );
      if (!found) return;
      const [result, limited] = await holds(document, found.set, ['B1', 'B2']);
      expect(result).toEqual(found.result);
      if (limited?.kind !== 'number') throw new Error(`The limited result is ${limited?.kind ?? 'missing'}.`);
      expect(bound === 'least' ? limited.value - value : value - limited.value).toBeGreaterThanOrEqual(0);
    };
  }),
  scatter: whole(10, 60).map((runs) => async (document, watch) => {
    const spreads = inputs.map((place) => ({ kind: 'amount' as const, at: place, deviation: 0.5 }));
    const question = { document, spreads, results: ['B1', 'B3'].map(at), runs, seed: 3 };
    expect(await sharedScatter([analyst, createAnalyst()], question, watch)).toEqual(await analyst.scatter(question));
  }),
  combine: whole(1, 9).map((most) => async (document, watch) => {
    const values = [-10, -3, 0, 4, 9];
    const { rows } = await analyst.combine(
      { document, inputs: inputs.map((place) => ({ ...place, values })), results: [at('B1')], most },
      watch,
    );
    for (const { set, results } of rows) expect(await holds(document, set, ['B1'])).toEqual(results);
  }),
  cheapest: fc.boolean().map((orCaution) => async (document, watch) => {
    const { found } = await analyst.cheapest(
      {
        document,
        shelf: [],
        drivers: [],
        settings: inputs.map((place) => ({ ...place, values: [-10, -5, 0, 5, 10], price: '3 + value / 4' })),
        cost: orCaution ? 'money' : 'changes',
        changes: 2,
        ...(orCaution && { orCaution }),
      },
      watch,
    );
    const set = found?.steps.flatMap(({ change }) => change.texts.map((text) => ({ ...text, label: '', value: '' })));
    if (set)
      for (const verdict of await holds(document, set, ['B3', 'B4']))
        expect(['good', 'caution']).toContain(standingOf(verdict));
  }),
};

test.each(Object.entries(questions))(
  '%s, given up anywhere: what is answered holds, and the next question is answered',
  async (_, question) => {
    await fc.assert(
      fc.asyncProperty(sheet, question, fc.oneof(whole(0, 400), fc.constant(1e9)), async (document, ask, looks) => {
        let outcome = 'answered';
        await ask(document, givingUpAfter(looks)).catch((error: unknown) => {
          if (!isAborted(error)) throw error;
          outcome = 'given up';
        });
        if (looks === 1e9) expect(outcome).toBe('answered');
        if (looks === 0) expect(outcome).toBe('given up');
        const { inputs: all } = await analyst.subject(document);
        expect(all).toHaveLength(2);
      }),
      { numRuns: 5 },
    );
  },
  60_000,
);

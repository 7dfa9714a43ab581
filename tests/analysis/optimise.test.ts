import fc from 'fast-check';
import { expect, test } from 'vitest';
import { combine } from '../../src/analysis/combine/combine.ts';
import { optimise } from '../../src/analysis/optimise/optimise.ts';
import type { OptimiseQuestion, Optimum } from '../../src/analysis/optimise/types.ts';
import { DocumentModel, withModel } from '../../src/analysis/model/document-model.ts';
import { at, documentOf, named, templateNamed } from './documents.ts';

async function answered(question: OptimiseQuestion, signal?: AbortSignal): Promise<Optimum> {
  return withModel(question.document, (model) => optimise(model, question, signal ? { signal } : {}));
}

const number = fc.integer({ min: -40, max: 40 }).map((value) => value / 10);

test('a bowl has its lowest place where its formula says, or on the bounds', async () => {
  await fc.assert(
    fc.asyncProperty(number, number, fc.integer({ min: 1, max: 9 }), async (x, y, steep) => {
      const document = documentOf({ A1: '1', A2: '1', B1: `=(A1-(${x}))^2+${steep}*(A2-(${y}))^2+7` });
      const inputs = ['A1', 'A2'].map((cell) => ({ ...at(cell), range: [-3, 3] as const }));
      const { found } = await answered({ document, inputs, objective: { kind: 'least', result: at('B1') } });
      const clamp = (value: number): number => Math.max(-3, Math.min(3, value));
      const lowest = (clamp(x) - x) ** 2 + steep * (clamp(y) - y) ** 2 + 7;
      expect(found?.value).toBeGreaterThanOrEqual(lowest - 1e-9);
      expect(found?.value).toBeLessThan(lowest * 1.0021);
      for (const { value } of found?.set ?? []) expect(Math.abs(Number(value))).toBeLessThanOrEqual(3);
    }),
    { numRuns: 8, endOnFailure: true },
  );
}, 60_000);

test('of several valleys the deepest is found', async () => {
  // 10·(1 − cos 2πx) has a valley at each whole number; the bowl makes the one at 2 the deepest.
  const document = documentOf({ A1: '-3.3', B1: '=(A1-2)^2+10*(1-COS(2*3.141592653589793*A1))+1' });
  const question = { document, inputs: [{ ...at('A1'), range: [-5.1, 5.3] as const }] };
  const { found } = await answered({ ...question, objective: { kind: 'least', result: at('B1') } });
  expect(found?.set[0]?.value).toBeCloseTo(2, 2);
});

test('the smallest box that keeps every verdict is that of the closed form', async () => {
  // Small (1972): Vb = Vas/((Qtc/Qts)² − 1).
  await fc.assert(
    fc.asyncProperty(fc.integer({ min: 25, max: 50 }), fc.integer({ min: 65, max: 100 }), async (qts, qtc) => {
      const document = documentOf({
        A1: '40 L',
        B1: `=CLOSED.QTC(${qts / 100},30 L,A1)`,
        B2: `=CHECK.AT_MOST(B1,${qtc / 100},2,"Qtc","A larger box.")`,
        B3: '=A1*1',
      });
      const wanted = 30e-3 / ((qtc / qts) ** 2 - 1);
      const { found } = await answered({
        document,
        inputs: [{ ...at('A1'), range: [1e-3, 0.2] }],
        objective: { kind: 'least', result: at('B3') },
        keep: 'good',
      });
      expect(found?.worst).toBe('good');
      expect(found?.value).toBeGreaterThanOrEqual(wanted * (1 - 1e-9));
      expect(found?.value).toBeLessThan(wanted * 1.01);
    }),
    { numRuns: 6, endOnFailure: true },
  );
}, 60_000);

test('the flattest response of a vented box is no worse than the best of a grid', async () => {
  const rows = { Fs: '38 Hz', Qms: '4.8', Qes: '0.42', Vas: '28.5 L', Re: '5.8 Ω', Sd: '132 cm²' };
  const cells = Object.fromEntries(
    Object.entries(rows).flatMap(([label, text], index) => [
      [`A${index + 1}`, label],
      [`B${index + 1}`, text],
    ]),
  );
  const document = documentOf({
    ...cells,
    D1: '40 L',
    D2: '30 Hz',
    D3: '=BOX.RESPONSE(VENTED.BOX(DRIVER(A1:A6,B1:B6),D1,D2))',
    D4: '=CURVE.RIPPLE(D3,"45 Hz","200 Hz")',
  });
  const ranges = { D1: [10e-3, 60e-3], D2: [25, 60] } as const;
  const { found, before } = await answered({
    document,
    inputs: [
      { ...at('D1'), range: ranges.D1 },
      { ...at('D2'), range: ranges.D2 },
    ],
    objective: { kind: 'flattest', result: at('D3'), from: 45, to: 200 },
  });
  const model = await DocumentModel.open(document);
  const steps = ([from, to]: readonly [number, number]): number[] =>
    Array.from({ length: 26 }, (_, index) => from + ((to - from) * index) / 25);
  const grid = await combine(model, {
    document,
    inputs: [
      { ...at('D1'), values: steps(ranges.D1) },
      { ...at('D2'), values: steps(ranges.D2) },
    ],
    results: [at('D4')],
    order: { result: at('D4'), by: 'least' },
    most: 1,
  });
  model.dispose();
  const best = grid.rows[0]?.results[0];
  expect(best?.kind).toBe('number');
  expect(found?.value).toBeLessThan(before);
  expect(found?.value).toBeLessThanOrEqual((best?.kind === 'number' ? best.value : 0) * 1.005 + 0.01);
}, 60_000);

test('where nothing keeps the verdicts nothing is called found', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.integer({ min: -9, max: 9 }),
      fc.constantFrom('good' as const, 'clear' as const),
      async (limit, keep) => {
        const document = documentOf({
          A1: '1',
          B1: '=A1*2',
          B2: `=CHECK.AT_MOST(A1,${limit},${limit},"It","Less.")`,
        });
        const { found } = await answered({
          document,
          inputs: [{ ...at('A1'), range: [0.5, 4] }],
          objective: { kind: 'most', result: at('B1') },
          keep,
        });
        if (limit < 0.5) expect(found).toBeUndefined();
        else expect(found?.value).toBeCloseTo(2 * Math.min(4, limit), 2);
      },
    ),
    { numRuns: 6, endOnFailure: true },
  );
}, 60_000);

test('a bound on a result is kept: the smallest box for a Qtc, and what none keeps is not found', async () => {
  // Small (1972): Vb = Vas/((Qtc/Qts)² − 1).
  const document = documentOf({ A1: '40 L', B1: '=CLOSED.QTC(0.4,30 L,A1)', B2: '=A1*1' });
  const question = (bound: 'least' | 'most', value: number, kind: 'least' | 'most'): OptimiseQuestion => ({
    document,
    inputs: [{ ...at('A1'), range: [1e-3, 0.2] }],
    objective: { kind, result: at('B2') },
    limits: [{ ...at('B1'), at: bound, value }],
  });
  const volumeFor = (qtc: number): number => 30e-3 / ((qtc / 0.4) ** 2 - 1);
  const smallest = await answered(question('most', 0.8, 'least'));
  expect((smallest.found?.value ?? 0) / volumeFor(0.8)).toBeGreaterThanOrEqual(1 - 1e-9);
  expect((smallest.found?.value ?? 0) / volumeFor(0.8)).toBeLessThan(1.01);
  const [qtc] = smallest.found?.limited ?? [];
  expect(qtc?.kind === 'number' && qtc.value <= 0.8).toBe(true);
  const largest = await answered(question('least', 0.7, 'most'));
  expect((largest.found?.value ?? 0) / volumeFor(0.7)).toBeLessThanOrEqual(1 + 1e-9);
  expect((largest.found?.value ?? 0) / volumeFor(0.7)).toBeGreaterThan(0.99);
  expect((await answered(question('most', 0.3, 'least'))).found).toBeUndefined();
});

test('bounds, results and too many inputs are refused with the reason; one given up ends', async () => {
  const document = templateNamed('closed-box-bench');
  const volume = named(document, 'Volume');
  const least = { kind: 'least', result: named(document, 'Qtc') } as const;
  await expect(answered({ document, inputs: [], objective: least })).rejects.toThrow('inputs may vary');
  await expect(answered({ document, inputs: [volume, volume], objective: least })).rejects.toThrow('varies twice');
  await expect(answered({ document, inputs: [{ ...volume, range: [2, 1] }], objective: least })).rejects.toThrow(
    'the lower first',
  );
  const flat = { kind: 'flattest', result: named(document, 'Qtc'), from: 50, to: 200 } as const;
  await expect(answered({ document, inputs: [volume], objective: flat })).rejects.toThrow('only a curve can be flat');
  const control = new AbortController();
  control.abort();
  await expect(answered({ document, inputs: [volume], objective: least }, control.signal)).rejects.toThrow('given up');
});

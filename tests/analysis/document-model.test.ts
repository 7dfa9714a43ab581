import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sameResult } from '../../src/analysis/model/datum.ts';
import { DocumentModel } from '../../src/analysis/model/document-model.ts';
import { at, documentOf, named, templateNamed } from './documents.ts';

describe('a compiled sheet gives what the engine gives', () => {
  test.each(['two-driver-check', 'closed-box-bench', 'vented-box'])(
    'in every cell of %s, at other values',
    async (id) => {
      const model = await DocumentModel.open(templateNamed(id));
      const inputs = model.subject.inputs.filter(({ present }) => typeof present === 'number');
      const runner = await model.runner(inputs, model.subject.results);
      expect(runner.isCompiled).toBe(true);
      for (const share of [0.02, -0.05, 0.11]) {
        const values = inputs.map(({ present }, index) => Number(present) * (1 + share * ((index % 5) - 2)));
        const quick = runner.quick(values) ?? [];
        const engine = await runner.exact(values);
        expect(quick).toHaveLength(model.subject.results.length);
        const different = model.subject.results.filter(
          (_, index) => !sameResult(quick[index] ?? { kind: 'empty' }, engine[index] ?? { kind: 'empty' }),
        );
        expect(different.map(({ cell }) => cell)).toEqual([]);
      }
      model.dispose();
    },
  );

  const leaf = fc.oneof(
    fc.constantFrom('A1', 'A2', 'A3', 'A4'),
    fc.integer({ min: -3, max: 9 }).map((value) => (value < 0 ? `(${value})` : String(value))),
    fc.constantFrom('0.1', '1e-9', 'TRUE', '"a"', '""', 'Word', '12 mm'),
  );
  const { formula } = fc.letrec((tie) => ({
    formula: fc.oneof(
      { maxDepth: 4, withCrossShrink: true },
      leaf,
      fc
        .tuple(
          tie('formula'),
          fc.constantFrom('+', '-', '*', '/', '^', '<', '<=', '=', '<>', '>', '>=', '&'),
          tie('formula'),
        )
        .map(([left, operator, right]) => `(${String(left)}${operator}${String(right)})`),
      fc
        .tuple(
          fc.constantFrom('ABS', 'SQRT', 'EXP', 'LN', 'LOG10', 'INT', 'NOT', 'ISNUMBER', 'ISERROR', 'ROUND', '-', '+'),
          tie('formula'),
        )
        .map(([name, inner]) => `${name}(${String(inner)})`),
      fc
        .tuple(
          fc.constantFrom('MIN', 'MAX', 'SUM', 'AVERAGE', 'PRODUCT', 'AND', 'OR', 'IFERROR', 'POWER', 'ROUNDUP'),
          tie('formula'),
          tie('formula'),
        )
        .map(([name, left, right]) => `${name}(${String(left)},${String(right)})`),
      fc
        .tuple(tie('formula'), tie('formula'), tie('formula'))
        .map(([test, yes, no]) => `IF(${String(test)},${String(yes)},${String(no)})`),
      fc.constantFrom(
        'SUM(A1:A5)',
        'MAX(A1:A6)',
        'AVERAGE(A2:A4)',
        'MIN(A1:A2)',
        'CHECK.AT_LEAST(A1,1,0.5,"x","y").status',
      ),
    ),
  }));

  const value = fc.double({ min: -50, max: 50, noNaN: true }).map((number) => (Math.abs(number) < 1e-9 ? 0 : number));

  test('whatever formulas the sheet holds', async () => {
    let compared = 0;
    await fc.assert(
      fc.asyncProperty(
        fc.array(formula, { minLength: 1, maxLength: 3 }),
        fc.array(value, { minLength: 2, maxLength: 2 }),
        async (formulas, values) => {
          const cells = Object.fromEntries(formulas.map((text, index) => [`B${index + 1}`, `=${text}`]));
          const document = documentOf(
            { A1: '2', A2: '3.5', A3: '7', A4: '=A1*B9', A6: 'text', B9: '0.5', C1: 'word', ...cells, D1: '=B1+1' },
            { Word: 'C1' },
          );
          const model = await DocumentModel.open(document);
          const runner = await model.runner([at('A1'), at('A2')], [at('B1'), at('B2'), at('B3'), at('D1')]);
          const quick = runner.quick(values);
          const engine = await runner.exact(values);
          model.dispose();
          if (!quick) return;
          compared++;
          for (const [index, value] of quick.entries())
            expect(sameResult(value, engine[index] ?? { kind: 'empty' }), JSON.stringify([value, engine[index]])).toBe(
              true,
            );
        },
      ),
      { numRuns: 150 },
    );
    expect(compared).toBeGreaterThan(50);
  }, 60_000);
});

describe('a sheet model', () => {
  test('leaves the document as it was after trying values out', async () => {
    const document = templateNamed('two-driver-check');
    const model = await DocumentModel.open(document);
    const result = named(document, 'Pad');
    const handover = named(document, 'MakeUp');
    const before = model.present(result);
    const [changed] = await model.read([{ ...handover, text: '1 dB' }], [result]);
    const [after] = await model.read([], [result]);
    expect(changed).not.toEqual(before);
    expect(after).toEqual(before);
    model.dispose();
  });

  test('leaves to the engine what spills, and what stands in a loop', async () => {
    const model = await DocumentModel.open(
      documentOf({ A1: '3', A2: '1', A3: '2', B1: '=SORT(A1:A3)', C1: '=B1*2', C3: '=B3*2', E1: '=E2+A1', E2: '=E1' }),
    );
    for (const [cell, value] of [
      ['C1', 3],
      ['C3', 20],
    ] as const) {
      const runner = await model.runner([at('A1')], [at(cell)]);
      expect(runner.isCompiled).toBe(false);
      const [result] = await runner.at([cell === 'C1' ? 1.5 : 10]);
      expect(result).toEqual({ kind: 'number', value: cell === 'C1' ? 2 : value });
    }
    expect((await model.runner([at('A1')], [at('E1')])).isCompiled).toBe(false);
    model.dispose();
  });

  test('knows the inputs with their ranges, and the results by kind', async () => {
    const model = await DocumentModel.open(templateNamed('two-driver-check'));
    const { inputs, results } = model.subject;
    expect(inputs.find(({ name }) => name === 'HandOver')).toMatchObject({
      label: 'Hand-over frequency',
      quantity: 'frequency',
      unit: 'Hz',
      present: 1808,
      range: [800, 6000],
      isRangeGiven: true,
    });
    expect(inputs.find(({ name }) => name === 'Slope')?.choices).toEqual(['LR2', 'LR4']);
    expect(new Set(inputs.map(({ label }) => label)).size).toBe(inputs.length);
    expect(results.filter(({ kind }) => kind === 'curve').map(({ cell }) => cell)).toContain('D63');
    expect(model.verdicts.map(({ cell }) => cell)).toContain('E41');
    model.dispose();
  });
});

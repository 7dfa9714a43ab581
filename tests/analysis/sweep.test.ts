import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { contourLines, roundLevels } from '../../src/analysis/sweep/contours.ts';
import { drives, follows } from '../../src/analysis/drives/drives.ts';
import { DocumentModel } from '../../src/analysis/model/document-model.ts';
import { map, sweep } from '../../src/analysis/sweep/sweep.ts';
import type { Span } from '../../src/analysis/types.ts';
import { at, documentOf, named, templateNamed } from './documents.ts';

const span = (cell: string, from: number, to: number, steps: number, spacing: Span['spacing'] = 'linear'): Span => ({
  ...at(cell),
  from,
  to,
  steps,
  spacing,
});

describe('a sweep', () => {
  test('is what the closed form gives at every step, and a family of curves', async () => {
    const document = templateNamed('closed-box-bench');
    const model = await DocumentModel.open(document);
    const answer = await sweep(model, {
      document,
      input: { ...named(document, 'Volume'), from: 0.006, to: 0.048, steps: 13, spacing: 'logarithmic' },
      results: [named(document, 'Qtc'), named(document, 'Response')],
    });
    const [qtc, response] = answer.columns;
    const [qts, vas] = ['B18', 'C18'].map((cell) => model.present(named(document, cell)));
    if (qts?.kind !== 'number' || vas?.kind !== 'number') throw new Error('no numbers');
    for (const [index, volume] of answer.values.entries()) {
      const value = qtc?.cells[index];
      // Small 1972: Qtc = Qts √(1 + Vas/Vb).
      expect(value?.kind === 'number' && value.value / (qts.value * Math.sqrt(1 + vas.value / volume))).toBeCloseTo(
        1,
        9,
      );
      expect(response?.cells[index]).toMatchObject({ kind: 'record', record: { kind: 'curve' } });
    }
    expect(answer.values[6]).toBeCloseTo(Math.sqrt(0.006 * 0.048), 12);
    expect(answer.worst[0]).not.toBe('good');
    model.dispose();
  });

  test.each([
    [span('A1', 1, 1, 5), 'two different ends'],
    [span('A1', 1, 2, 1), 'whole number from 2'],
    [span('A1', 0, 2, 5, 'logarithmic'), 'above 0'],
    [span('C7', 1, 2, 5), 'no input'],
  ])('refuses what cannot be walked: %o', async (input, message) => {
    const document = documentOf({ A1: '1', B1: '=A1' });
    const model = await DocumentModel.open(document);
    await expect(sweep(model, { document, input, results: [at('B1')] })).rejects.toThrow(message);
    model.dispose();
  });
});

describe('a map', () => {
  test('of x² + y² has circles for contours and a region bounded where the verdict turns', async () => {
    const document = documentOf({
      A1: '1',
      A2: '1',
      B1: '=A1^2+A2^2',
      B2: '=CHECK.AT_MOST(B1,4,4,"Distance","Come nearer.")',
    });
    const model = await DocumentModel.open(document);
    const answer = await map(model, {
      document,
      across: span('A1', -3, 3, 61),
      up: span('A2', -3, 3, 61),
      result: at('B1'),
      levels: [1, 4],
    });
    for (const { level, lines } of answer.contours) {
      expect(lines).toHaveLength(1);
      for (const [x, y] of lines[0] ?? []) expect(Math.hypot(x, y)).toBeCloseTo(Math.sqrt(level), 2);
      expect(lines[0]?.[0]).toEqual(lines[0]?.at(-1));
    }
    expect(answer.goodEdge).toHaveLength(1);
    for (const [x, y] of answer.goodEdge[0] ?? []) expect(Math.abs(Math.hypot(x, y) - 2)).toBeLessThan(0.11);
    const good = answer.worst.filter((each) => each === 0).length;
    expect(good * 0.01).toBeCloseTo(4 * Math.PI, 0);
    model.dispose();
  });

  test('contours part points above from points below, whatever the field', () => {
    const height = fc.oneof(fc.integer({ min: -3, max: 3 }), fc.constant(Number.NaN));
    fc.assert(
      fc.property(fc.array(height, { minLength: 30, maxLength: 30 }), (values) => {
        const across = [0, 1, 2, 3, 4, 5];
        const up = [0, 1, 2, 3, 4];
        const lines = contourLines({ across, up, values }, 0.5);
        const crossed = new Set(lines.flat().map(([x, y]) => `${x},${y}`));
        // Brute force: an edge between a height above and one below is crossed where both its cells have heights.
        for (let row = 0; row < 4; row++) {
          for (let column = 0; column < 5; column++) {
            const [a = 0, b = 0, c = 0, d = 0] = [0, 1, 6, 7].map((each) => values[row * 6 + column + each]);
            if (Number.isNaN(a + b + c + d) || a > 0.5 === b > 0.5) continue;
            expect(crossed).toContain(`${column + (a - 0.5) / (a - b)},${row}`);
          }
        }
      }),
    );
  });

  test('levels are round', () => {
    expect(roundLevels([0.02, 0.79])).toEqual([0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7]);
    expect(roundLevels([5, 5, Number.NaN])).toEqual([]);
  });
});

describe('what drives a result', () => {
  test('effects per per cent are those of the derivative, biggest first', async () => {
    const document = documentOf({
      A1: '2',
      A2: '3',
      A3: '0',
      A4: 'Label',
      B1: '=A1^2',
      B2: '=B1*A2+A3+0*A1',
      B3: '=B1',
    });
    const model = await DocumentModel.open(document);
    const { inputs, tree } = await drives(model, { document, at: at('B2') });
    // d(x² y) = 2 x² y for one part in one of x, x² y for y.
    expect(inputs.map(({ input }) => input.cell)).toEqual(['A1', 'A2']);
    expect(inputs[0]?.perPercent).toBeCloseTo(0.24, 12);
    expect(inputs[1]?.perPercent).toBeCloseTo(0.12, 12);
    expect(tree.branches.map(({ cell }) => cell)).toEqual(['B1', 'A1', 'A2', 'A3']);
    expect(tree.branches[0]?.branches.map(({ cell }) => cell)).toEqual(['A1']);
    const after = await follows(model, { document, at: at('A1') });
    expect(after.results.map(({ result }) => result.cell)).toEqual(['B1', 'B2', 'B3']);
    expect(after.results[0]?.perPercent).toBeCloseTo(0.08, 12);
    model.dispose();
  });

  test('the pad of two drivers follows both levels and the make-up, decibel by decibel', async () => {
    const document = templateNamed('two-driver-check');
    const model = await DocumentModel.open(document);
    const { inputs } = await drives(model, { document, at: named(document, 'Pad') });
    const effects = Object.fromEntries(inputs.map(({ input, perPercent }) => [input.cell, perPercent]));
    // One per cent more pressure is 20·lg 1.01 = 0.0864 dB.
    expect(effects['C14']).toBeCloseTo(0.08643, 5);
    expect(effects['B14']).toBeCloseTo(-0.08643, 5);
    expect(effects['D28']).toBeCloseTo(0.08643, 5);
    model.dispose();
  });

  test('the spacing of a pair is half of each flange and all of the gap; the chamber moves its mid as its compliance does', async () => {
    const pair = await DocumentModel.open(templateNamed('two-driver-check'));
    const { inputs: spacing } = await drives(pair, { document: pair.document, at: named(pair.document, 'Spacing') });
    // 166 mm / 2 + 104 mm / 2 + 4 mm.
    expect(spacing.map(({ input, perPercent }) => [input.cell, Number((perPercent * 1e3).toFixed(6))])).toEqual([
      ['B17', 0.83],
      ['C17', 0.52],
      ['D26', 0.04],
    ]);
    pair.dispose();
    const team = await DocumentModel.open(templateNamed('three-way-team'));
    const chamber = named(team.document, 'MidResonance');
    const { inputs, result } = await drives(team, { document: team.document, at: chamber });
    // fc² = fs² + k·Sd²/(Mms·V): of fs the share (fs/fc)², of Sd what is left, of Mms and V half of that, less.
    const resonance = result.present.kind === 'number' ? result.present.value : Number.NaN;
    const own = (72 / resonance) ** 2;
    const wanted: Record<string, number> = { C10: 1 - own, C5: own, C11: -(1 - own) / 2, C35: -(1 - own) / 2 };
    expect(inputs).toHaveLength(4);
    for (const { input, perPercent } of inputs)
      expect(perPercent / (resonance / 100)).toBeCloseTo(wanted[input.cell] ?? Number.NaN, 4);
    team.dispose();
  });

  test('what only rounding moves is no effect', async () => {
    // A1 stands above and below a line, or is added and taken away again.
    const document = documentOf({ A1: '5.8', A2: '0.3', B1: '=A1/3*A2/A1', B2: '=(A1+1000000)-1000000-A1+A2*1E9' });
    const model = await DocumentModel.open(document);
    for (const cell of ['B1', 'B2']) {
      const { inputs, still } = await drives(model, { document, at: at(cell) });
      expect(inputs.map(({ input }) => input.cell)).toEqual(['A2']);
      expect(still.map((input) => input.cell)).toEqual(['A1']);
    }
    model.dispose();
  });

  test('a cell that depends on itself is told once', async () => {
    const document = documentOf({ A1: '=B1', B1: '=A1' });
    const model = await DocumentModel.open(document);
    const { tree } = await drives(model, { document, at: at('A1') });
    expect(tree.branches[0]?.branches[0]).toMatchObject({ cell: 'A1', isRepeated: true });
    model.dispose();
  });
});

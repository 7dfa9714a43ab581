import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readQuestion } from '../../src/analysis/read/question.ts';
import { seek } from '../../src/analysis/seek/seek.ts';
import { EVERY } from '../../src/analysis/seek/types.ts';
import { DocumentModel, withModel } from '../../src/analysis/model/document-model.ts';
import type { Seek, SeekQuestion } from '../../src/analysis/types.ts';
import { at, documentOf, named, templateNamed } from './documents.ts';
import { standingOf } from '../../src/analysis/subject/types.ts';

const formulaOver = (formula: string, range: readonly [string, string] = ['-5', '5']) =>
  documentOf({ A1: { text: '1', range }, B1: `=${formula}` });

async function sought(document: SeekQuestion['document'], question: Partial<SeekQuestion>): Promise<Seek> {
  return withModel(document, (model) =>
    seek(model, {
      document,
      input: at('A1'),
      result: at('B1'),
      target: { kind: 'number', value: 0 },
      ...question,
    }),
  );
}

const values = ({ found }: Seek): number[] => found.map(({ set }) => Number(set.value));

describe('a number sought', () => {
  test('the volume for a Qtc is that of the closed form Vas / ((Qtc/Qts)² − 1), Small 1972', async () => {
    const document = templateNamed('closed-box-bench');
    const model = await DocumentModel.open(document);
    const answer = await seek(model, {
      document,
      input: named(document, 'Volume'),
      result: named(document, 'Qtc'),
      target: { kind: 'number', value: 0.707 },
    });
    const [qts, vas] = ['B18', 'C18'].map((cell) => model.present(named(document, cell)));
    if (qts?.kind !== 'number' || vas?.kind !== 'number') throw new Error('no numbers');
    const closedForm = vas.value / ((0.707 / qts.value) ** 2 - 1);
    expect(answer.found).toHaveLength(1);
    expect(Number(answer.found[0]?.set.value) / closedForm).toBeCloseTo(1, 5);
    model.dispose();
  });

  test('all solutions are found, and where a curve only touches its target', async () => {
    const cubic = await sought(formulaOver('(A1-1)*(A1+2)*(A1-3.3)'), {});
    expect(values(cubic).map((value) => value.toFixed(5))).toEqual(['-2.00000', '1.00000', '3.30000']);
    const touching = await sought(formulaOver('(A1-1.2345)^2'), { target: { kind: 'number', value: 0 } });
    expect(values(touching)[0]).toBeCloseTo(1.2345, 2);
    const close = await sought(formulaOver('(A1-1.2345)^2'), { target: { kind: 'number', value: 1e-6 } });
    expect(values(close).map((value) => value.toFixed(4))).toEqual(['1.2335', '1.2355']);
  });

  test('a jump over the target and a pole are no solutions; the nearest is told', async () => {
    const jump = await sought(formulaOver('IF(A1<0.3,-1,2)'), {});
    expect(jump.found).toEqual([]);
    expect(jump.nearest?.result).toEqual({ kind: 'number', value: -1 });
    const pole = await sought(formulaOver('1/(A1-0.3)'), {});
    expect(pole.found).toEqual([]);
    expect(pole.sentence).toContain('was found between');
  });

  test('solutions between the last two values of the grid are found, and how fine was looked is told', async () => {
    const corner = await sought(formulaOver('ABS(A1-4.99)*10-0.02'), {});
    expect(values(corner).map((value) => value.toFixed(4))).toEqual(['4.9880', '4.9920']);
    expect(corner.gap).toEqual({ of: 'input', size: expect.closeTo(10 / 240, 6) as number });
    expect(corner.looked).toBeGreaterThan(241);
    expect(corner.searched).toBe(`Looked at ${corner.looked} values. Two solutions closer than 0.042 could be missed.`);
    const wide = await sought(formulaOver('A1-5', ['1', '100']), {});
    expect(wide.gap).toEqual({ of: 'share', size: expect.closeTo(100 ** (1 / 240) - 1, 6) as number });
    expect(wide.searched).toContain('closer than 1.9 % could be missed');
  });

  test('a solution at the very edge of where there are results is found', async () => {
    const edge = await sought(formulaOver('SQRT(A1-2)'), {});
    expect(values(edge)[0]).toBeCloseTo(2, 6);
  });

  test('what is given as found, the sheet itself gives: random cubics against their roots on a fine grid', async () => {
    const coefficient = fc.integer({ min: -40, max: 40 }).map((value) => value / 10);
    await fc.assert(
      fc.asyncProperty(coefficient, coefficient, coefficient, coefficient, async (a, b, c, target) => {
        const value = (x: number): number => x ** 3 + a * x * x + b * x + c;
        const answer = await sought(formulaOver(`A1^3+${a}*A1^2+${b}*A1+${c}`.replaceAll('+-', '-')), {
          target: { kind: 'number', value: target },
        });
        const size = Math.max(Math.abs(target), target === 0 ? 100 : 0);
        for (const { result } of answer.found) {
          if (result.kind !== 'number') throw new Error(result.kind);
          expect(Math.abs(result.value - target)).toBeLessThanOrEqual(
            1.1e-6 * Math.max(size, 1000 * Number(target === 0)),
          );
        }
        // Brute force: every change of sign on a grid of its own has a solution inside it.
        for (let x = -5; x < 4.99; x += 0.0137) {
          const [left, right] = [value(x) - target, value(Math.min(5, x + 0.0137)) - target];
          if (left * right < 0)
            expect(
              values(answer).some((each) => each >= x - 1e-4 && each <= x + 0.0138),
              `a root by ${x}`,
            ).toBe(true);
        }
      }),
      { numRuns: 40 },
    );
  }, 60_000);
});

describe('a verdict sought', () => {
  const judged = documentOf({
    A1: { text: '1 mm', range: ['0.1 mm', '20 mm'] },
    B1: '=CHECK.AT_LEAST(A1/1 mm,5,3,"Travel","Take a driver with more.")',
  });

  test('the edge of good is found, and the value nearest to the present one', async () => {
    const answer = await sought(judged, { target: { kind: 'good' } });
    expect(answer.stretches[0]?.[0]).toBeCloseTo(0.005, 9);
    expect(answer.found[0]?.set.text).toBe('5 mm');
    const lenient = await sought(judged, { target: { kind: 'good', orCaution: true } });
    expect(lenient.found[0]?.set.text).toBe('3 mm');
  });

  test('none good: the nearest is a caution, not a failure', async () => {
    const answer = await sought(judged, { target: { kind: 'good' }, range: [0.001, 0.004] });
    expect(answer.found).toEqual([]);
    expect(answer.nearest && standingOf(answer.nearest.result)).toBe('caution');
  });

  test('every verdict together: the nearest value at which all are good is that of their limits', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.integer({ min: 1, max: 30 }),
        fc.integer({ min: 1, max: 30 }),
        fc.integer({ min: 1, max: 30 }),
        async (present, least, most) => {
          // A stretch narrower than the steps of the search can be missed.
          fc.pre(least !== most);
          const document = documentOf({
            A1: { text: String(present), range: ['0.5', '40'] },
            B1: `=CHECK.AT_LEAST(A1,${least},0,"It","More.")`,
            B2: `=CHECK.AT_MOST(A1,${most},50,"It","Less.")`,
          });
          const model = await DocumentModel.open(document);
          const answer = await seek(model, { document, input: at('A1'), result: EVERY, target: { kind: 'good' } });
          model.dispose();
          const values = answer.found.map(({ set }) => Number(set.text));
          expect(values).toEqual(least > most ? [] : [Math.min(Math.max(present, least), most)]);
          expect(answer.nearest?.short.length ?? 0).toBe(least > most ? 1 : 0);
        },
      ),
      { numRuns: 15 },
    );
  });

  test('a stretch a hundred times narrower than the grid is found where one verdict becomes good and another ceases to', async () => {
    const document = documentOf({
      A1: { text: '1', range: ['0', '40'] },
      B1: '=CHECK.AT_LEAST(A1,17.3,0,"It","More.")',
      B2: '=CHECK.AT_MOST(A1,17.302,50,"It","Less.")',
    });
    const { found, stretches, searched } = await sought(document, { result: EVERY, target: { kind: 'good' } });
    expect(found.map(({ set }) => set.text)).toEqual(['17.3']);
    expect(stretches).toEqual([[expect.closeTo(17.3, 6), expect.closeTo(17.302, 6)]]);
    expect(searched).toContain('A stretch narrower than 0.17 could be missed');
  });

  test('a search can be given up', async () => {
    const document = templateNamed('two-driver-check');
    const model = await DocumentModel.open(document);
    const control = new AbortController();
    control.abort();
    const question: SeekQuestion = {
      document,
      input: named(document, 'HandOver'),
      result: named(document, 'E2'),
      target: { kind: 'good' },
    };
    await expect(seek(model, question, { signal: control.signal })).rejects.toThrow('given up');
    model.dispose();
  });
});

describe('a question in words', () => {
  test('which litres give Qtc 0.707?', async () => {
    const document = templateNamed('closed-box-bench');
    const model = await DocumentModel.open(document);
    const read = await readQuestion(model, 'which litres give Qtc 0.707?');
    expect(read).toMatchObject({
      kind: 'seek',
      question: {
        input: named(document, 'Volume'),
        result: named(document, 'Qtc'),
        target: { kind: 'number', value: 0.707 },
      },
    });
    model.dispose();
  });

  test('which Xmax would make this pair work at 106 dB?', async () => {
    const document = templateNamed('two-driver-check');
    const model = await DocumentModel.open(document);
    const read = await readQuestion(model, 'which Xmax would make this pair work at 106 dB?');
    expect(read).toMatchObject({
      kind: 'seek',
      question: {
        input: named(document, 'C12'),
        result: named(document, 'E2'),
        target: { kind: 'good', orCaution: true },
        given: [{ ...named(document, 'Target'), value: 106 }],
      },
    });
    if ('wrong' in read || read.kind !== 'seek') throw new Error('It was read as something else.');
    const answer = await seek(model, read.question);
    expect(answer.found.length).toBeGreaterThan(0);
    model.dispose();
  });

  test.each([
    ['how much is it', 'Ask for the value'],
    ['which bananas give Qtc 0.707?', 'No input that fits'],
    ['which constructor give Qtc 0.707?', 'No input that fits'],
    ['which litres give Qtc?', 'No value to reach'],
    ['which litres give loudness 3?', 'No result that fits'],
  ])('“%s” asks back', async (sentence, wrong) => {
    const model = await DocumentModel.open(templateNamed('closed-box-bench'));
    const read = await readQuestion(model, sentence);
    expect('wrong' in read && read.wrong).toContain(wrong);
    model.dispose();
  });
});

import direct from 'ml-direct';
import { expect, test } from 'vitest';
import { optimise } from '../../src/analysis/optimise/optimise.ts';
import { withModel } from '../../src/analysis/model/document-model.ts';
import { at, documentOf } from './documents.ts';

/** Smooth surfaces, as a formula of the sheet and as a function for the library: bowls, valleys, many hollows. */
const surfaces = {
  'a bowl askew': {
    formula: '=(A1-1.7)^2+(A1-1.7)*(A2+0.4)+2*(A2+0.4)^2+3',
    of: (x: number, y: number) => (x - 1.7) ** 2 + (x - 1.7) * (y + 0.4) + 2 * (y + 0.4) ** 2 + 3,
  },
  'a bent valley': {
    // Rosenbrock (1960), raised by one.
    formula: '=100*(A2-A1^2)^2+(1-A1)^2+1',
    of: (x: number, y: number) => 100 * (y - x ** 2) ** 2 + (1 - x) ** 2 + 1,
  },
  'the six humps of a camel': {
    // Dixon and Szegö (1978), raised by three; two lowest places.
    formula: '=(4-2.1*A1^2+A1^4/3)*A1^2+A1*A2+(-4+4*A2^2)*A2^2+3',
    of: (x: number, y: number) => (4 - 2.1 * x ** 2 + x ** 4 / 3) * x ** 2 + x * y + (-4 + 4 * y ** 2) * y ** 2 + 3,
  },
  'hollows at whole numbers': {
    // Rastrigin (1974), shifted off the grid.
    formula: '=20+(A1-0.3)^2-10*COS(2*3.14159265358979*(A1-0.3))+A2^2-10*COS(2*3.14159265358979*A2)+1',
    of: (x: number, y: number) =>
      20 + (x - 0.3) ** 2 - 10 * Math.cos(2 * Math.PI * (x - 0.3)) + y ** 2 - 10 * Math.cos(2 * Math.PI * y) + 1,
  },
} as const;

test.each(Object.entries(surfaces))('%s: no higher than what dividing rectangles finds', async (_, { formula, of }) => {
  const bounds = [
    [-2.9, 3.1],
    [-2.3, 2.6],
  ] as const;
  const document = documentOf({ A1: '2', A2: '2', B1: formula });
  const { found } = await withModel(document, (model) =>
    optimise(model, {
      document,
      inputs: ['A1', 'A2'].map((cell, index) => ({ ...at(cell), range: bounds[index] ?? [0, 1] })),
      objective: { kind: 'least', result: at('B1') },
    }),
  );
  const library = direct(
    ([x = 0, y = 0]: number[]) => of(x, y),
    bounds.map(([from]) => from),
    bounds.map(([, to]) => to),
    { iterations: 60 },
  );
  // Values are typed with as few digits as come within a thousandth of the best.
  expect(found?.value).toBeLessThanOrEqual(library.minFunctionValue * 1.002);
  expect(found?.value).toBeGreaterThan(library.minFunctionValue * 0.99);
});

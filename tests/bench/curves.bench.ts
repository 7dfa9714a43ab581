import { bench, describe } from 'vitest';
import { boxResponse } from '../../functions/enclosure/box-curves.ts';
import type { AnyFunction } from '../../functions/define.ts';
import { catalogue } from '../../functions/index.ts';
import type { Box } from '../../functions/values/box.ts';
import type { Curve } from '../../functions/values/curve.ts';
import { frequencies } from '../../functions/values/grid.ts';
import { createEngine } from '../../src/engine/direct.ts';
import { paired } from './paired.ts';

const once = { iterations: 1, time: 0, warmupIterations: 0, warmupTime: 0 } as const;
const MANY = 200;

/** The sheet's own box, so that both start from the same numbers. */
async function demoBox(): Promise<Box> {
  const engine = createEngine();
  await engine.load([{ id: 's', name: 'S', cells: new Map(), names: new Map() }]);
  const { value } = await engine.evaluate(
    's',
    'CLOSED.BOX(DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "5.8 Ω", "132 cm²", "5.5 mm"), "12 L")',
  );
  if (value.kind !== 'record' || value.record.kind !== 'box') throw new Error('There is no box to measure with.');
  return value.record;
}

/** The response of a closed box without losses in one loop, as one would write it by hand. */
function byHand({ driver, volume, fill }: Box): { readonly y: Float64Array; readonly phase: Float64Array } {
  const { fs = 0, qms = 1, qes = 1, vas = 0 } = driver;
  const stiffness = 1 + vas / (volume * fill);
  const damping = 1 / qms + 1 / qes;
  const y = new Float64Array(frequencies.length);
  const phase = new Float64Array(frequencies.length);
  for (let index = 0; index < y.length; index++) {
    const s = (frequencies[index] ?? 0) / fs;
    const square = s * s;
    const re = stiffness - square;
    const im = s * damping;
    const size = re * re + im * im;
    y[index] = 10 * Math.log10((square * square) / size);
    phase[index] = Math.atan2(square * im, -square * re);
  }
  return { y, phase };
}

const response = catalogue.find(({ name }) => name === boxResponse.name) as AnyFunction;

describe('one response of a closed box, 577 points with phase', () => {
  bench(
    'by the catalogue, as a ratio to a loop written by hand',
    async () => {
      const box = await demoBox();
      const own = (of: Box): Curve => response.compute({ box: of }, { quantity: 'ratio' }) as Curve;
      const furthest = byHand(box).y.reduce(
        (most, level, index) => Math.max(most, Math.abs(level - (own(box).y[index] ?? 0))),
        0,
      );
      console.log(`furthest apart: ${furthest.toExponential(1)} dB`);
      let litres = 10;
      const another = (): Box => ({ ...box, volume: (litres += 1e-6) / 1000 });
      await paired({
        name: `${String(MANY)} responses, the function alone`,
        ours: () => {
          for (let count = 0; count < MANY; count++) own(another());
        },
        base: () => {
          for (let count = 0; count < MANY; count++) byHand(another());
        },
      });
      const engine = createEngine();
      const driver = '=DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "5.8 Ω", "132 cm²", "5.5 mm")';
      const cells = new Map([
        ['A1', driver],
        ['A2', '12 L'],
        ['A3', '=CLOSED.BOX(A1, A2)'],
        ['A4', '=BOX.RESPONSE(A3)'],
      ]);
      await engine.load([{ id: 's', name: 'S', cells, names: new Map() }]);
      await paired({
        name: `${String(MANY)} responses through the sheet: a volume typed, box and curve told`,
        ours: async () => {
          for (let count = 0; count < MANY; count++) {
            await engine.write([{ sheet: 's', cell: 'A2', text: `${(litres += 1e-6).toFixed(7)} L` }]);
          }
        },
        base: () => {
          for (let count = 0; count < MANY; count++) byHand(another());
        },
      });
    },
    once,
  );
});

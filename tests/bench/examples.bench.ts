import { bench, describe } from 'vitest';
import { catalogue } from '../../functions/index.ts';
import { createEngine } from '../../src/engine/direct.ts';
import { paired } from './paired.ts';

const once = { iterations: 1, time: 0, warmupIterations: 0, warmupTime: 0 } as const;

describe('the worked examples of the whole catalogue, each on its sheet', () => {
  bench(
    'asked one after the other, as a ratio to as many sums of two numbers',
    async () => {
      const engine = createEngine();
      const examples = catalogue.map(({ example }, index) => ({ ...example, id: `s${String(index)}` }));
      await engine.load(
        examples.map(({ id, cells = {} }) => ({
          id,
          name: id,
          cells: new Map(Object.entries(cells)),
          names: new Map(),
        })),
      );
      await paired({
        name: `${String(examples.length)} examples`,
        ours: async () => {
          for (const { id, formula } of examples) await engine.evaluate(id, formula);
        },
        base: async () => {
          for (const { id } of examples) await engine.evaluate(id, '=1+2');
        },
      });
      engine.dispose();
    },
    once,
  );
});

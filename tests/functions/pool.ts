import fc from 'fast-check';
import { catalogue } from '../../functions/index.ts';
import { Problem } from '../../functions/values/problem.ts';
import type { CellRecord, RecordKind } from '../../functions/values/record.ts';
import { createEngine } from '../../src/engine/direct.ts';
import { argumentsOf, type Pool } from './drawn.ts';

type Growing = Record<RecordKind, CellRecord[]>;

/** Every record that the worked examples give, and for each function a few made of those by whatever it allows. */
export async function poolOfRecords(seed: number): Promise<Pool> {
  const pool: Growing = {
    driver: [],
    box: [],
    curve: [],
    verdict: [],
    window: [],
    network: [],
    way: [],
    table: [],
    sample: [],
  };
  const engine = createEngine();
  for (const { example } of catalogue) {
    await engine.load([
      { id: 's', name: 'Sheet', cells: new Map(Object.entries(example.cells ?? {})), names: new Map() },
    ]);
    const { value } = await engine.evaluate('s', example.formula);
    if (value.kind === 'record') pool[value.record.kind].push(value.record);
  }
  engine.dispose();
  // What runs a box or a sum of ways many times is left to the examples.
  const quick = catalogue.filter(({ name, returns }) => 'record' in returns && !/^(SPREAD|AROUND)\./.test(name));
  const grown = quick.flatMap((each) =>
    fc
      .sample(argumentsOf(each, pool), { numRuns: 5, seed })
      .map((given) => each.compute(given, { quantity: 'ratio' }))
      .filter((result) => !(result instanceof Problem)),
  ) as CellRecord[];
  for (const record of grown) pool[record.kind].push(record);
  return pool;
}

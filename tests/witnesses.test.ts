import { afterAll, beforeAll, expect, test } from 'vitest';
import { createEngine } from '../src/engine/direct.ts';
import { allowed } from './witnesses/witness.ts';
import { witnesses } from './witnesses/index.ts';

const engine = createEngine();
beforeAll(() => engine.load([{ id: 's', name: 'Sheet', cells: new Map(), names: new Map() }]));
afterAll(() => engine.dispose());

test.each(witnesses.map((witness) => [witness.formula, witness] as const))('%s', async (formula, witness) => {
  const { value } = await engine.evaluate('s', formula);
  if (value.kind !== 'number') throw new Error(JSON.stringify(value));
  expect(Math.abs(value.value - witness.gives), `${value.value}; ${witness.source}`).toBeLessThanOrEqual(
    allowed(witness),
  );
});

import { afterAll, expect, test } from 'vitest';
import { catalogue } from '../functions/index.ts';
import { createEngine } from '../src/engine/direct.ts';
import { ask } from './witnesses/ask.ts';
import { witnesses } from './witnesses/index.ts';
import { allowed, vouchedBy } from './witnesses/witness.ts';

const engine = createEngine();
afterAll(() => engine.dispose());

test.each(witnesses.map((witness) => [witness.formula, witness] as const))('%s', async (_, witness) => {
  const { gives, source } = witness;
  const got = await ask(engine, witness);
  if (typeof gives === 'string' || typeof got === 'string') expect(got, source).toBe(gives);
  else expect(Math.abs(got - gives), `${String(got)}; ${source}`).toBeLessThanOrEqual(allowed(witness));
});

test('every function of the catalogue has a witness, and every witness vouches for one', () => {
  const vouched = new Set(witnesses.flatMap(vouchedBy));
  const names = new Set(catalogue.map(({ name }) => name));
  expect([...names].filter((name) => !vouched.has(name))).toEqual([]);
  expect([...vouched].filter((name) => !names.has(name))).toEqual([]);
});

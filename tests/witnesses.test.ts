import { afterAll, expect, test } from 'vitest';
import { catalogue } from '../functions/index.ts';
import { createEngine } from '../src/engine/direct.ts';
import { ask } from './witnesses/ask.ts';
import { identities } from './witnesses/identities.ts';
import { witnesses } from './witnesses/index.ts';
import { simulated } from './witnesses/simulated.ts';
import { shareOf, vouchedBy, type Witness } from './witnesses/witness.ts';

const engine = createEngine();
afterAll(() => engine.dispose());

const named = (those: readonly Witness[]) => those.map((witness) => [witness.formula, witness] as const);

test.each(named(witnesses.filter(({ disagrees }) => disagrees === undefined)))('%s', async (_, witness) => {
  const got = await ask(engine, witness);
  expect(shareOf(witness, got), `${String(got)} for ${String(witness.gives)}; ${witness.source}`).toBeLessThanOrEqual(
    1,
  );
});

// Turns red the day we agree.
test.fails.each(named(witnesses.filter(({ disagrees }) => disagrees !== undefined)))('%s', async (_, witness) => {
  expect(shareOf(witness, await ask(engine, witness)), witness.disagrees).toBeLessThanOrEqual(1);
});

test.each(identities.map((each) => [`${each.vouches.join(', ')}, ${each.nature}: ${each.because}`, each] as const))(
  '%s',
  async (_, { formula, equals, cells, within, because }) => {
    const [one, other] = [
      await ask(engine, { formula, ...(cells && { cells }) }),
      await ask(engine, { formula: equals, ...(cells && { cells }) }),
    ];
    expect(one).toBeTypeOf('number');
    expect(
      Math.abs(Number(one) - Number(other)),
      `${String(one)} and ${String(other)}: ${because}`,
    ).toBeLessThanOrEqual(within * Math.abs(Number(other)));
  },
);

test('every function of the catalogue has a witness, and every witness vouches for one', () => {
  const agreed = witnesses.filter(({ disagrees }) => disagrees === undefined);
  const vouched = new Set([...agreed.flatMap(vouchedBy), ...simulated.flatMap(({ vouches }) => vouches)]);
  const names = new Set(catalogue.map(({ name }) => name));
  expect([...names].filter((name) => !vouched.has(name))).toEqual([]);
  expect([...vouched].filter((name) => !names.has(name))).toEqual([]);
});

test('every function is vouched for a second time, by a check of another nature that calls it', () => {
  const again = new Set([...identities, ...simulated].flatMap(({ vouches }) => vouches));
  expect(catalogue.map(({ name }) => name).filter((name) => !again.has(name))).toEqual([]);
  for (const { formula, equals, vouches } of identities) {
    expect(formula).not.toBe(equals);
    for (const name of vouches) expect(`${formula} ${equals}`).toContain(`${name}(`);
  }
});

import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { AnyFunction, Parameter } from '../../../functions/define.ts';
import { electricalFunctions } from '../../../functions/electrical/index.ts';
import { levelFunctions } from '../../../functions/level/index.ts';
import { measureFunctions } from '../../../functions/measure/index.ts';
import { pairingFunctions } from '../../../functions/pairing/index.ts';
import { radiationFunctions } from '../../../functions/radiation/index.ts';
import { Problem } from '../../../functions/values/problem.ts';

const families = [
  ...radiationFunctions,
  ...electricalFunctions,
  ...levelFunctions,
  ...measureFunctions,
  ...pairingFunctions,
];

function values(parameter: Parameter): fc.Arbitrary<unknown> | undefined {
  if ('choice' in parameter) return fc.constantFrom(...parameter.choice);
  if (!('quantity' in parameter)) return undefined;
  const { min = -1e15, max = 1e15 } = parameter;
  return fc.oneof(fc.double({ min, max, noNaN: true }), fc.constantFrom(min, max));
}

/** Every number that a result holds, however deep. */
const numbersIn = (result: unknown): readonly number[] => {
  if (typeof result === 'number') return [result];
  if (result instanceof Float64Array) return [...result];
  return typeof result === 'object' && result !== null ? Object.values(result).flatMap(numbersIn) : [];
};

const readable = (each: AnyFunction): boolean =>
  Object.values(each.parameters).every((one) => values(one) !== undefined);

test.each(families.filter(readable).map((each) => [each.name, each] as const))(
  '%s gives finite numbers or a problem over its whole declared range',
  (_, each) => {
    const given = Object.fromEntries(Object.entries(each.parameters).map(([key, one]) => [key, values(one)!]));
    fc.assert(
      fc.property(fc.record(given), (drawn) => {
        const result = each.compute(drawn, { quantity: 'ratio' });
        if (result instanceof Problem) return;
        expect(numbersIn(result).every(Number.isFinite)).toBe(true);
      }),
    );
  },
);

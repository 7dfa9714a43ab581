import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { AnyFunction, NumberParameter } from '../../functions/define.ts';
import { catalogue } from '../../functions/index.ts';
import { Problem } from '../../functions/values/problem.ts';
import { readArgument, Refused } from '../../src/engine/arguments.ts';
import { speak } from '../../src/units/show.ts';
import { argumentsOf } from './drawn.ts';
import { poolOfRecords } from './pool.ts';

const pool = await poolOfRecords(1);

/** Infinite where there is no such loss, and for the air behind a wall without end. */
const mayBeInfinite = new Set(['leakageQ', 'absorptionQ', 'portQ', 'volume']);

/** Where a result holds a number that is none, however deep. */
function strayIn(value: unknown, path: string): readonly string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path} is ${String(value)}`];
  if (value instanceof Float64Array) return value.every(Number.isFinite) ? [] : [`${path} holds a number that is none`];
  if (typeof value !== 'object' || value === null) return [];
  const isBox = 'kind' in value && value.kind === 'box';
  return (
    Object.entries(value)
      .filter(([key, each]) => !(isBox && each === Infinity && mayBeInfinite.has(key)))
      // A run without a value is no number in the sample.
      .filter(([key]) => !('kind' in value && value.kind === 'sample' && key === 'values'))
      .flatMap(([key, each]) => strayIn(each, `${path}.${key}`))
  );
}

/** What is wrong with the words of a refusal. */
function badlySaid({ message, parameter = '' }: Problem, { parameters }: AnyFunction): readonly string[] {
  const said = speak(message, 'metric');
  return [
    ...(parameter in parameters ? [] : [`“${parameter}” is no argument`]),
    ...(/^\S.{10,}$/s.test(said) && !/NaN|Infinity|undefined|\[object/.test(said) ? [] : [`it says “${said}”`]),
  ];
}

const named = catalogue.map((each) => [each.name, each] as const);

test.each(named)('%s gives finite numbers, or names an argument and says why not', (_, each) => {
  fc.assert(
    fc.property(argumentsOf(each, pool), (given) => {
      const result = each.compute(given, { quantity: 'ratio' });
      expect(result).toBeDefined();
      expect(result instanceof Problem ? badlySaid(result, each) : strayIn(result, 'it')).toEqual([]);
    }),
    { seed: 1, numRuns: 40, interruptAfterTimeLimit: 100 },
  );
});

/** The number next to each limit on the wrong side of it, and the word that the limit is told with. */
function beyond({ min, max, above, below }: NumberParameter): readonly (readonly [word: string, value: number])[] {
  const outside = (limit: number, sense: number): number => limit + sense * Math.max(1, Math.abs(limit));
  return [
    ...(min === undefined ? [] : ([['at least', outside(min, -1)]] as const)),
    ...(max === undefined ? [] : ([['at most', outside(max, 1)]] as const)),
    ...(above === undefined ? [] : ([['above', above]] as const)),
    ...(below === undefined ? [] : ([['below', below]] as const)),
  ];
}

const limited = catalogue.flatMap((definition) =>
  Object.entries(definition.parameters).flatMap(([name, parameter]) =>
    'quantity' in parameter
      ? beyond(parameter).map(([word, value]) => ({ definition, name, parameter, word, value }))
      : [],
  ),
);

test.each(limited)(
  '$definition.name refuses what is not $word the limit of $name, with limit and value',
  ({ definition, name, parameter, word, value }) => {
    const quantity = parameter.quantity === 'any' ? 'ratio' : parameter.quantity;
    const refused = readArgument(value, { definition, name, parameter, cell: 'B4', quantity });
    expect(refused).toBeInstanceOf(Refused);
    const { message } = refused as Refused;
    const number = String.raw`[−-]?[\d.,]+.*`;
    expect(message).toContain(`${definition.name}, ${name} (${parameter.summary}) must be `);
    expect(message).toMatch(
      new RegExp(`must be (at least|at most|above|below) ${number}, but B4 is ${number}\\. Type a value`),
    );
    expect(message).toContain(`must be ${word} `);
  },
);

test('every number of every function has a limit below and above, by itself or by what is usual', () => {
  const open = catalogue.flatMap(({ name, parameters }) =>
    Object.entries(parameters).flatMap(([key, parameter]) =>
      'quantity' in parameter &&
      ((parameter.min ?? parameter.above) === undefined || (parameter.max ?? parameter.below) === undefined)
        ? [`${name} ${key}`]
        : [],
    ),
  );
  expect(open).toEqual([]);
});

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { crossoverFunctions } from '../../../functions/crossover/index.ts';
import type { AnyFunction, Parameter } from '../../../functions/define.ts';
import { completeDriver } from '../../../functions/driver/complete-driver.ts';
import { levelFunctions } from '../../../functions/level/index.ts';
import { Problem } from '../../../functions/values/problem.ts';
import { curve, network, run, way } from './run.ts';

const driver = completeDriver('', {
  fs: 38,
  qms: 4.8,
  qes: 0.42,
  vas: 0.02852,
  re: 5.8,
  sd: 0.0132,
  xmax: 0.0055,
  pe: 70,
});
const { phase: _phase, ...silent } = curve('LOAD.RESISTOR', 8);
const filter = network(
  'NETWORK.JOIN',
  network('NETWORK.HIGH', 'BW3', 1500, 6, 0.2),
  network('NETWORK.TRAP', 6, 1e-3, 2e-5),
);
/** Of every kind of record some that fit and some that do not. */
const records: Readonly<Record<string, readonly unknown[]>> = {
  driver: [driver, completeDriver('', {})],
  box: [run('CLOSED.BOX', driver, 0.012), run('VENTED.BOX', driver, 0.022, 40, 7)],
  curve: [curve('LOAD.RESISTOR', 8), silent, curve('FILTER.SLOPE', 1000, 'LR4', 'low')],
  network: [filter, network('NETWORK.WIRE'), network('NETWORK.LOW', 'LR2', 1000, 8)],
  way: [
    way('WAY.OF', driver, filter),
    way('WAY.OF', run('VENTED.BOX', driver, 0.022, 40, 7), undefined, 0.1, 0.2, 0.05, 'reversed'),
  ],
  any: [driver, filter, silent],
};

function drawn(parameter: Parameter): fc.Arbitrary<unknown> {
  const one = single(parameter);
  if (parameter.many) return fc.array(one, { maxLength: 3 });
  return parameter.optional && !('default' in parameter) ? fc.option(one, { nil: undefined }) : one;
}
function single(parameter: Parameter): fc.Arbitrary<unknown> {
  if ('record' in parameter) return fc.constantFrom(...records[parameter.record]!);
  if ('choice' in parameter) return fc.constantFrom(...parameter.choice);
  if ('text' in parameter) return fc.string({ maxLength: 5 });
  if ('truth' in parameter) return fc.boolean();
  if ('table' in parameter)
    return fc.array(
      fc.array(fc.oneof(fc.constantFrom('series', 'across', 'tank', '', null), fc.double()), { maxLength: 7 }),
      {
        maxLength: 4,
      },
    );
  const { min = -1e15, max = 1e15 } = parameter;
  return fc.oneof(fc.double({ min, max, noNaN: true }), fc.constantFrom(min, max));
}

/** All numbers that a result is made of, wherever they stand in it. */
function numbersIn(value: unknown): readonly number[] {
  if (typeof value === 'number') return [value];
  if (value instanceof Float64Array) return [...value];
  if (Array.isArray(value)) return value.flatMap(numbersIn);
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, each]) => (key === 'driver' || key === 'box' ? [] : numbersIn(each)));
}

test.each([...crossoverFunctions, ...levelFunctions].map((each) => [each.name, each] as const))(
  '%s gives finite numbers or a problem with words over its whole declared range',
  (_, each: AnyFunction) => {
    const given = Object.fromEntries(Object.entries(each.parameters).map(([key, one]) => [key, drawn(one)]));
    fc.assert(
      fc.property(fc.record(given), (all) => {
        const result = each.compute(all, { quantity: 'ratio' });
        if (result instanceof Problem) expect(result.message.length).toBeGreaterThan(0);
        else expect(numbersIn(result).every(Number.isFinite)).toBe(true);
      }),
      { numRuns: 40 },
    );
  },
);

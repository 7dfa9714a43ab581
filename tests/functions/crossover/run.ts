import { expect } from 'vitest';
import type { AnyFunction } from '../../../functions/define.ts';
import { crossoverFunctions } from '../../../functions/crossover/index.ts';
import { curveFunctions } from '../../../functions/curve/index.ts';
import { driverFunctions } from '../../../functions/driver/index.ts';
import { enclosureFunctions } from '../../../functions/enclosure/index.ts';
import { levelFunctions } from '../../../functions/level/index.ts';
import type { QuantityName } from '../../../functions/quantities.ts';
import type { Curve } from '../../../functions/values/curve.ts';
import { frequencies } from '../../../functions/values/grid.ts';
import { readAt } from '../../../functions/values/interpolate.ts';
import type { Network } from '../../../functions/values/network.ts';
import { Problem } from '../../../functions/values/problem.ts';
import type { TableRecord } from '../../../functions/values/table.ts';
import type { Way } from '../../../functions/values/way.ts';

const all: readonly AnyFunction[] = [
  ...driverFunctions,
  ...enclosureFunctions,
  ...crossoverFunctions,
  ...levelFunctions,
  ...curveFunctions,
];

const found = (name: string): AnyFunction => {
  const function_ = all.find((each) => each.name === name);
  if (function_ === undefined) throw new Error(`no function ${name}`);
  return function_;
};

/** Runs a sheet function by name with its arguments in order, SI; defaults are filled in as the engine does. */
export function run(name: string, ...given: readonly unknown[]): unknown {
  return runWith('ratio', name, ...given);
}

/** The same, with the quantity of its arguments that may have any. */
export function runWith(quantity: QuantityName, name: string, ...given: readonly unknown[]): unknown {
  const function_ = found(name);
  const entries = Object.entries(function_.parameters).map(([key, parameter], index) => [
    key,
    parameter.many ? given.slice(index) : (given[index] ?? ('default' in parameter ? parameter.default : undefined)),
  ]);
  return function_.compute(Object.fromEntries(entries) as Record<string, unknown>, { quantity });
}

function good(name: string, given: readonly unknown[]): unknown {
  const result = run(name, ...given);
  if (result instanceof Problem) throw new Error(`${name}: ${JSON.stringify(result.message)}`);
  return result;
}
export const number = (name: string, ...given: readonly unknown[]): number => good(name, given) as number;
export const curve = (name: string, ...given: readonly unknown[]): Curve => good(name, given) as Curve;
export const network = (name: string, ...given: readonly unknown[]): Network => good(name, given) as Network;
export const way = (name: string, ...given: readonly unknown[]): Way => good(name, given) as Way;
export const table = (name: string, ...given: readonly unknown[]): TableRecord => good(name, given) as TableRecord;

/** The words of a refusal; fails when there is none. */
export function refusal(name: string, ...given: readonly unknown[]): string {
  const result = run(name, ...given);
  expect(result).toBeInstanceOf(Problem);
  return (result as Problem).message.map((part) => (typeof part === 'string' ? part : String(part.value))).join('');
}

export const at = (of: Curve, frequency: number): number => readAt(of.y, frequency);

/** The grid points from one frequency to another. */
export const points = (from: number, to: number): number[] =>
  [...frequencies.keys()].filter((index) => frequencies[index]! >= from && frequencies[index]! <= to);

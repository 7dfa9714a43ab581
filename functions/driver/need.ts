import type { Driver } from '../values/driver.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import { parameterOf, type NumberField } from './parameters.ts';

export type With<F extends NumberField> = Driver & { readonly [K in F]: number };

/** The driver with the asked fields present, or a Problem that names the missing ones and what to do. */
export function need<F extends NumberField>(
  driver: Driver,
  fields: readonly F[],
  parameter = 'driver',
): With<F> | Problem {
  if (fields.every((field) => driver[field] !== undefined)) return driver as With<F>;
  const missing = fields.filter((field) => driver[field] === undefined).map((field) => parameterOf(field).symbol);
  const who = driver.name === '' ? 'the driver' : `the driver ${driver.name}`;
  return new Problem(
    say`For this ${who} also needs ${missing.join(', ')}: add ${missing.length === 1 ? 'that row' : 'these rows'} to its data.`,
    parameter,
  );
}

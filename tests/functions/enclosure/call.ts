import { driverFunctions } from '../../../functions/driver/index.ts';
import { enclosureFunctions } from '../../../functions/enclosure/index.ts';
import { completeDriver } from '../../../functions/driver/complete-driver.ts';
import type { GivenNumbers } from '../../../functions/driver/parameters.ts';
import type { Box } from '../../../functions/values/box.ts';
import type { Curve } from '../../../functions/values/curve.ts';
import type { Driver } from '../../../functions/values/driver.ts';
import { Problem } from '../../../functions/values/problem.ts';

export const all = [...driverFunctions, ...enclosureFunctions];

/** Runs a sheet function by name with the named arguments in SI; defaults are filled in as the engine does. */
export function call(name: string, given: Readonly<Record<string, unknown>>): unknown {
  const found = all.find((each) => each.name === name);
  if (found === undefined) throw new Error(`no function ${name}`);
  const entries = Object.entries(found.parameters).map(([key, parameter]) => [
    key,
    given[key] ?? ('default' in parameter ? parameter.default : undefined),
  ]);
  return found.compute(Object.fromEntries(entries) as Record<string, unknown>, { quantity: 'ratio' });
}

function good(name: string, given: Readonly<Record<string, unknown>>): unknown {
  const result = call(name, given);
  if (result instanceof Problem) throw new Error(`${name}: ${JSON.stringify(result.message)}`);
  return result;
}

export const number = (name: string, given: Readonly<Record<string, unknown>>): number => good(name, given) as number;
export const box = (name: string, given: Readonly<Record<string, unknown>>): Box => good(name, given) as Box;
export const curve = (name: string, given: Readonly<Record<string, unknown>>): Curve => good(name, given) as Curve;
export const driver = (given: GivenNumbers): Driver => completeDriver('', given);

/** Invented 165 mm woofer, 8 Ω. */
export const woofer = driver({
  fs: 38,
  qms: 4.8,
  qes: 0.42,
  vas: 0.02852,
  re: 5.8,
  sd: 0.0132,
  xmax: 0.0055,
  le: 0.00055,
});

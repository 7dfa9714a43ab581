import type { AnyFunction } from '../../../functions/define.ts';
import { pairingFunctions } from '../../../functions/pairing/index.ts';
import { radiationFunctions } from '../../../functions/radiation/index.ts';
import type { Curve } from '../../../functions/values/curve.ts';
import { Problem } from '../../../functions/values/problem.ts';
import type { Sentence } from '../../../functions/values/say.ts';
import type { Verdict } from '../../../functions/values/verdict.ts';

type Given = Readonly<Record<string, unknown>>;

const all: readonly AnyFunction[] = [...radiationFunctions, ...pairingFunctions];

/** Runs a sheet function by name with the named arguments in SI; defaults are filled in as the engine does. */
export function call(name: string, given: Given): unknown {
  const found = all.find((each) => each.name === name);
  if (found === undefined) throw new Error(`no function ${name}`);
  const entries = Object.entries(found.parameters).map(([key, parameter]) => [
    key,
    given[key] ?? ('default' in parameter ? parameter.default : undefined),
  ]);
  return found.compute(Object.fromEntries(entries) as Given, { quantity: 'ratio' });
}

function good(name: string, given: Given): unknown {
  const result = call(name, given);
  if (result instanceof Problem) throw new Error(`${name}: ${spoken(result.message)}`);
  return result;
}

export const number = (name: string, given: Given): number => good(name, given) as number;
export const curve = (name: string, given: Given): Curve => good(name, given) as Curve;
export const verdict = (name: string, given: Given): Verdict => good(name, given) as Verdict;

/** What a function says when it refuses. */
export function refusal(name: string, given: Given): string {
  const result = call(name, given);
  if (!(result instanceof Problem)) throw new Error(`${name} did not refuse`);
  return spoken(result.message);
}

/** A sentence with its numbers in SI, to three places. */
export const spoken = (sentence: Sentence): string =>
  sentence.map((part) => (typeof part === 'string' ? part : part.value.toFixed(3))).join('');

export const degrees = (value: number): number => (value * Math.PI) / 180;

import { quantities } from '../../functions/quantities.ts';
import type { AnyFunction, Parameter, Result } from '../../functions/define.ts';
import { sources } from '../../functions/sources.ts';

/** The catalogue for programs: everything that the declarations say. */
export const describeFunctions = (catalogue: readonly AnyFunction[]): unknown =>
  catalogue.map(({ name, summary, parameters, returns, source, example, remarks }) => ({
    name,
    summary,
    parameters: Object.entries(parameters).map(([parameter, declared]) => ({
      name: parameter,
      ...declared,
      ...unitOf(declared),
    })),
    returns: { ...returns, ...unitOf(returns) },
    source: { ...source, reference: sources[source.source] },
    example,
    ...(remarks !== undefined && { remarks }),
  }));

/** `any` and `curve` take their unit from the arguments. */
const unitOf = (declared: Parameter | Result): { unit?: string } =>
  'quantity' in declared && declared.quantity !== 'any' && declared.quantity !== 'curve'
    ? { unit: quantities[declared.quantity].si }
    : {};

/** The catalogue for people: a line a function, as it is written in a formula. */
export const listFunctions = (catalogue: readonly AnyFunction[]): string =>
  catalogue
    .map(({ name, summary, parameters }) => `${name}(${Object.keys(parameters).join(', ')})  ${summary}`)
    .join('\n');

import type { FunctionDescription, NumberParameter, Parameter } from '../../../functions/define.ts';
import { quantities } from '../../../functions/quantities.ts';
import { show } from '../../units/show.ts';

/** A parameter as a reader needs it: what kind of thing, in what range, and what is taken where it is left out. */
export function parameterWords(parameter: Parameter): string {
  const words = [kindOf(parameter), ...('quantity' in parameter ? rangeOf(parameter) : [])];
  if ('default' in parameter && parameter.default !== undefined) words.push(`${defaultOf(parameter)} where left out`);
  else if (parameter.optional) words.push('may be left out');
  if (parameter.many) words.push('as many as wanted');
  return words.join(', ');
}

/** What a function gives: `a frequency`, `a curve`, `a text`. */
export function resultWords(returns: FunctionDescription['returns']): string {
  if ('record' in returns) return `a ${returns.record}`;
  if ('text' in returns) return 'a text';
  if ('truth' in returns) return 'true or false';
  if (returns.quantity === 'any') return 'the quantity of its arguments';
  if (returns.quantity === 'curve') return 'the quantity of the curve';
  return quantities[returns.quantity].noun;
}

/** `CLOSED.QTC(qts, vas, vb)` */
export const signatureOf = ({ name, parameters }: FunctionDescription): string =>
  `${name}(${Object.keys(parameters).join(', ')})`;

function kindOf(parameter: Parameter): string {
  if ('quantity' in parameter)
    return parameter.quantity === 'any' ? 'any quantity' : quantities[parameter.quantity].noun;
  if ('record' in parameter) return parameter.record === 'any' ? 'any record' : `a ${parameter.record}`;
  if ('choice' in parameter) return `one of ${parameter.choice.join(', ')}`;
  if ('text' in parameter) return 'a text';
  return 'truth' in parameter ? 'true or false' : 'a range of cells';
}

function rangeOf(parameter: NumberParameter): string[] {
  const { above, below, min, max } = parameter;
  const limit = (word: string, value: number | undefined): string[] =>
    value === undefined ? [] : [`${word} ${inUnit(value, parameter)}`];
  return [...limit('above', above), ...limit('at least', min), ...limit('at most', max), ...limit('below', below)];
}

function defaultOf(parameter: Parameter & { readonly default?: unknown }): string {
  if (typeof parameter.default === 'number' && 'quantity' in parameter) return inUnit(parameter.default, parameter);
  return String(parameter.default);
}

function inUnit(value: number, { quantity }: NumberParameter): string {
  const { number, unit } = show(value, { quantity: quantity === 'any' ? 'ratio' : quantity, system: 'metric' });
  return `${number} ${unit}`.trim();
}

import { quantities } from '../../../functions/quantities.ts';
import { sameDimension } from '../../units/dimension.ts';
import { parseQuantity } from '../../units/parse.ts';
import type { Cell } from '../types.ts';

/** Why a text cannot stand in an input; nothing where it can. An input is known by its choices or by what stands in it. */
export function misfit(text: string, input: Cell): string | undefined {
  if (input.choices) {
    return input.choices.includes(text) ? undefined : `The new sheet offers ${input.choices.join(', ')} there.`;
  }
  const wanted = parseQuantity(input.text || (input.range?.[0] ?? ''));
  if (!wanted) return undefined;
  const given = parseQuantity(text);
  const noun = quantities[wanted.quantity].noun;
  if (!given) return `The new sheet wants ${noun} there.`;
  const isAlike = sameDimension(quantities[given.quantity].dimension, quantities[wanted.quantity].dimension);
  return isAlike ? undefined : `The new sheet wants ${noun} there.`;
}

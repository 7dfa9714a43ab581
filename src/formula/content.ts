import type { QuantityName } from '../../functions/quantities.ts';
import { parseQuantity } from '../units/parse.ts';

/** What a typed text is. Anything that is nothing else is text: nothing is refused. */
export type Content =
  | { readonly kind: 'empty' }
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'quantity'; readonly value: number; readonly unit: string; readonly quantity: QuantityName }
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'truth'; readonly truth: boolean }
  | { readonly kind: 'formula'; readonly text: string };

/** Reads what was typed into a cell. A leading apostrophe makes anything a text. */
export function readContent(typed: string): Content {
  if (typed.trim() === '') return { kind: 'empty' };
  if (typed.startsWith("'")) return { kind: 'text', text: typed.slice(1) };
  if (typed.startsWith('=') && typed.length > 1) return { kind: 'formula', text: typed };
  if (/^(true|false)$/i.test(typed.trim())) return { kind: 'truth', truth: typed.trim().toLowerCase() === 'true' };
  const read = parseQuantity(typed);
  if (!read) return { kind: 'text', text: typed };
  const { value, unit, quantity } = read;
  return unit === '' ? { kind: 'number', value } : { kind: 'quantity', value, unit, quantity };
}

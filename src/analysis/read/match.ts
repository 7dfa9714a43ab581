import { unitNamed } from '../../units/table.ts';
import { quantities, type QuantityName } from '../../../functions/quantities.ts';
import type { Input, Result } from '../subject/types.ts';

/** Unit names as they are spoken, in the singular. */
const spoken: ReadonlyMap<string, string> = new Map(
  Object.entries({
    litre: 'L',
    liter: 'L',
    ohm: 'Ω',
    hertz: 'Hz',
    kilohertz: 'kHz',
    watt: 'W',
    volt: 'V',
    millimetre: 'mm',
    millimeter: 'mm',
    centimetre: 'cm',
    centimeter: 'cm',
    metre: 'm',
    meter: 'm',
    decibel: 'dB',
    gram: 'g',
    octave: 'oct',
    inch: 'in',
    inche: 'in',
  }),
);

/** The quantity that a word stands for as a unit: `litres`, `mm`, `Hz`. */
export function quantityMeant(word: string): QuantityName | undefined {
  const lower = word.toLowerCase();
  const unit = unitNamed(word) ?? unitNamed(spoken.get(lower) ?? spoken.get(lower.replace(/s$/, '')) ?? '');
  return unit && unit.symbol !== '' ? unit.quantity : undefined;
}

const fillers = new Set('the a an of this that for in my its it each present value to be is are cell'.split(' '));

/** The words of a phrase or of a label: `BoxVolume`, `box volume` and `Box volume, Vb` share theirs. */
export const wordsOf = (text: string): string[] =>
  text
    .replaceAll(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '' && !fillers.has(word));

const stem = (word: string): string => (word.length > 3 ? word.replace(/s$/, '') : word);

const isAlike = (a: string, b: string): boolean =>
  stem(a) === stem(b) || (Math.min(a.length, b.length) >= 4 && (a.startsWith(stem(b)) || b.startsWith(stem(a))));

/** How well a cell is named by its own name or address. */
export const NAMED = 2;

/** How well a cell is named by the head of its label: `F3` names `F3: 3 dB down` rather than `Ripple above F3`. */
const HEADED = 1.5;

/** How well a cell is named by a phrase, 0 to 1, or better by name or by the head of its label: which part of the phrase it answers, words of its unit included, and
 *  among equals how little of its label is left over. */
export function matchOf(phrase: string, cell: Input | Result): number {
  const asked = wordsOf(phrase);
  if (asked.length === 0) return 0;
  if (
    cell.name?.toLowerCase() === phrase.trim().toLowerCase() ||
    cell.cell.toLowerCase() === phrase.trim().toLowerCase()
  )
    return NAMED;
  const [head = ''] = cell.label.split(/[:,(]/);
  if (wordsOf(head).join(' ') === asked.join(' ')) return HEADED;
  const own = wordsOf(`${cell.label} ${cell.name ?? ''}`);
  let answered = 0;
  for (const word of asked) {
    if (own.some((each) => isAlike(each, word))) answered += 1;
    else if (isOfQuantity(word, cell)) answered += 0.9;
  }
  if (answered === 0) return 0;
  const leftOver = own.filter((each) => !asked.some((word) => isAlike(each, word))).length;
  return answered / asked.length - 0.01 * Math.min(leftOver, 9);
}

function isOfQuantity(word: string, { quantity }: Input | Result): boolean {
  if (quantity === undefined) return false;
  const meant = quantityMeant(word);
  if (meant === quantity) return true;
  return wordsOf(quantities[quantity].noun).some((each) => isAlike(each, word));
}

/** The cells that a phrase names best, all that are equally good. */
export function bestMatches<T extends Input | Result>(phrase: string, cells: readonly T[], least = 0.6): readonly T[] {
  const scored = cells.map((cell) => ({ cell, score: matchOf(phrase, cell) })).filter(({ score }) => score >= least);
  const best = scored.reduce((most, { score }) => Math.max(most, score), 0);
  return scored.filter(({ score }) => score >= best - 0.035).map(({ cell }) => cell);
}

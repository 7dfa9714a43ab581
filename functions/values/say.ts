import type { Currency, QuantityName } from '../quantities.ts';

/** A number inside a sentence. It is put into the reader's unit only when shown. */
export interface Measured {
  readonly value: number;
  readonly quantity: QuantityName;
  /** The sign of a price. */
  readonly money?: Currency | undefined;
  /** Two significant digits tell enough: of what is to spare, or lacks. */
  readonly rough?: true;
}

/** A sentence whose numbers are still in SI. */
export type Sentence = readonly (string | Measured)[];

/** A number of a quantity, for use inside {@link say}. */
export const measured = (value: number, quantity: QuantityName, money?: Currency): Measured => ({
  value,
  quantity,
  ...(money && { money }),
});

/** How far a number is from another. */
export const margin = (value: number, quantity: QuantityName, money?: Currency): Measured => ({
  ...measured(value, quantity, money),
  rough: true,
});

/** Builds a sentence: ``say`Crossing at ${measured(1808, 'frequency')} is too low.` ``
 *  Words, numbers with a quantity and whole sentences may stand in the slots. */
export function say(words: TemplateStringsArray, ...slots: readonly (string | Measured | Sentence)[]): Sentence {
  return words.flatMap((word, index) => {
    const slot = slots[index];
    const rest = slot === undefined ? [] : Array.isArray(slot) ? (slot as Sentence) : [slot as string | Measured];
    return word === '' ? rest : [word, ...rest];
  });
}

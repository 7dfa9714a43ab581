import { referencesIn, type PlacedReference } from '../../formula/references-in.ts';
import type { Scope } from '../../formula/types.ts';

/** Told apart from verdicts and from each other; each keeps 4.5 to 1 on paper. */
export const palette: readonly string[] = [
  'var(--accent)',
  'var(--woofer)',
  'var(--tweeter)',
  'light-dark(#4f6200, #b9cf5e)',
  'light-dark(#8a3a12, #f0a77c)',
];

export interface ColouredReference extends PlacedReference {
  readonly colour: string;
  /** Its place in the palette. */
  readonly index: number;
}

/** The references of a formula, each with its colour; the same cells have the same one wherever they are written. */
export function referenceColours(text: string, scope: Scope): ColouredReference[] {
  const order: string[] = [];
  return referencesIn(text, scope).map((reference) => {
    const key = `${reference.sheet}!${reference.cells}`;
    if (!order.includes(key)) order.push(key);
    const index = order.indexOf(key) % palette.length;
    return { ...reference, index, colour: palette[index] ?? '' };
  });
}

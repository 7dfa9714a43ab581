import { namedFormula } from '../model/named-formula.ts';
import { QuestionError } from '../subject/place-error.ts';

/** What a ranking can name of a row, in this order: octaves, dB, dB, money, ohms, hertz, octaves, hertz, dB. */
export const rankingNames = [
  'window',
  'level',
  'pad',
  'price',
  'ohms',
  'resonance',
  'stretched',
  'reach',
  'plays',
] as const;

/** A formula over the figures of a row, as a function of them in the order of {@link rankingNames}; NaN where it has no number.
 *  @throws An error in words for the reader where the formula cannot be read. */
export function rankingOf(formula: string): (figures: Float64Array) => number {
  const ranking = namedFormula(formula, rankingNames);
  if (ranking) return ranking;
  throw new QuestionError(
    `The ranking “${formula}” cannot be read: write a formula of ${rankingNames.join(', ')}, such as window*10-price/100.`,
  );
}

import { parser } from '../formula/parser.ts';
import { compileFormula } from './compile-formula.ts';
import { OnlyEngine } from './operators.ts';
import { QuestionError } from './place-error.ts';

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
  const text = formula.startsWith('=') ? formula : `=${formula}`;
  const cells = text.replaceAll(/[A-Za-z_][\w.]*(?!\s*\()/g, (word) => {
    const index = rankingNames.findIndex((name) => name === word.toLowerCase());
    return index < 0 ? word : `A${index + 1}`;
  });
  let figures: Float64Array = new Float64Array(rankingNames.length);
  const run = compileFormula(cells, '', {
    functions: new Map(),
    reader: (_, cell) => {
      const index = Number(/^A([1-9])$/.exec(cell)?.[1]) - 1;
      return index >= 0 ? () => figures[index] ?? Number.NaN : undefined;
    },
  });
  if (!run || isBroken(cells))
    throw new QuestionError(
      `The ranking “${formula}” cannot be read: write a formula of ${rankingNames.join(', ')}, such as window*10-price/100.`,
    );
  return (given) => {
    figures = given;
    try {
      const score = run();
      return typeof score === 'number' ? score : Number.NaN;
    } catch (error) {
      if (error instanceof OnlyEngine) return Number.NaN;
      throw error;
    }
  };
}

function isBroken(text: string): boolean {
  let broken = false;
  parser.parse(text).iterate({
    enter: ({ type }) => {
      broken ||= type.isError;
    },
  });
  return broken;
}

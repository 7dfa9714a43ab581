import { treeOf } from '../../formula/tree.ts';
import { compileFormula } from './compile-formula.ts';
import { OnlyEngine } from './operators.ts';

/** Up to nine numbers, in the order of their names. */
type Figures = Float64Array | readonly number[];

/** A formula over some names, in the syntax of the sheet, as a function of their numbers; NaN where it has no number. Nothing where
 *  it cannot be read. */
export function namedFormula(formula: string, names: readonly string[]): ((figures: Figures) => number) | undefined {
  const text = formula.startsWith('=') ? formula : `=${formula}`;
  const cells = text.replaceAll(/[A-Za-z_][\w.]*(?!\s*\()/g, (word) => {
    const index = names.indexOf(word.toLowerCase());
    return index < 0 ? word : `A${index + 1}`;
  });
  let figures: Figures = [];
  const run = compileFormula(cells, '', {
    functions: new Map(),
    reader: (_, cell) => {
      const index = Number(/^A([1-9])$/.exec(cell)?.[1]) - 1;
      return index >= 0 && index < names.length ? () => figures[index] ?? Number.NaN : undefined;
    },
  });
  if (!run || treeOf(cells).unread) return undefined;
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

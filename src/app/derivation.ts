import type { FunctionDescription } from '../../functions/define.ts';
import { unfetched } from '../../functions/words.ts';
import type { Origin } from '../components/record-card/origin.ts';
import { workedFormula } from '../document/worked.ts';
import type { Workbook } from '../document/workbook.ts';
import { functionsIn } from '../formula/functions-in.ts';

/** How a cell came to what it holds. */
export interface Derivation {
  readonly formula: string;
  /** The formula with the values in it; empty where there is nothing to put in. */
  readonly worked: string;
  readonly origins: readonly Origin[];
}

/** The formula of a cell, the same with its values, and the sources of the functions that it calls. */
export function derivationOf(workbook: Workbook, sheet: string, cell: string): Derivation {
  const text = workbook.document.sheets.find(({ id }) => id === sheet)?.cells.get(cell)?.text ?? '';
  const formula = text.startsWith('=') ? text : '';
  const origins = functionsIn(formula).flatMap((name) => {
    const found = workbook.functions.get(name);
    return found ? [originOf(found)] : [];
  });
  return { formula, worked: workedFormula(workbook, sheet, formula), origins };
}

const originOf = ({ name, words }: FunctionDescription): Origin => ({
  name,
  summary: words?.summary ?? '',
  source: words ? `${words.source.title}; ${words.source.at}` : unfetched,
});

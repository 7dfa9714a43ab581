import type { CellType, Functions, Scope } from '../formula/types.ts';
import { sameWord } from './sheets.ts';
import type { OctavoDocument } from './types.ts';

/** What a formula of a sheet sees around it. */
export const scopeOf = (
  document: OctavoDocument,
  sheet: string,
  functions: Functions,
  typeOf: (sheet: string, cell: string) => CellType,
): Scope => {
  const namesOn = (id: string): ReadonlyMap<string, string> =>
    document.sheets.find((each) => each.id === id)?.names ?? new Map<string, string>();
  return {
    functions,
    sheet,
    sheetNamed: (name) => document.sheets.find((each) => sameWord(each.name, name))?.id,
    cellsNamed: (id, name) => [...namesOn(id)].find(([each]) => sameWord(each, name))?.[1],
    namesOf: (id) => [...namesOn(id).keys()],
    typeOf,
    textOf: (id, cell) => document.sheets.find((each) => each.id === id)?.cells.get(cell)?.text ?? '',
  };
};

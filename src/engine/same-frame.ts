import type { SheetContent } from './types.ts';

/** Whether sheets and names are the same, so that formulas mean the same. */
export const sameFrame = (a: readonly SheetContent[], b: readonly SheetContent[]): boolean =>
  a.length === b.length &&
  a.every((sheet, index) => {
    const other = b[index];
    return other?.id === sheet.id && other.name === sheet.name && sameNames(sheet.names, other.names);
  });

const sameNames = (a: ReadonlyMap<string, string>, b: ReadonlyMap<string, string>): boolean =>
  a === b || (a.size === b.size && [...a].every(([name, cells]) => b.get(name) === cells));

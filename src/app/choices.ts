import type { Cell } from '../document/types.ts';

/** The word before or after the present one in a cell's list of choices, going round at the ends. */
export function nextChoice(cell: Cell | undefined, direction: 1 | -1): string | undefined {
  const choices = cell?.choices;
  if (!cell || !choices || choices.length === 0) return undefined;
  const at = choices.indexOf(cell.text);
  return choices[(at + direction + choices.length) % choices.length];
}

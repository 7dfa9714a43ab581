import { driverBlockAt } from '../../document/shelf/block.ts';
import type { GridHost } from './acts.ts';

/** A line of a datasheet: a number behind words, or with the sign of what it is. Numbers alone have their words behind them. */
const LINE = /^(?:[^\p{L}\d=]*\p{L}|.*\b(?:fs|qts|qes|qms|vas|re|le|sd|mms|cms|bl|xmax|pe)\b).*\d/gimu;
/** Fewer of them are hardly a datasheet. */
const FEWEST = 4;

/** Opens the shelf with what was pasted where that is a datasheet and the selection stands in the numbers of a driver, so that
 *  it is seen as it was understood before it goes into the cells. Tells whether it did. */
export function opensAsSheet(host: GridHost, text: string): boolean {
  if (!host.sheet || (text.match(LINE)?.length ?? 0) < FEWEST || !driverBlockAt(host.sheet, host.cell)) return false;
  void import('../pages/shelf-page.ts').then(({ beginWithSheet }) => {
    beginWithSheet(text);
    host.open('shelf');
  });
  return true;
}

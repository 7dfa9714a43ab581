import { rowsOf, type WindowPlotData } from '../../components/plot/window-data.ts';
import { writeCsv } from '../../exchange/csv/write-csv.ts';

/** The rules of a shared window as a table: a row of names, a row of units, a row for each rule, then the band itself. */
export function windowCsv(data: WindowPlotData): string {
  const rows = rowsOf(data);
  const stretched = (side: 'floor' | 'ceiling'): number[] =>
    rows.filter((row) => row.side === side).map(({ limit }) => limit.stretched);
  const { low, high } = data.window;
  return writeCsv([
    ['Rule', 'Side', 'Limit', 'Stretched'],
    [undefined, undefined, 'Hz', 'Hz'],
    ...rows.map(({ side, limit }) => [limit.name, words[side], limit.at, limit.stretched]),
    ['Shared window', words.floor, low.at, Math.max(...stretched('floor'))],
    ['Shared window', words.ceiling, high.at, Math.min(...stretched('ceiling'))],
  ]);
}

const words = { floor: 'from', ceiling: 'up to' } as const;

import type { GridModel } from '../../../src/components/grid/model.ts';
import type { Cell } from '../../../src/document/types.ts';
import { formatAddress } from '../../../src/formula/address.ts';

/** A model of texts by address, `#` before the text for the heading of a section. */
export function table(rows: number, columns: number, texts: Readonly<Record<string, string>> = {}): GridModel {
  const cells = new Map<string, Cell>(
    Object.entries(texts).map(([address, text]) => [
      address,
      text.startsWith('#') ? { text: text.slice(1), look: 'section' } : { text },
    ]),
  );
  const at = (row: number, column: number): Cell | undefined => cells.get(formatAddress({ row, column }));
  return {
    rows,
    columns: Array.from({ length: columns }, (_, column) => ({ width: 100 + 10 * (column % 3) })),
    cell: at,
    shown: (row, column) => {
      const text = at(row, column)?.text;
      return text === undefined ? { kind: 'empty' } : { kind: 'text', text };
    },
  };
}

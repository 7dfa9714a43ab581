import { isRefusal } from '../../src/document/command.ts';
import type { Cell, OctavoDocument } from '../../src/document/types.ts';
import type { Place } from '../../src/engine/types.ts';
import { decodeDocument } from '../../src/exchange/decode.ts';
import { templates } from '../../templates/index.ts';

/** A document of one sheet, `s`. */
export const documentOf = (
  cells: Readonly<Record<string, string | Cell>>,
  names: Readonly<Record<string, string>> = {},
): OctavoDocument => ({
  id: 'd',
  title: 'Test',
  system: 'metric',
  sheets: [
    {
      id: 's',
      name: 'Sheet',
      summary: '',
      rows: 100,
      columns: Array.from({ length: 12 }, () => ({ width: 100 })),
      cells: new Map(
        Object.entries(cells).map(([address, cell]) => [address, typeof cell === 'string' ? { text: cell } : cell]),
      ),
      names: new Map(Object.entries(names)),
      plots: [],
    },
  ],
});

export const at = (cell: string): Place => ({ sheet: 's', cell });

export function templateNamed(id: string): OctavoDocument {
  const document = decodeDocument(templates.find((each) => each.id === id)?.content);
  if (isRefusal(document)) throw new Error(document.refused);
  return document;
}

/** The place of a name of the first sheet. */
export function named({ sheets: [sheet] }: OctavoDocument, name: string): Place {
  if (!sheet) throw new Error('There is no sheet.');
  return { sheet: sheet.id, cell: sheet.names.get(name) ?? name };
}

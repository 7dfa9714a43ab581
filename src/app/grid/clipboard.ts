import { formatAddress } from '../../formula/address.ts';
import { addressesIn, filledIn, rectangleOf, sizeOf, type Rectangle } from '../../document/area.ts';
import type { Area, Clip, Command } from '../../document/command.ts';
import type { Cell, Sheet } from '../../document/types.ts';
import type { Workbook } from '../../document/workbook.ts';

/** A larger selection is a slip of the hand. */
const MOST_FILLED = 10_000;

/** What was last copied or cut inside Octavo, recognised again by the text that was put on the clipboard. */
interface Taken {
  readonly text: string;
  readonly clip: Clip;
  readonly cut: boolean;
}

/** Copies cells out as tab-separated readable text, and keeps the formulas for pasting inside. */
export class Clipboard {
  #taken: Taken | undefined;

  /** The text for the system's clipboard. */
  take(workbook: Workbook, area: Area, cut: boolean): string {
    const cells = workbook.document.sheets.find(({ id }) => id === area.sheet)?.cells ?? new Map<string, Cell>();
    const rectangle = rectangleOf(area.cells);
    const contents = new Map(filledIn(cells, rectangle).flatMap((cell) => pairOf(cells, cell)));
    const text = rowsOf(rectangle, (cell) => (contents.has(cell) ? workbook.asText(area.sheet, cell) : ''));
    this.#taken = { text, clip: { ...area, contents }, cut };
    return text;
  }

  /** The command for a pasted text: our own cells where the text is the one that was taken, otherwise the text. Cells that
   *  were cut and have changed since are copied as they were. */
  paste(text: string, to: Area, sheets: readonly Sheet[] = []): Command {
    const first = { sheet: to.sheet, cell: to.cells.split(':')[0] ?? to.cells };
    const taken = this.#taken;
    if (!taken || taken.text !== text.replaceAll('\r\n', '\n')) {
      const area = rectangleOf(to.cells);
      const size = sizeOf(area);
      if (size === 1 || size > MOST_FILLED || /[\t\r\n]/.test(text.trim()))
        return { kind: 'paste-text', to: first, text };
      // One value is meant for every cell that is selected.
      return {
        kind: 'write',
        sheet: to.sheet,
        texts: new Map([...addressesIn(area)].map((cell) => [cell, text.trim()])),
      };
    }
    const { sheet, contents } = taken.clip;
    const now = sheets.find(({ id }) => id === sheet)?.cells;
    if (taken.cut && [...contents].every(([cell, held]) => now?.get(cell) === held)) {
      this.#taken = undefined;
      return { kind: 'move', from: taken.clip, to: first };
    }
    return { kind: 'paste', to: first, clip: taken.clip, ...(to.cells.includes(':') && { over: to.cells }) };
  }
}

const pairOf = (cells: ReadonlyMap<string, Cell>, address: string): (readonly [string, Cell])[] => {
  const cell = cells.get(address);
  return cell ? [[address, cell]] : [];
};

function rowsOf({ top, left, bottom, right }: Rectangle, textOf: (cell: string) => string): string {
  const rows: string[] = [];
  for (let row = top; row <= bottom; row++) {
    const texts: string[] = [];
    for (let column = left; column <= right; column++) {
      const text = textOf(formatAddress({ row, column }));
      // Between quotes, as other programs write and read it.
      texts.push(/^"|[\t\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
    }
    rows.push(texts.join('\t'));
  }
  return rows.join('\n');
}

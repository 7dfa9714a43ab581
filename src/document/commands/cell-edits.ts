import { formatAddress, parseAddress } from '../../formula/address.ts';
import { filledIn, formatRectangle, rectangleOf, addressesIn, sizeOf, type Rectangle } from '../area.ts';
import { isRefusal, type CellAttributes, type Clip, type Command, type Refusal } from '../command.ts';
import { shiftReferences } from '../references.ts';
import { sheetOf } from '../sheets.ts';
import { readTable } from '../table-text.ts';
import type { Cell, OctavoDocument, Sheet } from '../types.ts';
import type { CellChanges } from './put-cells.ts';

/** The commands that change cells of one sheet and nothing else. */
export type CellCommand = Extract<Command, { kind: 'write' | 'describe' | 'clear' | 'paste-text' | 'paste' | 'fill' }>;

/** The most cells that one paste or fill may write; more is a slip of the hand. */
const MOST_CELLS = 2_000_000;

/** What such a command makes of the cells that it touches. */
export function cellChanges(document: OctavoDocument, command: CellCommand): CellChanges | Refusal {
  switch (command.kind) {
    case 'write':
      return writtenCells(sheetOf(document, command.sheet), command.texts);
    case 'describe':
      return describedCells(sheetOf(document, command.sheet), command.cells, command.attributes);
    case 'clear':
      return clearedCells(sheetOf(document, command.sheet), command.cells, command.whole === true);
    case 'paste-text':
      return pastedTexts(sheetOf(document, command.to.sheet), command.to.cell, command.text);
    case 'paste':
      return pastedCells(command.to.cell, command.clip, command.over);
    case 'fill':
      return filledCells(sheetOf(document, command.sheet), command.cells, command.direction);
  }
}

/** A new text keeps what the cell is for: its unit, range, choices and look. Where the old one came from says nothing of it. */
function writtenCells(sheet: Sheet, texts: ReadonlyMap<string, string>): CellChanges {
  return new Map(
    [...texts].map(([address, text]) => {
      const { origin, ...rest } = sheet.cells.get(address) ?? { text: '' };
      return [address, { ...rest, text, ...(origin && rest.text === text && { origin }) }];
    }),
  );
}

function describedCells(sheet: Sheet, cells: string, attributes: CellAttributes): CellChanges | Refusal {
  const area = rectangleOf(cells);
  const size = sizeOf(area);
  if (size > MOST_CELLS) return tooMany(size);
  const changes = new Map<string, Cell>();
  for (const address of addressesIn(area)) {
    const described: Record<string, unknown> = { text: '', ...sheet.cells.get(address), ...attributes };
    for (const [name, value] of Object.entries(described)) if (value === undefined) delete described[name];
    changes.set(address, described as unknown as Cell);
  }
  return changes;
}

function clearedCells(sheet: Sheet, cells: string, whole: boolean): CellChanges {
  return new Map(
    filledIn(sheet.cells, rectangleOf(cells)).map((address) => {
      const { origin: _, ...cell } = sheet.cells.get(address) ?? { text: '' };
      return [address, whole ? undefined : { ...cell, text: '' }];
    }),
  );
}

function pastedTexts(sheet: Sheet, first: string, text: string): CellChanges | Refusal {
  const texts = textsPasted(first, text);
  return isRefusal(texts) ? texts : writtenCells(sheet, texts);
}

/** The texts that pasting tab-separated text writes, by address. */
export function textsPasted(first: string, text: string): ReadonlyMap<string, string> | Refusal {
  const { top, left } = rectangleOf(first);
  const texts = readTable(text).flatMap((row, down) =>
    row.map((word, right) => [formatAddress({ row: top + down, column: left + right }), word] as const),
  );
  return texts.length > MOST_CELLS ? tooMany(texts.length) : new Map(texts);
}

function pastedCells(first: string, clip: Clip, over: string | undefined): CellChanges | Refusal {
  const source = rectangleOf(clip.cells);
  const start = rectangleOf(first);
  const target = over === undefined ? start : rectangleOf(over);
  const repeats = (from: number, to: number, size: number): number => Math.max(1, Math.floor((to - from + 1) / size));
  const down = repeats(target.top, target.bottom, source.bottom - source.top + 1);
  const right = repeats(target.left, target.right, source.right - source.left + 1);
  const size = sizeOf(source);
  if (size * down * right > MOST_CELLS) return tooMany(size * down * right);
  const changes = new Map<string, Cell | undefined>();
  for (let row = 0; row < down; row++) {
    for (let column = 0; column < right; column++) {
      const rows = target.top - source.top + row * (source.bottom - source.top + 1);
      const columns = target.left - source.left + column * (source.right - source.left + 1);
      copyInto(changes, source, clip.contents, rows, columns);
    }
  }
  return changes;
}

function filledCells(sheet: Sheet, cells: string, direction: 'down' | 'right'): CellChanges | Refusal {
  const area = rectangleOf(cells);
  const size = sizeOf(area);
  if (size > MOST_CELLS) return tooMany(size);
  const changes = new Map<string, Cell | undefined>();
  const down = direction === 'down';
  const first: Rectangle = down ? { ...area, bottom: area.top } : { ...area, right: area.left };
  const steps = down ? area.bottom - area.top : area.right - area.left;
  for (let step = 1; step <= steps; step++) copyInto(changes, first, sheet.cells, down ? step : 0, down ? 0 : step);
  return changes;
}

/** Copies a rectangle by a distance; empty cells of it empty the cells that they land on. */
function copyInto(
  changes: Map<string, Cell | undefined>,
  source: Rectangle,
  contents: ReadonlyMap<string, Cell>,
  rows: number,
  columns: number,
): void {
  for (const address of addressesIn(source)) {
    const at = parseAddress(address);
    if (!at) continue;
    const cell = contents.get(address);
    const target = formatAddress({ row: at.row + rows, column: at.column + columns });
    changes.set(target, cell && { ...cell, text: shiftReferences(cell.text, rows, columns) });
  }
}

const tooMany = (count: number): Refusal => ({
  refused: `This would write ${count} cells at once; the most is ${MOST_CELLS}. Choose a smaller area.`,
});

/** Takes the cells of an area for pasting. */
export function clipOf(document: OctavoDocument, sheet: string, cells: string): Clip {
  const held = sheetOf(document, sheet).cells;
  const area = rectangleOf(cells);
  const contents = new Map(
    filledIn(held, area).flatMap((address) => {
      const cell = held.get(address);
      return cell ? [[address, cell] as const] : [];
    }),
  );
  return { sheet, cells: formatRectangle(area), contents };
}

import { freeSheetName, newId } from '../document/create.ts';
import type { Command } from '../document/command.ts';
import type { DriverEntry } from '../document/shelf/entry.ts';
import { putDriver } from '../document/shelf/put.ts';
import { namedDrivers } from '../document/take-over/drivers.ts';
import type { OctavoDocument, Sheet } from '../document/types.ts';

/** A full sheet for a row of the shortlist: one command, so one step back. */
export interface RowSheet {
  readonly command: Command;
  /** The id of the new sheet. */
  readonly sheet: string;
  readonly cell: string;
  /** What a reader must know of the drivers: what was computed, what is missing. */
  readonly told: readonly string[];
}

interface Band {
  readonly low: number;
  readonly high: number;
}

/** Drivers, level and hand-over of a row written into a starter sheet, right behind the present sheet. */
export function sheetOfRow(
  document: OctavoDocument,
  behind: string,
  starter: OctavoDocument,
  row: { readonly windows: readonly Band[] },
  drivers: Readonly<Record<string, DriverEntry>>,
  texts: Readonly<Record<string, string>>,
): RowSheet {
  const [first] = starter.sheets;
  if (!first) throw new Error(`The starter sheet ${starter.title} holds no sheet.`);
  const wish = Object.values(drivers)
    .map(({ name }) => name)
    .join(', ')
    .replaceAll(/['![\]\s]+/g, ' ')
    .trim();
  const sheet: Sheet = { ...first, id: newId(), name: freeSheetName(document, wish.slice(0, 55).trim() || first.name) };
  const told: string[] = [];
  const commands: Command[] = [];
  for (const [name, block] of namedDrivers(sheet)) {
    const entry = drivers[name];
    if (!entry) continue;
    const putting = putDriver(sheet, block, entry);
    commands.push(putting.command);
    told.push(...putting.told.map((sentence) => `${entry.name}: ${sentence}`));
  }
  const [low, high = low] = row.windows;
  const handOvers = { ...(high !== low && { LowHandOver: centre(low) }), HandOver: centre(high) };
  const written = new Map<string, string>();
  for (const [name, text] of Object.entries({ ...handOvers, ...texts })) {
    const cell = sheet.names.get(name);
    if (cell !== undefined && text !== '') written.set(cell, text);
  }
  commands.push({ kind: 'write', sheet: sheet.id, texts: written });
  const at = document.sheets.findIndex(({ id }) => id === behind) + 1;
  return {
    command: { kind: 'all', commands: [{ kind: 'add-sheet', sheet, at }, ...commands] },
    sheet: sheet.id,
    cell: 'E2',
    told,
  };
}

/** Midway in octaves between the two ends, also where they cross. */
const centre = (window: Band | undefined): string =>
  window ? `${Number(Math.sqrt(window.low * window.high).toPrecision(4))} Hz` : '';

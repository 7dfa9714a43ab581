import { labelOf } from '../labels.ts';
import { driverBlockAt, type DriverBlock } from '../shelf/block.ts';
import { meaningOf, type DriverEntry } from '../shelf/entry.ts';
import { putDriver, rowsInBlock } from '../shelf/put.ts';
import { sameWord } from '../sheets.ts';
import type { OctavoDocument, Origin, Sheet } from '../types.ts';
import type { Left, PickedAt, Taken } from './types.ts';

/** Drivers of sheets put into another, and the cells of all of them that are thereby dealt with. */
export interface DriversTaken {
  readonly texts: ReadonlyMap<string, string>;
  readonly origins: ReadonlyMap<string, Origin>;
  readonly taken: readonly Taken[];
  readonly left: readonly Left[];
  readonly told: readonly string[];
  /** By the id of the sheet. */
  readonly done: ReadonlyMap<string, ReadonlySet<string>>;
}

type NamedBlock = readonly [name: string, block: DriverBlock];

const gathers = (sheet: Sheet, cell: string): boolean => /^=\s*DRIVER\s*\(/iu.test(sheet.cells.get(cell)?.text ?? '');

/** The rows that a named cell gathers into a driver, with that name; or, where it picks one out of a list, the rows of the
 *  only driver of the sheet that is called so. */
export function namedDrivers(sheet: Sheet, pickedAt?: PickedAt): readonly NamedBlock[] {
  return [...sheet.names].flatMap(([name, cell]): NamedBlock[] => {
    const block = gathers(sheet, cell) ? driverBlockAt(sheet, cell) : blockCalled(sheet, pickedAt?.(cell, sheet.id));
    return block ? [[name, block]] : [];
  });
}

function blockCalled(sheet: Sheet, picked: string | undefined): DriverBlock | undefined {
  if (picked === undefined) return undefined;
  const gathering = [...sheet.cells].filter(([, { text }]) => /^=.*(?<![\w.])DRIVER\s*\(/iu.test(text));
  const blocks = gathering.flatMap(([cell]) => driverBlockAt(sheet, cell) ?? []);
  const [block, ...others] = blocks.filter((each) => rowsInBlock(sheet, each).name === picked);
  return others.length === 0 ? block : undefined;
}

interface Standing {
  readonly name: string;
  readonly sheet: Sheet;
  readonly block: DriverBlock;
}

/** Each driver goes where the same name is; where no name is the same, the first goes to the first. The sheets to take from
 *  stand in the order in which they are asked. */
export function driversTaken(from: readonly Sheet[], into: Sheet, pickedAt?: PickedAt): DriversTaken {
  const sources = from.flatMap((sheet) =>
    namedDrivers(sheet, pickedAt).map(([name, block]): Standing => ({ name, sheet, block })),
  );
  const targets = namedDrivers(into).map(([name, block]): Standing => ({ name, sheet: into, block }));
  const matched = targets.flatMap((target): [Standing, Standing][] => {
    const source = sources.find(({ name }) => sameWord(name, target.name));
    return source ? [[source, target]] : [];
  });
  const [firstSource, firstTarget] = [sources[0], targets[0]];
  if (matched.length === 0 && firstSource && firstTarget) matched.push([firstSource, firstTarget]);

  const texts = new Map<string, string>();
  const origins = new Map<string, Origin>();
  const taken: Taken[] = [];
  const told: string[] = [];
  for (const [source, target] of matched) {
    const entry = entryFor(source, [...sources, target], target);
    const putting = putDriver(into, target.block, entry, { isKeptElsewhere: true });
    if (putting.command.kind !== 'write') continue;
    for (const [cell, text] of putting.command.texts) {
      texts.set(cell, text);
      if (text !== '') taken.push({ what: labelOf(into, cell), text, cell });
    }
    for (const { meaning, cell } of target.block.rows) {
      const row = source.block.rows.find((each) => meaning !== undefined && each.meaning === meaning);
      const origin = row && source.sheet.cells.get(row.cell)?.origin;
      if (origin) origins.set(cell, origin);
    }
    const whose = source.name === target.name ? target.name : `${source.name} as ${target.name}`;
    told.push(...putting.told.map((sentence) => `${whose}: ${sentence}`));
  }
  const left = sources
    .filter(({ sheet, name }) => sheet === from[0] && !matched.some(([taking]) => sameWord(taking.name, name)))
    .map(({ sheet, name, block }) => ({
      what: name,
      text: rowsInBlock(sheet, block).name,
      why: `The new sheet has no driver called ${name}.`,
      cell: sheet.names.get(name) ?? '',
    }));
  const done = new Map<string, Set<string>>();
  for (const { sheet, block } of [...sources, ...targets]) {
    const cells = done.get(sheet.id) ?? new Set();
    for (const { cell } of block.rows) cells.add(cell);
    done.set(sheet.id, cells);
  }
  return { texts, origins, taken, left, told, done };
}

/** A driver with its rows, and with those that the target has room for and only another sheet knows of this very driver. */
function entryFor({ sheet, block }: Standing, all: readonly Standing[], target: Standing): DriverEntry {
  const { name, rows } = rowsInBlock(sheet, block);
  const known = new Set(rows.map(({ label }) => meaningOf(label)));
  const wanted = target.block.rows
    .map(({ meaning }) => meaning)
    .filter((meaning) => meaning !== undefined && meaning !== 'name' && !known.has(meaning));
  const others = all.map((each) => rowsInBlock(each.sheet, each.block)).filter((each) => each.name === name);
  const more = others.flatMap((each) => each.rows).filter(({ label }) => wanted.includes(meaningOf(label)));
  return { id: '', name, rows: [...rows, ...more], source: '', tables: [], invented: false };
}

/** The sheets before one in which a driver of it stands under the same name, the nearest first: what it was made from. */
export function sheetsBefore(document: OctavoDocument, sheet: Sheet, pickedAt?: PickedAt): readonly Sheet[] {
  const drivers = (each: Sheet): readonly string[] =>
    namedDrivers(each, pickedAt).map(([name, block]) => `${name.toLowerCase()}: ${rowsInBlock(each, block).name}`);
  const own = new Set(drivers(sheet));
  return document.sheets
    .slice(0, document.sheets.indexOf(sheet))
    .filter((each) => drivers(each).some((driver) => own.has(driver)))
    .toReversed();
}

import { labelOf } from '../labels.ts';
import { driverBlockAt, type DriverBlock } from '../shelf/block.ts';
import { putDriver, rowsInBlock } from '../shelf/put.ts';
import { sameWord } from '../sheets.ts';
import type { Sheet } from '../types.ts';
import type { Left, PickedAt, Taken } from './types.ts';

/** Drivers of one sheet put into another, and the cells of both that are thereby dealt with. */
export interface DriversTaken {
  readonly texts: ReadonlyMap<string, string>;
  readonly taken: readonly Taken[];
  readonly left: readonly Left[];
  readonly told: readonly string[];
  readonly done: { readonly from: ReadonlySet<string>; readonly into: ReadonlySet<string> };
}

type NamedBlock = readonly [name: string, block: DriverBlock];

const gathers = (sheet: Sheet, cell: string): boolean => /^=\s*DRIVER\s*\(/iu.test(sheet.cells.get(cell)?.text ?? '');

/** The rows that a named cell gathers into a driver, with that name; or, where it picks one out of a list, the rows of the
 *  only driver of the sheet that is called so. */
export function namedDrivers(sheet: Sheet, pickedAt: PickedAt = () => undefined): readonly NamedBlock[] {
  return [...sheet.names].flatMap(([name, cell]): NamedBlock[] => {
    const block = gathers(sheet, cell) ? driverBlockAt(sheet, cell) : blockCalled(sheet, pickedAt(cell));
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

/** Each driver goes where the same name is; where no name is the same, the first goes to the first. */
export function driversTaken(from: Sheet, into: Sheet, pickedAt?: PickedAt): DriversTaken {
  const sources = namedDrivers(from, pickedAt);
  const targets = namedDrivers(into);
  const matched = targets.flatMap((target): [NamedBlock, NamedBlock][] => {
    const source = sources.find(([name]) => sameWord(name, target[0]));
    return source ? [[source, target]] : [];
  });
  const [firstSource, firstTarget] = [sources[0], targets[0]];
  if (matched.length === 0 && firstSource && firstTarget) matched.push([firstSource, firstTarget]);

  const texts = new Map<string, string>();
  const taken: Taken[] = [];
  const told: string[] = [];
  for (const [[sourceName, source], [targetName, target]] of matched) {
    const entry = { id: '', source: '', tables: [], invented: false, ...rowsInBlock(from, source) };
    const putting = putDriver(into, target, entry);
    if (putting.command.kind !== 'write') continue;
    for (const [cell, text] of putting.command.texts) {
      texts.set(cell, text);
      if (text !== '') taken.push({ what: labelOf(into, cell), text, cell });
    }
    const whose = sourceName === targetName ? targetName : `${sourceName} as ${targetName}`;
    told.push(...putting.told.map((sentence) => `${whose}: ${sentence}`));
  }
  const left = sources
    .filter((source) => !matched.some(([taking]) => taking === source))
    .map(([name, block]) => ({
      what: name,
      text: rowsInBlock(from, block).name,
      why: `The new sheet has no driver called ${name}.`,
    }));
  const cellsOf = (blocks: readonly NamedBlock[]): Set<string> =>
    new Set(blocks.flatMap(([, { rows }]) => rows.map(({ cell }) => cell)));
  return { texts, taken, left, told, done: { from: cellsOf(sources), into: cellsOf(targets) } };
}

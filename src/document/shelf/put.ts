import { basisOf } from '../../../functions/driver/basis.ts';
import { parameterOf } from '../../../functions/driver/parameters.ts';
import type { Driver } from '../../../functions/values/driver.ts';
import { Problem } from '../../../functions/values/problem.ts';
import { show } from '../../units/show.ts';
import type { Command } from '../command.ts';
import type { Sheet } from '../types.ts';
import type { BlockRow, DriverBlock } from './block.ts';
import { driverOf } from './driver-of.ts';
import { meaningOf, rowOf, type DriverEntry, type DriverRow } from './entry.ts';

/** A driver put into a sheet: one command, so one step back, and what a reader must know of it. */
export interface Putting {
  readonly command: Command;
  /** The cells that got what was given for them, word for word. */
  readonly given: readonly string[];
  readonly told: readonly string[];
}

/** Writes a driver over the one that stands in a block: each row gets what was typed for it; a number that was not given but
 *  follows from the others is computed, one that does not is emptied, so that nothing of the former driver stays. What the block has no row for is told, where it is not kept elsewhere. */
export function putDriver(
  sheet: Sheet,
  block: DriverBlock,
  entry: DriverEntry,
  { isKeptElsewhere = false } = {},
): Putting {
  const driver = driverOf(entry);
  const texts = new Map<string, string>();
  const asGiven: string[] = [];
  const computed: string[] = [];
  const missing: string[] = [];
  const seen = new Set<string>();
  const hasBasis = block.rows.some(({ meaning }) => meaning === 'basis');
  const told: string[] = [];
  for (const row of block.rows) {
    const { meaning, cell } = row;
    if (meaning === undefined || seen.has(meaning)) continue;
    seen.add(meaning);
    if (meaning === 'name') {
      texts.set(cell, entry.name);
      continue;
    }
    if (meaning === 'basis') {
      texts.set(cell, basisFor(sheet, row, entry));
      continue;
    }
    const given = rowOf(entry.rows, meaning)?.text;
    const isBare = meaning === 'level' && !hasBasis && basisOf(rowOf(entry.rows, 'basis')?.text ?? '') !== '2.83 V';
    const text = given !== undefined && !isBare ? given : writtenOf(driver, meaning);
    texts.set(cell, text ?? given ?? '');
    if (given !== undefined && text === given) asGiven.push(cell);
    if (isBare && given !== undefined && text !== undefined) {
      told.push(`The level of ${given} is written as ${text} at 2.83 V: this sheet has no row for its basis.`);
    } else if (given === undefined) (text === undefined ? missing : computed).push(parameterOf(meaning).symbol);
  }
  const unplaced = entry.rows.filter(({ label }) => !isPlaced(label, seen));
  if (computed.length > 0) told.push(`Computed from its other numbers: ${computed.join(', ')}.`);
  if (missing.length > 0) told.push(`Not given for ${entry.name}, so emptied: ${missing.join(', ')}.`);
  if (unplaced.length > 0 && !isKeptElsewhere)
    told.push(`This sheet has no rows for ${unplaced.map(({ label }) => label).join(', ')}.`);
  return { command: { kind: 'write', sheet: block.sheet, texts }, given: asGiven, told };
}

const isPlaced = (label: string, seen: ReadonlySet<string>): boolean => {
  const meaning = meaningOf(label);
  return meaning !== undefined && seen.has(meaning);
};

/** The basis in the words that the cell offers. */
function basisFor(sheet: Sheet, { cell }: BlockRow, entry: DriverEntry): string {
  const text = rowOf(entry.rows, 'basis')?.text ?? '';
  const read = basisOf(text);
  return (read && sheet.cells.get(cell)?.choices?.find((choice) => basisOf(choice) === read)) ?? text;
}

/** A number that follows from the others, as one would type it. */
function writtenOf(driver: Driver | Problem, field: Exclude<BlockRow['meaning'], undefined | 'name' | 'basis'>) {
  const value = driver instanceof Problem ? undefined : driver[field];
  if (value === undefined) return undefined;
  const { number, unit } = show(value, { quantity: parameterOf(field).quantity, system: 'metric' });
  return `${number.replaceAll('\u2009', '')} ${unit}`.trim();
}

/** The driver that stands in a block, as an entry: each row as it was typed. */
export function rowsInBlock(
  sheet: Sheet,
  { rows }: DriverBlock,
): { readonly name: string; readonly rows: readonly DriverRow[] } {
  const typed = rows.map(({ label, meaning, cell }) => ({
    label,
    meaning,
    text: sheet.cells.get(cell)?.text.trim() ?? '',
  }));
  return {
    name: typed.find(({ meaning, text }) => meaning === 'name' && text !== '')?.text ?? '',
    rows: typed
      .filter(({ meaning, text }) => meaning !== 'name' && text !== '')
      .map(({ label, text }) => ({ label, text })),
  };
}

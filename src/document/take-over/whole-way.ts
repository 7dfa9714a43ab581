import type { OctavoDocument, Sheet } from '../types.ts';
import type { Workbook } from '../workbook.ts';
import { takeInto, takeOver, type TakeOver } from './command.ts';
import type { PickedAt, TypedAs } from './types.ts';

/** A sheet of the way. */
export interface Stage extends TakeOver {
  /** It stood there before, and was filled anew. */
  readonly stood: boolean;
}

/** Goes from a sheet through starter sheets, each filled from the one before it and from those before that. A sheet of such a
 *  kind that stands behind it already is filled anew, so that what was changed since arrives at the end. One step takes all
 *  of it back. Ends early where a command is refused. */
export async function goTheWay(
  workbook: Workbook,
  from: string,
  starters: readonly OctavoDocument[],
): Promise<readonly Stage[]> {
  const typedAs: TypedAs = (cell, sheet) => typedIn(workbook, cell, sheet);
  const pickedAt: PickedAt = (cell, sheet) => driverIn(workbook, cell, sheet);
  const group = `the way from ${from}, ${String(Date.now())}`;
  const standing = sheetsBehind(workbook.document, from);
  const stages: Stage[] = [];
  for (const starter of starters) {
    const before = stages.at(-1)?.sheet ?? from;
    const there = standing.find((sheet) => starter.sheets[0] && isAlike(sheet, starter.sheets[0]));
    const { document } = workbook;
    const taking = there
      ? takeInto(document, before, there.id, typedAs, pickedAt)
      : takeOver(document, before, starter, typedAs, pickedAt);
    if (await workbook.do(taking.command, group)) return stages;
    stages.push({ ...taking, stood: there !== undefined });
  }
  return stages;
}

/** Whether a sheet still has every name of the one that it was made of. */
export const isAlike = (sheet: Sheet, made: Sheet): boolean =>
  made.names.size > 0 && [...made.names.keys()].every((name) => sheet.names.has(name));

/** The sheets behind one, as far as the next of its own kind, where another way begins. */
function sheetsBehind({ sheets }: OctavoDocument, from: string): readonly Sheet[] {
  const at = sheets.findIndex(({ id }) => id === from);
  const behind = sheets.slice(at + 1);
  const start = sheets[at];
  const next = start ? behind.findIndex((sheet) => isAlike(sheet, start)) : -1;
  return next < 0 ? behind : behind.slice(0, next);
}

/** What a cell shows, as one would type it; nothing where that cannot be typed. */
export function typedIn(workbook: Workbook, cell: string, sheet: string): string | undefined {
  const shown = workbook.shown(sheet, cell);
  if (shown?.kind === 'text') return shown.text;
  return shown?.kind === 'number' ? `${shown.number.replaceAll('\u2009', '')} ${shown.unit}`.trim() : undefined;
}

/** The name of the driver in a cell. */
export function driverIn(workbook: Workbook, cell: string, sheet: string): string | undefined {
  const value = workbook.state(sheet, cell)?.value;
  return value?.kind === 'record' && value.record.kind === 'driver' ? value.record.name : undefined;
}

import type { CellDatum, Table } from '../define.ts';
import { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';
import type { Limit } from '../values/window.ts';

/** The three columns that list the limits of one side. */
export interface LimitColumns {
  readonly names: Table;
  readonly limits: Table;
  readonly stretched: Table;
}

const isEmpty = (cell: CellDatum): boolean => cell === null || cell === '';

function frequencyOf(cell: CellDatum, row: string, parameter: string): number | Problem {
  if (typeof cell !== 'number')
    return new Problem(
      say`${row} has ${typeof cell === 'string' ? `the text “${cell}”` : 'no number'} where a frequency is wanted; give hertz, without quotation marks, or leave the row empty.`,
      parameter,
    );
  if (cell > 0 && Number.isFinite(cell)) return cell;
  return new Problem(
    say`${row} has the frequency ${String(cell)} Hz; give one above 0 Hz or leave the row empty.`,
    parameter,
  );
}

/** A share by which a stretched limit may seem tighter through rounding. */
const slack = 1e-9;

/** Refuses a stretched limit that leaves less room than the limit itself. */
function tighter({ name, at, stretched }: Limit, row: string, names: LimitColumnNames): Problem | undefined {
  const isFloor = names.side === 'floor';
  if (isFloor ? stretched <= at * (1 + slack) : stretched >= at * (1 - slack)) return undefined;
  const limit = measured(at, 'frequency');
  return new Problem(
    say`${row}: stretched, the ${names.side} by ${name} is ${measured(stretched, 'frequency')}, ${isFloor ? 'above' : 'below'} the ${limit} of the rule itself, so it would leave less room and not more; give ${isFloor ? 'at most' : 'at least'} ${limit}, or leave the stretched one empty.`,
    names.stretched,
  );
}

/** Reads the limits row by row; rows without a limit are left out, and a limit without a stretched one does not stretch. */
export function readLimits(columns: LimitColumns, parameters: LimitColumnNames): readonly Limit[] | Problem {
  const names = columns.names.flat();
  const limits = columns.limits.flat();
  const stretched = columns.stretched.flat();
  if (names.length !== limits.length || stretched.length !== limits.length)
    return new Problem(
      say`The names, limits and stretched limits have ${String(names.length)}, ${String(limits.length)} and ${String(stretched.length)} rows; give the same rows of each.`,
      parameters.limits,
    );
  const read: Limit[] = [];
  for (const [index, cell] of limits.entries()) {
    if (isEmpty(cell)) continue;
    const given = names[index]!;
    const name = typeof given === 'string' && given !== '' ? given : `limit ${index + 1}`;
    const row = `Row ${index + 1} (${name})`;
    const at = frequencyOf(cell, row, parameters.limits);
    if (at instanceof Problem) return at;
    const other = stretched[index]!;
    const bent = isEmpty(other) ? at : frequencyOf(other, row, parameters.stretched);
    if (bent instanceof Problem) return bent;
    const limit = { name, at, stretched: bent };
    const wrong = tighter(limit, row, parameters);
    if (wrong) return wrong;
    read.push(limit);
  }
  if (read.length > 0) return read;
  return new Problem(say`No row has a limit; give at least one frequency.`, parameters.limits);
}

export interface LimitColumnNames {
  readonly side: 'floor' | 'ceiling';
  readonly limits: string;
  readonly stretched: string;
}

import type { Box } from '../values/box.ts';
import { Problem } from '../values/problem.ts';
import { say, type Sentence } from '../values/say.ts';
import type { TableRecord } from '../values/table.ts';
import { portSpeedCurve } from './port-curves.ts';
import { effectiveLength } from './port-ends.ts';

/** A 24th of an octave of tuning a step, up to half an octave either way. */
const shifts = Array.from({ length: 25 }, (_, index) => (index - 12) / 24);
const MOST_ROWS = 20;

/** The largest peak speed of the air, as the searches ask for it. */
export const largestSpeed = {
  quantity: 'speed',
  min: 1,
  max: 100,
  default: 17,
  typical: [10, 35],
  summary: 'largest peak speed of the air',
} as const;

/** An opening that is tried. */
export interface Opening {
  /** Its own columns of the table. */
  readonly sizes: readonly number[];
  /** All of it together, m². */
  readonly area: number;
  /** What its ends take off the length, m. */
  readonly ends: number;
  /** What is kept free behind it, m. */
  readonly free: number;
  /** How far it is from what is wished, octaves. */
  readonly away: number;
}

/** Every opening with every tuning near that of the box: those whose length fits the depth and whose air is slow enough, nearest
 *  first; octaves of tuning count four times.
 *  @param nothing - What is said of a box for which there is none; gets its tuning.
 *  @returns A row a set: the sizes of the opening, Tuning, Length, Speed, Clearance, Distance, SI. */
export function portSets(
  { box, depth, volts, speed }: { box: Box; depth: number; volts: number; speed: number },
  openings: readonly Opening[],
  {
    title,
    sizes,
    nothing,
  }: Pick<TableRecord, 'title'> & {
    readonly sizes: TableRecord['columns'];
    readonly nothing: (tuning: number) => Sentence;
  },
): TableRecord | Problem {
  const { tuning, volume, fill } = box;
  if (box.style !== 'vented' || tuning === undefined)
    return new Problem(say`Ports are searched for a vented box: give one made by VENTED.BOX.`, 'box');
  const rows: (readonly number[])[] = [];
  for (const shift of shifts) {
    const at = tuning * 2 ** shift;
    const curve = portSpeedCurve({ ...box, tuning: at }, 1, volts);
    if (curve instanceof Problem) return curve;
    const flow = Math.max(...curve);
    for (const opening of openings) {
      const { area, ends, free, away } = opening;
      const length = effectiveLength(area, volume * fill, at) - ends;
      const clearance = depth - length - free;
      if (length <= 0 || clearance < 0 || flow / area > speed) continue;
      rows.push([...opening.sizes, at, length, flow / area, clearance, 4 * Math.abs(shift) + away]);
    }
  }
  if (rows.length === 0) return new Problem(nothing(tuning), 'depth');
  return {
    kind: 'table',
    title,
    columns: [
      ...sizes,
      { name: 'Tuning', quantity: 'frequency' },
      { name: 'Length', quantity: 'length' },
      { name: 'Speed', quantity: 'speed' },
      { name: 'Clearance', quantity: 'length' },
      { name: 'Distance', quantity: 'octaves' },
    ],
    rows: rows.toSorted((one, other) => one.at(-1)! - other.at(-1)!).slice(0, MOST_ROWS),
  };
}

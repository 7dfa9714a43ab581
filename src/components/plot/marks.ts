import type { Line } from '../../document/types.ts';
import type { PlotData } from './data.ts';
import { FLAG_HEIGHT } from './flag.ts';
import type { Frame } from './frame.ts';
import type { Box } from './labels.ts';
import type { Measures } from './layout.ts';
import { valueAt } from './path.ts';
import { type AxisUnit, spellFrequency } from './unit.ts';

/** A needle at a frequency of the sheet. */
export interface DrawnMark {
  readonly x: number;
  readonly text: string;
  readonly flag: Box;
  /** Heights at which the needle meets the curves. */
  readonly dots: readonly { readonly y: number; readonly line: Line }[];
}

/** Needles with flags at the top, a flag on the side where it fits and in a row of its own where two would overlap. */
export function layMarks(data: PlotData, frame: Frame, unit: AxisUnit, measures: Measures): DrawnMark[] {
  const flags: Box[] = [];
  const shown = data.marks.filter(
    ({ frequency }) => frequency >= data.horizontal[0] && frequency <= data.horizontal[1],
  );
  const needles = shown.map(({ frequency }) => frame.x(frequency));
  const free = (place: Box): boolean =>
    flags.every((other) => other.y !== place.y || other.x >= place.x + place.width || place.x >= other.x + other.width);
  return shown.map(({ label, frequency }) => {
    const x = frame.x(frequency);
    const crossesOther = (place: Box): boolean =>
      needles.some((needle) => needle !== x && needle > place.x - 2 && needle < place.x + place.width + 2);
    const places = placesOf(label, spellFrequency(frequency, data.system), x, frame, measures);
    const { text, flag } =
      places.find((place) => free(place.flag) && !crossesOther(place.flag)) ??
      places.find((place) => free(place.flag)) ??
      places[0];
    flags.push(flag);
    const dots = data.series
      .map(({ curve, line }) => {
        const holds = frequency >= curve.from && frequency <= curve.to;
        return { y: holds ? frame.y(unit.of(valueAt(curve, frequency))) : Number.NaN, line };
      })
      .filter(({ y }) => y >= 0 && y <= frame.height);
    return { x, text, flag, dots };
  });
}

interface Place {
  readonly text: string;
  readonly flag: Box;
}

/** Where a flag can stand, the best first: at the top with its name, then without, then further down. */
function placesOf(label: string, frequency: string, x: number, frame: Frame, measures: Measures): [Place, ...Place[]] {
  const beside = (text: string, row: number): Place[] => {
    const width = measures.small(text) + 12;
    return [x, x - width]
      .filter((left) => left >= 0 && left + width <= frame.width)
      .map((left) => ({ text, flag: { x: left, y: row * (FLAG_HEIGHT + 2), width, height: FLAG_HEIGHT } }));
  };
  const long = `${label} ${frequency}`;
  const [right, left] = [
    beside(long, 0).filter(({ flag }) => flag.x === x),
    beside(long, 0).filter(({ flag }) => flag.x !== x),
  ];
  const [first, ...others] = [
    ...right,
    ...beside(frequency, 0),
    ...left,
    ...beside(long, 1),
    ...beside(long, 2),
    ...beside(frequency, 3),
  ];
  return first ? [first, ...others] : [{ text: '', flag: { x, y: 0, width: 0, height: FLAG_HEIGHT } }];
}

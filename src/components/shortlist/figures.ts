import type { QuantityName } from '../../../functions/quantities.ts';
import type { UnitSystem } from '../../document/types.ts';
import { show } from '../../units/show.ts';
import type { ListedRow } from './data.ts';

/** A number as the reader sees it, with its unit; a dash where it is not known. */
export function shownAs(value: number, quantity: QuantityName, system: UnitSystem): string {
  if (!Number.isFinite(value)) return '–';
  const { number, unit } = show(value, { quantity, system });
  return `${number} ${unit}`.trim();
}

/** What two rows can be compared by. */
export const axes = {
  price: { label: 'Price of a pair', words: 'a pair for', quantity: 'price', of: ({ price }: ListedRow) => price },
  window: { label: 'Shared window', words: 'window of', quantity: 'octaves', of: (row: ListedRow) => octavesOf(row) },
  reach: { label: 'Reach in the bass', words: 'reaches', quantity: 'frequency', of: ({ reach }: ListedRow) => reach },
  level: { label: 'Level at 2.83 V', words: 'for 2.83 V', quantity: 'level', of: ({ level }: ListedRow) => level },
  plays: { label: 'Plays at most', words: 'plays', quantity: 'level', of: ({ plays }: ListedRow) => plays },
} as const satisfies Record<
  string,
  {
    readonly label: string;
    readonly words: string;
    readonly quantity: QuantityName;
    readonly of: (row: ListedRow) => number;
  }
>;

export type AxisName = keyof typeof axes;

/** Of the narrower window. */
export const octavesOf = ({ windows }: ListedRow): number => Math.min(...windows.map(({ octaves }) => octaves));

/** `W-165 A + T-25 A`, `W-130 A + 2 × L-250 T`. */
export const namesOf = ({ names, subs }: ListedRow): string => {
  const [first = '', ...others] = names;
  return subs === undefined ? names.join(' + ') : [...others, subs === 1 ? first : `${subs} × ${first}`].join(' + ');
};

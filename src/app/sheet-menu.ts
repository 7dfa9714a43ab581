import type { MenuItem } from '../components/menu/pop-menu.ts';
import type { Counts } from '../document/verdicts.ts';

/** A sheet as the rail shows it. */
export interface RailSheet {
  readonly id: string;
  readonly name: string;
  readonly counts: Counts;
  /** It gathers a woofer and a tweeter, and no third driver. */
  readonly twoWay: boolean;
  /** It guides through itself. */
  readonly lesson: boolean;
}

/** What can be done with a sheet of the document. */
export const sheetMenu = (
  first: boolean,
  last: boolean,
  only: boolean,
  { twoWay, lesson }: RailSheet,
): readonly MenuItem[] => [
  ...(lesson ? [{ name: 'lesson', label: 'Go on with the lesson' }] : []),
  { name: 'duplicate', label: 'Duplicate' },
  { name: 'rename', label: 'Rename…' },
  { name: 'summary', label: 'Line under its name…' },
  { name: 'compare', label: 'Compare…' },
  { name: 'review', label: 'Review page…' },
  { name: 'take-over', label: 'Take this over into…', separated: true },
  ...(twoWay ? [{ name: 'three-way', label: 'Make a three-way of this' }] : []),
  { name: 'up', label: 'Move up', disabled: first, separated: true },
  { name: 'down', label: 'Move down', disabled: last },
  { name: 'delete', label: 'Delete…', disabled: only, separated: true },
];

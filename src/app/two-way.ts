import type { Sheet } from '../document/types.ts';

/** The starter sheet that a two-way becomes a three-way in. */
export const THREE_WAY = 'three-way-team';

/** Whether a sheet gathers a woofer and a tweeter from their rows, and no other driver. */
export function isTwoWay({ names, cells }: Sheet): boolean {
  const gathered = [...names].filter(([, cell]) => cells.get(cell)?.text.startsWith('=DRIVER('));
  return gathered.length === 2 && gathered.every(([name]) => name === 'Woofer' || name === 'Tweeter');
}

import type { Sheet } from '../document/types.ts';

/** The starter sheet that a two-way becomes a three-way in. */
export const THREE_WAY = 'three-way-team';

/** Whether a sheet gathers a woofer and a tweeter and nothing between them. */
export const isTwoWay = ({ names }: Sheet): boolean => names.has('Woofer') && names.has('Tweeter') && !names.has('Mid');

import type { BoxStyle } from '../values/box.ts';

/** What each kind of enclosure is called. */
export const styleNames: Readonly<Record<BoxStyle, string>> = {
  closed: 'Closed box',
  vented: 'Vented box',
  radiator: 'Box with passive radiator',
  bandpass: 'Band-pass box',
  baffle: 'Infinite baffle',
};

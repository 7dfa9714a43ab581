import type { Witness } from './witness.ts';

export const cutListWitnesses: readonly Witness[] = [
  {
    formula: '=TABLE.AT(CABINET.CUT_LIST("360 mm", "220 mm", "280 mm", "15 mm"), 1, "Length", 1 mm)',
    vouches: ['CABINET.CUT_LIST'],
    gives: 0.36,
    source: 'front of the outside height, by hand',
    confirmed: 'computed',
  },
  {
    formula: '=TABLE.ROWS(CABINET.LAYOUT("900 mm", "250 mm", "350 mm", "18 mm"))',
    vouches: ['CABINET.LAYOUT', 'TABLE.ROWS'],
    gives: 12,
    source: 'two cabinets of six panels',
    confirmed: 'computed',
  },
  {
    formula: '=TABLE.AT(BASKET.TABLE("Woofer", 2, QTY("62 ¤")), 1, "Price", 1 ¤)',
    vouches: ['BASKET.TABLE'],
    gives: 124,
    source: 'worked by hand',
    confirmed: 'computed',
  },
];

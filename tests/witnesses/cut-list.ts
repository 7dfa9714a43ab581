import type { Witness } from './witness.ts';

export const cutListWitnesses: readonly Witness[] = [
  {
    formula: '=TABLE.AT(CABINET.CUT_LIST("360 mm", "220 mm", "280 mm", "15 mm"), 1, "Length", 1 mm)',
    vouches: ['CABINET.CUT_LIST'],
    gives: 0.36,
    source: 'front of the outside height, by hand',
    confirmed: 'computed',
  },
  ...(
    [
      [1, 'Width', 0.22],
      [2, 'Length', 0.36],
      [2, 'Width', 0.25],
      [3, 'Length', 0.19],
      [3, 'Width', 0.25],
    ] as const
  ).map(([row, column, gives]) => ({
    formula: `=TABLE.AT(CABINET.CUT_LIST("360 mm", "220 mm", "280 mm", "15 mm"), ${String(row)}, "${column}", 1 mm)`,
    vouches: ['CABINET.CUT_LIST'],
    gives,
    within: { absolute: 1e-9 },
    source: 'front and back cover the edges: sides 280 − 2·15 mm deep, top and bottom 220 − 2·15 mm wide, by hand',
    confirmed: 'computed' as const,
  })),
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

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
  // Sheets so narrow that each panel lies behind the other: the last one ends where all widths, or lengths, and five cuts do.
  ...(
    [
      ['"360 mm", "10 m"', 'From below', 'Across', 2 * (0.22 + 0.25 + 0.25) + 5 * 0.003],
      ['"10 m", "250 mm"', 'From left', 'Along', 2 * (0.36 + 0.36 + 0.19) + 5 * 0.003],
    ] as const
  ).map(([sheet, corner, size, gives]) => ({
    formula: `=${[corner, size].map((column) => `TABLE.AT(CABINET.LAYOUT("360 mm", "220 mm", "280 mm", "15 mm", , , , 1, ${sheet}, "3 mm", "along"), 6, "${column}", 1 mm)`).join('+')}`,
    vouches: ['CABINET.LAYOUT'],
    gives,
    within: { absolute: 1e-9 },
    source: 'fronts of 360 by 220 mm, sides of 360 by 250 mm, tops of 190 by 250 mm in a row, by hand',
    confirmed: 'computed' as const,
  })),
  {
    formula: '=TABLE.AT(BASKET.TABLE("Woofer", 2, QTY("62 ¤")), 1, "Price", 1 ¤)',
    vouches: ['BASKET.TABLE'],
    gives: 124,
    source: 'worked by hand',
    confirmed: 'computed',
  },
];

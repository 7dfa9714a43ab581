import { same, type Identity } from '../identity.ts';

const sides = '"900 mm", "250 mm", "350 mm", "18 mm"';
const net = 'CABINET.NET_VOLUME("360 mm", "220 mm", "280 mm", "15 mm", "1.15 L")';
const sheets = (rest: string): string => `CABINET.SHEETS(${rest})`;

export const cabinetIdentities: readonly Identity[] = [
  same(
    'round trip',
    'CABINET.NET_VOLUME CABINET.DEPTH_FOR',
    `CABINET.DEPTH_FOR(${net}, "360 mm", "220 mm", "15 mm", "1.15 L")`,
    'QTY("280 mm")',
    'litres to depth',
  ),
  same(
    'round trip',
    'CABINET.HEIGHT_FOR',
    `CABINET.HEIGHT_FOR(${net}, "220 mm", "280 mm", "15 mm", "1.15 L")`,
    'QTY("360 mm")',
    'litres to height',
  ),
  same(
    'balance',
    'CABINET.CUT_LIST CABINET.LAYOUT',
    `TABLE.TOTAL(CABINET.CUT_LIST(${sides}, "front covers", 2), "Count", 1)`,
    `TABLE.ROWS(CABINET.LAYOUT(${sides}, "front covers", 2))`,
    'every panel of the list lies on a sheet',
  ),
  same(
    'scale law',
    'CABINET.SHEETS',
    sheets(`${sides}, "front covers", 2, 0.5, 6`),
    sheets('"1800 mm", "500 mm", "700 mm", "36 mm", "front covers", 2, 0.5, 6, "5 m", "2.5 m", "6 mm"'),
    'twice as large on sheets twice as large',
  ),
  same(
    'scale law',
    'PANEL.MODE',
    'PANEL.MODE("360 mm", "280 mm", "36 mm")',
    '2*PANEL.MODE("360 mm", "280 mm", "18 mm")',
    'twice as thick, an octave higher',
  ),
];

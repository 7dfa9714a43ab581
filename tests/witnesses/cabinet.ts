import { exactly, type Witness } from './witness.ts';

const hand = { source: 'worked by hand from the geometry', confirmed: 'computed' } as const;

/** Side of 1 m, 10 mm, D and ρh chosen so that √(D/ρh) is 1: then 2πf·a² is the λ² of the tables. E = 12(1 − ν²)ρ/h². */
const plate = (sides: string, edges: string): string =>
  `=PANEL.MODE(${sides}, "10 mm", "${edges}", "${String((12 * (1 - 0.09) * 1000) / 0.01 ** 2)} Pa", "1000 kg/m3", 0.3)`;
const unit = (lambda: number): number => lambda / (2 * Math.PI);
const leissa = (place: string, confirmed: 'memory' | 'computed' = 'memory') =>
  ({ source: `Leissa, Vibration of Plates, NASA SP-160 (1969), ${place}`, confirmed }) as const;

export const cabinetWitnesses: readonly Witness[] = [
  { formula: '=CABINET.NET_VOLUME("360 mm", "220 mm", "280 mm", "15 mm")', gives: 0.015675, ...hand },
  { formula: '=CABINET.NET_VOLUME("360 mm", "220 mm", "280 mm", "18 mm")', gives: 0.0145463, ...hand },
  {
    formula: '=CABINET.DEPTH_FOR("20 L", "400 mm", "250 mm", "20 mm", "1 L")',
    gives: 0.3177778,
    ...hand,
    within: { relative: 1e-5 },
  },
  {
    formula: '=CABINET.HEIGHT_FOR("20 L", "250 mm", "300 mm", "20 mm")',
    gives: 0.4063004,
    ...hand,
    within: { relative: 1e-5 },
  },
  { formula: '=BRACE.VOLUME("250 mm", "300 mm", "20 mm", 0.4, 2)', gives: 0.0008736, ...hand },
  { formula: '=CABINET.CLEARANCE("300 mm", "18 mm", "82 mm", "5 mm")', gives: 0.195, ...hand },
  {
    formula: plate('1, 1', 'supported'),
    gives: unit(19.7392),
    ...leissa('simply supported square plate, λ² = 19.7392', 'computed'),
    within: { relative: 3e-6 },
  },
  {
    formula: plate('"1 m", "0.5 m"', 'supported'),
    gives: unit(49.348),
    ...leissa('simply supported plate 1 : 2, λ² = 49.3480', 'computed'),
    within: { relative: 2e-5 },
  },
  {
    formula: plate('"1 m", "1 m"', 'clamped'),
    gives: unit(35.992),
    ...leissa('clamped square plate, λ² = 35.992'),
    within: { relative: 0.004 },
  },
  {
    formula: plate('"1 m", "50 m"', 'clamped'),
    gives: unit(22.3733),
    source: 'clamped strip as a clamped beam: (4.73004)² = 22.3733, solution of cos·cosh = 1',
    confirmed: 'computed',
    within: { relative: 0.004 },
  },
  {
    formula: '=PANEL.BRACED("360 mm", "280 mm", "18 mm", "198 mm")',
    gives: 659,
    source: 'plate formula for the larger span of 198 mm, by hand',
    confirmed: 'computed',
  },
  {
    formula: '=CABINET.WEIGHT("400 mm", "250 mm", "300 mm", "20 mm", , , , "700 kg/m3", "5 kg")',
    gives: 12.2408,
    ...hand,
    within: { relative: 1e-5 },
  },
  {
    formula: '=CABINET.TIP_ANGLE("200 mm", "567.128 mm")',
    gives: 0.174533,
    source: 'tan 10° = 0.176327: half the base over the height',
    confirmed: 'computed',
  },
  { formula: '=CABINET.SHEETS("360 mm", "220 mm", "280 mm", "15 mm")', gives: 1, within: exactly, ...hand },
  { formula: '=BASKET.TOTAL("Coil", 3, QTY("4 ¤"), "6 ¤", 0.1)', gives: 22, within: exactly, ...hand },
  { formula: '=BASKET.SHARE("Wood", "Sheet", 2, QTY("30 ¤"), "wood")', gives: 1, within: exactly, ...hand },
];

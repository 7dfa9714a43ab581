import { pairCells } from './pair-cells.ts';
import { rankCells } from './rank-cells.ts';
import type { Witness } from './witness.ts';

const savage = {
  source:
    'Savage 1951: shortfall from the best of each column (1.4 and 1.2) over its step; largest of a row: 2.4, 1, 2.2; by hand',
  confirmed: 'computed',
} as const;

export const rulesWitnesses: readonly Witness[] = [
  {
    formula: '=PAIR.WINDOW("resonance", 1700 Hz, 1275 Hz, "narrowing", 1923 Hz, 2631 Hz)',
    field: 'octaves',
    gives: 0.17782402,
    within: { relative: 1e-5 },
    source: 'worked by hand',
    confirmed: 'computed',
  },
  {
    formula: '=PAIR.VERDICT(PAIR.WINDOW("resonance", 1700 Hz, 1275 Hz, "narrowing", 1923 Hz, 2631 Hz))',
    field: 'status',
    gives: 'caution',
    source: '0.18 octaves against half an octave: common practice, no source',
    confirmed: 'practice',
  },
  {
    formula:
      '=PAIR.HANDOVER_VERDICT("1808 Hz", PAIR.WINDOW("resonance", 1700 Hz, 1275 Hz, "narrowing", 1923 Hz, 2631 Hz))',
    field: 'status',
    gives: 'good',
    source: '1700 < 1808 < 1923 Hz',
    confirmed: 'computed',
  },
  ...Object.entries({ octaves: 0.396887, stretchedoctaves: 1.32562, low: 1600, high: 2106.662131 }).map(
    ([field, gives]) => ({
      formula: '=PAIR.BY_RULES(DRIVER(A1:A3, B1:B3), DRIVER(A4:A7, B4:B7), "96 dB", "LR4", "30°", "2 mm", C1:D5)',
      cells: pairCells,
      field,
      gives,
      within: { relative: 1e-5 },
      source:
        '2.5, and 1.8, times 640 Hz against −3, and −6, dB at 30° of a 220 cm² piston by a root of 2·J1(x)/x with scipy; the others do not bind',
      confirmed: 'computed' as const,
    }),
  ),
  {
    formula: '=RULE.RESONANCE("1808 Hz", "850 Hz")',
    field: 'status',
    gives: 'good',
    source: 'common practice, no source: 2.13 times the resonance, twice asked for',
    confirmed: 'practice',
  },
  {
    formula: '=RULE.RESONANCE("1500 Hz", "850 Hz")',
    field: 'status',
    gives: 'caution',
    source: 'common practice, no source: 1.76 times the resonance, twice asked for',
    confirmed: 'practice',
  },
  {
    formula: '=RULE.TRAVEL("0.245 mm", "0.35 mm")',
    field: 'status',
    gives: 'good',
    source: 'common practice, no source: seven tenths',
    confirmed: 'practice',
  },
  {
    formula: '=RULE.TRAVEL("0.4 mm", "0.35 mm")',
    field: 'status',
    gives: 'fail',
    source: 'common practice, no source: more than all of it',
    confirmed: 'practice',
  },
  {
    formula: '=RULE.NARROWING("1808 Hz", "132 cm²")',
    field: 'status',
    gives: 'good',
    source: 'common practice, no source: −3 dB at 45° comes at 1923 Hz',
    confirmed: 'practice',
  },
  {
    formula: '=RULE.DIRECTIVITY("1808 Hz", "132 cm²", "7 cm²")',
    field: 'status',
    gives: 'good',
    source: 'common practice, no source: 3.1 dB (piston with functions of a general library) against 3.5 dB',
    confirmed: 'practice',
  },
  {
    formula: '=RULE.BREAKUP("1808 Hz", "5200 Hz")',
    field: 'status',
    gives: 'good',
    source: 'common practice, no source: 0.35 against half',
    confirmed: 'practice',
  },
  {
    formula: '=RULE.SPACING("1808 Hz", "139 mm")',
    field: 'status',
    gives: 'good',
    source: 'common practice, no source: 0.73 wavelengths against one',
    confirmed: 'practice',
  },
  {
    formula: '=RULE.NULL("43.1°")',
    field: 'status',
    gives: 'good',
    source: 'common practice, no source: 43° against 30°',
    confirmed: 'practice',
  },
  {
    formula: '=RULE.ROUNDING("19 mm", "2.3 kHz")',
    field: 'status',
    gives: 'good',
    source: 'common practice, no source: 19 mm of 149 mm, more than an eighth',
    confirmed: 'practice',
  },
  {
    formula: '=RULE.ROUNDING("6 mm", "2.3 kHz")',
    field: 'status',
    gives: 'fail',
    source: 'common practice, no source: 6 mm of 149 mm, less than a sixteenth',
    confirmed: 'practice',
  },
  {
    formula: '=RULE.OVERLAP("3.2 kHz", "800 Hz")',
    field: 'status',
    gives: 'good',
    source: 'common practice, no source: two octaves',
    confirmed: 'practice',
  },
  {
    formula: '=RULE.PAD("84.7 dB", "90 dB")',
    field: 'status',
    gives: 'good',
    source: 'common practice, no source: 5.3 dB against 10 dB',
    confirmed: 'practice',
  },
  {
    formula: '=RULE.BAND("300 Hz", "2.4 kHz")',
    field: 'status',
    gives: 'good',
    source: 'common practice, no source: three octaves',
    confirmed: 'practice',
  },
  {
    formula: '=RULE.CHAMBER("300 Hz", "104 Hz")',
    field: 'status',
    gives: 'good',
    source: 'common practice, no source: 2.9 times against twice',
    confirmed: 'practice',
  },
  {
    formula: '=RULE.BOX_BY_RATIO("38 Hz", 0.42)',
    gives: 'either',
    source: 'articles on Fs/Qes: 90.5 Hz lies between 50 and 100 Hz',
    confirmed: 'read',
  },
  { formula: '=RULE.BOX_BY_Q(0.386)', gives: 'vented', source: 'articles on Qts: up to 0.4 vented', confirmed: 'read' },
  {
    formula:
      '=TEAM.VERDICT(C1, A1:B1, , , , PAIR.WINDOW("resonance", 1700 Hz, 1275 Hz, "narrowing", 1923 Hz, 2631 Hz))',
    cells: { A1: '84.7 dB', B1: '90 dB', C1: '1808 Hz' },
    field: 'status',
    gives: 'caution',
    source: 'common practice, no source: the window of 0.18 octaves binds',
    confirmed: 'practice',
  },
  {
    formula: '=TEAM.MAINS_VERDICT("85 Hz", "87 Hz", "2.9 mm", "4.5 mm", 2, "28 V", "40 V")',
    field: 'status',
    gives: 'good',
    source: 'common practice, no source',
    confirmed: 'practice',
  },
  {
    formula: '=MIN(RANK.REGRET(A1:A3, D1:E1, B1:C3))',
    cells: rankCells,
    vouches: ['RANK.REGRET'],
    gives: 1,
    within: { relative: 1e-6 },
    ...savage,
  },
  {
    formula: '=RANK.BEST(A1:A3, D1:E1, B1:C3)',
    cells: rankCells,
    gives: 'M-2',
    ...savage,
  },
  {
    formula: '=TABLE.AT(RANK.TABLE(A1:A3, D1:E1, B1:C3), 1, "Regret", 1)',
    cells: rankCells,
    vouches: ['RANK.TABLE'],
    gives: 1,
    within: { relative: 1e-6 },
    ...savage,
  },
];

import { same, turns, type Identity } from '../identity.ts';
import { pairCells } from '../pair-cells.ts';
import { rankCells } from '../rank-cells.ts';

const window = 'PAIR.WINDOW("resonance", 1700 Hz, 1275 Hz, "narrowing", 1923 Hz, 2631 Hz)';
const wide = 'PAIR.WINDOW("resonance", 3400 Hz, 2550 Hz, "narrowing", 3846 Hz, 5262 Hz)';
const narrowing = 'PISTON.NARROWING("132 cm²", "45°", "3 dB")';
const match = 'PISTON.MATCH("132 cm²", "7 cm²", "1808 Hz")';
const limit = 'SPACING.LIMIT("139 mm")';
const rounding = 'EDGE.RADIUS_FREQUENCY("19 mm")';
const word = (call: string, text: string): string => `IF(${call}="${text}", 1, 0)`;
const team = (comfortable: string): string => `TEAM.VERDICT(C1, A1:B1, "${comfortable}", , , ${window})`;
const mains = (travel: string): string =>
  `TEAM.MAINS_VERDICT("85 Hz", "60 Hz", "${travel}", "4.5 mm", 2, "28 V", "40 V")`;
const levels = { A1: '84.7 dB', B1: '90 dB', C1: '1808 Hz' };
const ranked = {
  ...rankCells,
  F1: '2',
  F2: '9',
  F3: '14',
  G1: '12',
  G2: '8',
  G3: '1',
  H1: '5',
  I1: '5',
};
const regret = 'RANK.REGRET(A1:A3, D1:E1, B1:C3)';
const tenfold = 'A1:A3, H1:I1, F1:G3';

export const pairingIdentities: readonly Identity[] = [
  same(
    'scale law',
    'PAIR.WINDOW',
    `PAIR.OCTAVES(${wide})`,
    `PAIR.OCTAVES(${window})`,
    'an octave higher the window is as wide',
  ),
  same(
    'another way',
    'PAIR.BY_RULES',
    'PAIR.HIGH(PAIR.BY_RULES(DRIVER(A1:A3, B1:B3), DRIVER(A4:A7, B4:B7), "96 dB", "LR4", "30°", "2 mm", C1:D5))',
    'PISTON.NARROWING("220 cm²", "30°", "3 dB")',
    'the narrowing of the cone is the upper end',
    { cells: pairCells, within: 1e-6 },
  ),
  same(
    'balance',
    'PAIR.CENTRE',
    `PAIR.CENTRE(${window})^2`,
    `PAIR.LOW(${window})*PAIR.HIGH(${window})`,
    'as many octaves to either end',
  ),
  turns(
    'PAIR.VERDICT',
    `PAIR.VERDICT(${window}, "0.177 oct")`,
    `PAIR.VERDICT(${window}, "0.179 oct")`,
    'comfortable is as wide as was asked for',
  ),
  turns(
    'PAIR.HANDOVER_VERDICT',
    `PAIR.HANDOVER_VERDICT("1922 Hz", ${window})`,
    `PAIR.HANDOVER_VERDICT("1924 Hz", ${window})`,
    'the upper end of the window',
  ),
  same(
    'balance',
    'OVERLAP.BELOW OVERLAP.ABOVE',
    'OVERLAP.BELOW("1500 Hz", "850 Hz")+OVERLAP.ABOVE("1500 Hz", "3400 Hz")',
    'QTY("2 oct")',
    'what lies below and above is the whole overlap',
  ),
  turns(
    'RULE.RESONANCE',
    'RULE.RESONANCE("1701 Hz", "850 Hz")',
    'RULE.RESONANCE("1699 Hz", "850 Hz")',
    'twice the resonance',
  ),
  turns(
    'RULE.TRAVEL',
    'RULE.TRAVEL("0.2449 mm", "0.35 mm")',
    'RULE.TRAVEL("0.2451 mm", "0.35 mm")',
    'seven tenths of Xmax',
  ),
  turns(
    'RULE.NARROWING',
    `RULE.NARROWING(0.999*${narrowing}, "132 cm²")`,
    `RULE.NARROWING(1.001*${narrowing}, "132 cm²")`,
    'where the piston narrows',
  ),
  turns(
    'RULE.DIRECTIVITY',
    `RULE.DIRECTIVITY("1808 Hz", "132 cm²", "7 cm²", 1.001*${match})`,
    `RULE.DIRECTIVITY("1808 Hz", "132 cm²", "7 cm²", 0.999*${match})`,
    'the difference of the pistons',
  ),
  turns(
    'RULE.BREAKUP',
    'RULE.BREAKUP("2599 Hz", "5200 Hz")',
    'RULE.BREAKUP("2601 Hz", "5200 Hz")',
    'an octave below the first resonance of the cone',
  ),
  turns(
    'RULE.SPACING',
    `RULE.SPACING(0.999*${limit}, "139 mm")`,
    `RULE.SPACING(1.001*${limit}, "139 mm")`,
    'one wavelength apart',
  ),
  turns('RULE.NULL', 'RULE.NULL("30.1°")', 'RULE.NULL("29.9°")', 'thirty degrees'),
  turns('RULE.OVERLAP', 'RULE.OVERLAP("3.201 kHz", "800 Hz")', 'RULE.OVERLAP("3.199 kHz", "800 Hz")', 'two octaves'),
  turns(
    'RULE.ROUNDING',
    `RULE.ROUNDING("19 mm", 1.001*${rounding})`,
    `RULE.ROUNDING("19 mm", 0.999*${rounding})`,
    'where the radius is an eighth of a wavelength',
  ),
  turns('RULE.PAD', 'RULE.PAD("84.7 dB", "94.69 dB")', 'RULE.PAD("84.7 dB", "94.71 dB")', 'ten decibels'),
  turns('RULE.BAND', 'RULE.BAND("300 Hz", "2.401 kHz")', 'RULE.BAND("300 Hz", "2.399 kHz")', 'three octaves'),
  turns(
    'RULE.CHAMBER',
    'RULE.CHAMBER("300 Hz", "149.9 Hz")',
    'RULE.CHAMBER("300 Hz", "150.1 Hz")',
    'an octave above the resonance in the chamber',
  ),
  same(
    'turning point',
    'RULE.BOX_BY_RATIO',
    `${word('RULE.BOX_BY_RATIO("38 Hz", 0.379)', 'vented')}-${word('RULE.BOX_BY_RATIO("38 Hz", 0.381)', 'vented')}`,
    '1',
    'Fs/Qes of 100 Hz',
  ),
  same(
    'turning point',
    'RULE.BOX_BY_Q',
    `${word('RULE.BOX_BY_Q(0.399)', 'vented')}-${word('RULE.BOX_BY_Q(0.401)', 'vented')}`,
    '1',
    'a Qts of 0.4',
  ),
  turns('TEAM.VERDICT', team('0.177 oct'), team('0.179 oct'), 'comfortable is as wide as was asked for', 'good', {
    cells: levels,
  }),
  turns('TEAM.MAINS_VERDICT', mains('3.14 mm'), mains('3.16 mm'), 'seven tenths of Xmax'),
  same(
    'scale law',
    'RANK.REGRET',
    `SUM(RANK.REGRET(${tenfold}))`,
    `SUM(${regret})`,
    'ten times the numbers in ten times the steps',
    { cells: ranked },
  ),
  same(
    'another way',
    'RANK.BEST',
    `INDEX(${regret}, MATCH(RANK.BEST(A1:A3, D1:E1, B1:C3), A1:A3, 0), 1)`,
    `MIN(${regret})`,
    'the best has the least regret',
    { cells: ranked },
  ),
  same(
    'another way',
    'RANK.TABLE',
    'TABLE.AT(RANK.TABLE(A1:A3, D1:E1, B1:C3), 1, "Regret", 1)',
    `MIN(${regret})`,
    'the first has the least regret',
    { cells: ranked },
  ),
];

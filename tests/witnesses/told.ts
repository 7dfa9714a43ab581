import { woofer } from './subjects.ts';
import type { Witness } from './witness.ts';

/** The numbers that the reason of a verdict tells, in their order, in SI. */
const told = (
  source: string,
  formula: string,
  numbers: readonly number[],
  cells?: Readonly<Record<string, string>>,
): readonly Witness[] =>
  numbers.map((gives, index) => ({
    formula: `=${formula}`,
    ...(cells && { cells }),
    field: `number ${String(index + 1)}`,
    gives,
    // A largest or a least value is sought that near.
    within: { relative: 1e-5 },
    source,
    confirmed: 'computed',
  }));

/** Cells with labels in column A and values in B. */
const besides = (rows: Readonly<Record<string, string>>): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.entries(rows).flatMap(([label, value], index) => [
      [`A${String(index + 1)}`, label],
      [`B${String(index + 1)}`, value],
    ]),
  );

const hand = 'as given, and ratios, differences and octaves of what is given, by hand';
const bound =
  'the largest efficiency over volume and cubed F3 by a search over the alignments with scipy, Small 1972 and 1973';
const piston = '2·J1(x)/x, and (ka)²/(1 − J1(2ka)/ka), with scipy';
const window = 'PAIR.WINDOW("resonance", 1700 Hz, 1275 Hz, "narrowing", 1923 Hz, 2631 Hz)';
const apart = 'PAIR.WINDOW("resonance", 1700 Hz, 1275 Hz, "narrowing", 1000 Hz, 1200 Hz)';
const wide = 'PAIR.WINDOW("resonance", 1000 Hz, 800 Hz, "narrowing", 1923 Hz, 2631 Hz)';

/** What is read beside the chip decides as much as its colour. */
export const toldWitnesses: readonly Witness[] = [
  ...told(
    bound,
    'CLAIM.CHECK("92 dB", "6 Ω", "15 L", "35 Hz", "closed")',
    [5.475877845, 0.0821381677, 61.690642704, 84.615462486],
  ),
  ...told(
    bound,
    'CLAIM.CHECK("92 dB", "6 Ω", "15 L", "35 Hz")',
    [2.812936964, 0.0421940545, 49.40694995, 87.5083999994],
  ),
  ...told(
    'the same distance three times, and half a wave of it: 343.2/(2·0.11)',
    'EDGE.PLACE_VERDICT("220 mm", "380 mm", "110 mm", "270 mm")',
    [0.11, 1560],
  ),
  ...told(hand, 'EDGE.PLACE_VERDICT("220 mm", "380 mm", "80 mm", "240 mm")', [0.08, 0.14, 0.14]),
  ...told(
    'least of the impedance of known parameters with scipy; 0.8 and 0.7 of 8 Ω',
    `LOAD.VERDICT(DRIVER.IMPEDANCE(${woofer}), "8 Ω")`,
    [5.8264809, 407.61969, 6.4, 5.6],
  ),
  ...told(
    'Vas of the compliance that 25 g and 38 Hz ask for; the level that it makes with Fs and Qes, Small 1972, by hand',
    'DRIVER.CULPRIT(DRIVER(A1:A9, B1:B9))',
    [0.0285, 0.0173381186, 92, 87.0090015],
    besides({
      Fs: '38 Hz',
      Qts: '0.39',
      Vas: '28.5 L',
      Qes: '0.42',
      Sd: '132 cm²',
      Re: '5.8 Ω',
      Mms: '25 g',
      Level: '92 dB',
      'Level basis': '2.83 V',
    }),
  ),
  ...told('NIOSH 98-126, table 1-1', 'HEARING.VERDICT("94 dB", "2 h")', [94, 3600]),
  ...told('NIOSH 98-126, table 1-1', 'HEARING.VERDICT("97 dB", "20 min")', [97, 1800]),
  ...told(hand, `PAIR.VERDICT(${apart})`, [1700, 1000, 0.7655347464, 1275, 1200, 0.0874628413]),
  ...told(hand, `PAIR.VERDICT(${window})`, [1700, 1923, 0.1778240163, 0.5]),
  ...told(hand, `PAIR.VERDICT(${wide})`, [1000, 1923, 0.9433587627, 0.5]),
  ...told(hand, `PAIR.HANDOVER_VERDICT("2500 Hz", ${window})`, [2500, 1923, 0.3785693322, 2631]),
  ...told(hand, `PAIR.HANDOVER_VERDICT("1808 Hz", ${window})`, [1808, 1700, 1923]),
  ...told(hand, 'RULE.RESONANCE("1000 Hz", "850 Hz")', [1000, 850, 1000 / 850, 2, 0.8235294118, 1.5]),
  ...told(hand, 'RULE.TRAVEL("0.3 mm", "0.35 mm")', [0.0003, 0.00035, 6 / 7, 0.7, 0.1571428571]),
  ...told(hand, 'RULE.TRAVEL("0.4 mm", "0.35 mm")', [0.0004, 0.00035, 8 / 7, 0.7, 0.4428571429, 1]),
  ...told(hand, 'RULE.ROUNDING("5 mm", "2 kHz")', [0.005, 0.1716, 2000, 0.005 / 0.1716, 0.125, 0.0958624709, 0.0625]),
  ...told(piston, 'RULE.NARROWING("3 kHz", "132 cm²")', [Math.PI / 4, 3000, 8.145948473, 3, 5.145948473, 6]),
  ...told(piston, 'RULE.DIRECTIVITY("3 kHz", "132 cm²", "7 cm²")', [3000, 7.570753456, 3.5, 4.070753456, 5]),
  ...told(hand, 'RULE.BREAKUP("3 kHz", "5200 Hz")', [5200, 3000, 5.2 / 3, 2, 0.8 / 3]),
  ...told(hand, 'RULE.SPACING("3 kHz", "139 mm")', [0.139, 3000, (0.139 * 3000) / 343.2, 1, 0.215034965]),
  ...told(hand, 'RULE.NULL("20°")', [Math.PI / 9, Math.PI / 6, Math.PI / 18]),
  ...told(hand, 'RULE.OVERLAP("3 kHz", "1 kHz")', [1000, 3000, 1.5849625007, 2, 0.4150374993]),
  ...told(hand, 'RULE.ROUNDING("20 mm", "2 kHz")', [0.02, 0.1716, 2000, 0.02 / 0.1716, 0.125, 0.0084498834]),
  ...told(hand, 'RULE.PAD("80 dB", "92 dB")', [12, 10, 2]),
  ...told(hand, 'RULE.BAND("300 Hz", "2 kHz")', [300, 2000, 2.7369655942, 3, 0.2630344058]),
  ...told(hand, 'RULE.CHAMBER("150 Hz", "100 Hz")', [150, 100, 1.5, 2, 0.5]),
  ...told(hand, `TEAM.VERDICT(C1, A1:B1, , , , ${window})`, [1700, 1923, 0.1778240163, 0.5], {
    A1: '84.7 dB',
    B1: '90 dB',
    C1: '1808 Hz',
  }),
  ...told(hand, 'TEAM.MAINS_VERDICT("80 Hz", "90 Hz", "3 mm", "4.5 mm", 2, "10 V", "28 V")', [90, 80]),
  ...told(hand, 'TEAM.MAINS_VERDICT("80 Hz", "70 Hz", "4 mm", "4.5 mm", 6, "30 V", "28 V")', [30, 28]),
  ...told(hand, 'CHECK.AT_LEAST("3 L", "5 L", "4 L", "Net volume")', [0.003, 0.005, 0.002, 0.004]),
  ...told(hand, 'CHECK.AT_LEAST("6 L", "5 L", "4 L", "Net volume")', [0.006, 0.005, 0.001]),
  ...told(hand, 'CHECK.AT_LEAST("4.5 L", "5 L", "4 L", "Net volume")', [0.0045, 0.005, 0.0005, 0.004]),
  ...told(hand, 'CHECK.WITHIN("75 Hz", "50 Hz", "60 Hz", "10 Hz", "Tuning")', [75, 50, 60, 15]),
  ...told(hand, 'CHECK.WITHIN("55 Hz", "50 Hz", "60 Hz", "10 Hz", "Tuning")', [55, 50, 60, 5]),
  ...told(hand, 'CHECK.AT_MOST("11 dB", "8 dB", "10 dB", "Pad")', [11, 8, 3, 10]),
  ...told(hand, 'CHECK.WITHIN("45 Hz", "50 Hz", "60 Hz", "10 Hz", "Tuning")', [45, 50, 60, 5]),
  ...told(hand, 'CHECK.NOTE("30 m", "20 m", "Cable", "is long")', [30, 10, 20]),
  ...told(hand, 'CHECK.WORST(RULE.BREAKUP("3 kHz", "5200 Hz"), RULE.NULL("20°"))', [5200, 3000, 5.2 / 3, 2, 0.8 / 3]),
  ...told(hand, 'CHECK.WORST(CHECK.AT_LEAST(3, 2, , "Ratio"), CHECK.AT_LEAST(1, 2, , "Ratio"))', [1, 2, 1]),
  ...told(
    hand,
    'CHECK.WORST(CHECK.AT_LEAST("3 L", "5 L", "4 L", "Net volume"), RULE.NULL("40°"))',
    [0.003, 0.005, 0.002, 0.004],
  ),
  ...told(hand, 'MEASURE.CHECK_SYMMETRY("38 Hz", "20 Hz", "54 Hz")', [Math.sqrt(20 * 54), 38]),
  ...told(hand, 'MEASURE.CHECK_OHMS("7 Ω", "5.8 Ω")', [7, 5.8]),
  ...told(hand, 'MEASURE.CHECK_CURVE(MEASURE.LEVEL("100 88 0\n1000 90 10"), "20 Hz", "800 Hz")', [100, 1000, 20, 800]),
];

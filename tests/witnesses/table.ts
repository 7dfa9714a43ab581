import { exactly, type Witness } from './witness.ts';

export const tableWitnesses: readonly Witness[] = [
  {
    formula: '=TABLE.TEXT(STANDARD.PAIRS("2.5 Ω", "parallel", "E12", 3), 1, "Made of")',
    vouches: ['TABLE.TEXT'],
    gives: '2.7 and 33',
    source: '2.7 and 33 in parallel make 2.4958, by hand',
    confirmed: 'computed',
  },
  {
    formula: '=TABLE.TOTAL(CURVE.TABLE(CURVE.READ(1 kHz, 90 dB), 1, "100 Hz", "400 Hz"), "Frequency", 1 Hz)',
    gives: 700,
    within: { absolute: 0.001 },
    source: '100, 200 and 400, by hand',
    confirmed: 'computed',
  },
  {
    formula: '=TABLE.ROW(STANDARD.PAIRS("2.5 Ω", "parallel", "E12", 3), "Made of", "2.7 and 33")',
    gives: 1,
    within: exactly,
    source: '2.7 and 33 in parallel make 2.4958, the nearest; by hand',
    confirmed: 'computed',
  },
  {
    formula:
      '=TABLE.ROW_OF(CURVE.TABLE(FILTER.SLOPE("640 Hz", "BW2", "low"), 1, "160 Hz", "640 Hz"), "Frequency", "highest", 1 Hz, 1 kHz)',
    gives: 3,
    within: exactly,
    source: '160, 320, 640: the third',
    confirmed: 'computed',
  },
];

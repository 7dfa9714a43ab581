import { exactly, type Witness } from './witness.ts';

const compared = { source: 'comparison of the numbers, by hand', confirmed: 'computed' } as const;

export const checkWitnesses: readonly Witness[] = [
  {
    formula: '=CHECK.AT_LEAST("3 Ω", "3.2 Ω", "2.8 Ω", "Lowest load")',
    field: 'status',
    gives: 'caution',
    ...compared,
  },
  {
    formula: '=CHECK.AT_MOST("23.3 m/s", "17 m/s", "20 m/s", "Air in the port", "Take a wider port.")',
    field: 'status',
    gives: 'fail',
    ...compared,
  },
  { formula: '=CHECK.WITHIN("5.3 dB", "0 dB", "10 dB", "3 dB", "Pad")', field: 'status', gives: 'good', ...compared },
  {
    formula: '=CHECK.NOTE("112 dB", "110 dB", "Target level", "Check hearing and amplifier.")',
    field: 'status',
    gives: 'good',
    ...compared,
  },
  {
    formula: '=CHECK.WORST(CHECK.AT_LEAST(3, 2, , "Ratio"), CHECK.AT_LEAST(1, 2, , "Ratio"))',
    field: 'status',
    gives: 'fail',
    ...compared,
  },
  {
    formula: '=CHECK.COUNT("good", CHECK.AT_LEAST(3, 2, , "Ratio"))',
    gives: 1,
    within: exactly,
    source: 'counted by hand',
    confirmed: 'computed',
  },
];

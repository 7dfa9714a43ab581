import { define } from '../define.ts';
import { usual } from '../usual.ts';

const source = { source: 'own', at: 'definition of the decibel' } as const;
const ratio = { quantity: 'ratio', min: 1e-15, max: 1e15 } as const;

export const levelRatio = define({
  name: 'LEVEL.RATIO',
  summary: 'The ratio of pressures or voltages that a number of decibels stands for.',
  parameters: { level: { ...usual.level, summary: 'decibels' } },
  returns: { quantity: 'ratio', summary: 'ratio of pressures, voltages or travels' },
  source,
  example: { formula: '=LEVEL.RATIO("6 dB")', gives: 1.995 },
  remarks: 'For power, square it: 6 dB is twice the voltage and four times the power.',
  compute: (given) => 10 ** (given.level / 20),
});

export const levelFromRatio = define({
  name: 'LEVEL.FROM_RATIO',
  summary: 'The decibels of a ratio of pressures or voltages.',
  parameters: { ratio: { ...ratio, summary: 'ratio of pressures, voltages or travels' } },
  returns: { quantity: 'level', summary: 'decibels' },
  source,
  example: { formula: '=LEVEL.FROM_RATIO(2)', gives: 6.02 },
  remarks: 'For a ratio of powers use LEVEL.POWER_OF.',
  compute: (given) => 20 * Math.log10(given.ratio),
});

export const levelPowerOf = define({
  name: 'LEVEL.POWER_OF',
  summary: 'The decibels of a ratio of powers.',
  parameters: { ratio: { ...ratio, summary: 'ratio of powers' } },
  returns: { quantity: 'level', summary: 'decibels' },
  source,
  example: { formula: '=LEVEL.POWER_OF(2)', gives: 3.01 },
  remarks: 'For a ratio of voltages use LEVEL.FROM_RATIO, which gives twice as much.',
  compute: (given) => 10 * Math.log10(given.ratio),
});

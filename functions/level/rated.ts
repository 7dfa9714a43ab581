import { airDensity, referencePressure, standardVolts } from '../air.ts';
import { define } from '../define.ts';
import { usual } from '../usual.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import { power } from './parameters.ts';

export const levelToWatt = define({
  name: 'LEVEL.TO_WATT',
  summary: 'A level for 2.83 V, for 1 W into some ohms instead.',
  parameters: {
    level: { ...usual.level, typical: [70, 115], summary: 'level at 1 m for 2.83 V' },
    ohms: { ...usual.ohms, typical: [2, 32], summary: 'the ohms into which the watt is counted' },
  },
  returns: { quantity: 'level', summary: 'level at 1 m for 1 W' },
  source: { source: 'iec60268_5', at: 'characteristic sensitivity: the voltage that gives 1 W in the rated impedance' },
  example: { formula: '=LEVEL.TO_WATT("91 dB", "4 ohm")', gives: 87.98 },
  remarks: 'A driver of 4 ohms takes 2 W at 2.83 V, and so looks 3 dB louder on that basis.',
  compute: (given) => given.level - 10 * Math.log10(standardVolts ** 2 / given.ohms),
});

export const levelByPower = define({
  name: 'LEVEL.BY_POWER',
  summary: 'The level that a power reaches, from the level for 1 W.',
  parameters: {
    level: { ...usual.level, typical: [70, 115], summary: 'level at 1 m for 1 W' },
    power: { ...power, summary: 'power into the same ohms' },
  },
  returns: { quantity: 'level', summary: 'level at 1 m' },
  source: { source: 'iec60268_5', at: 'level that a power produces: characteristic sensitivity and the power in dB' },
  example: { formula: '=LEVEL.BY_POWER("87.3 dB", "60 W")', gives: 105.08 },
  remarks: 'With the rated power this is the limit by heat. A hot coil loses 1 to 3 dB of it.',
  compute: (given) => given.level + 10 * Math.log10(given.power),
});

export const levelByTravel = define({
  name: 'LEVEL.BY_TRAVEL',
  summary: 'The level at 1 m that the travel of a cone reaches at a frequency.',
  parameters: {
    sd: { ...usual.area, typical: [1e-4, 0.2], summary: 'radiating area' },
    xmax: { ...usual.travel, typical: [1e-4, 0.04], summary: 'one-way travel' },
    frequency: { ...usual.frequency, summary: 'frequency' },
  },
  returns: { quantity: 'level', summary: 'level of a sine at 1 m in half space' },
  source: { source: 'beranek1954', at: 'simple source in half space, p = ρ·ω²·Sd·x/(√2·2π·r)' },
  example: { formula: '=LEVEL.BY_TRAVEL("137 cm²", "5.5 mm", "50 Hz")', gives: 94.05 },
  remarks:
    'The cone alone, without the output of a port: four times the travel for the same level an octave lower. Higher up the heat ends it first: LIMIT.MAP.',
  compute: ({ sd, xmax, frequency }) =>
    20 *
    Math.log10(
      (airDensity * (2 * Math.PI * frequency) ** 2 * sd * xmax) / (Math.SQRT2 * 2 * Math.PI * referencePressure),
    ),
});

const noLevel = (levels: readonly number[]): Problem | undefined =>
  levels.length > 0 ? undefined : new Problem(say`There is no level; give at least one.`, 'levels');

const levels = { ...usual.level, many: true, summary: 'levels' } as const;

export const levelSum = define({
  name: 'LEVEL.SUM',
  summary: 'The level of several sources that have nothing to do with one another.',
  parameters: { levels },
  returns: { quantity: 'level', summary: 'level together' },
  source: { source: 'own', at: 'sum of the powers' },
  example: { formula: '=LEVEL.SUM("88 dB", "91 dB")', gives: 92.76 },
  remarks: 'Two equal ones give 3 dB more. For the same signal in step use LEVEL.SUM_IN_STEP.',
  compute: (given) =>
    noLevel(given.levels) ?? 10 * Math.log10(given.levels.reduce((sum, level) => sum + 10 ** (level / 10), 0)),
});

export const levelSumInStep = define({
  name: 'LEVEL.SUM_IN_STEP',
  summary: 'The level of several sources of one signal that arrive in step.',
  parameters: { levels },
  returns: { quantity: 'level', summary: 'level together' },
  source: { source: 'own', at: 'sum of the pressures' },
  example: { formula: '=LEVEL.SUM_IN_STEP("88 dB", "91 dB")', gives: 95.65 },
  remarks: 'Two equal ones give 6 dB more: 3 dB from twice the power, 3 dB from twice the area.',
  compute: (given) =>
    noLevel(given.levels) ?? 20 * Math.log10(given.levels.reduce((sum, level) => sum + 10 ** (level / 20), 0)),
});

export const levelSumAtAngle = define({
  name: 'LEVEL.SUM_AT_ANGLE',
  summary: 'The level of two tones of one frequency with an angle between them.',
  parameters: {
    a: { ...usual.level, summary: 'level of the first' },
    b: { ...usual.level, summary: 'level of the second' },
    angle: { quantity: 'angle', min: -1e4, max: 1e4, summary: 'angle between them' },
  },
  returns: { quantity: 'level', summary: 'level together, at least −300 dB' },
  source: { source: 'own', at: 'sum of the complex pressures' },
  example: { formula: '=LEVEL.SUM_AT_ANGLE("90 dB", "87 dB", "120°")', gives: 88.99 },
  compute: ({ a, b, angle }) => {
    const [one, other] = [10 ** (a / 20), 10 ** (b / 20)];
    return Math.max(-300, 20 * Math.log10(Math.hypot(one + other * Math.cos(angle), other * Math.sin(angle))));
  },
});

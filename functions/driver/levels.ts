import { define } from '../define.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import { computedLevel } from './audit.ts';
import { fromWatt } from './basis.ts';
import { need } from './need.ts';
import { efficiencyOf } from './relations.ts';
import { usual } from '../usual.ts';

const driver = { record: 'driver', summary: 'the driver' } as const;
const demo = 'DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "5.8 ohm", "132 cm2", "5.5 mm")';

export const driverQts = define({
  name: 'DRIVER.QTS',
  summary: 'Total Q of a driver from its mechanical and electrical Q.',
  parameters: {
    qms: { ...usual.q, typical: [1, 15], summary: 'mechanical Q' },
    qes: { ...usual.q, typical: [0.15, 2], summary: 'electrical Q' },
  },
  returns: { quantity: 'ratio', summary: 'total Q' },
  source: { source: 'small1972direct', at: 'Qts = Qms·Qes/(Qms + Qes)' },
  example: { formula: '=DRIVER.QTS(4.8, 0.42)', gives: 0.386 },
  compute: ({ qms, qes }) => 1 / (1 / qms + 1 / qes),
});

export const driverLevel = define({
  name: 'DRIVER.LEVEL',
  summary: 'Level at 1 m into half space, computed from the parameters, for 2.83 V or for a watt.',
  parameters: {
    driver,
    basis: {
      choice: ['2.83 V', '1 W in Re', '1 W in nominal ohms'],
      default: '2.83 V',
      summary: 'what it is counted for',
    },
  },
  returns: { quantity: 'level', summary: 'level at 1 m' },
  source: { source: 'small1972direct', at: 'reference efficiency η₀ = 4π²·fs³·Vas/(c³·Qes)' },
  example: { formula: `=DRIVER.LEVEL(${demo})`, gives: 89.2 },
  remarks: 'Half space, before any loss to the cabinet edge. Printed levels often lie a decibel or two above it.',
  compute: (given) => {
    const needed = need(given.driver, ['fs', 'vas', 'qes', 're']);
    if (needed instanceof Problem) return needed;
    const atVolts = computedLevel(needed);
    if (atVolts === undefined) return new Problem(say`The parameters do not determine a level.`, 'driver');
    if (given.basis === '2.83 V') return atVolts;
    const ohms = need(given.driver, [given.basis === '1 W in Re' ? 're' : 'nominal']);
    if (ohms instanceof Problem) return ohms;
    return atVolts - fromWatt(0, (given.basis === '1 W in Re' ? ohms.re : ohms.nominal) ?? NaN);
  },
});

export const driverLevelGap = define({
  name: 'DRIVER.LEVEL_GAP',
  summary: 'How far the printed level lies above the one that the parameters give.',
  parameters: { driver },
  returns: { quantity: 'level', summary: 'printed level minus computed level' },
  source: { source: 'small1972direct', at: 'reference efficiency η₀ = 4π²·fs³·Vas/(c³·Qes)' },
  example: {
    formula: '=DRIVER.LEVEL_GAP(DRIVER(A1:A7, B1:B7))',
    cells: {
      A1: 'Fs',
      B1: '38 Hz',
      A2: 'Qms',
      B2: '4.8',
      A3: 'Qes',
      B3: '0.42',
      A4: 'Vas',
      B4: '28.52 L',
      A5: 'Re',
      B5: '5.8 ohm',
      A6: 'Level',
      B6: '90.2 dB',
      A7: 'Level basis',
      B7: 'at 2.83 V',
    },
    gives: 1.0,
  },
  compute: (given) => {
    const { level, derived } = given.driver;
    if (level === undefined || derived.includes('level')) {
      return new Problem(say`This driver has no printed level to compare: add a row “Level” with its basis.`, 'driver');
    }
    const needed = need(given.driver, ['fs', 'vas', 'qes', 're']);
    if (needed instanceof Problem) return needed;
    const computed = computedLevel(needed);
    return computed === undefined
      ? new Problem(say`The parameters do not determine a level.`, 'driver')
      : level - computed;
  },
});

export const driverEfficiency = define({
  name: 'DRIVER.EFFICIENCY',
  summary: 'Reference efficiency: sound power into half space over electrical power in the voice-coil resistance.',
  parameters: { driver },
  returns: { quantity: 'ratio', summary: 'efficiency' },
  source: { source: 'small1972direct', at: 'reference efficiency η₀ = 4π²·fs³·Vas/(c³·Qes)' },
  example: { formula: `=DRIVER.EFFICIENCY(${demo})`, gives: 0.00364 },
  compute: (given) => {
    const needed = need(given.driver, ['fs', 'vas', 'qes']);
    return needed instanceof Problem ? needed : efficiencyOf(needed.fs, needed.vas, needed.qes);
  },
});

export const levelFromWatt = define({
  name: 'LEVEL.FROM_WATT',
  summary: 'A level printed for 1 W into some ohms, at 2.83 V instead.',
  parameters: {
    level: { ...usual.level, summary: 'level at 1 m for 1 W' },
    ohms: { ...usual.ohms, typical: [2, 32], summary: 'the ohms into which the watt was meant' },
  },
  returns: { quantity: 'level', summary: 'level at 1 m for 2.83 V' },
  source: { source: 'iec60268_5', at: 'characteristic sensitivity' },
  example: { formula: '=LEVEL.FROM_WATT("88 dB", "4 ohm")', gives: 91.0 },
  remarks: 'The watt may be meant into the nominal ohms or into the voice-coil resistance: about 1 dB apart.',
  compute: ({ level, ohms }) => fromWatt(level, ohms),
});

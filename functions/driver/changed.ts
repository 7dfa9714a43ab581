import { define } from '../define.ts';
import { copperRise } from '../electrical/copper.ts';
import type { Driver } from '../values/driver.ts';
import { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';
import { scaled } from './derive.ts';
import { need } from './need.ts';

const driver = { record: 'driver', summary: 'the driver' } as const;
const demo = 'DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "5.8 ohm", "132 cm2", "5.5 mm", "0.55 mH", "70 W", "W-165 A")';
const rise = {
  quantity: 'warming',
  min: -100,
  max: 400,
  typical: [0, 250],
  summary: 'how much warmer the coil is than when Re was measured',
} as const;
const coefficient = {
  quantity: 'ratio',
  min: 0.001,
  max: 0.01,
  default: copperRise,
  summary: 'rise of resistance per kelvin, 0.00393 for copper and much the same for aluminium',
} as const;
const copper = { source: 'iec60028', at: 'temperature coefficient of copper, 0.00393/K at 20 °C' } as const;

const named = (of: Driver, what: string): string => (of.name === '' ? what : `${of.name}, ${what}`);

/** How many times the resistance is what it was. */
const warmed = (given: { readonly rise: number; readonly coefficient: number }): number | Problem => {
  const factor = 1 + given.coefficient * given.rise;
  return factor > 0.1
    ? factor
    : new Problem(
        say`${measured(given.rise, 'warming')} with ${measured(given.coefficient, 'ratio')} a kelvin would leave a coil next to no resistance; that of copper is ${measured(copperRise, 'ratio')}.`,
        'rise',
      );
};

export const driverHot = define({
  name: 'DRIVER.HOT',
  summary: 'A driver with its voice coil warmed up: more resistance, a higher Qts, less level.',
  parameters: { driver, rise, coefficient },
  returns: { record: 'driver', summary: 'the warm driver' },
  source: copper,
  example: { formula: `=DRIVER.HOT(${demo}, 100)`, gives: { re: 8.08, qts: 0.52 } },
  remarks:
    'Re and Qes grow by 1 + 0.00393·ΔT, so Qts rises: bass grows a hump as the middle falls. Magnets weaken and suspensions soften too, which is left out. A coil at this temperature burns skin.',
  compute: (given): Driver | Problem => {
    const known = need(given.driver, ['re', 'qes', 'qms']);
    if (known instanceof Problem) return known;
    const factor = warmed(given);
    if (factor instanceof Problem) return factor;
    return scaled(known, named(known, 'warm'), { re: factor, qes: factor }, -20 * Math.log10(factor));
  },
});

export const driverHotLoss = define({
  name: 'DRIVER.HOT_LOSS',
  summary: 'How much level a warm voice coil costs at the same voltage.',
  parameters: { rise, coefficient },
  returns: { quantity: 'level', summary: 'loss, positive' },
  source: copper,
  example: { formula: '=DRIVER.HOT_LOSS(100)', gives: 2.88 },
  remarks:
    'Where the impedance is that of the coil alone. At the resonance, where it is motional, next to nothing is lost.',
  compute(given) {
    const factor = warmed(given);
    return factor instanceof Problem ? factor : 20 * Math.log10(factor);
  },
});

export const driverHeating = define({
  name: 'DRIVER.HEATING',
  summary: 'How warm a voice coil gets at a steady voltage, its rising resistance counted.',
  parameters: {
    power: {
      quantity: 'power',
      min: 0,
      max: 1e6,
      typical: [1, 500],
      summary: 'power that the cold coil takes at this voltage',
    },
    thermal: {
      quantity: 'ratio',
      min: 1e-3,
      max: 100,
      typical: [0.5, 10],
      summary: 'thermal resistance from coil to air, kelvins a watt',
    },
    coefficient,
  },
  returns: { quantity: 'warming', summary: 'rise of temperature' },
  source: { source: 'own', at: 'ΔT = Rth·P/(1 + α·ΔT), a quadratic' },
  example: { formula: '=DRIVER.HEATING("40 W", 1.9, 0.00393)', gives: 61.25 },
  remarks:
    'Common practice, no source: above some 200 K a coil comes off its former; a larger rise says that it burns.',
  compute: (given) => {
    const cold = given.thermal * given.power;
    return (2 * cold) / (1 + Math.sqrt(1 + 4 * given.coefficient * cold));
  },
});

export const driverSeries = define({
  name: 'DRIVER.SERIES',
  summary: 'A driver as seen through a resistance in series with it.',
  parameters: {
    driver,
    resistance: { quantity: 'resistance', min: 0, max: 1e6, typical: [0, 5], summary: 'coil and cable ahead of it' },
  },
  returns: { record: 'driver', summary: 'the driver with that resistance as part of its Re' },
  source: { source: 'small1972direct', at: 'Qes·(Re + R)/Re' },
  example: { formula: `=DRIVER.SERIES(${demo}, "0.6 ohm")`, gives: { re: 6.4, qts: 0.423 } },
  remarks: 'Do not give the same resistance to its box a second time.',
  compute: (given): Driver | Problem => {
    const known = need(given.driver, ['re', 'qes', 'qms']);
    if (known instanceof Problem) return known;
    const factor = (known.re + given.resistance) / known.re;
    return scaled(known, known.name, { re: factor, qes: factor }, -20 * Math.log10(factor));
  },
});

const many = (summary: string) => ({ quantity: 'ratio', whole: true, min: 1, max: 64, default: 1, summary }) as const;

export const driverGroup = define({
  name: 'DRIVER.GROUP',
  summary: 'Several equal drivers close together as one: strings of some in series, several such strings in parallel.',
  parameters: {
    driver,
    parallel: many('how many strings lie in parallel'),
    series: many('how many drivers each string has in series'),
  },
  returns: { record: 'driver', summary: 'the group as one driver' },
  source: { source: 'small1972direct', at: 'parameters of equal drivers that share one box' },
  example: { formula: `=DRIVER.GROUP(${demo}, 2)`, gives: { re: 2.9, vas: 0.05704, level: 95.2 } },
  remarks:
    'Fs and Qs stay, areas, volumes, masses and heat add up. Holds while the drivers lie within a quarter of a wavelength. Check the lowest ohms against what the amplifier is made for before connecting anything in parallel.',
  compute: (given): Driver => {
    const { parallel, series } = given;
    const count = parallel * series;
    const ohms = series / parallel;
    const factors = {
      vas: count,
      sd: count,
      mms: count,
      rms: count,
      cms: 1 / count,
      bl: series,
      re: ohms,
      le: ohms,
      le2: ohms,
      re2: ohms,
      nominal: ohms,
      pe: count,
      displaced: count,
      price: count,
    };
    const name = `${String(count)} × ${given.driver.name}`.trim();
    return scaled(given.driver, count === 1 ? given.driver.name : name, factors, 20 * Math.log10(parallel));
  },
});

export const driverEbp = define({
  name: 'DRIVER.BANDWIDTH',
  summary: 'Fs over Qes of a driver: a hint at the box that suits it.',
  parameters: { driver },
  returns: { quantity: 'frequency', summary: 'efficiency-bandwidth product' },
  source: { source: 'practice', at: 'closed boxes below some 50 Hz, vented above some 100 Hz' },
  example: { formula: `=DRIVER.BANDWIDTH(${demo})`, gives: 90.5 },
  remarks: 'A hint only: never rule a driver out by it. Look at the curves of both boxes.',
  compute: (given) => {
    const known = need(given.driver, ['fs', 'qes']);
    return known instanceof Problem ? known : known.fs / known.qes;
  },
});

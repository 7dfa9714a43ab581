import { airDensity, soundSpeed } from '../air.ts';
import { define } from '../define.ts';
import { need } from '../driver/need.ts';
import type { Box } from '../values/box.ts';
import { Problem } from '../values/problem.ts';
import { boxFields } from './box-driver.ts';
import { demoDriver, driver, fill, leakageQ, lossQ, seriesResistance, tuning, volume, howMany } from './parameters.ts';
import { usual } from '../usual.ts';

const area = { ...usual.area, typical: [2e-3, 0.3], summary: 'area of one radiator' } as const;
const mass = {
  quantity: 'mass',
  min: 1e-6,
  max: 100,
  typical: [0.005, 2],
  summary: 'moving mass of one radiator, with weights and air load',
} as const;
const compliance = {
  quantity: 'compliance',
  min: 1e-7,
  max: 1,
  typical: [5e-5, 5e-3],
  summary: 'compliance of one radiator',
} as const;
const count = howMany('number of equal radiators');

/** Air volume with the compliance of a suspended area. */
const airVolume = (across: number, soft: number): number => airDensity * soundSpeed ** 2 * across ** 2 * soft;
const source = { source: 'small1974radiator', at: 'equivalent circuit' } as const;

export const radiatorBox = define({
  name: 'RADIATOR.BOX',
  summary: 'A driver in a box with one or more passive radiators, by their mass, compliance, losses and area.',
  parameters: {
    driver,
    volume,
    area,
    mass,
    compliance,
    resistance: {
      quantity: 'mechanicalResistance',
      min: 1e-6,
      max: 1e4,
      typical: [0.2, 20],
      summary: 'mechanical resistance of one radiator',
    },
    count,
    xmax: { ...usual.travel, optional: true, summary: 'one-way travel that a radiator allows' },
    leakageQ,
    seriesResistance,
    fill,
    absorptionQ: lossQ('absorption Q at the tuning; none when left out'),
  },
  returns: { record: 'box', summary: 'the box' },
  source,
  example: {
    formula: `=RADIATOR.BOX(${demoDriver}, "20 L", "210 cm2", "120 g", "0.9 mm/N", "1.5 kg/s")`,
    gives: { resonance: 29.91, notch: 15.31 },
  },
  remarks:
    'The notch, at the free-air resonance of the radiator, pulls the response down below the tuning: keep it well under the band. Common practice, no source: radiators should displace at least twice the volume of the driver.',
  compute: (given): Box | Problem => {
    const known = need(given.driver, boxFields);
    if (known instanceof Problem) return known;
    const angular = 1 / Math.sqrt(given.mass * given.compliance);
    return {
      kind: 'box',
      style: 'radiator',
      driver: known,
      volume: given.volume,
      radiator: {
        area: given.area * given.count,
        vap: airVolume(given.area, given.compliance) * given.count,
        fp: angular / (2 * Math.PI),
        qmp: (angular * given.mass) / given.resistance,
        count: given.count,
        ...(given.xmax === undefined ? {} : { xmax: given.xmax }),
      },
      fill: given.fill,
      seriesResistance: given.seriesResistance,
      leakageQ: given.leakageQ,
      absorptionQ: given.absorptionQ ?? Infinity,
      portQ: Infinity,
    };
  },
});

export const radiatorMass = define({
  name: 'RADIATOR.MASS',
  summary: 'Moving mass of each passive radiator for a wanted tuning, weights and air load included.',
  parameters: { volume, tuning, area, compliance, count },
  returns: { quantity: 'mass', summary: 'moving mass of one radiator' },
  source: { source: 'small1974radiator', at: 'fb = fp·√(1 + Vap/Vb)' },
  example: { formula: '=RADIATOR.MASS("12 L", "42 Hz", "210 cm2", "0.9 mm/N")', gives: 0.0908 },
  remarks: 'What a radiator weighs without added weights and the air that moves with it are both part of this mass.',
  compute: (given) => {
    const ratio = (airVolume(given.area, given.compliance) * given.count) / given.volume;
    return (1 + ratio) / ((2 * Math.PI * given.tuning) ** 2 * given.compliance);
  },
});

export const radiatorTuning = define({
  name: 'RADIATOR.TUNING',
  summary: 'The tuning of a box by passive radiators of a mass and a compliance.',
  parameters: { volume, area, mass, compliance, count },
  returns: { quantity: 'frequency', summary: 'tuning' },
  source: { source: 'small1974radiator', at: 'fb = fp·√(1 + Vap/Vb)' },
  example: { formula: '=RADIATOR.TUNING("12 L", "210 cm2", "90.8 g", "0.9 mm/N")', gives: 42.0 },
  remarks:
    'Above the resonance of the radiator in free air, which RADIATOR.NOTCH gives: the air of the box stiffens it.',
  compute: (given) => {
    const ratio = (airVolume(given.area, given.compliance) * given.count) / given.volume;
    return Math.sqrt((1 + ratio) / (given.mass * given.compliance)) / (2 * Math.PI);
  },
});

export const radiatorNotch = define({
  name: 'RADIATOR.NOTCH',
  summary: 'Where a passive radiator resonates in free air, and the response has its notch.',
  parameters: { mass, compliance },
  returns: { quantity: 'frequency', summary: 'resonance in free air' },
  source: { source: 'small1974radiator', at: 'fp = 1/(2π·√(Mmp·Cmp))' },
  example: { formula: '=RADIATOR.NOTCH("90.8 g", "0.9 mm/N")', gives: 17.6 },
  remarks: 'Not the tuning of the box, which lies above it.',
  compute: (given) => 1 / (2 * Math.PI * Math.sqrt(given.mass * given.compliance)),
});

import { define } from '../define.ts';
import { Problem } from '../values/problem.ts';
import { cabinetParameters } from './cut-list.ts';
import { materialOf } from './parts.ts';
import { density } from './parameters.ts';
import { usual } from '../usual.ts';

export const cabinetWeight = define({
  name: 'CABINET.WEIGHT',
  summary: 'Mass of one finished cabinet: panels, braces and all that is screwed in.',
  parameters: {
    ...cabinetParameters,
    density,
    fitted: {
      quantity: 'mass',
      min: 0,
      max: 1e4,
      default: 0,
      summary: 'mass of drivers, crossover and terminals in it',
    },
  },
  returns: { quantity: 'mass', summary: 'mass of one cabinet' },
  source: { source: 'own', at: 'outside less inside volume, times density' },
  example: { formula: '=CABINET.WEIGHT("360 mm", "220 mm", "280 mm", "15 mm")', gives: 4.81 },
  remarks: 'The holes for drivers and port are not taken off. Over 25 kg, lift it with two people.',
  compute(given) {
    const material = materialOf(given);
    return material instanceof Problem ? material : material * given.density + given.fitted;
  },
});

export const cabinetTipAngle = define({
  name: 'CABINET.TIP_ANGLE',
  summary: 'How far a standing cabinet can lean before it falls by itself.',
  parameters: {
    base: { ...usual.length, summary: 'the narrower side of the base, feet included' },
    centre: { ...usual.length, summary: 'height of the centre of mass above the floor' },
  },
  returns: { quantity: 'angle', summary: 'angle of tilt at which it falls' },
  source: {
    source: 'iec62368',
    at: 'static stability: equipment must stand a tilt of 10° (from memory); statics: tan of the angle is half the base over the height of the centre of mass',
  },
  example: { formula: '=CABINET.TIP_ANGLE("220 mm", "500 mm")', gives: 0.2166 },
  remarks:
    'The centre of mass stands above the middle of the base here; a heavy driver in the front moves it forward, so add a margin. Below 10° widen the base or fix the cabinet to the wall, and do so wherever children are.',
  compute: (given) => Math.atan(given.base / 2 / given.centre),
});

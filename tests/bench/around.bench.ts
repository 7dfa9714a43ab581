import { bench, describe } from 'vitest';
import { slopeCurve } from '../../functions/crossover/slope-curve.ts';
import { shares, stepOfAngles } from '../../functions/radiation/angles.ts';
import { sumAround } from '../../functions/radiation/around.ts';
import { fieldTowards } from '../../functions/radiation/cabinet-field.ts';
import type { Way } from '../../functions/values/way.ts';
import { way } from '../functions/radiation/ways.ts';
import { paired } from './paired.ts';

const once = { iterations: 1, time: 0, warmupIterations: 0, warmupTime: 0 } as const;
const [low, high] = [slopeCurve('LR4', 'low', 350), slopeCurve('LR4', 'high', 2500)];

let moved = 0;
/** Three ways that were never summed before: the tweeter has been dragged a little. */
function threeWay(): readonly Way[] {
  moved += 1e-6;
  return [
    way({ sd: 0.0222, active: low, position: { x: 0, y: -0.35, z: 0.03 } }),
    way({ sd: 0.0054, position: { x: 0.01, y: -0.1, z: 0.02 } }),
    way({ sd: 7e-4, active: high, position: { x: moved, y: 0.05, z: 0 } }),
  ];
}

/** The same averages, one direction after the other. */
function oneByOne(ways: readonly Way[]): Float64Array {
  const power = new Float64Array(577);
  for (const [side, sign, plane] of [
    ['right', 1, 'horizontal'],
    ['left', -1, 'horizontal'],
    ['up', 1, 'vertical'],
    ['down', -1, 'vertical'],
  ] as const)
    for (const [step, share] of shares[side].entries()) {
      if (share.power === 0) continue;
      const { re, im } = fieldTowards(ways, 0.24, plane, sign * step * stepOfAngles);
      for (let index = 0; index < 577; index += 1) power[index]! += share.power * (re[index]! ** 2 + im[index]! ** 2);
    }
  return power;
}

let width = 0.24;
describe('the estimated in-room response', () => {
  bench(
    'of three ways',
    async () => {
      await paired({
        name: 'In-room estimate of three ways, 577 points, over the same direction by direction',
        ours: () => sumAround(threeWay(), 0.24),
        base: () => oneByOne(threeWay()),
      });
      await paired({
        name: 'The same with a panel width that is new, over a known one',
        ours: () => sumAround(threeWay(), (width += 0.0001)),
        base: () => sumAround(threeWay(), 0.24),
      });
      await paired({
        name: 'Six ways over three',
        ours: () => sumAround([...threeWay(), ...threeWay()], 0.24),
        base: () => sumAround(threeWay(), 0.24),
      });
    },
    once,
  );
});

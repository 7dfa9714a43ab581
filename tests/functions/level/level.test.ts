import { describe, expect, test } from 'vitest';
import { levelFromRatio, levelPowerOf, levelRatio } from '../../../functions/level/ratio.ts';
import { trebleFloor, trebleTravel, trebleTravelAt } from '../../../functions/level/treble.ts';
import { filterSlope } from '../../../functions/crossover/filter-slope.ts';
import { frequencies } from '../../../functions/values/grid.ts';
import type { Curve } from '../../../functions/values/curve.ts';
import { agrees, references } from '../../references/read.ts';

const plain = { quantity: 'ratio' } as const;

test('decibels as defined', () => {
  agrees(levelFromRatio.compute({ ratio: 2 }, plain), references('levels', '2x-coh')[0]!);
  agrees(levelPowerOf.compute({ ratio: 2 }, plain), references('levels', '2x-inc')[0]!);
  agrees(levelPowerOf.compute({ ratio: 10 }, plain), references('levels', '10w')[0]!);
  expect(levelFromRatio.compute({ ratio: levelRatio.compute({ level: -7.3 }, plain) as number }, plain)).toBeCloseTo(
    -7.3,
    12,
  );
});

describe('travel of a tweeter', () => {
  const demo = { sd: 7e-4, xmax: 0.35e-3, share: 0.7 };
  test.each([
    [100, 'LR4', 1044],
    [109, 'LR4', 1753],
    [103, 'LR2', 1755],
  ] as const)('at %d dB %s the floor is %d Hz', (level, slope, hertz) => {
    const floor = trebleFloor.compute({ ...demo, level, slope }, plain) as number;
    expect(Math.abs(floor - hertz)).toBeLessThanOrEqual(0.5);
    expect(trebleTravelAt.compute({ sd: demo.sd, level, frequency: floor, slope }, plain)).toBeCloseTo(0.245e-3, 12);
  });
  test('a piston that moves so radiates the level: pressure of the simple source', () => {
    const travel = trebleTravel.compute({ sd: 7e-4, level: 100, frequency: 1000 }, plain) as number;
    const volumeAcceleration = ((2 * Math.PI * 1000) ** 2 * travel * 7e-4) / Math.SQRT2;
    expect(20 * Math.log10((1.204 * volumeAcceleration) / (2 * Math.PI) / 20e-6)).toBeCloseTo(100, 9);
  });
  test.each([
    ['LR4', 0.5],
    ['LR2', 1],
  ] as const)('through %s the largest travel over the grid is %d of that at the hand-over', (slope, share) => {
    const filter = filterSlope.compute({ frequency: 640, slope, pass: 'high' }, plain) as Curve;
    const travels = frequencies.map(
      (frequency, index) =>
        10 ** (filter.y[index]! / 20) * (trebleTravel.compute({ sd: 7e-4, level: 100, frequency }, plain) as number),
    );
    const whole = trebleTravel.compute({ sd: 7e-4, level: 100, frequency: 640 }, plain) as number;
    expect(Math.max(...travels) / whole).toBeCloseTo(share, 3);
  });
});

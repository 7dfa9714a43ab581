import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { soundSpeed } from '../../../functions/air.ts';
import { pistonFactor } from '../../../functions/numeric/bessel.ts';
import { shares, stepOfAngles } from '../../../functions/radiation/angles.ts';
import { sumAround, type Around } from '../../../functions/radiation/around.ts';
import { fieldTowards } from '../../../functions/radiation/cabinet-field.ts';
import { frequencies } from '../../../functions/values/grid.ts';
import { readAt } from '../../../functions/values/interpolate.ts';
import { call, curve, number, refusal } from './call.ts';
import { twoWays, way } from './ways.ts';
import { averages } from './averages.ts';

const c = soundSpeed;

const at = (curve: Float64Array, frequency: number): number => readAt(curve, frequency);
const names = ['axis', 'window', 'early', 'power', 'room'] as const satisfies readonly (keyof Around)[];

describe('one driver', () => {
  test('a point in a wide wall sends 90 dB to the front everywhere and nothing behind', () => {
    const { axis, window, power } = sumAround([way()], undefined);
    expect(at(axis, 1000)).toBeCloseTo(90, 9);
    expect(at(window, 1000)).toBeCloseTo(90, 9);
    expect(at(power, 1000)).toBeCloseTo(90 - 3.01, 2);
  });
  test.each([0.2, 1, 2, 3, 6])('a piston of ka %d in a wide wall has the averages of its pattern', (ka) => {
    const sd = Math.PI * 0.06 ** 2;
    const frequency = (ka * c) / (2 * Math.PI * 0.06);
    const wanted = averages((angle) => {
      const inFront = angle < 1.57 ? 1 : angle < 1.58 ? 0.5 : 0;
      return inFront * pistonFactor(ka * Math.sin(angle)) ** 2;
    });
    const around = sumAround([way({ sd })], undefined);
    const over = (of: keyof Around): number => at(around[of], frequency) - at(around.axis, frequency);
    expect(over('window')).toBeCloseTo(wanted['lw']!, 3);
    expect(over('early')).toBeCloseTo(wanted['er']!, 3);
    expect(over('power')).toBeCloseTo(wanted['sp']!, 3);
    expect(over('room')).toBeCloseTo(wanted['pir']!, 3);
    // The weights of the standard give the directions near the axis up to 1.25 times their area: 1 dB for a narrow beam.
    const index = 10 * Math.log10(ka ** 2 / number('PISTON.RESISTANCE', { sd, frequency }));
    expect(over('power') + index).toBeGreaterThan(-0.01);
    expect(over('power') + index).toBeLessThan(1);
  });
  test('in a cabinet it loses the step: 6 dB on every average low down, little on the axis high up', () => {
    const { axis, power, room } = sumAround([way()], 0.22);
    for (const each of [axis, power, room]) expect(at(each, 10)).toBeCloseTo(90 - 6.02, 1);
    expect(at(axis, 115 / 0.22)).toBeCloseTo(90 - 3.01, 2);
    expect(at(axis, 30_000)).toBeCloseTo(90, 1);
  });
  test('a curve measured in the cabinet has the step already', () => {
    const { axis, power } = sumAround([way({ basis: 'measured' })], 0.22);
    const model = sumAround([way()], 0.22);
    expect(at(axis, 100)).toBeCloseTo(90, 9);
    expect(at(power, 1000) - at(axis, 1000)).toBeCloseTo(at(model.power, 1000) - at(model.axis, 1000), 9);
  });
});

describe('several ways', () => {
  test('two equal drivers in the same place are 6 dB louder in every average', () => {
    const one = sumAround([way({ sd: 0.01 })], 0.2);
    const two = sumAround([way({ sd: 0.01 }), way({ sd: 0.01 })], 0.2);
    for (const name of names)
      for (const frequency of [50, 700, 3000])
        expect(at(two[name], frequency) - at(one[name], frequency)).toBeCloseTo(6.0206, 3);
  });
  test('two points far apart low down add, high up their power adds by itself', () => {
    const pair = [way({ position: { x: 0, y: 0.1, z: 0 } }), way({ position: { x: 0, y: -0.1, z: 0 } })];
    const { power } = sumAround(pair, undefined);
    const one = sumAround([way()], undefined).power;
    expect(at(power, 20) - at(one, 20)).toBeCloseTo(6.02, 1);
    // Of the two circles only the vertical one sees the interference; the other has them in step.
    expect(at(power, 6000) - at(one, 6000)).toBeLessThan(6.02 - 1);
    expect(at(power, 6000) - at(one, 6000)).toBeGreaterThan(3);
  });
  test('mirrored to the other side nothing changes, turned about the axis the averages but of floor and ceiling do not', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -0.3, max: 0.3, noNaN: true }),
        fc.double({ min: -0.3, max: 0.3, noNaN: true }),
        (x, y) => {
          const first = way({ sd: 0.01, position: { x, y, z: 0.02 } });
          const second = way({ sd: 7e-4, position: { x: -x / 2, y: 0.1, z: 0 } });
          const there = sumAround([first, second], 0.25);
          const mirrored = sumAround(
            [first, second].map((each) => ({ ...each, position: { ...each.position, x: -each.position.x } })),
            0.25,
          );
          for (const name of names)
            for (const frequency of [400, 2000])
              expect(at(mirrored[name], frequency)).toBeCloseTo(at(there[name], frequency), 6);
        },
      ),
      { numRuns: 5 },
    );
  });
  test('on the axis the depth of an acoustic centre is a delay of that way', () => {
    const depth = 0.025;
    const behind = sumAround(twoWays(2000, { position: { x: 0, y: 0, z: depth } }, {}), undefined);
    const late = sumAround(twoWays(2000, { delay: depth / c }, {}), undefined);
    for (const frequency of [500, 2000, 5000])
      expect(at(behind.axis, frequency)).toBeCloseTo(at(late.axis, frequency), 9);
  });
  test('a wide woofer handed over too high is even on the axis and leaves a dip in the room', () => {
    const { axis, room } = sumAround(twoWays(3500, { sd: 0.0222 }, { sd: 4e-4 }), undefined);
    expect(at(axis, 200)).toBeCloseTo(90, 6);
    expect(at(axis, 3500)).toBeCloseTo(90, 6);
    const dip = at(room, 3000) - (at(room, 300) + at(room, 9000)) / 2;
    expect(dip).toBeLessThan(-2);
    const matched = sumAround(twoWays(1200, { sd: 0.0132 }, { sd: 4e-4 }), undefined).room;
    expect(at(matched, 1100) - (at(matched, 300) + at(matched, 6000)) / 2).toBeGreaterThan(dip + 1.5);
  });
});

test('half as large at twice the frequency is the same', () => {
  const large = sumAround([way({ sd: 0.04, position: { x: 0.1, y: 0.2, z: 0.04 } }), way({ sd: 0.002 })], 0.4);
  const small = sumAround([way({ sd: 0.01, position: { x: 0.05, y: 0.1, z: 0.02 } }), way({ sd: 0.0005 })], 0.2);
  for (const name of names)
    for (const frequency of [100, 640, 4000])
      expect(at(small[name], 2 * frequency)).toBeCloseTo(at(large[name], frequency), 6);
  expect(frequencies).toHaveLength(577);
});

describe('the curves of a loudspeaker', () => {
  const ways = [
    way({ sd: 0.0222, position: { x: 0.02, y: -0.25, z: 0.04 }, gain: -3 }),
    way({ sd: 0.0054, position: { x: 0, y: -0.08, z: 0.02 }, polarity: -1, basis: 'measured' }),
    way({ sd: 7e-4, position: { x: -0.01, y: 0.05, z: 0 }, delay: 3e-5 }),
  ];
  test('averages rebuilt from single directions, one by one, are those of the sum', () => {
    const point = 250;
    const mean = { window: 0, early: 0, power: 0 };
    for (const [side, sign, plane] of [
      ['right', 1, 'horizontal'],
      ['left', -1, 'horizontal'],
      ['up', 1, 'vertical'],
      ['down', -1, 'vertical'],
    ] as const)
      for (const [step, share] of shares[side].entries()) {
        const { re, im } = fieldTowards(ways, 0.24, plane, sign * step * stepOfAngles);
        const square = re[point]! ** 2 + im[point]! ** 2;
        for (const of of ['window', 'early', 'power'] as const) mean[of] += share[of] * square;
      }
    const around = sumAround(ways, 0.24);
    // The sum reads the sphere between computed sizes, single directions do not.
    for (const of of ['window', 'early', 'power'] as const)
      expect(Math.abs(around[of][point]! - 10 * Math.log10(mean[of]))).toBeLessThan(0.001);
  });
  test('the functions of the sheet give these curves, the indices their differences', () => {
    const around = sumAround(ways, 0.24);
    const given = { ways, panelWidth: 0.24 };
    expect(curve('AROUND.WINDOW', given).y).toEqual(around.window);
    expect(curve('AROUND.EARLY', given).y).toEqual(around.early);
    expect(curve('AROUND.POWER', given).y).toEqual(around.power);
    expect(curve('AROUND.ROOM', given).y).toEqual(around.room);
    for (const [name, of] of [
      ['AROUND.INDEX', 'power'],
      ['AROUND.EARLY_INDEX', 'early'],
    ] as const)
      expect(curve(name, given).y[300]).toBeCloseTo(around.window[300]! - around[of][300]!, 12);
    const axis = curve('AROUND.AXIS', given).y;
    for (const index of [10, 300, 500]) expect(Math.abs(axis[index]! - around.axis[index]!)).toBeLessThan(0.001);
    const other = curve('AROUND.WINDOW', { ways: [ways[0]!, ways[1]!], panelWidth: 0.24 }).y;
    expect(other).toEqual(sumAround([ways[0]!, ways[1]!], 0.24).window);
  });
  test('a curve holds where every way holds', () => {
    const short = way({ pressure: { ...way().pressure, from: 200, to: 8000 } });
    const { from, to } = curve('AROUND.ROOM', { ways: [way(), short] });
    expect([from, to]).toEqual([200, 8000]);
    const high = way({ pressure: { ...way().pressure, from: 9000 } });
    expect(refusal('AROUND.ROOM', { ways: [short, high] })).toContain('do not meet');
    expect(refusal('AROUND.ROOM', { ways: [] })).toContain('give the ways');
  });
  test('behind an endless wall there is nothing to hear', () => {
    const given = { plane: 'horizontal', angle: 2, ways };
    expect(refusal('AROUND.AT', given)).toContain('panel width');
    expect(call('AROUND.AT', { ...given, panelWidth: 0.3 })).toHaveProperty('kind', 'curve');
  });
});

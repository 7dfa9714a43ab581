import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { flareLength } from '../../../functions/enclosure/port-ends.ts';
import type { Problem } from '../../../functions/values/problem.ts';
import type { TableRecord } from '../../../functions/values/table.ts';
import { box, call, curve, number, woofer } from './call.ts';
import { expectClose, input, references, withId } from './reference.ts';

const values = references('ports');

describe('ports of every kind', () => {
  test.each(withId(values, /^tune-/))('$id', (each) => {
    const ends = { 0.732: 'flanged and free', 0.85: 'both flanged', 0.614: 'both free' }[input(each, 'k')];
    const given = { volume: input(each, 'Vb'), length: input(each, 'L'), diameter: input(each, 'D') };
    expectClose(number('PORT.TUNING', { ...given, count: input(each, 'count'), ends }), each);
  });
  test.each(withId(values, /^slot-/))('$id', (each) => {
    const given = { volume: input(each, 'Vb'), width: input(each, 'W'), height: input(each, 'H') };
    const length = input(each, 'L');
    const tuning = number('PORT.SLOT_TUNING', { ...given, length });
    expectClose(tuning, each);
    expect(number('PORT.SLOT_LENGTH', { ...given, tuning })).toBeCloseTo(length, 9);
  });
  test.each(withId(values, /^smin-/))('$id', (each) => {
    const given = { area: 1, travel: input(each, 'VD'), tuning: input(each, 'fb') };
    expectClose(number('PORT.LEAST_AREA', given), each);
  });
  test('a flare of no size is a plain flanged end, a large one leaves less to the port', () => {
    expect(flareLength(0.034, 1e-9)).toBeCloseTo(0.85 * 0.034, 6);
    expect(flareLength(0.034, 0.02)).toBeLessThan(0.02 + 0.85 * 0.034);
  });
  test('length and tuning are inverse, longer is lower', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.005, max: 0.2, noNaN: true }),
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        fc.double({ min: 0.02, max: 0.2, noNaN: true }),
        fc.integer({ min: 1, max: 4 }),
        (volume, length, diameter, count) => {
          const given = { volume, diameter, count };
          const tuning = number('PORT.TUNING', { ...given, length });
          expect(number('PORT.LENGTH', { ...given, tuning })).toBeCloseTo(length, 9);
          expect(number('PORT.TUNING', { ...given, length: length * 1.01 })).toBeLessThan(tuning);
        },
      ),
    );
  });
  test('an elbow keeps the whole length along its middle', () => {
    const behind = number('PORT.ELBOW', { depth: 0.25, length: 0.26, diameter: 0.068 });
    expect(0.25 - 2 * 0.068 + (Math.PI / 2) * 0.068 + behind).toBeCloseTo(0.26, 12);
    expect(number('PORT.ELBOW', { depth: 0.4, length: 0.26, diameter: 0.068 })).toBe(0);
  });
});

describe('search for ports that fit', () => {
  const made = box('VENTED.BOX', { driver: woofer, volume: 0.0223, tuning: 39.6 });
  const given = { box: made, depth: 0.25, diameter: 0.068, volts: 12, speed: 17 };
  test('every row fits, is slow enough, and tunes as it says; nearest first', () => {
    const { rows } = call('PORT.SEARCH', given) as TableRecord;
    expect(rows.length).toBeGreaterThan(1);
    let before = 0;
    for (const row of rows as readonly number[][]) {
      const [count, diameter, tuning, length, speed, clearance, distance] = row as [
        number,
        number,
        number,
        number,
        number,
        number,
        number,
      ];
      expect(number('PORT.TUNING', { volume: 0.0223, length, diameter, count })).toBeCloseTo(tuning, 6);
      expect(clearance).toBeGreaterThanOrEqual(0);
      expect(length + diameter + clearance).toBeCloseTo(0.25, 12);
      const portArea = number('PORT.AREA', { diameter, count });
      const { y } = curve('BOX.PORT_SPEED', { box: { ...made, tuning }, portArea, volts: 12 });
      expect(Math.max(...y)).toBeCloseTo(speed, 9);
      expect(speed).toBeLessThanOrEqual(17);
      expect(distance).toBeGreaterThanOrEqual(before);
      before = distance;
    }
  });
  test('what already fits is its own nearest', () => {
    const { rows } = call('PORT.SEARCH', { ...given, depth: 1, diameter: 0.07 }) as TableRecord;
    expect(rows[0]![0]).toBe(1);
    expect(rows[0]![2]).toBeCloseTo(39.6, 9);
  });
  test('nothing that fits is a problem that names the depth', () => {
    expect((call('PORT.SEARCH', { ...given, depth: 0.03 }) as Problem).parameter).toBe('depth');
  });
});

describe('search for slots that fit', () => {
  const made = box('VENTED.BOX', { driver: woofer, volume: 0.0223, tuning: 39.6 });
  const given = { box: made, depth: 0.3, width: 0.18, height: 0.02, volts: 12, speed: 17, along: 1 };
  test('every row fits, is slow enough, and tunes as it says; nearest first', () => {
    const { rows } = call('PORT.SLOT_SEARCH', given) as TableRecord;
    expect(rows.length).toBeGreaterThan(1);
    let before = 0;
    for (const row of rows as readonly number[][]) {
      const [height, tuning, length, speed, clearance, distance] = row as [
        number,
        number,
        number,
        number,
        number,
        number,
      ];
      const slot = { volume: 0.0223, length, width: 0.18, height, along: 1 };
      expect(number('PORT.SLOT_TUNING', slot)).toBeCloseTo(tuning, 6);
      expect(length + height + clearance).toBeCloseTo(0.3, 12);
      expect(clearance).toBeGreaterThanOrEqual(0);
      const { y } = curve('BOX.PORT_SPEED', { box: { ...made, tuning }, portArea: 0.18 * height, volts: 12 });
      expect(Math.max(...y)).toBeCloseTo(speed, 9);
      expect(speed).toBeLessThanOrEqual(17);
      expect(distance).toBeGreaterThanOrEqual(before);
      before = distance;
    }
  });
  test('what already fits is its own nearest; nothing that fits is a problem that names the depth', () => {
    const { rows } = call('PORT.SLOT_SEARCH', { ...given, depth: 1 }) as TableRecord;
    expect([rows[0]![0], rows[0]![1]]).toEqual([0.02, 39.6]);
    expect((call('PORT.SLOT_SEARCH', { ...given, depth: 0.03 }) as Problem).parameter).toBe('depth');
  });
});

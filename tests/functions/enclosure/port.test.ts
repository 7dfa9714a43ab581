import { describe, expect, test } from 'vitest';
import { Problem } from '../../../functions/values/problem.ts';
import { call, number } from './call.ts';
import { expectClose, input, references, withId } from './reference.ts';

const values = references('ports');
const ends = (k: number) => (k === 0.732 ? 'flanged and free' : k === 0.85 ? 'both flanged' : 'both free');

describe('ports (Helmholtz resonator with end correction)', () => {
  test.each(withId(values, /^len-/))('$id', (each) => {
    const given = {
      volume: input(each, 'Vb'),
      tuning: input(each, 'fb'),
      diameter: input(each, 'D'),
      count: input(each, 'count'),
    };
    expectClose(number('PORT.LENGTH', { ...given, ends: ends(input(each, 'k')) }), each);
  });
  test.each(withId(values, /^pipe-/).filter((each) => input(each, 'k') === 0.732))('$id', (each) => {
    const diameter = input(each, 'D');
    const length = number('PORT.LENGTH', {
      volume: input(each, 'Vb'),
      tuning: input(each, 'fb'),
      diameter,
      count: input(each, 'count'),
    });
    expectClose(number('PORT.RESONANCE', { length, diameter }), each);
  });
  test('the largest port that fits leaves no clearance', () => {
    const box = { volume: 0.0223, tuning: 39.6 };
    const diameter = number('PORT.LARGEST', { ...box, depth: 0.25 });
    const length = number('PORT.LENGTH', { ...box, diameter });
    expect(number('PORT.CLEARANCE', { depth: 0.25, length, diameter })).toBeCloseTo(0, 12);
  });
  test('68 mm misses a depth of 250 mm by 78 mm', () => {
    expect(number('PORT.CLEARANCE', { depth: 0.25, length: 0.26, diameter: 0.068 })).toBeCloseTo(-0.078, 12);
  });
  test('too narrow a port is a problem that names the diameter', () => {
    const result = call('PORT.LENGTH', { volume: 0.05, tuning: 80, diameter: 0.03 });
    expect(result).toBeInstanceOf(Problem);
    expect((result as Problem).parameter).toBe('diameter');
  });
});

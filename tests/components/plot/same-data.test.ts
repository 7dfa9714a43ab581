import { expect, test } from 'vitest';
import { sameData } from '../../../src/components/plot/same-data.ts';
import { curveOf } from './curves.ts';

test('plain data are compared by what they hold, records by identity', () => {
  const curve = curveOf('level', () => 0);
  const data = (label: string, held = curve) => ({
    title: 'A',
    series: [{ label, curve: held, ghost: undefined }],
    ends: [20, 2e4],
  });
  expect(sameData(data('x'), data('x'))).toBe(true);
  expect(sameData(data('x'), data('y'))).toBe(false);
  expect(sameData(data('x'), data('x', { ...curve }))).toBe(false);
  expect(sameData({ a: 1 }, { a: 1, b: undefined })).toBe(false);
  expect(sameData([1, 2], { 0: 1, 1: 2 })).toBe(false);
  expect(sameData(Number.NaN, Number.NaN)).toBe(true);
  expect(sameData(undefined, data('x'))).toBe(false);
});

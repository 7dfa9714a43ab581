import { describe, expect, test } from 'vitest';
import { checkAtLeast, checkAtMost, checkNote, checkWithin } from '../../../functions/check/bounds.ts';
import { checkCount, checkWorst } from '../../../functions/check/together.ts';
import { Problem } from '../../../functions/values/problem.ts';
import type { Verdict } from '../../../functions/values/verdict.ts';

const ohms = { quantity: 'resistance' } as const;
const spoken = (verdict: unknown): string =>
  (verdict as Verdict).reason
    .map((part) => (typeof part === 'string' ? part : `${Number(part.value.toPrecision(4))} ${part.quantity}`))
    .join('');

describe('limits', () => {
  const least = { good: 3.2, caution: 2.8, subject: 'Lowest load', remedy: 'Wire in series.' };
  test.each([
    [3.2, 'good', 'Lowest load 3.2 resistance, at least 3.2 resistance wanted: 0 resistance to spare.'],
    [
      2.91,
      'caution',
      'Lowest load 2.91 resistance, at least 3.2 resistance wanted: 0.29 resistance short; it fails only below 2.8 resistance. Wire in series.',
    ],
    [
      1.56,
      'fail',
      'Lowest load 1.56 resistance, at least 3.2 resistance wanted: 1.64 resistance short, and below 2.8 resistance, where caution ends. Wire in series.',
    ],
  ] as const)('at least, %d is %s', (value, status, words) => {
    const verdict = checkAtLeast.compute({ ...least, value }, ohms);
    expect((verdict as Verdict).status).toBe(status);
    expect(spoken(verdict)).toBe(words);
  });
  test('a limit met but for rounding is met', () => {
    expect(
      (checkAtLeast.compute({ ...least, value: 0.1 + 0.2, good: 0.3 + 1e-16, caution: undefined }, ohms) as Verdict)
        .status,
    ).toBe('good');
    expect(
      (checkAtMost.compute({ ...least, value: 0.1 + 0.2, good: 0.3, caution: undefined }, ohms) as Verdict).status,
    ).toBe('good');
  });
  test('at most, without a caution, fails', () => {
    const verdict = checkAtMost.compute(
      { value: 23, good: 17, caution: undefined, subject: 'Air', remedy: '' },
      { quantity: 'speed' },
    );
    expect((verdict as Verdict).status).toBe('fail');
    expect(spoken(verdict)).toBe('Air 23 speed, at most 17 speed wanted: 6 speed over.');
  });
  test('limits in the wrong order are a problem', () => {
    expect(checkAtLeast.compute({ ...least, value: 1, caution: 4 }, ohms)).toBeInstanceOf(Problem);
    expect(
      checkWithin.compute({ value: 1, low: 3, high: 2, margin: undefined, subject: 'Pad', remedy: '' }, ohms),
    ).toBeInstanceOf(Problem);
  });
  test.each([
    [5.3, 'good'],
    [10, 'good'],
    [11, 'caution'],
    [-1, 'caution'],
    [14, 'fail'],
  ] as const)('within, %d is %s', (value, status) => {
    const verdict = checkWithin.compute(
      { value, low: 0, high: 10, margin: 3, subject: 'Pad', remedy: '' },
      { quantity: 'level' },
    );
    expect((verdict as Verdict).status).toBe(status);
    expect(spoken(verdict)).toContain(`Pad ${value} level`);
  });
  test('a note only above its limit', () => {
    const given = { limit: 110, subject: 'Target', noteText: 'Check hearing.' };
    expect((checkNote.compute({ ...given, value: 112 }, { quantity: 'level' }) as Verdict).note).toEqual([
      'Check hearing.',
    ]);
    expect((checkNote.compute({ ...given, value: 110 }, { quantity: 'level' }) as Verdict).note).toBeUndefined();
  });
});

test('the worst is chosen and the others counted', () => {
  const make = (value: number): Verdict =>
    checkAtLeast.compute(
      { value, good: 3, caution: 2, subject: 'Ratio', remedy: '' },
      { quantity: 'ratio' },
    ) as Verdict;
  const verdicts = [make(4), make(2.5), make(1), make(2.2)];
  const worst = checkWorst.compute({ verdicts }, ohms) as Verdict;
  expect(worst.status).toBe('fail');
  expect(spoken(worst)).toContain('2 others are not good');
  expect(checkWorst.compute({ verdicts: [] }, ohms)).toBeInstanceOf(Problem);
  expect(checkCount.compute({ status: 'caution', verdicts: [[verdicts, [null, 'text', 3]]] }, ohms)).toBe(2);
});

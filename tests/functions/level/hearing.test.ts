import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Verdict } from '../../../functions/values/verdict.ts';
import { agrees, input, references } from '../../references/read.ts';
import { number, refusal, run } from '../crossover/run.ts';

const minute = 60;
const hour = 3600;
const exposure = (start: string) => references('exposure', start);
const column = (...values: readonly (number | null)[]) => values.map((value) => [value]);

describe('times, tabled', () => {
  test.each([...exposure('niosh-'), ...exposure('nioshtab-')])('$id', (each) =>
    agrees(number('HEARING.TIME', input(each, 'L')) / minute, each),
  );
  test.each([...exposure('osha-'), ...exposure('oshatab-')])('$id', (each) =>
    agrees(number('HEARING.TIME_OSHA', input(each, 'L')) / hour, each),
  );
  test.each(exposure('who-'))('$id', (each) => agrees(number('HEARING.WEEK', input(each, 'L')) / hour, each));
  test.each(exposure('dose-'))('$id', (each) => {
    const segments = each.inputs['segments']!.value as unknown as readonly (readonly [number, number])[];
    const dose = number(
      'HEARING.DOSE',
      column(...segments.map(([hours]) => hours * hour)),
      column(...segments.map(([, level]) => level)),
    );
    agrees(100 * dose, each);
  });
  test.each(exposure('twa-'))('$id', (each) => {
    const segments = each.inputs['segments']!.value as unknown as readonly (readonly [number, number])[];
    agrees(
      number(
        'HEARING.DAY_LEVEL',
        column(...segments.map(([hours]) => hours * hour)),
        column(...segments.map(([, level]) => level)),
      ),
      each,
    );
  });
});

describe('identities', () => {
  const level = fc.double({ min: 40, max: 130, noNaN: true });
  test('3 dB more is half the time; the allowed time is one whole dose', () => {
    fc.assert(
      fc.property(level, (at) => {
        const time = number('HEARING.TIME', at);
        expect(number('HEARING.TIME', at + 3) / time).toBeCloseTo(0.5, 12);
        expect(number('HEARING.DOSE', column(time, null), column(at, null))).toBeCloseTo(1, 12);
        expect(number('HEARING.DAY_LEVEL', column(time), column(at))).toBeCloseTo(85, 9);
        expect(number('HEARING.DAY_LEVEL', column(8 * hour), column(at)) - 85).toBeCloseTo(
          // The exchange of 3 dB is not quite half the energy: 3.01 dB.
          ((at - 85) * 10 * Math.log10(2)) / 3,
          9,
        );
      }),
    );
  });
  test('louder is never allowed longer, and the law is laxer than the recommendation', () => {
    fc.assert(
      fc.property(fc.double({ min: 85, max: 130, noNaN: true }), (at) => {
        expect(number('HEARING.TIME', at + 0.1)).toBeLessThan(number('HEARING.TIME', at));
        expect(number('HEARING.TIME_OSHA', at)).toBeGreaterThan(number('HEARING.TIME', at));
      }),
    );
  });
});

test.each([
  [80, hour, 'good', 'Safe hours'],
  [94, 40 * minute, 'caution', 'Short time'],
  [100, minute, 'caution', 'Short time'],
  [100, hour, 'fail', 'Too long'],
])('%d dB for %d s is %s: %s', (level, time, status, word) => {
  const verdict = run('HEARING.VERDICT', level, time) as Verdict;
  expect([verdict.status, verdict.word]).toEqual([status, word]);
  expect(verdict.note === undefined).toBe(status === 'good');
});

test('a list with holes is refused by row', () => {
  expect(refusal('HEARING.DOSE', column(60, null), column(90, 90))).toContain('Row 2 has no time');
  expect(refusal('HEARING.DOSE', column(60), column(300))).toContain('between 0 and 200 dB');
  expect(refusal('HEARING.DAY_LEVEL', column(null), column(null))).toContain('no time in the list');
});

import { describe, expect, test } from 'vitest';
import { trebleFloor } from '../../../functions/level/treble.ts';
import { pairHandoverVerdict, pairVerdict } from '../../../functions/pairing/verdict.ts';
import { overlapAbove, overlapBelow, pairCentre, pairWindow } from '../../../functions/pairing/window.ts';
import { pistonNarrowing } from '../../../functions/radiation/narrowing.ts';
import { spacingBetween, spacingLimit } from '../../../functions/radiation/spacing.ts';
import { Problem } from '../../../functions/values/problem.ts';
import type { Window } from '../../../functions/values/window.ts';
import type { Verdict } from '../../../functions/values/verdict.ts';
import { pairs } from '../../references/pairs.ts';

const plain = { quantity: 'ratio' } as const;
const column = (...cells: readonly (number | string | null)[]) => cells.map((cell) => [cell]);

const woofers = {
  'W-130 A': { sd: 0.0085, breakup: 6500, flange: 0.132 },
  'W-165 A': { sd: 0.0132, breakup: 5200, flange: 0.166 },
  'W-220 A': { sd: 0.0222, breakup: 3300, flange: 0.222 },
} as const;
const tweeters = {
  'T-19 C': { fs: 1650, sd: 4.1e-4, xmax: 0.2e-3, flange: 0.052 },
  'T-25 A': { fs: 850, sd: 7e-4, xmax: 0.35e-3, flange: 0.104 },
  'T-28 B': { fs: 540, sd: 8.6e-4, xmax: 0.6e-3, flange: 0.104 },
} as const;

interface Target {
  readonly level: number;
  readonly slope: 'LR2' | 'LR4';
  readonly angle: number;
}

function pairOf(woofer: keyof typeof woofers, tweeter: keyof typeof tweeters, target: Target): Window {
  const low = woofers[woofer];
  const high = tweeters[tweeter];
  const { level, slope } = target;
  const angle = (target.angle * Math.PI) / 180;
  const floor = (share: number): number =>
    trebleFloor.compute({ sd: high.sd, xmax: high.xmax, level, slope, share }, plain) as number;
  const narrow = (loss: number): number => pistonNarrowing.compute({ sd: low.sd, angle, loss }, plain) as number;
  const spacing = spacingBetween.compute({ flangeA: low.flange, flangeB: high.flange, gap: 0.004 }, plain) as number;
  const near = (wavelengths: number): number => spacingLimit.compute({ spacing, wavelengths }, plain) as number;
  return pairWindow.compute(
    {
      floorNames: column('resonance', 'travel'),
      floors: column(2 * high.fs, floor(0.7)),
      stretchedFloors: column(1.5 * high.fs, floor(1)),
      ceilingNames: column('narrowing', 'break-up', 'spacing'),
      ceilings: column(narrow(3), low.breakup / 2, near(1)),
      stretchedCeilings: column(narrow(6), low.breakup / 1.5, near(1.4)),
    },
    plain,
  ) as Window;
}

const judged = (window: Window): Verdict => pairVerdict.compute({ window, comfortable: 0.5 }, plain) as Verdict;
const spoken = (verdict: Verdict): string =>
  verdict.reason.map((part) => (typeof part === 'string' ? part : part.value.toFixed(3))).join('');

describe('three woofers and three tweeters at 100 dB, LR4, 45°', () => {
  const target = { level: 100, slope: 'LR4', angle: 45 } as const;
  test.each(pairs)('%s with %s: %d oct, %s', (woofer, tweeter, octaves, word) => {
    const window = pairOf(woofer, tweeter, target);
    expect(Math.abs(window.octaves - octaves)).toBeLessThanOrEqual(octaves === 0.495 ? 0.0005 : 0.005);
    expect(judged(window).word).toBe(word);
    expect(spoken(judged(window))).toContain(window.low.name.slice(1));
    expect(spoken(judged(window))).toContain(window.high.name);
  });
  test('the middle of W-165 A with T-25 A is 1808 Hz', () => {
    const window = pairOf('W-165 A', 'T-25 A', target);
    expect(Math.abs((pairCentre.compute({ window }, plain) as number) - 1808)).toBeLessThanOrEqual(0.5);
  });
});

test('what would look like enough in two decimals is said to be a hair less', () => {
  const close = pairOf('W-130 A', 'T-25 A', { level: 100, slope: 'LR4', angle: 45 });
  expect(spoken(judged(close))).toContain('nearly meet: a hair less than the 0.500 wanted');
  const tight = pairOf('W-165 A', 'T-25 A', { level: 100, slope: 'LR4', angle: 45 });
  expect(spoken(judged(tight))).toMatch(/nearly meet: 0\.1\d+ of the 0\.500 wanted/);
});

test('at 109 dB the travel binds', () => {
  const window = pairOf('W-165 A', 'T-25 A', { level: 109, slope: 'LR4', angle: 45 });
  expect(window.low.name).toBe('travel');
  expect(Math.abs(window.low.at - 1753)).toBeLessThanOrEqual(0.5);
  expect(Math.abs(window.octaves - 0.13)).toBeLessThanOrEqual(0.005);
  expect(
    Math.abs(pairOf('W-165 A', 'T-28 B', { level: 109, slope: 'LR4', angle: 45 }).low.at - 1208),
  ).toBeLessThanOrEqual(0.5);
});

test('at 30° the spacing binds', () => {
  const window = pairOf('W-165 A', 'T-25 A', { level: 100, slope: 'LR4', angle: 30 });
  expect(window.high.name).toBe('spacing');
  expect(Math.abs(window.high.at - 2469)).toBeLessThanOrEqual(0.5);
  expect(judged(window).word).toBe('Comfortable');
});

describe('reading the limits', () => {
  const given = {
    floorNames: column('resonance', 'travel'),
    floors: column(1700, null),
    stretchedFloors: column(1275, null),
    ceilingNames: column('narrowing'),
    ceilings: column(1923),
    stretchedCeilings: column(null),
  };
  test('empty rows are left out, a missing stretch does not stretch', () => {
    const window = pairWindow.compute(given, plain) as Window;
    expect(window.floors).toHaveLength(1);
    expect(window.high.stretched).toBe(1923);
  });
  test.each([
    ['a text', { ...given, floors: column(1700, 'soon') }, 'Row 2 (travel)'],
    ['zero', { ...given, ceilings: column(0) }, 'Row 1 (narrowing)'],
    ['nothing', { ...given, floors: column(null, null) }, 'No row'],
    ['other lengths', { ...given, floors: column(1700) }, 'same rows'],
    ['a floor that is higher when stretched', { ...given, stretchedFloors: column(1800, null) }, 'give at most'],
    ['a ceiling that is lower when stretched', { ...given, stretchedCeilings: column(1800) }, 'give at least'],
  ])('%s is refused by name', (_, wrong, words) => {
    const problem = pairWindow.compute(wrong, plain);
    expect(problem).toBeInstanceOf(Problem);
    expect((problem as Problem).message.join('')).toContain(words);
  });
  test.each([
    [1800, 'good', 'resonance'],
    [1500, 'caution', 'limited by resonance'],
    [1200, 'fail', 'limited by resonance'],
    [2000, 'fail', 'limited by narrowing'],
  ] as const)('a hand-over at %d Hz is %s', (frequency, status, words) => {
    const window = pairWindow.compute(given, plain) as Window;
    const verdict = pairHandoverVerdict.compute({ frequency, window }, plain) as Verdict;
    expect(verdict.status).toBe(status);
    expect(spoken(verdict)).toContain(words);
  });
  test('octaves to spare add up to the window', () => {
    const below = overlapBelow.compute({ frequency: 1800, floor: 1700 }, plain) as number;
    const above = overlapAbove.compute({ frequency: 1800, ceiling: 1923 }, plain) as number;
    expect(below + above).toBeCloseTo((pairWindow.compute(given, plain) as Window).octaves, 12);
  });
});

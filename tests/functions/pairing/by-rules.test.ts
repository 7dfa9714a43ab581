import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { trebleFloor } from '../../../functions/level/treble.ts';
import { pairByRules } from '../../../functions/pairing/by-rules.ts';
import { pairWindow } from '../../../functions/pairing/window.ts';
import { pistonNarrowing } from '../../../functions/radiation/narrowing.ts';
import { spacingLimit } from '../../../functions/radiation/spacing.ts';
import type { Driver } from '../../../functions/values/driver.ts';
import { Problem } from '../../../functions/values/problem.ts';
import type { Window } from '../../../functions/values/window.ts';
import { demoDriver } from '../../references/demo-drivers.ts';

const plain = { quantity: 'ratio' } as const;
const usualRules = [
  [2, 1.5],
  [0.7, 1],
  [3, 6],
  [0.5, 2 / 3],
  [1, 1.4],
] as const;

function driver(id: string): Driver {
  const from = demoDriver(id);
  return {
    kind: 'driver',
    name: id,
    fs: from.fs_hz,
    sd: from.sd_cm2 * 1e-4,
    xmax: from.xmax_mm * 1e-3,
    breakup: from.breakup_hz,
    flange: from.flange_mm * 1e-3,
    derived: [],
    doubts: [],
  };
}

const given = (lower: string, upper: string, level = 100, degrees = 45) =>
  ({
    lower: driver(lower),
    upper: driver(upper),
    target: level,
    slope: 'LR4',
    angle: (degrees * Math.PI) / 180,
    gap: 0.004,
    rules: usualRules,
  }) as const;
const windowOf = (of: ReturnType<typeof given>): Window => pairByRules.compute(of, plain) as Window;
const messageOf = (problem: unknown): string =>
  problem instanceof Problem
    ? problem.message.map((part) => (typeof part === 'string' ? part : String(part.value))).join('')
    : '';

describe('a window straight from two drivers', () => {
  // The acceptance table of these drivers, worked out elsewhere from the same five rules; 0.03 oct.
  test.each([
    ['W-130 A', 'T-19 C', -0.46],
    ['W-130 A', 'T-25 A', 0.495],
    ['W-130 A', 'T-28 B', 1.15],
    ['W-165 A', 'T-19 C', -0.78],
    ['W-165 A', 'T-25 A', 0.18],
    ['W-165 A', 'T-28 B', 0.83],
    ['W-220 A', 'T-19 C', -1.15],
    ['W-220 A', 'T-25 A', -0.2],
    ['W-220 A', 'T-28 B', 0.46],
  ] as const)('%s with %s: %d oct', (lower, upper, octaves) => {
    expect(Math.abs(windowOf(given(lower, upper)).octaves - octaves)).toBeLessThanOrEqual(0.03);
  });

  test('is that of its limits worked out one by one', () => {
    const lower = driver('W-165 A');
    const upper = driver('T-25 A');
    const floor = (share: number): number =>
      trebleFloor.compute({ sd: upper.sd!, xmax: upper.xmax!, level: 100, slope: 'LR4', share }, plain) as number;
    const narrow = (loss: number): number =>
      pistonNarrowing.compute({ sd: lower.sd!, angle: Math.PI / 4, loss }, plain) as number;
    const near = (wavelengths: number): number =>
      spacingLimit.compute({ spacing: 0.139, wavelengths }, plain) as number;
    const column = (...cells: readonly (number | string)[]) => cells.map((cell) => [cell]);
    const byHand = pairWindow.compute(
      {
        floorNames: column('resonance', 'travel'),
        floors: column(1700, floor(0.7)),
        stretchedFloors: column(1275, floor(1)),
        ceilingNames: column('narrowing', 'break-up', 'spacing'),
        ceilings: column(narrow(3), 2600, near(1)),
        stretchedCeilings: column(narrow(6), (5200 * 2) / 3, near(1.4)),
      },
      plain,
    ) as Window;
    const [direct, separate] = [windowOf(given('W-165 A', 'T-25 A')), byHand];
    expect(direct.floors.map(({ name }) => name)).toEqual(separate.floors.map(({ name }) => name));
    expect(direct.ceilings.map(({ name }) => name)).toEqual(separate.ceilings.map(({ name }) => name));
    expect(direct.octaves).toBeCloseTo(separate.octaves, 9);
    expect(direct.stretchedOctaves).toBeCloseTo(separate.stretchedOctaves, 9);
    for (const { floors, ceilings, low, high } of [direct, separate]) {
      expect(floors).toContain(low);
      expect(ceilings).toContain(high);
    }
  });

  const span = (min: number, max: number) => fc.double({ min, max, noNaN: true });

  test('never widens as it gets louder', () => {
    fc.assert(
      fc.property(span(80, 130), span(0, 20), (level, more) => {
        const quiet = windowOf(given('W-130 A', 'T-28 B', level));
        expect(windowOf(given('W-130 A', 'T-28 B', level + more)).octaves).toBeLessThanOrEqual(quiet.octaves + 1e-12);
      }),
    );
  });

  test('never widens further to the side', () => {
    fc.assert(
      fc.property(span(20, 80), span(0, 10), (degrees, more) => {
        const near = windowOf(given('W-220 A', 'T-28 B', 100, degrees));
        expect(windowOf(given('W-220 A', 'T-28 B', 100, degrees + more)).octaves).toBeLessThanOrEqual(
          near.octaves + 1e-9,
        );
      }),
    );
  });
});

describe('what it refuses', () => {
  test('a driver without its break-up, by name', () => {
    const { breakup: _, ...bare } = driver('W-165 A');
    const result = pairByRules.compute({ ...given('W-165 A', 'T-25 A'), lower: bare }, plain);
    expect(messageOf(result)).toMatch(/W-165 A.*break/iu);
  });

  test('too few rules, and a rule that is no number', () => {
    const four = { ...given('W-165 A', 'T-25 A'), rules: usualRules.slice(0, 4) };
    expect(messageOf(pairByRules.compute(four, plain))).toMatch(/five rows of two/);
    const words = {
      ...given('W-165 A', 'T-25 A'),
      rules: usualRules.map((row, index) => (index === 2 ? [null, 6] : row)),
    };
    expect(messageOf(pairByRules.compute(words, plain))).toMatch(/narrowing/);
  });
});

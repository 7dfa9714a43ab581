import { describe, expect, test } from 'vitest';
import { openTemplate } from './open-template.ts';

describe('what if it drifts?', () => {
  // From the study: a suspension a fifth stiffer moves the datasheet, not the box.
  test.each([
    ['DriftedFs', 42.5, 0.02 * 42.5],
    ['DriftedVas', 22.8e-3, 0.02 * 22.8e-3],
    ['DriftedQts', 0.432, 0.005],
    ['Fall3', 69.6, 0.02 * 69.6],
    ['DriftedFall3', 69.7, 0.02 * 69.7],
  ] as const)('%s is %d', async (cell, expected, tolerance) => {
    const opened = await openTemplate('drift');
    expect(Math.abs(opened.number(cell) - expected), opened.text(cell)).toBeLessThanOrEqual(tolerance);
  });

  test('the level stays', async () => {
    const opened = await openTemplate('drift');
    expect(opened.number('DriftedLevel')).toBeCloseTo(opened.number('C73'), 9);
  });

  test.each([
    ['1', 0.02],
    ['2', 0.02],
    ['3', 0.02],
  ])('nine in ten F3 lie between 63 and 78 Hz, whatever the draw: seed %s', async (seed, tolerance) => {
    const opened = await openTemplate('drift');
    await opened.write({ Seed: seed, Runs: '2000', SpreadSaw: '0 mm' });
    expect(Math.abs(opened.number('FallLow') / 63 - 1)).toBeLessThanOrEqual(tolerance);
    expect(Math.abs(opened.number('FallHigh') / 78 - 1)).toBeLessThanOrEqual(tolerance);
  });

  // From the study: Fs, Vas and Qts drawn each by itself, 6, 12 and 7 % of spread.
  test('beside it stands the band of numbers that drift each by itself: 61 to 82 Hz', async () => {
    const opened = await openTemplate('drift');
    expect(Math.abs(opened.number('UnlinkedLow') / 61 - 1), opened.text('UnlinkedLow')).toBeLessThanOrEqual(0.02);
    expect(Math.abs(opened.number('UnlinkedHigh') / 82 - 1), opened.text('UnlinkedHigh')).toBeLessThanOrEqual(0.02);
    await opened.write({ SpreadFs: '0 %', SpreadVas: '0 %', SpreadQts: '0 %' });
    expect(opened.number('UnlinkedLow')).toBeCloseTo(opened.number('Fall3'), 6);
    expect(opened.number('UnlinkedHigh')).toBeCloseTo(opened.number('Fall3'), 6);
  });

  test('the magnet matters most, and the middle is the plan', async () => {
    const opened = await openTemplate('drift');
    expect(opened.text('B57')).toBe('Force factor Bl');
    expect(Math.abs(opened.number('FallMiddle') / opened.number('Fall3') - 1)).toBeLessThanOrEqual(0.02);
  });

  test('without spread every run is the plan, and every odds are whole', async () => {
    const opened = await openTemplate('drift');
    await opened.write({ SpreadCms: '0 %', SpreadBl: '0 %', SpreadMms: '0 %', SpreadRe: '0 %', SpreadSaw: '0 mm' });
    expect(opened.number('FallLow')).toBeCloseTo(opened.number('Fall3'), 9);
    expect(opened.number('FallHigh')).toBeCloseTo(opened.number('Fall3'), 9);
    expect(opened.number('AllOdds')).toBe(1);
  });

  test('a stricter limit brings the odds down and the verdict with it', async () => {
    const opened = await openTemplate('drift');
    expect(opened.text('F48')).toMatch(/^Good/);
    await opened.write({ MostFall: '70 Hz' });
    expect(opened.number('C48')).toBeLessThan(0.7);
    expect(opened.text('F48')).toMatch(/^Fail.*Not robust/);
  });
});

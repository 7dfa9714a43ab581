import { describe, expect, test } from 'vitest';
import { openTemplate } from './open-template.ts';

describe('own bench data of an invented driver', () => {
  // From the study: peak of 72.1 Ω, 26.53 and 54.44 Hz beside it, 10 g bring it to 29.51 Hz.
  test.each([
    ['HandQms', 4.8, 0.005],
    ['HandQes', 0.42, 0.005],
    ['HandMms', 15.2e-3, 0.02 * 15.2e-3],
    ['MisreadMms', 18.1e-3, 0.02 * 18.1e-3],
    ['FitFs', 38, 0.02 * 38],
    ['FitQms', 4.8, 0.02 * 4.8],
    ['FitQes', 0.42, 0.02 * 0.42],
  ] as const)('%s is %d', async (cell, expected, tolerance) => {
    const opened = await openTemplate('own-bench-data');
    expect(Math.abs(opened.number(cell) - expected), opened.text(cell)).toBeLessThanOrEqual(tolerance);
  });

  test('a reading 1 Hz too high makes the cone 19 % too heavy', async () => {
    const opened = await openTemplate('own-bench-data');
    expect(opened.number('D32')).toBeCloseTo(0.19, 2);
  });

  test('the fitted values lie within three errors of the driver that the sweep was made from', async () => {
    const opened = await openTemplate('own-bench-data');
    for (const [row, made] of [
      [35, 38],
      [36, 4.8],
      [37, 0.42],
      [38, 0.3862],
      [39, 0.55e-3],
    ] as const)
      expect(Math.abs(opened.number(`C${String(row)}`) - made), opened.text(`A${String(row)}`)).toBeLessThanOrEqual(
        3 * opened.number(`D${String(row)}`),
      );
  });

  test('three gates: uneven readings, too little mass, ohms that are not those of the meter', async () => {
    const opened = await openTemplate('own-bench-data');
    await opened.write({ Above: '58 Hz', LoadedFrequency: '35 Hz', MeterOhms: '6.2 Ω' });
    expect(opened.text('E24')).toMatch(/^Measure again.*more than 2 %/);
    expect(opened.text('E30')).toMatch(/^Measure again.*less than 15 %/);
    expect(opened.text('E41')).toMatch(/^Measure again.*below the meter/);
  });

  test('a curve without phase is for levels only; with phase it is sound; the echo sets its lower end', async () => {
    const opened = await openTemplate('own-bench-data');
    expect(opened.text('E65')).toMatch(/^Levels only.*no summing/);
    expect(opened.number('ValidFrom')).toBeCloseTo(250, 6);
    await opened.write({ Window: '3 ms', WantedFrom: '300 Hz' });
    expect(opened.text('E65')).toMatch(/^Band too narrow/);
    const rows = [...opened.sheet().cells.keys()].filter((cell) => /^C\d+$/.test(cell) && Number(cell.slice(1)) >= 129);
    await opened.write({
      Window: '4 ms',
      WantedFrom: '500 Hz',
      ...Object.fromEntries(
        rows.filter((cell) => /^\d/.test(opened.text(cell))).map((cell) => [`D${cell.slice(1)}`, '-90']),
      ),
    });
    expect(opened.text('E65')).toMatch(/^Plausible.*with phase/);
  });

  test('half the distance reads 6 dB more, which is taken off', async () => {
    const opened = await openTemplate('own-bench-data');
    const near = opened.number('C66');
    await opened.write({ MicDistance: '1 m' });
    expect(opened.number('C66') - near).toBeCloseTo(20 * Math.log10(2), 6);
  });

  test('a sweep pasted as text into one cell serves as well', async () => {
    const opened = await openTemplate('own-bench-data');
    const rows = Array.from({ length: 36 }, (_, index) => String(77 + index));
    const typed = (cell: string): string => opened.sheet().cells.get(cell)?.text ?? '';
    const text = rows.map((row) => ['B', 'C', 'D'].map((column) => typed(column + row)).join('\t'));
    const before = opened.number('FitQms');
    const empty = rows.flatMap((row) => ['B', 'C', 'D'].map((column) => [column + row, ''] as const));
    await opened.write({ ...Object.fromEntries(empty), B77: text.join('\n') });
    expect(opened.problems()).toEqual([]);
    expect(opened.number('FitQms')).toBeCloseTo(before, 6);
  });
});

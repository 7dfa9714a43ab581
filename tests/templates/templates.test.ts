import { describe, expect, test } from 'vitest';
import { drawingData } from '../../src/app/plots/drawing-source.ts';
import { readingsOf } from '../../src/components/drawing/readings.ts';
import { templates } from '../../templates/index.ts';
import { openTemplate } from './open-template.ts';

/** Ends of ranges at which a cell rightly says that there is no such thing; everything that depends on it says the same. */
const rightlyRefused: readonly RegExp[] = [
  // A closed box only raises the Q of a driver, so a driver of Qts above the wanted Qtc has no box of it.
  /^B\d+ at 2(| Ω): [CD]\d+: CLOSED\.VOLUME_FOR, .* must be above the driver's Qts/u,
  // The quasi-third-order tunings end near a Qts of 0.6.
  /^B11 at 2: C2[34]: VENTED\.QB3_(VOLUME|TUNING), .*No quasi-third-order box exists/u,
  // In a very large box one narrow port tunes too low even without any length.
  /^B25 at 300 L: [CD]\d+: PORT\.LENGTH, .*too narrow for this/u,
  // No driver has fewer ohms at some frequency than its coil has for direct current.
  /^B19 at 14 Ω: [CDE]\d+: MEASURE\.\w+, .*No driver in free air has such an impedance/u,
];

/** Doubts about a datasheet that was made to be doubted. */
const rightlyDoubted: readonly RegExp[] = [/^datasheet-detective B19: (Qts|Bl|Vas|Level) is given as/u];

describe.each(templates)('the starter sheet $id', ({ id }) => {
  test('holds no problem and no doubt', async () => {
    const opened = await openTemplate(id);
    expect(opened.problems()).toEqual([]);
    const findings = [...opened.sheet().cells.keys()].flatMap((cell) =>
      (opened.state(cell)?.findings ?? []).map(({ message }) => `${cell}: ${message}`),
    );
    expect(findings.filter((each) => !rightlyDoubted.some((doubt) => doubt.test(`${id} ${each}`)))).toEqual([]);
  });

  test('tells when it is of use, and what it leaves open', async () => {
    const opened = await openTemplate(id);
    const notes = [...opened.sheet().cells.values()].filter(({ look }) => look === 'note').map(({ text }) => text);
    expect(notes.filter((note) => /^(Use it|For) /u.test(note))).toHaveLength(1);
    expect(notes.join(' ')).toMatch(/does not (tell|know)|judges nothing|Predicted/u);
  });

  test('draws what its cells hold', async () => {
    const opened = await openTemplate(id);
    const kindOf = (cell: string): string => {
      const value = opened.state(cell)?.value;
      return value?.kind === 'record' ? value.record.kind : (value?.kind ?? 'nothing');
    };
    for (const plot of opened.sheet().plots) {
      for (const { cell } of [...plot.limits, ...plot.marks])
        expect(`${plot.id} ${cell}: ${kindOf(cell)}`).toBe(`${plot.id} ${cell}: number`);
      if (plot.kind !== 'curves' && plot.kind !== 'window') {
        const drawn = drawingData(opened.workbook, opened.sheet(), plot);
        expect(drawn && readingsOf(drawn).filter(({ name }) => name !== '').length, plot.id).toBeGreaterThan(1);
        expect(JSON.stringify(drawn), plot.id).not.toMatch(/null/u);
        continue;
      }
      const wanted = plot.kind === 'window' ? 'window' : 'curve';
      for (const { cell } of plot.series)
        expect(`${plot.id} ${cell}: ${kindOf(cell)}`).toBe(`${plot.id} ${cell}: ${wanted}`);
    }
  });

  test('stands every input at both ends of its range, and every choice', async () => {
    const opened = await openTemplate(id);
    const broken: string[] = [];
    // Each write puts the input before it back, so that a large sheet is calculated once for each end.
    let before: Readonly<Record<string, string>> = {};
    for (const [cell, { text, range, choices }] of opened.sheet().cells) {
      if (text.startsWith('=')) continue;
      for (const extreme of choices ?? range ?? []) {
        await opened.write({ ...before, [cell]: extreme });
        before = { [cell]: text };
        broken.push(...opened.problems().map((problem) => `${cell} at ${extreme}: ${problem}`));
      }
    }
    expect(broken.filter((each) => !rightlyRefused.some((reason) => reason.test(each)))).toEqual([]);
  }, 120_000);
});

describe('the two-driver check on its invented drivers', () => {
  // From the acceptance table for these drivers; hertz within 2 %, dB 0.2, ohms 0.05, octaves 0.03.
  test.each([
    ['C33', 1700, 34],
    ['C34', 1044, 21],
    ['C36', 1923, 38],
    ['C37', 2600, 52],
    ['C38', 2469, 49],
    ['WindowWidth', 0.18, 0.03],
    ['D44', 1808, 36],
    ['SystemLevel', 84.7, 0.2],
    ['Pad', 5.3, 0.2],
    ['LowestOhms', 5.8, 0.05],
    ['D65', 410, 8],
    ['PairPrice', 192, 0],
  ] as const)('%s is %d', async (cell, expected, tolerance) => {
    const opened = await openTemplate('two-driver-check');
    expect(Math.abs(opened.number(cell) - expected), opened.text(cell)).toBeLessThanOrEqual(tolerance);
  });

  test('the null angle is ±43.1°', async () => {
    const opened = await openTemplate('two-driver-check');
    expect((opened.number('D52') * 180) / Math.PI).toBeCloseTo(43.1, 1);
    expect(opened.text('D52')).toMatch(/^43\.1\s*°$/);
  });

  test('the verdict is Tight and names both limits', async () => {
    const opened = await openTemplate('two-driver-check');
    expect(opened.text('E41')).toMatch(/^Tight.*resonance.*narrowing/i);
  });
});

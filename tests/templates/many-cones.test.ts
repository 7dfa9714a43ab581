import { describe, expect, test } from 'vitest';
import { openTemplate } from './open-template.ts';

describe('one amplifier, many cones', () => {
  test('two, four and eight of them: every wiring has its row, the even ones first', async () => {
    const opened = await openTemplate('many-cones');
    const wirings = (): string[] => Array.from({ length: 8 }, (_, row) => opened.text(`A${String(32 + row)}`));
    expect(wirings().filter(Boolean)).toEqual(['1:  1+2', '2:  1 | 2']);
    await opened.write({ Count: '4' });
    expect(wirings()[1]).toBe('2:  (1 | 2)+(3 | 4)');
    expect(opened.text('F40')).toMatch(/first 8/);
    await opened.write({ Count: '1' });
    expect(wirings().filter(Boolean)).toEqual(['1:  1']);
    expect(opened.problems()).toEqual([]);
  });

  test('the loudest that the amplifier takes is the one in series, and with half its minimum the one in parallel', async () => {
    const opened = await openTemplate('many-cones');
    expect(opened.text('Loudest')).toBe('1+2');
    await opened.write({ AmpMinimum: '2 ohm' });
    expect(opened.text('Loudest')).toBe('1 | 2');
  });

  test('a resistance ahead of them adds to the load and takes its share of the level', async () => {
    const opened = await openTemplate('many-cones');
    const [ohms, level] = [opened.number('LowestOhms'), opened.number('GroupLevel')];
    await opened.write({ SeriesOhms: '0.6 ohm' });
    // At the lowest ohms the load is all but a resistance, so that both are plain sums and ratios.
    expect(opened.number('LowestOhms') - ohms).toBeCloseTo(0.6, 2);
    expect(level - opened.number('GroupLevel')).toBeCloseTo(20 * Math.log10((ohms + 0.6) / ohms), 2);
  });

  test('of two unlike units the one with less resistance takes more in parallel, and is named', async () => {
    const opened = await openTemplate('many-cones');
    // Two resistors side by side take power as the reciprocals of their ohms, 5.8 Ω and 3.1 Ω.
    expect(opened.number('MixedParallelShare')).toBeCloseTo(3.1 / 8.9, 2);
    expect(opened.number('MixedSeriesShare')).toBeCloseTo(5.8 / 8.9, 2);
    const rows = ['F60', 'F62'].map((cell) => opened.text(cell));
    expect(rows[0]).toMatch(/^Caution.*W-165 A does most of the work and heats first/);
    expect(rows[1]).toMatch(/^Caution.*W-165 A4 does most of the work and heats first/);
  });
});

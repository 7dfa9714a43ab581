import { describe, expect, test } from 'vitest';
import { createEngine } from '../../src/engine/direct.ts';
import { sheetWith, told, typed } from './sheet.ts';

describe('formulas that go round in a circle', () => {
  test('name the loop in order, each beginning with itself', async () => {
    const all = await told(createEngine(), sheetWith({ B4: '=C5+1', C5: '=B4*2' }));
    expect(all.message('B4')).toContain('B4 → C5 → B4.');
    expect(all.message('C5')).toContain('C5 → B4 → C5.');
  });

  test('name the shortest of several loops, also through ranges and other sheets', async () => {
    const [sheet] = sheetWith({ A1: '=SUM(B1:B3)', B2: '=Other!A1' });
    const other = { id: 'o', name: 'Other', cells: new Map([['A1', '=S!A1+S!B2']]), names: new Map<string, string>() };
    const all = await told(createEngine(), sheet ? [sheet, other] : []);
    expect(all.message('B2')).toContain('B2 → Other!A1 → B2.');
    expect(all.message('A1')).toContain('A1 → B2 → Other!A1 → A1.');
  });

  test('tell those who depend on them where to look', async () => {
    const all = await told(createEngine(), sheetWith({ B4: '=C5+1', C5: '=B4*2', D1: '=C5+1' }));
    expect(all.message('D1')).toMatch(/A cell that this formula needs depends on itself: .*B4/);
    expect(all.value('D1')).toMatchObject({ origin: { sheet: 's' } });
  });

  test('are mended by an edit that breaks the loop, and tell a loop that changed', async () => {
    const engine = createEngine();
    const all = await told(engine, sheetWith({ A1: '=B1', B1: '=A1', C1: '=A1' }));
    all.take(await engine.write([typed('B1', '=C1')]));
    expect(all.message('A1')).toContain('A1 → B1 → C1 → A1.');
    all.take(await engine.write([typed('C1', '3')]));
    expect(['A1', 'B1', 'C1'].map((cell) => all.number(cell))).toEqual([3, 3, 3]);
  });

  test('may be thousands of cells long', async () => {
    const length = 2000;
    const cells = new Map<string, string>();
    for (let row = 1; row < length; row++) cells.set(`A${String(row)}`, `=A${String(row + 1)}+1`);
    cells.set(`A${String(length)}`, '=A1');
    const all = await told(createEngine(), sheetWith(cells));
    expect(all.message('A1')).toContain('A1 → A2 → A3');
    expect(all.message('A1500').length).toBeLessThan(300);
  });
});

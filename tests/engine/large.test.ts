import { describe, expect, test } from 'vitest';
import { createEngine } from '../../src/engine/direct.ts';
import { sheetWith, told, typed } from './sheet.ts';

const ROWS = 10_000;
const column = (formula: (row: number) => string): Map<string, string> =>
  new Map(Array.from({ length: ROWS }, (_, index) => [`B${String(index + 1)}`, formula(index + 1)]));

describe('ten thousand cells', () => {
  test('that follow one all change with it, each once and right', async () => {
    const engine = createEngine();
    const cells = column((row) => `=CLOSED.QTC($A$1, "28.52 L", ${String(row)} L)`).set('A1', '0.386');
    await engine.load(sheetWith(cells));
    const changes = await engine.write([typed('A1', '0.4')]);
    expect(changes.cells).toHaveLength(ROWS + 1);
    expect(new Set(changes.cells.map(({ cell }) => cell)).size).toBe(ROWS + 1);
    for (const { cell, value } of changes.cells) {
      if (cell === 'A1' || value.kind !== 'number') continue;
      const litres = Number(cell.slice(1));
      expect(Math.abs(value.value / (0.4 * Math.sqrt(1 + 28.52 / litres)) - 1)).toBeLessThan(1e-14);
    }
    expect(changes.cells.every(({ value }) => value.kind === 'number')).toBe(true);
  });

  test.each([
    ['upwards', (row: number) => (row === 1 ? '1 L' : `=B${String(row - 1)}`), `B${String(ROWS)}`],
    ['downwards', (row: number) => (row === ROWS ? '1 L' : `=B${String(row + 1)}`), 'B1'],
  ])('in a chain that refers %s carry value and dimension to its end', async (_, formula, end) => {
    const engine = createEngine();
    const all = await told(engine, sheetWith(column(formula)));
    expect(all.number(end)).toBe(0.001);
    expect(all.state(end)?.type).toMatchObject({ quantity: 'volume' });
    all.take(await engine.write([typed(end === 'B1' ? `B${String(ROWS)}` : 'B1', '2 Hz')]));
    expect(all.number(end)).toBe(2);
    expect(all.state(end)?.type).toMatchObject({ quantity: 'frequency' });
  });
});

describe('a range of two hundred thousand cells', () => {
  test('with its own formula inside is told as a loop, and calculated once it is elsewhere', async () => {
    const engine = createEngine();
    const all = await told(engine, sheetWith({ A1: '1', B100000: '2', B9: '=SUM(A1:B100000)' }));
    expect(all.message('B9')).toMatch(/^The formula depends on itself: B9 → B9\. /);
    all.take(await engine.write([typed('B9', ''), typed('C9', '=SUM(A1:B100000)')]));
    expect(all.number('C9')).toBe(3);
    all.take(await engine.write([typed('A5', '=C9')]));
    expect(all.message('A5')).toMatch(/^The formula depends on itself: A5 → C9 → A5\. /);
    all.take(await engine.write([typed('A5', '4')]));
    expect(all.number('C9')).toBe(7);
    all.take(await engine.write([typed('C9', '=SUM(A1:A4)'), typed('D9', '=SUM(A4:B100000)')]));
    expect([all.number('C9'), all.number('D9')]).toEqual([1, 6]);
  });
});

describe('a cell that very many follow', () => {
  test('is still followed by those that are left once others are gone', async () => {
    const engine = createEngine();
    const all = await told(engine, sheetWith(column((row) => `=A1+${String(row)}`).set('A1', '1')));
    all.take(
      await engine.write([typed('B7', '5'), typed('B8', '=$A$1+A1'), typed('B9', '=A1+A2'), typed('A2', '=A1')]),
    );
    all.take(await engine.write([typed('A1', '2')]));
    expect(['B6', 'B7', 'B8', 'B9', 'B10'].map((cell) => all.number(cell))).toEqual([8, 5, 4, 4, 12]);
  });
});

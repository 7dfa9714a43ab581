import { describe, expect, test } from 'vitest';
import { createEngine } from '../../src/engine/direct.ts';
import type { SheetEngine } from '../../src/engine/types.ts';

const sheetWith = (cells: Readonly<Record<string, string>>): Parameters<SheetEngine['load']>[0] => [
  { id: 's', name: 'S', cells: new Map(Object.entries(cells)), names: new Map() },
];

describe('records that were made before', () => {
  // A high-pass for protection below the tuning stands between 10 Hz and 300 Hz; 500 Hz is questioned, not refused.
  const driver = 'DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "5.8 Ω", "132 cm²", "5.5 mm")';
  const odd = `=BOX.HIGH_PASS(CLOSED.BOX(${driver}, "12 L"), "500 Hz", 4)`;

  test('a doubt about an argument stands in every cell with the same call', async () => {
    const { cells } = await createEngine().load(sheetWith({ A1: odd, A2: odd }));
    const [first, second] = ['A1', 'A2'].map((cell) => cells.find((each) => each.cell === cell)?.findings ?? []);
    expect(first?.length).toBeGreaterThan(0);
    expect(second).toEqual(first);
  });

  test('a doubt comes back with the value that raised it', async () => {
    const engine = createEngine();
    const { cells } = await engine.load(sheetWith({ A1: odd }));
    await engine.write([{ sheet: 's', cell: 'A1', text: odd.replace('500 Hz', '35 Hz') }]);
    const again = await engine.write([{ sheet: 's', cell: 'A1', text: odd }]);
    expect(again.cells[0]?.findings).toEqual(cells[0]?.findings);
    expect(again.cells[0]?.findings.length).toBeGreaterThan(0);
  });

  test('an argument left out is not the same as an empty text', async () => {
    const cells = { A1: '=CHECK.AT_LEAST(3, 2, , "Ratio")', C1: '=""', A2: '=CHECK.AT_LEAST(3, 2, C1, "Ratio")' };
    const { cells: both } = await createEngine().load(sheetWith(cells));
    const { cells: alone } = await createEngine().load(sheetWith({ C1: cells.C1, A2: cells.A2 }));
    const valueOf = (states: typeof both): unknown => states.find(({ cell }) => cell === 'A2')?.value;
    expect(valueOf(alone)).toMatchObject({ kind: 'problem' });
    expect(valueOf(both)).toEqual(valueOf(alone));
  });
});

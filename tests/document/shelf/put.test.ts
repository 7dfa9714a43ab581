import { describe, expect, test } from 'vitest';
import { apply } from '../../../src/document/apply.ts';
import { isRefusal } from '../../../src/document/command.ts';
import { driverBlockAt } from '../../../src/document/shelf/block.ts';
import type { DriverEntry } from '../../../src/document/shelf/entry.ts';
import { putDriver, rowsInBlock } from '../../../src/document/shelf/put.ts';
import { decodeDocument } from '../../../src/exchange/decode.ts';
import type { OctavoDocument } from '../../../src/document/types.ts';
import check from '../../../templates/two-driver-check.json' with { type: 'json' };
import { named, entry } from './demo.ts';

describe('another driver in a sheet', () => {
  const document = decodeDocument(check) as OctavoDocument;
  const [sheet] = document.sheets;
  const put = (cell: string, driver: DriverEntry) => putDriver(sheet!, driverBlockAt(sheet!, cell)!, driver);
  const written = (cell: string, driver: DriverEntry) => {
    const outcome = apply(document, put(cell, driver).command);
    if (isRefusal(outcome)) throw new Error(outcome.refused);
    return { cells: outcome.document.sheets[0]!.cells, undone: apply(outcome.document, outcome.undo) };
  };

  test('is written over all rows of its block in one step, and one step takes it back', () => {
    const { cells, undone } = written('B9', named('W-220 A'));
    expect(['B4', 'B5', 'B8', 'B10', 'B14', 'B15', 'B19'].map((cell) => cells.get(cell)?.text)).toEqual([
      'W-220 A',
      '27 Hz',
      '5.7 Ω',
      '222 cm²',
      '89.8 dB',
      'at 2.83 V',
      '98 ¤',
    ]);
    expect(cells.get('B5')?.range).toEqual(['15 Hz', '200 Hz']);
    expect(cells.get('B20')?.text).toBe('=DRIVER($A4:$A19,B4:B19)');
    expect(cells.get('C5')?.text).toBe('850 Hz');
    expect('document' in undone && undone.document.sheets[0]?.cells).toEqual(sheet?.cells);
  });

  test('is found from every row, from the formula that gathers them, and in its own column', () => {
    for (const cell of ['C4', 'C12', 'C19', 'C20']) {
      const block = driverBlockAt(sheet!, cell);
      expect([cell, block?.title, block?.rows[0]?.cell, block?.rows.at(-1)?.cell]).toEqual([
        cell,
        'Tweeter',
        'C4',
        'C19',
      ]);
    }
    for (const cell of ['A5', 'D24', 'E9', 'B2', 'B41']) {
      const block = driverBlockAt(sheet!, cell);
      expect([cell, block?.rows.some(({ cell: at }) => at === 'B5')]).not.toEqual([cell, true]);
    }
    expect(driverBlockAt(sheet!, 'D24')).toBeUndefined();
  });

  test('leaves nothing of the former one: what is not given is computed or emptied, and told', () => {
    const small = entry('Small', ['Fs', '60 Hz'], ['Qms', '4'], ['Qts', '0.4'], ['Re', '6 Ω']);
    const { cells } = written('B9', small);
    expect(cells.get('B7')?.text).toBe('0.4444');
    expect(cells.get('B11')?.text).toBe('');
    const told = put('B9', small).told.join(' ');
    expect(told).toContain('Computed from its other numbers: Qes.');
    expect(told).toMatch(/Not given for Small, so emptied: .*Mms/);
    expect(told).toContain('This sheet has no rows for Qts.');
  });

  test('takes the basis of its level in the words of the cell', () => {
    const { cells } = written(
      'B9',
      entry('Watt', ['Fs', '60 Hz'], ['Level', '88 dB'], ['Level basis', '1 W / 1 m in Re'], ['Re', '6 Ω']),
    );
    expect(cells.get('B14')?.text).toBe('88 dB');
    expect(cells.get('B15')?.text).toBe('at 1 W into Re');
  });

  test('comes from a column of the sheet as it was typed, and goes back unchanged', () => {
    const block = driverBlockAt(sheet!, 'B9')!;
    const { name, rows } = rowsInBlock(sheet!, block);
    expect(name).toBe('W-165 A');
    expect(rows).toContainEqual({ label: 'Radiating area Sd', text: '132 cm²' });
    const { command, given } = putDriver(sheet!, block, { ...entry(name), rows });
    expect(given).toContain('B10');
    const outcome = apply(document, command);
    expect('document' in outcome && outcome.document.sheets[0]?.cells).toEqual(sheet?.cells);
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createEngine } from '../../src/engine/direct.ts';
import { sheetWith, told, typed, type Told } from './sheet.ts';

const curve =
  '=BOX.RESPONSE(CLOSED.BOX(DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "5.8 Ω", "132 cm²", "5.5 mm"), "12 L"))';
const frequencies = { A1: '50 Hz', A2: '100 Hz', A3: '200 Hz', D1: curve };
const quantityOf = (all: Told, cell: string): string => {
  const type = all.state(cell)?.type;
  return type?.kind === 'number' ? String(type.quantity) : String(type?.kind);
};

describe('a column of results', () => {
  test('gives every cell that it fills its quantity, and so all that reads one of them', async () => {
    const sheet = sheetWith({
      ...frequencies,
      B1: '=CURVE.COLUMN(D1,A1:A3)',
      C1: '=B2',
      C2: '=B2+1 dB',
      C3: '=B2+1 Hz',
    });
    const all = await told(createEngine(), sheet);
    expect(['B1', 'B2', 'B3', 'C1', 'C2'].map((cell) => quantityOf(all, cell))).toEqual(Array(5).fill('level'));
    expect(all.number('C2')).toBeCloseTo(all.number('B2') + 1, 12);
    expect(all.state('C3')?.findings.map(({ level }) => level)).toEqual(['error']);
  });

  test('gives another quantity once it holds another, and none once it is gone', async () => {
    const engine = createEngine();
    const all = await told(engine, sheetWith({ ...frequencies, B1: '=CURVE.COLUMN(D1,A1:A3)', C1: '=B3' }));
    all.take(
      await engine.write([
        typed(
          'B1',
          '=CURVE.COLUMN(BOX.TRAVEL(CLOSED.BOX(DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "5.8 Ω", "132 cm²", "5.5 mm"), "12 L"), "2.83 V"),A1:A3)',
        ),
      ]),
    );
    expect([quantityOf(all, 'B3'), quantityOf(all, 'C1')]).toEqual(['travel', 'travel']);
    all.take(await engine.write([typed('B1', '5 Hz')]));
    expect(all.value('B3')).toEqual({ kind: 'empty' });
    expect(quantityOf(all, 'C1')).not.toBe('travel');
  });

  test('gives nothing to a cell in which something is typed, and takes it in again', async () => {
    const engine = createEngine();
    const all = await told(engine, sheetWith({ ...frequencies, B1: '=CURVE.COLUMN(D1,A1:A3)', C1: '=B2' }));
    all.take(await engine.write([typed('B2', '7 mm')]));
    expect([quantityOf(all, 'B2'), quantityOf(all, 'C1')]).toEqual(['length', 'length']);
    all.take(await engine.write([typed('B2', '')]));
    expect([quantityOf(all, 'B2'), quantityOf(all, 'C1')]).toEqual(['level', 'level']);
  });

  test('after any typing shows what a sheet with the same texts shows', async () => {
    const text = fc.constantFrom(
      '',
      '=CURVE.COLUMN(D1,A1:A3)',
      '=CURVE.COLUMN(D1,A1:A2)',
      '7 mm',
      '=B2',
      '=B3+1 dB',
      '=UNIQUE(A1:A3)',
    );
    const write = fc.tuple(fc.constantFrom('B1', 'B2', 'B3', 'B4', 'C1', 'C2', 'C3'), text);
    const writes = fc.array(write, { minLength: 1, maxLength: 10 });
    await fc.assert(
      fc.asyncProperty(writes, async (all) => {
        const engine = createEngine();
        const cells = new Map<string, string>(Object.entries(frequencies));
        const held = await told(engine, sheetWith(cells));
        for (const [cell, next] of all) {
          if (next === '') cells.delete(cell);
          else cells.set(cell, next);
          held.take(await engine.write([typed(cell, next)]));
        }
        const fresh = await told(createEngine(), sheetWith(cells));
        expect(held.states).toEqual(fresh.states);
      }),
      { numRuns: 60 },
    );
  });
});

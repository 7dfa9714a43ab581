import { expect, test } from 'vitest';
import { newSheet } from '../../src/document/create.ts';
import { Workbook } from '../../src/document/workbook.ts';
import { createEngine } from '../../src/engine/direct.ts';

/** A measured table whose level at 1 kHz is in B2, and what a sheet makes of it. */
async function measured(): Promise<Workbook> {
  const typed = { A1: '100 Hz', A2: '1000 Hz', A3: '10000 Hz', B1: '80 dB', B2: '86 dB', B3: '80 dB' };
  const made = { D1: '=CURVE.READ(A1:A3, B1:B3, "level")', D2: '=CURVE.SHIFT(D1, B1)' };
  const cells = new Map(Object.entries({ ...typed, ...made }).map(([cell, text]) => [cell, { text }]));
  const sheet = { ...newSheet('Sheet'), id: 's', cells };
  const workbook = new Workbook(createEngine(), { id: 'd', title: 'D', system: 'metric', sheets: [sheet] });
  await workbook.ready;
  return workbook;
}

const write = (workbook: Workbook, cell: string, text: string): Promise<unknown> =>
  workbook.do({ kind: 'write', sheet: 's', texts: new Map([[cell, text]]) });
const moveAt = (workbook: Workbook, cell: string): string | undefined =>
  workbook.consequences.find(({ place }) => place.cell === cell)?.move;

test('a curve says how far it moved at most, and where', async () => {
  const workbook = await measured();
  await write(workbook, 'B2', '89 dB');
  expect(moveAt(workbook, 'D1')).toBe('by up to 3.0 dB near 1\u2009000 Hz');
});

test('less than a level has decimals for is said as that', async () => {
  const workbook = await measured();
  await write(workbook, 'B2', '86.02 dB');
  expect(moveAt(workbook, 'D1')).toBe('by less than 0.1 dB');
});

test('numbers and what had no curve before have no move', async () => {
  const workbook = await measured();
  await write(workbook, 'D1', '=CURVE.READ(A1:A3, B1:B2, "level")');
  expect(workbook.consequences.length).toBeGreaterThan(0);
  expect(workbook.consequences.filter(({ move }) => move !== undefined)).toEqual([]);
});

test('what a cell comes to ask is told with the edit that made it ask', async () => {
  const workbook = await measured();
  const doubtsAt = (cell: string): string =>
    workbook.consequences.flatMap(({ place, doubts }) => (place.cell === cell ? doubts : [])).join(' ');
  await write(workbook, 'E2', '=DRIVER.HOT_LOSS(E1)');
  await write(workbook, 'E1', '50 K');
  expect(doubtsAt('E2')).toBe('');
  await write(workbook, 'E1', '100 °C');
  expect(doubtsAt('E2')).toContain('A rise is typed in kelvin: 100 K.');
  await write(workbook, 'E3', '=E2 + "1 dB"');
  expect(doubtsAt('E2')).toBe('');
});

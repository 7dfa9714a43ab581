import { describe, expect, test } from 'vitest';
import { newDocument } from '../../../src/document/create.ts';
import { tableSheet, type TableMeaning } from '../../../src/document/shelf/table-sheet.ts';
import type { Sheet } from '../../../src/document/types.ts';
import { Workbook } from '../../../src/document/workbook.ts';
import { createEngine } from '../../../src/engine/direct.ts';
import { encodeDocument } from '../../../src/exchange/encode.ts';
import { decodeDocument } from '../../../src/exchange/decode.ts';

const made = (text: string, meaning: TableMeaning, driver = 'W-165 A'): Sheet => {
  const sheet = tableSheet(newDocument('Mine'), driver, { title: 'Table 1', text }, meaning);
  if (!('cells' in sheet)) throw new Error(String(sheet));
  return sheet;
};

async function opened(sheet: Sheet) {
  const workbook = new Workbook(createEngine(), newDocument('Mine'));
  await workbook.ready;
  expect(await workbook.do({ kind: 'add-sheet', sheet })).toBeUndefined();
  return workbook;
}

describe('a measured table from the shelf', () => {
  test('is a curve that another sheet uses by its name', async () => {
    const sheet = made('Hz\tdB\n100 88,5\n1000 90,5\n10000 86', 'level');
    const workbook = await opened(sheet);
    const curve = workbook.state(sheet.id, 'B2')?.value;
    expect(curve?.kind === 'record' && curve.record.kind === 'curve' && curve.record.quantity).toBe('level');
    const [other] = workbook.document.sheets;
    const reference = sheet.cells.get('B3')?.text.replace('write =', '') ?? '';
    await workbook.do({
      kind: 'write',
      sheet: other!.id,
      texts: new Map([['A1', `=CURVE.AT(${reference},316.228 Hz)`]]),
    });
    const read = workbook.state(other!.id, 'A1')?.value;
    // Half way between 100 Hz and 1 kHz in log f, so half way between their levels.
    expect(read).toEqual({ kind: 'number', value: expect.closeTo(89.5, 5) as number });
  });

  test('keeps its phase in degrees and says that its numbers are measured', async () => {
    const sheet = made('20 6.2 10\n40 30 -5\n200 8 -20', 'impedance');
    expect([sheet.cells.get('C6')?.text, sheet.cells.get('A6')?.origin]).toEqual(['10', 'measured']);
    const workbook = await opened(sheet);
    const curve = workbook.state(sheet.id, 'B2')?.value;
    if (curve?.kind !== 'record' || curve.record.kind !== 'curve') throw new Error('no curve');
    expect(curve.record.quantity).toBe('resistance');
    expect([curve.record.from, curve.record.to]).toEqual([20, 200]);
    expect((curve.record.phase?.at(-1) ?? 0) * (180 / Math.PI)).toBeCloseTo(-20, 6);
  });

  test('draws and can be given away as a file, whatever the driver is called', () => {
    const sheet = made('100 88\n1000 90', 'level', "O'Neil [8] !");
    const document = { ...newDocument('Mine'), sheets: [sheet] };
    expect(decodeDocument(encodeDocument(document))).not.toHaveProperty('refused');
    expect(sheet.plots[0]?.series[0]?.cell).toBe('MeasuredLevel');
  });

  test('is none where the text holds no table', () => {
    const sheet = tableSheet(newDocument('Mine'), 'X', { title: 'Note', text: 'measured on a Sunday' }, 'level');
    expect(sheet).not.toHaveProperty('cells');
  });
});

import { beforeAll, describe, expect, test } from 'vitest';
import { templates } from '../../templates/index.ts';
import { isRefusal } from '../../src/document/command.ts';
import { Workbook } from '../../src/document/workbook.ts';
import { workedFormula } from '../../src/document/worked.ts';
import { createEngine } from '../../src/engine/direct.ts';
import { decodeDocument } from '../../src/exchange/decode.ts';

let workbook: Workbook;
let sheet: string;

beforeAll(async () => {
  const document = decodeDocument(templates.find(({ id }) => id === 'two-driver-check')?.content);
  if (isRefusal(document)) throw new Error(document.refused);
  workbook = new Workbook(createEngine(), document);
  await workbook.ready;
  sheet = document.sheets[0]?.id ?? '';
});

/** With plain spaces, to be legible here. */
const worked = (formula: string): string => workedFormula(workbook, sheet, formula).replaceAll(/\s/g, ' ');

describe('a formula with its values', () => {
  test.each([
    ['=B5*2', '=38 Hz*2'],
    ['=HandOver/2 + C5', '=1 808 Hz/2 + 850 Hz'],
    ['=B4&C4', '=“W-165 A”&“T-25 A”'],
    ['=CURVE.AT(B20, 1)', '=CURVE.AT(“W-165 A”, 1)'],
  ])('%s is %s', (formula, expected) => {
    expect(worked(formula)).toBe(expected);
  });

  test('leaves ranges and empty cells as they are written', () => {
    expect(worked('=SUM(B5:B7)+J9+B5')).toBe('=SUM(B5:B7)+J9+38 Hz');
  });

  test('is nothing where there is nothing to put in', () => {
    expect(worked('=2*3')).toBe('');
    expect(worked('38 Hz')).toBe('');
  });
});

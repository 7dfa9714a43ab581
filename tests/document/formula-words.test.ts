import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatReference, mapReferences } from '../../src/document/formula-words.ts';
import { shiftReferences } from '../../src/document/references.ts';

/** Every reference of a formula, as it is written. */
const referencesIn = (formula: string): string[] => {
  const found: string[] = [];
  mapReferences(formula, (written) => {
    found.push(formatReference(written));
    return written;
  });
  return found;
};

describe('the references of a formula', () => {
  test.each([
    ['=B4*2+C4', ['B4', 'C4']],
    ['=SUM(B4:C18)/$A$1', ['B4:C18', '$A$1']],
    ['=SUM( b4 : c18 )', ['B4:C18']],
    ['=Woofer.fs*2', ['Woofer']],
    ['=B20.fs', ['B20']],
    ["='Two drivers'!B4+Box!Volume", ["'Two drivers'!B4", 'Box!Volume']],
    ["='It''s one'!B4:C5", ["'It''s one'!B4:C5"]],
    ['=CLOSED.QTC(Woofer.qts, Woofer.vas, "12 L")', ['Woofer', 'Woofer']],
    ['=IF(TRUE, "B4 is text", "say ""C4""")', []],
    ['=A2*0.2 ft3', ['A2']],
    ['=0.2 ft3+FT3', ['FT3']],
    ['=5 kg/m3*B4', ['B4']],
    ['=3 dB/oct+oct', ['oct']],
    ['=5/B4', ['B4']],
    ['=5 mm/B4', ['B4']],
    ['=5 mm p-p*B4', ['B4']],
    ['=1e3*B4', ['B4']],
    ['=2E4+E4', ['E4']],
    ['=45°+B4', ['B4']],
    ['=8Ω*B4', ['B4']],
    ['=#REF!+B4', ['B4']],
    ['=Größe*µ', ['Größe', 'µ']],
    ['=LOG10(B4)', ['B4']],
    ['=ATAN2 (B4,C4)', ['B4', 'C4']],
  ])('%s', (formula, references) => {
    expect(referencesIn(formula)).toEqual(references);
  });

  test('are found in a formula that is not finished', () => {
    expect(referencesIn('=SUM(B4, (C4 "no end')).toEqual(['B4', 'C4']);
    expect(referencesIn('=B4:')).toEqual(['B4']);
    expect(referencesIn('=B4:Woofer')).toEqual(['B4', 'Woofer']);
  });

  test('that stay leave every character as it was typed', () => {
    const words =
      "B4|$c$5| |+|(|)|,|'B4'|'|My sheet!|Box!|:|0.2 ft3|12|°|Woofer|.fs|#REF!|%|!|\n|\u2009|=|1e|3 dB/oct|½|$|SUM(";
    const pieces = fc.constantFrom('"B4"', '"', ...words.split('|'));
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 20 }), (parts) => {
        const formula = `=${parts.join('')}`;
        expect(mapReferences(formula, (written) => written)).toBe(formula);
      }),
      { numRuns: 1000 },
    );
  });
});

describe('shifting', () => {
  test.each([
    ['=B4+$B4+B$4+$B$4', 1, 2, '=D5+$B5+D$4+$B$4'],
    ['=SUM(B4:B9)*Woofer', 3, 0, '=SUM(B7:B12)*Woofer'],
    ['=A1+B2', -1, 0, '=#REF!+B1'],
    ['=Box!A1:B2', 0, -1, '=#REF!'],
    ["='My sheet'!Z1", 0, 1, "='My sheet'!AA1"],
    ['B4 is text', 1, 1, 'B4 is text'],
  ])('%s by %d rows and %d columns', (formula, rows, columns, shifted) => {
    expect(shiftReferences(formula, rows, columns)).toBe(shifted);
  });

  test('there and back gives the same formula', () => {
    const corner = fc.tuple(fc.boolean(), fc.nat({ max: 700 }), fc.boolean(), fc.nat({ max: 5000 }));
    fc.assert(
      fc.property(
        corner,
        fc.nat({ max: 99 }),
        fc.nat({ max: 99 }),
        ([fixedColumn, column, fixedRow, row], rows, columns) => {
          const address = formatReference({ kind: 'cells', first: { row, column, fixedRow, fixedColumn } });
          const formula = `=2*${address}`;
          expect(shiftReferences(shiftReferences(formula, rows, columns), -rows, -columns)).toBe(formula);
        },
      ),
    );
  });
});

import { describe, expect, test } from 'vitest';
import { catalogue } from '../../functions/index.ts';
import { compile } from '../../src/formula/compile.ts';
import { functionsByName, type Scope } from '../../src/formula/types.ts';
import { typeOfContent } from '../../src/formula/type-of.ts';
import { readContent } from '../../src/formula/content.ts';
import { isPlain, symbolOf, times } from '../../src/units/dimension.ts';
import { parseQuantity } from '../../src/units/parse.ts';
import { show } from '../../src/units/show.ts';

describe('a price', () => {
  test.each([
    ['55 €', 55, '€'],
    ['€55.50', 55.5, '€'],
    ['€ 55,50', 55.5, '€'],
    ['-$5', -5, '$'],
    ['US$ 1 200', 1200, '$'],
    ['55 EUR', 55, '€'],
    ['£9', 9, '£'],
    ['1 200 kr', 1200, 'kr'],
    ['CHF 62', 62, 'CHF'],
    ['62 ¤', 62, '¤'],
  ])('%s is read', (typed, value, unit) => {
    expect(parseQuantity(typed)).toMatchObject({ value, unit, quantity: 'price' });
  });

  test.each(['$B$4', '€', '5 € each', '$', '€5 off'])('%s is none', (typed) => {
    expect(parseQuantity(typed)).toBeUndefined();
  });
});

describe('what is calculated with prices', () => {
  const cells: Readonly<Record<string, string>> = { A1: '62 €', A2: '34 $', A3: '5 ¤', A4: '2 L' };
  const scope: Scope = {
    functions: functionsByName(catalogue),
    sheet: 's',
    sheetNamed: () => undefined,
    cellsNamed: () => undefined,
    namesOf: () => [],
    typeOf: (_, cell) => {
      const content = readContent(cells[cell] ?? '');
      return content.kind === 'formula' ? { kind: 'unknown' } : typeOfContent(content);
    },
    textOf: (_, cell) => cells[cell] ?? '',
  };
  const compiled = (formula: string) => compile(formula, scope);
  const shown = (formula: string): string => {
    const { type } = compiled(formula);
    if (type.kind !== 'number') return type.kind;
    return show(3, { quantity: type.quantity, dimension: type.dimension, system: 'metric' }).unit;
  };

  test.each([
    ['=A1*2', '€'],
    ['=A1+A3', '€'],
    ['=A3+A1', '€'],
    ['=SUM(A1,A1)', '€'],
    ['=A2-1 $', '$'],
    ['=A3+A3', '¤'],
    ['=BASKET.TOTAL("Coil", 2, A1)', '€'],
    ['=BASKET.TOTAL("Coil", 2, A3, "9 $")', '$'],
    ['=BASKET.TOTAL("Coil", 2, A3)', '¤'],
    ['=QTY("€62")', '€'],
    ['=A1/A1', ''],
    ['=A1/A3', ''],
  ])('%s keeps the sign of its money', (formula, unit) => {
    expect(compiled(formula).findings).toEqual([]);
    expect(shown(formula)).toBe(unit);
  });

  test.each([
    ['=A1+A2', 'A price in $ cannot be added to a price in €: convert one of them.'],
    ['=A1>A2', 'A price in $ cannot be compared with a price in €: convert one of them.'],
    ['=A1+3', 'A plain number cannot be added to a price in €: write 3 €.'],
    [
      '=BASKET.TOTAL("Coil", 2, A1, A2)',
      'BASKET.TOTAL, prices: A1 is a price in € beside one in $, and nothing is converted',
    ],
    [
      '=BASKET.TOTAL("Coil", 2, A1:A2)',
      'BASKET.TOTAL, prices: A2 is a price in $ beside one in €, and nothing is converted',
    ],
    ['=CHECK.AT_MOST(A1, A2, , "Price")', 'CHECK.AT_MOST, good: A2 is a price in $ beside one in €'],
    ['=SUM(A1,A2)', 'SUM cannot mix a price in € and a price in $'],
  ])('%s is refused: nothing is converted', (formula, message) => {
    expect(compiled(formula).findings.map((each) => each.message)).toEqual([expect.stringContaining(message)]);
  });

  test('money that cancels out leaves a plain number, and what is left names it', () => {
    const euro = { money: 1, '€': 1 } as const;
    expect(isPlain(times(euro, { money: 1 }, -1))).toBe(true);
    expect(symbolOf(times(euro, { m: 3 }, -1))).toBe('€/m³');
  });
});

import { expect, test } from 'vitest';
import { plainSymbol, unitAhead, unitNamed, units } from '../../src/units/table.ts';

// NIST Special Publication 811 (2008), Appendix B.8, factors as printed; values from memory.
test.each([
  ['in', '2.54E-02'],
  ['ft', '3.048E-01'],
  ['in²', '6.4516E-04'],
  ['ft²', '9.290304E-02'],
  ['in³', '1.638706E-05'],
  ['ft³', '2.831685E-02'],
  ['L', '1.0E-03'],
  ['oz', '2.834952E-02'],
  ['lb', '4.535924E-01'],
  ['ft/s', '3.048E-01'],
  ['mbar', '1.0E+02'],
  ['°', '1.745329E-02'],
  ['min', '6.0E+01'],
  ['h', '3.6E+03'],
])('one %s is %s in SI', (symbol, printed) => {
  const [mantissa = '', exponent = ''] = printed.split('E');
  const halfADigit = 0.5 * 10 ** (Number(exponent) - (mantissa.split('.')[1]?.length ?? 0));
  expect(Math.abs((unitNamed(symbol)?.si ?? NaN) - Number(printed))).toBeLessThanOrEqual(halfADigit);
});

// The SI Brochure (9th edition, 2019), Table 7: prefixes; from memory.
const prefixes = { G: 1e9, M: 1e6, k: 1e3, h: 1e2, c: 1e-2, m: 1e-3, µ: 1e-6, n: 1e-9, p: 1e-12 };
const powerOf = (symbol: string): number => (symbol.endsWith('²') ? 2 : symbol.endsWith('³') ? 3 : 1);

test('a prefix multiplies its unit as the SI has it', () => {
  const bases = ['Hz', 'm', 'm²', 'm³', 'Ω', 'H', 'F', 'V', 'A', 'W', 'Pa', 's', 'L', 'g', 'm/N', 'g/s'];
  let count = 0;
  for (const base of bases) {
    const one = unitNamed(base);
    for (const [prefix, factor] of Object.entries(prefixes)) {
      const unit = units.find(({ symbol }) => symbol === prefix + base);
      if (!unit || !one || (prefix + base === 'min' && base === 'in')) continue;
      expect(unit.si / (one.si * factor ** powerOf(base)), unit.symbol).toBeCloseTo(1, 12);
      count++;
    }
  }
  expect(count).toBeGreaterThan(25);
});

test('no spelling stands for two units', () => {
  const seen = new Map<string, string>();
  for (const { symbol, also = [] } of units) {
    for (const spelling of new Set([symbol, ...also].map(plainSymbol))) {
      expect(`${spelling} of ${seen.get(spelling) ?? symbol}`).toBe(`${spelling} of ${symbol}`);
      seen.set(spelling, symbol);
    }
  }
});

test.each([
  ['cm^2*2', 'cm^2'],
  ['cm³', 'cm³'],
  ['cu ft)', 'cu ft'],
  ['mm p-p+1', 'mm p-p'],
  ['mm–B4', 'mm'],
  ['m/s', 'm/s'],
  ['m / s', 'm'],
  ['dB/oct', 'dB/oct'],
  ['m^25', 'm'],
  ['m^2.5', 'm'],
  ['V^2', 'V'],
  ['L4', undefined],
  ['min(', undefined],
  ['Litro', undefined],
  ['%', undefined],
  ['"', undefined],
  ['', undefined],
])('“%s” begins with the unit %s', (text, unit) => {
  expect(unitAhead(text)).toBe(unit);
});

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parseQuantity } from '../../src/units/parse.ts';

// Inch and pound: exact by international agreement of 1959 (0.0254 m, 0.45359237 kg); the others by their SI prefix.
test.each([
  ['0.2 ft3', 0.2 * 0.3048 ** 3, 'volume'],
  ['12,1 L', 0.0121, 'volume'],
  ['12.1L', 0.0121, 'volume'],
  ['85 cm2', 0.0085, 'area'],
  ['85 cm²', 0.0085, 'area'],
  ['11 mm p-p', 0.0055, 'travel'],
  ['1 900 Hz', 1900, 'frequency'],
  ['1\u2009900 Hz', 1900, 'frequency'],
  ['2.15 kHz', 2150, 'frequency'],
  ['\u22121.5 dB', -1.5, 'level'],
  ['10 μF', 1e-5, 'capacitance'],
  ['10 uF', 1e-5, 'capacitance'],
  ['20 °C', 293.15, 'temperature'],
  ['68 °F', 293.15, 'temperature'],
  ['3 lb', 3 * 0.45359237, 'mass'],
  ['1E-6', 1e-6, 'ratio'],
  ['1.2·10^\u22126 H', 1.2e-6, 'inductance'],
  ['1.2×10⁻³ H', 1.2e-3, 'inductance'],
  ['5·10^3', 5000, 'ratio'],
  ['5 ×', 5, 'ratio'],
  ['12,345 L', 0.012345, 'volume'],
  ['1,900 Hz', 1.9, 'frequency'],
  ['1 234 567,8 Hz', 1234567.8, 'frequency'],
  ['1\u202F900 Hz', 1900, 'frequency'],
  ['5 cm^2', 5e-4, 'area'],
  ['5 in^3', 5 * 0.0254 ** 3, 'volume'],
  ['0.5 cu ft', 0.5 * 0.3048 ** 3, 'volume'],
  ['0.5 cu. ft.', 0.5 * 0.3048 ** 3, 'volume'],
  ['5 in.', 0.127, 'length'],
  ['5"', 0.127, 'length'],
  ['11 mm p\u2013p', 0.0055, 'travel'],
  ['11 mm peak-to-peak', 0.0055, 'travel'],
  ['8 \u2126', 8, 'resistance'],
  ['8 \u03A9', 8, 'resistance'],
  ['4.7 k\u2126', 4700, 'resistance'],
  ['10 uf', 1e-5, 'capacitance'],
  ['7 T∙m', 7, 'forceFactor'],
  ['7 N/A', 7, 'forceFactor'],
  ['45˚', Math.PI / 4, 'angle'],
  ['20 º C', 293.15, 'temperature'],
  ['\u22125 °C', 268.15, 'temperature'],
  ['50 %', 0.5, 'ratio'],
  ['50 per cent', 0.5, 'ratio'],
  ['38\u200B Hz', 38, 'frequency'],
  ['\uFEFF38\u2060Hz', 38, 'frequency'],
  [',5', 0.5, 'ratio'],
  ['+5.', 5, 'ratio'],
  ['1/4 in', 0.25 * 0.0254, 'length'],
  ['3/4"', 0.75 * 0.0254, 'length'],
  ['1 1/2 in', 1.5 * 0.0254, 'length'],
  ['1½ in', 1.5 * 0.0254, 'length'],
  ['⅝″', 0.625 * 0.0254, 'length'],
  ['1 63/64 in', (127 / 64) * 0.0254, 'length'],
  ['-1/2 in', -0.5 * 0.0254, 'length'],
  ['1/3 oct', 1 / 3, 'octaves'],
  ['1-1/2"', 1.5 * 0.0254, 'length'],
  ['1\u20441 in', 0.0254, 'length'],
  ['1/4 λ', 0.25, 'ratio'],
  ['±5.5 mm', 0.0055, 'length'],
  ['+/- 5.5 mm one-way', 0.0055, 'length'],
  ['0.43" p-p', (0.43 / 2) * 0.0254, 'travel'],
  ['11 mm P-P', 0.0055, 'travel'],
  ['- 3 dB', -3, 'level'],
  ['\u20143 dB', -3, 'level'],
  ['24 dB per octave', 24, 'slope'],
  ['85 dB(A)', 85, 'level'],
  ['8 x 10^-4 m/N', 8e-4, 'compliance'],
  ['1.2 N.s/m', 1.2, 'mechanicalResistance'],
  ['12.1 LITERS', 0.0121, 'volume'],
  ['38 Hertz', 38, 'frequency'],
  ['2 KΩ', 2000, 'resistance'],
  ['2 Mohm', 2e6, 'resistance'],
  ['2 mohm', 0.002, 'resistance'],
  ['20 C', 293.15, 'temperature'],
  ['100 W rms', 100, 'power'],
  ['\uFF13\uFF18 \u3390', 38, 'frequency'],
  ['85 \u33A0', 85e-4, 'area'],
  ['2 1/6 octaves', 13 / 6, 'octaves'],
  ["6'", 6 * 0.3048, 'length'],
  ['6′', 6 * 0.3048, 'length'],
  ['\u20103 dB', -3, 'level'],
  ['\uFF0D3 dB', -3, 'level'],
  ['1\u200A900\u3000Hz', 1900, 'frequency'],
  ['11 mm p\uFE63p', 0.0055, 'travel'],
])('reads %s', (text, value, quantity) => {
  const read = parseQuantity(text);
  expect(read?.value).toBeCloseTo(value, 12);
  expect(read?.quantity).toBe(quantity);
});

test.each([
  '12 Ll',
  '6k8',
  '1/2/2024',
  '3.4.5',
  'W-165 A',
  '1,900,000 Hz',
  '1.234,5',
  '19 00',
  '1 9000',
  '(5)',
  '',
  '5-6 Hz',
  '5 to 6',
  '5 k',
  '5 µ',
  '--5',
  '5e',
  '0x10',
  '1e999',
  '1e-999',
  'Infinity',
  'NaN',
  '1/2',
  '1/0 in',
  '4/8 ohm',
  '½',
  '5 m/s²',
  '5 Hz.',
  '5 x 10',
  '2 MOHM',
  '± 10 % of 5 mm',
])('leaves “%s” a text', (text) => {
  expect(parseQuantity(text)).toBeUndefined();
});

test.each(['-0', '\u22120.00', '-0 Hz', '0e-999'])('%s is a zero without a sign', (text) => {
  expect(Object.is(parseQuantity(text)?.value, 0)).toBe(true);
});

test.each([
  ['12.10 L', 4],
  ['0.0121', 3],
  ['1 900', 4],
  ['1.20·10^3', 3],
  ['0.00', 1],
  ['007', 1],
  ['1/3 oct', 5],
  ['3/16 in', 4],
])('%s has %d digits', (text, digits) => {
  expect(parseQuantity(text)?.digits).toBe(digits);
});

test('whatever is typed, nothing is thrown, and what is read is finite', () => {
  const piece = fc.constantFrom(...'0123456789.,-+ eE^·×µΩ°%"\u202F\u2212³Hzmkin/p'.split(''));
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string({ unit: 'binary' }),
        fc.array(piece).map((parts) => parts.join('')),
      ),
      (text) => {
        const read = parseQuantity(text);
        expect(read === undefined || (Number.isFinite(read.value) && read.digits > 0)).toBe(true);
      },
    ),
    { numRuns: 3000 },
  );
});

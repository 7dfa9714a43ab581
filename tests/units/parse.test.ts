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
])('reads %s', (text, value, quantity) => {
  const read = parseQuantity(text);
  expect(read?.value).toBeCloseTo(value, 12);
  expect(read?.quantity).toBe(quantity);
});

test.each(['12 Ll', '6k8', '1/2/2024', '3.4.5', 'W-165 A', '1,900,000 Hz', '(5)', ''])('leaves “%s” a text', (text) => {
  expect(parseQuantity(text)).toBeUndefined();
});

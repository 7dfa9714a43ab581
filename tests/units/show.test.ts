import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { quantities, type QuantityName } from '../../functions/quantities.ts';
import { margin, measured, say } from '../../functions/values/say.ts';
import { withUnit } from '../../src/document/complete.ts';
import { defaultUnit } from '../../src/units/defaults.ts';
import { parseQuantity } from '../../src/units/parse.ts';
import { formatNumber, show, speak, type Shown, type ShowOptions } from '../../src/units/show.ts';
import { unitNamed, units } from '../../src/units/table.ts';

const line = ({ number, unit }: Shown): string => `${number} ${unit}`.trim();
const shown = (value: number, options: Partial<ShowOptions> = {}): string =>
  line(show(value, { system: 'metric', ...options }));
const names = Object.keys(quantities) as QuantityName[];

/** Numbers of every size that turns up, of both signs, and zero. */
const amount = fc
  .tuple(fc.double({ min: 1, max: 10, noNaN: true }), fc.integer({ min: -9, max: 9 }), fc.constantFrom(-1, 0, 1))
  .map(([mantissa, exponent, sign]) => sign * mantissa * 10 ** exponent);

/** Half of what the last digit shown stands for: four digits are shown, or so many decimals. */
function halfADigit(number: number, quantity: QuantityName, unit: string): number {
  const decimals: Partial<Record<QuantityName, number>> = { level: 1, slope: 1, octaves: 2, price: 2 };
  const fixed = quantity === 'angle' && unit === '°' ? 1 : decimals[quantity];
  const least = fixed === undefined ? (unit === 'Hz' && Math.abs(number) >= 100 ? 0.5 : 0) : 0.5 * 10 ** -fixed;
  return Math.max(least, Math.abs(number) * 5e-4) * (1 + 1e-9) + 1e-9;
}

describe('what is shown can be typed again', () => {
  test.each(units.map((unit) => [unit.symbol, unit] as const))('in %s', (symbol, unit) => {
    const system = unit.system ?? 'metric';
    fc.assert(
      fc.property(amount, (number) => {
        const value = number * unit.si + (unit.offset ?? 0);
        const read = parseQuantity(line(show(value, { quantity: unit.quantity, unit: symbol, system })));
        expect(read?.unit).toBe(symbol);
        const again = ((read?.value ?? NaN) - (unit.offset ?? 0)) / unit.si;
        expect(Math.abs(again - number)).toBeLessThanOrEqual(halfADigit(number, unit.quantity, symbol));
      }),
    );
  });

  test.each(names.flatMap((name) => (['metric', 'imperial'] as const).map((system) => [name, system] as const)))(
    'a %s in the %s system, in a unit of its own choice',
    (quantity, system) => {
      fc.assert(
        fc.property(amount, (value) => {
          const read = parseQuantity(line(show(value, { quantity, system })));
          const unit = unitNamed(read?.unit ?? '') ?? { si: 1, offset: 0, symbol: '' };
          const off = Math.abs((read?.value ?? NaN) - value) / unit.si;
          const number = (value - (unit.offset ?? 0)) / unit.si;
          expect(off).toBeLessThanOrEqual(halfADigit(number, quantity, unit.symbol));
        }),
      );
    },
  );

  test('a typed number keeps value and digits, in every unit', () => {
    const typed = fc.record({
      sign: fc.constantFrom('', '-', '\u2212'),
      whole: fc.integer({ min: 0, max: 99_999 }),
      decimals: fc.option(fc.stringMatching(/^\d{1,6}$/), { nil: undefined }),
      mark: fc.constantFrom('.', ','),
      unit: fc.constantFrom(...units),
    });
    fc.assert(
      fc.property(typed, ({ sign, whole, decimals, mark, unit }) => {
        const text = `${sign}${String(whole)}${decimals === undefined ? '' : mark + decimals} ${unit.symbol}`;
        const read = parseQuantity(text);
        if (!read) throw new Error(`${text} is not read`);
        const again = parseQuantity(
          shown(read.value, {
            quantity: read.quantity,
            unit: read.unit,
            digits: read.digits,
            system: unit.system ?? 'metric',
          }),
        );
        const size = Math.abs(read.value - (unit.offset ?? 0)) + (unit.offset ?? 0);
        expect(Math.abs((again?.value ?? NaN) - read.value)).toBeLessThanOrEqual(1e-11 * size);
        if (read.value !== (unit.offset ?? 0)) expect(again?.digits).toBe(read.digits);
      }),
      { numRuns: 2000 },
    );
  });

  test.each(names.filter((name) => defaultUnit(name, 'metric') !== ''))(
    'a bare number over a %s takes its unit',
    (quantity) => {
      for (const system of ['metric', 'imperial'] as const) {
        for (const value of [1e-7, 0.004, 0.7, 12, 340, 5e4, 3e8]) {
          const { unit } = show(value, { quantity, system });
          expect(parseQuantity(withUnit('85', unit))?.unit).toBe(unit);
        }
      }
    },
  );
});

describe('a number', () => {
  test.each([
    [0.000_05, { quantity: 'length' }, '0.05 mm'],
    [0.009_999_9, { quantity: 'volume' }, '10 L'],
    [99_999.6, { quantity: 'frequency' }, '100\u2009000 Hz'],
    [100_000, { quantity: 'frequency' }, '100 kHz'],
    [-0.04, { quantity: 'level' }, '0.0 dB'],
    [-0, { quantity: 'length' }, '0 mm'],
    [-3, { quantity: 'level' }, '\u22123.0 dB'],
    [273.15, { quantity: 'temperature' }, '0 °C'],
    [273.154, { quantity: 'temperature' }, '0.004 °C'],
    [255.372_222_222_222_2, { quantity: 'temperature', system: 'imperial' }, '0 °F'],
    [0.5, { quantity: 'angle', unit: 'rad' }, '0.5 rad'],
    [Math.PI / 4, { quantity: 'angle' }, '45.0 °'],
    [1e-19, { quantity: 'capacitance', unit: 'F', digits: 1 }, '1·10^\u221219 F'],
    [1e25, { digits: 2 }, '1.0·10^25'],
    [NaN, { quantity: 'level' }, 'no number dB'],
    [Infinity, { quantity: 'frequency' }, '∞ Hz'],
    [-Infinity, { quantity: 'price' }, '\u2212∞ ¤'],
    [Infinity, { digits: 3 }, '∞'],
    [12, { quantity: 'price' }, '12 ¤'],
    [12.5, { quantity: 'price' }, '12.50 ¤'],
    [0.028_316_846_592, { quantity: 'volume', system: 'imperial' }, '1 ft³'],
    [0.0121, { quantity: 'volume', unit: 'L', system: 'imperial' }, '0.4273 ft³'],
    [2, { dimension: { m: 1.5 } }, '2 m^1.5'],
    [2, { dimension: { kg: 1, m: -4, s: -1 } }, '2 kg/m⁴·s'],
    [7.574, { quantity: 'mass' }, '7.574 kg'],
    [0.135, { quantity: 'mass' }, '135 g'],
  ] as const)('%d with %j is shown as %s', (value, options, text) => {
    expect(shown(value, options)).toBe(text);
  });

  test.each([
    [9.999_96, '10'],
    [0.000_099_999_99, '1·10^\u22124'],
    [0.0001, '0.0001'],
    [9_999_999.7, '10\u2009000\u2009000'],
    [12_345_678, '1.235·10^7'],
    [-1234.5, '\u22121\u2009235'],
  ])('%d to four digits is %s', (number, text) => {
    expect(formatNumber(number, 4)).toBe(text);
  });
});

test('a sentence says its numbers in the units of the reader', () => {
  const sentence = say`The box holds ${measured(0.0121, 'volume')} and leans ${measured(Math.PI / 6, 'angle')}.`;
  expect(speak(sentence, 'metric')).toBe('The box holds 12.1 L and leans 30.0°.');
  expect(speak(sentence, 'imperial')).toBe('The box holds 0.4273 ft³ and leans 30.0°.');
});

test('a price in a sentence has the sign of its money, and no cents where it has none', () => {
  const sentence = say`${measured(380 * 1.1, 'price', '€')}, ${margin(12.5, 'price', 'kr')} over ${measured(9, 'price')}.`;
  expect(speak(sentence, 'metric')).toBe('418 €, 12.50 kr over 9 ¤.');
});

test.each([
  [1e-9, 'volume', '0.001 mL'],
  [2e-8, 'volume', '0.02 mL'],
  [0.0121, 'volume', '12.1 L'],
] as const)('%d m³ takes the unit that leaves the fewest noughts', (value, quantity, expected) => {
  expect(shown(value, { quantity }).replaceAll(/\s/g, ' ')).toBe(expected);
});

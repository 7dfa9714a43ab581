import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  coilChoices,
  coilLength,
  coilPrice,
  coilQuality,
  coilResistance,
  coilSide,
  coilTurns,
  coilWeight,
  coilWire,
} from '../../../functions/electrical/coil.ts';
import { coilInductance, coilTurnsOn } from '../../../functions/electrical/winding.ts';
import {
  cableDamping,
  cableLoss,
  cableResistance,
  wireArea,
  wireDiameter,
  wireOhms,
} from '../../../functions/electrical/wire.ts';
import type { TableRecord } from '../../../functions/values/table.ts';
import { agrees, input, references, type Reference } from '../../references/read.ts';

const plain = { quantity: 'ratio' } as const;
const room = 293.15;
const diameter = (gauge: number): number => wireDiameter.compute({ gauge }, plain) as number;
const area = (gauge: number): number => wireArea.compute({ diameter: diameter(gauge) }, plain) as number;
const number = (found: unknown): number => found as number;

describe('wire', () => {
  const gauges = references('coils-and-wire', 'awg');
  test.each(gauges.filter((each) => each.id.endsWith('-d')))('$id', (each) => agrees(diameter(input(each, 'n')), each));
  test.each([...gauges.filter((each) => each.id.endsWith('-r')), ...references('coils-and-wire', 'pub-awg')])(
    '$id',
    (each) =>
      agrees(wireOhms.compute({ length: 1, diameter: diameter(input(each, 'n')), temperature: room }, plain), each),
  );
  test.each(references('coils-and-wire', 'copper-'))('$id', (each) => {
    const at = (celsius: number): number =>
      number(wireOhms.compute({ length: 5, diameter: 1e-3, temperature: celsius + 273.15 }, plain));
    agrees(at(input(each, 't')) / at(20), each);
  });
  test.each(references('coils-and-wire', 'mm2-'))('$id', (each) =>
    agrees(number(cableResistance.compute({ length: 1, area: input(each, 'A') / 1e6 }, plain)) / 2, each),
  );
  const cable = (each: Reference) => ({
    length: input(each, 'one_way'),
    area: area(input(each, 'gauge')),
    ohms: input(each, 'load'),
  });
  test.each(references('coils-and-wire', 'cable-r'))('$id', (each) =>
    agrees(cableResistance.compute(cable(each), plain), each),
  );
  test.each(references('coils-and-wire', 'cable-db'))('$id', (each) =>
    agrees(cableLoss.compute(cable(each), plain), each),
  );
  test.each(references('coils-and-wire', 'cable-df'))('$id', (each) =>
    agrees(cableDamping.compute(cable(each), plain), each),
  );
});

/** Mutual inductance of two coaxial rings, by the elliptic integrals of Maxwell through arithmetic-geometric means. */
function rings(a: number, b: number, apart: number): number {
  const k2 = (4 * a * b) / ((a + b) ** 2 + apart ** 2);
  let [x, y, sum, power] = [1, Math.sqrt(1 - k2), k2 / 2, 0.5];
  for (let step = 0; step < 40; step += 1) {
    const c = (x - y) / 2;
    [x, y] = [(x + y) / 2, Math.sqrt(x * y)];
    power *= 2;
    sum += power * c * c;
  }
  const first = Math.PI / (2 * x);
  const second = first * (1 - sum);
  const k = Math.sqrt(k2);
  return 4e-7 * Math.PI * Math.sqrt(a * b) * ((2 / k - k) * first - (2 / k) * second);
}

/** A winding as square cells of current; each cell's own share by the geometric mean distance of a square, 0.447·side. */
function summed(radius: number, width: number, depth: number, cells: number): number {
  const place = (size: number, at: number): number => ((at + 0.5) / cells - 0.5) * size;
  const gmd = 0.2235 * (width / cells + depth / cells);
  let total = 0;
  for (let i = 0; i < cells; i += 1)
    for (let j = 0; j < cells; j += 1)
      for (let m = 0; m < cells; m += 1)
        for (let n = 0; n < cells; n += 1) {
          const [a, b] = [radius + place(depth, i), radius + place(depth, m)];
          const apart = Math.abs(place(width, j) - place(width, n));
          total += rings(a, b, i === m && j === n ? gmd : apart);
        }
  return total / cells ** 4;
}

describe('coils', () => {
  const sized = (each: Reference) => ({
    core: 2 * input(each, 'mean_radius') - input(each, 'depth'),
    width: input(each, 'length'),
    depth: input(each, 'depth'),
  });
  test.each(references('coils-and-wire', 'wheeler-'))('$id', (each) => {
    const turns = input(each, 'N');
    agrees(coilInductance.compute({ ...sized(each), turns }, plain), each);
    const inductance = each.expected.value as number;
    expect(coilTurnsOn.compute({ ...sized(each), inductance }, plain)).toBeCloseTo(turns, 3);
  });
  test.each(references('coils-and-wire', 'exact-'))(
    '$id, and the formula for many layers within 1 %% of it',
    (each) => {
      const [radius, width, depth] = [input(each, 'mean_radius'), input(each, 'length'), input(each, 'depth')];
      agrees(input(each, 'N') ** 2 * summed(radius, width, depth, 10), each);
      const formula = number(coilInductance.compute({ ...sized(each), turns: input(each, 'N') }, plain));
      expect(Math.abs(formula / (each.expected.value as number) - 1)).toBeLessThan(0.01);
    },
  );
  test.each(references('coils-and-wire', 'dcr-'))('$id', (each) => {
    const length = 2 * Math.PI * input(each, 'mean_radius') * input(each, 'N');
    agrees(wireOhms.compute({ length, diameter: diameter(input(each, 'gauge')), temperature: room }, plain), each);
  });
  test.each(references('coils-and-wire', 'brooksN'))('$id', (each) => {
    const turns = each.expected.value as number;
    const wire = input(each, 'side') / Math.sqrt(turns);
    const given = { inductance: input(each, 'L'), wire, packing: 1 };
    agrees(coilTurns.compute(given, plain), each);
    expect(number(coilSide.compute(given, plain)) / input(each, 'side')).toBeCloseTo(1, 6);
  });
  test.each(references('coils-and-wire', 'brooks').slice(0, 1))('$id, summed from rings', (each) => {
    agrees(summed(1.5, 1, 1, 12) / 1.5, each);
    const given = { inductance: 1e-3, wire: 1e-3, packing: 1.1 };
    const [turns, side] = [number(coilTurns.compute(given, plain)), number(coilSide.compute(given, plain))];
    agrees(given.inductance / (1.5 * side * turns ** 2), each);
  });
  test.each(references('coils-and-wire', 'coilQ'))('$id', (each) => {
    const given = { inductance: input(each, 'L'), resistance: input(each, 'DCR'), frequency: input(each, 'f') };
    agrees(coilQuality.compute(given, plain), each);
  });
  test('wire, weight, price and resistance belong together, and the wire comes back from the resistance', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-5, max: 0.02, noNaN: true }),
        fc.double({ min: 3e-4, max: 3e-3, noNaN: true }),
        fc.double({ min: 1, max: 1.4, noNaN: true }),
        (inductance, wire, packing) => {
          const given = { inductance, wire, packing };
          const length = number(coilLength.compute(given, plain));
          const resistance = number(coilResistance.compute(given, plain));
          expect(
            resistance / number(wireOhms.compute({ length, diameter: wire, temperature: room }, plain)),
          ).toBeCloseTo(1, 9);
          const weight = number(coilWeight.compute(given, plain));
          expect(weight / (8890 * (Math.PI / 4) * wire ** 2 * length)).toBeCloseTo(1, 9);
          expect(number(coilPrice.compute({ ...given, kilogram: 30 }, plain)) / weight).toBeCloseTo(30, 9);
          expect(number(coilWire.compute({ inductance, resistance, packing }, plain)) / wire).toBeCloseTo(1, 9);
          // Thicker wire has less resistance and weighs more.
          const thicker = { ...given, wire: wire * 1.3 };
          expect(number(coilResistance.compute(thicker, plain))).toBeLessThan(resistance);
          expect(number(coilWeight.compute(thicker, plain))).toBeGreaterThan(weight);
        },
      ),
    );
  });
  test('the table says what the single functions say', () => {
    const table = coilChoices.compute({ inductance: 1e-3, kilogram: 30, packing: 1.1 }, plain) as TableRecord;
    for (const row of table.rows) {
      const given = { inductance: 1e-3, wire: row[0] as number, packing: 1.1 };
      expect(row[1]).toBe(coilTurns.compute(given, plain));
      expect(row[5]).toBe(coilResistance.compute(given, plain));
      expect(row[7]).toBe(coilPrice.compute({ ...given, kilogram: 30 }, plain));
    }
  });
});

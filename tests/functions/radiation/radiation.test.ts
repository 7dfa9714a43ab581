import { describe, expect, test } from 'vitest';
import { besselJ1, pistonFactor } from '../../../functions/numeric/bessel.ts';
import { edgeFrequency, edgeStep } from '../../../functions/radiation/edge.ts';
import { pistonByDiameter, pistonNarrowing } from '../../../functions/radiation/narrowing.ts';
import { pistonLoss, pistonOffAxis } from '../../../functions/radiation/piston.ts';
import { edgeShelfInductance, edgeShelfResistance } from '../../../functions/radiation/shelf.ts';
import { spacingBetween, spacingLimit, spacingNull, spacingWavelengths } from '../../../functions/radiation/spacing.ts';
import { frequencies } from '../../../functions/values/grid.ts';
import { readAt } from '../../../functions/values/interpolate.ts';
import type { Curve } from '../../../functions/values/curve.ts';
import { agrees, input, references } from '../../references/read.ts';

const plain = { quantity: 'ratio' } as const;
const degrees = (value: number): number => (value * Math.PI) / 180;
const c = 343.2;

describe('J1', () => {
  // Abramowitz & Stegun, table 9.1, ten decimals; half a unit of the last.
  test.each([
    [1, 0.4400505857],
    [2, 0.5767248078],
    [3, 0.3390589585],
    [5, -0.3275791376],
    [10, 0.0434727462],
  ])('J1(%d) as printed', (x, printed) => {
    expect(Math.abs(besselJ1(x) - printed)).toBeLessThanOrEqual(0.5e-10);
  });
  test.each(references('special-functions', 'J1-'))('$id', (reference) => {
    agrees(besselJ1(input(reference, 'x')), reference);
  });
  test('the piston factor is the mean of cos(x·y) over the disc', () => {
    for (const x of [1e-5, 0.3, 1.6, 3.5, 7]) {
      const count = 20000;
      let mean = 0;
      for (let index = 0; index < count; index += 1) {
        const angle = ((index + 0.5) / count) * Math.PI;
        mean += (Math.cos(x * Math.cos(angle)) * Math.sin(angle) ** 2 * 2) / count;
      }
      expect(pistonFactor(x)).toBeCloseTo(mean, 9);
    }
  });
});

describe('pistons', () => {
  test.each(references('piston-radiation', 'D-'))('off the axis, $id', (reference) => {
    const frequency = (input(reference, 'ka') * c) / (2 * Math.PI * 0.05);
    const loss = pistonLoss.compute(
      { sd: Math.PI * 0.05 ** 2, frequency, angle: degrees(input(reference, 'theta')) },
      plain,
    ) as number;
    agrees(-loss, reference);
  });
  test.each(references('piston-radiation', 'f6-'))('6 dB down, $id', (reference) => {
    const sd = Math.PI * input(reference, 'a') ** 2;
    agrees(pistonNarrowing.compute({ sd, angle: degrees(input(reference, 'theta')), loss: 6 }, plain), reference);
  });
  test.each(references('piston-radiation', 'lamD-'))('wavelength is diameter, $id', (reference) => {
    agrees(pistonByDiameter.compute({ sd: input(reference, 'Sd') }, plain), reference);
  });
  test('narrowing is where the loss is reached, and the curve agrees with the loss', () => {
    const frequency = pistonNarrowing.compute({ sd: 0.0132, angle: degrees(45), loss: 3 }, plain) as number;
    expect(pistonLoss.compute({ sd: 0.0132, frequency, angle: degrees(45) }, plain)).toBeCloseTo(3, 9);
    const curve = pistonOffAxis.compute({ sd: 0.0132, angle: degrees(45) }, plain) as Curve;
    expect(readAt(curve.y, frequency)).toBeCloseTo(-3, 2);
    expect(Math.min(...curve.y)).toBeGreaterThanOrEqual(-60);
    expect(Math.max(...curve.y)).toBeLessThanOrEqual(0);
  });
});

describe('spacing', () => {
  test.each(references('combining', 'lobenull'))('$id', (reference) => {
    const angle = spacingNull.compute(
      { spacing: input(reference, 'spacing'), frequency: input(reference, 'f') },
      plain,
    );
    agrees(((angle as number) * 180) / Math.PI, reference);
  });
  test('two points in step cancel at the null, and at one wavelength it stands at 30°', () => {
    const spacing = spacingBetween.compute({ flangeA: 0.166, flangeB: 0.104, gap: 0.004 }, plain) as number;
    expect(spacing).toBeCloseTo(0.139, 12);
    const frequency = spacingLimit.compute({ spacing, wavelengths: 1 }, plain) as number;
    expect(frequency).toBeCloseTo(2469, 0);
    expect(spacingWavelengths.compute({ spacing, frequency }, plain)).toBeCloseTo(1, 12);
    const angle = spacingNull.compute({ spacing, frequency }, plain) as number;
    expect(angle).toBeCloseTo(Math.PI / 6, 12);
    const path = (2 * Math.PI * frequency * spacing * Math.sin(angle)) / c;
    expect(Math.hypot(1 + Math.cos(path), Math.sin(path))).toBeLessThan(1e-9);
  });
  test('closer than half a wavelength there is no null', () => {
    expect(spacingNull.compute({ spacing: 0.05, frequency: 500 }, plain)).toBe(Math.PI / 2);
  });
});

describe('the edge step', () => {
  test('published frequencies', () => {
    for (const reference of references('baffle-step', 'f3-')) {
      const width = reference.id === 'f3-10in' ? 0.254 : input(reference, 'W');
      agrees(edgeFrequency.compute({ width }, plain), reference);
    }
  });
  test.each([...references('baffle-step', 'shelf-'), ...references('baffle-step', 'shelfph-')])('$id', (reference) => {
    // The width puts the wanted ratio on a point of the grid.
    const place = 240;
    const middle = frequencies[place]! / input(reference, 'f/f3');
    const curve = edgeStep.compute({ width: 115 / middle }, plain) as Curve;
    const phase = (curve.phase![place]! * 180) / Math.PI;
    agrees(reference.id.startsWith('shelfph') ? phase : curve.y[place], reference);
  });
  test('a panel of 220 mm with 4.5 dB on 6.4 Ω takes 4.3 Ω and 1.02 mH', () => {
    const given = { width: 0.22, makeUp: 4.5, ohms: 6.4 };
    const resistor = edgeShelfResistance.compute(given, plain) as number;
    const coil = edgeShelfInductance.compute(given, plain) as number;
    expect(resistor).toBeCloseTo(4.3, 1);
    expect(coil * 1000).toBeCloseTo(1.02, 2);
    // Solved as a circuit: half of the 4.5 dB is lost at the step frequency.
    const reactance = 2 * Math.PI * (115 / 0.22) * coil;
    const square = resistor ** 2 + reactance ** 2;
    const re = 6.4 + (resistor * reactance ** 2) / square;
    const im = (resistor ** 2 * reactance) / square;
    expect(20 * Math.log10(Math.hypot(re, im) / 6.4)).toBeCloseTo(2.25, 9);
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { soundSpeed } from '../../../functions/air.ts';
import { firstZeroOfJ1, pistonArgument, pistonFactor } from '../../../functions/numeric/bessel.ts';
import { struveH1 } from '../../../functions/numeric/struve.ts';
import { agrees, input, references } from '../../references/read.ts';
import { curve, degrees, number, refusal } from './call.ts';

const c = soundSpeed;
/** A piston of 50 mm radius and the frequency that gives it a size. */
const sd = Math.PI * 0.05 ** 2;
const frequencyFor = (ka: number): number => (ka * c) / (2 * Math.PI * 0.05);
const sized = (reference: Parameters<typeof input>[0]): { sd: number; frequency: number } => ({
  sd,
  frequency: frequencyFor(input(reference, 'ka')),
});

describe('Struve H1', () => {
  test.each(references('special-functions', 'H1-').filter(({ id }) => id !== 'H1-limit'))('$id', (reference) => {
    agrees(struveH1(input(reference, 'x')), reference);
  });
  test.each([...references('special-functions', 'pub-H1'), ...references('special-functions', 'H1-limit')])(
    'published, $id',
    (reference) => {
      const tolerance = reference.id === 'H1-limit' ? 1e-8 : 0.5e-10;
      expect(Math.abs(struveH1(input(reference, 'x')) - (reference.expected.value as number))).toBeLessThan(tolerance);
    },
  );
  test('is its own integral, (2x/π)·∫ sin(x·cos θ)·sin²θ dθ over a quarter turn', () => {
    for (const x of [0.3, 1.9999, 2, 5, 17, 60]) {
      // Simpson's rule.
      const count = 20_000;
      const step = Math.PI / 2 / count;
      const at = (theta: number): number => Math.sin(x * Math.cos(theta)) * Math.sin(theta) ** 2;
      let sum = at(0) + at(Math.PI / 2);
      for (let index = 1; index < count; index += 1) sum += (index % 2 === 1 ? 4 : 2) * at(index * step);
      expect(struveH1(x)).toBeCloseTo(((2 * x) / Math.PI) * sum * (step / 3), 10);
    }
  });
  test('has no step where its two forms meet', () => {
    expect(Math.abs(struveH1(2) - struveH1(2 - 1e-12))).toBeLessThan(1e-11);
  });
});

describe('the main lobe', () => {
  test.each(references('piston-radiation', 'u-'))('$id', (reference) => {
    const decibels =
      reference.id === 'u-3.01' ? 10 * Math.log10(2) : reference.id === 'u-6.02' ? 20 * Math.log10(2) : 6;
    agrees(pistonArgument(10 ** (-decibels / 20)), reference);
  });
  test('J1 returns to zero', () => {
    const [zero] = references('special-functions', 'zero-j11');
    agrees(firstZeroOfJ1, { ...zero!, tolerance: { absolute: 0.5e-8 } });
  });
  test.each(references('piston-radiation', 'null-'))('$id', (reference) => {
    agrees((number('PISTON.NULL', sized(reference)) * 180) / Math.PI, reference);
  });
  test('a small piston has no null, and says from where on', () => {
    expect(refusal('PISTON.NULL', { sd, frequency: 500 })).toContain(frequencyFor(firstZeroOfJ1).toFixed(3));
  });
  test('its width ends where the loss is reached, and is half a turn when it never is', () => {
    const frequency = frequencyFor(4);
    const width = number('PISTON.WIDTH', { sd, frequency, loss: 6 });
    expect(number('PISTON.LOSS', { sd, frequency, angle: width / 2 })).toBeCloseTo(6, 9);
    expect(number('PISTON.WIDTH', { sd, frequency: frequencyFor(1), loss: 6 })).toBeCloseTo(Math.PI, 12);
  });
});

describe('narrowing by ka', () => {
  test.each([...references('piston-radiation', 'ka1-'), ...references('piston-radiation', 'ka2-')])(
    '$id',
    (reference) => {
      const ka = reference.id.startsWith('ka1') ? 1 : 2;
      const frequency = number('PISTON.NARROWING_BY_KA', { sd: input(reference, 'Sd'), ka });
      agrees(frequency, reference);
      expect(number('PISTON.KA', { sd: input(reference, 'Sd'), frequency })).toBeCloseTo(ka, 12);
    },
  );
  test('the three rules lie a factor π apart, the strict one at half a decibel at 45°', () => {
    const by = (ka: number): number => number('PISTON.NARROWING_BY_KA', { sd, ka });
    expect(number('PISTON.NARROWING_BY_DIAMETER', { sd }) / by(1)).toBeCloseTo(Math.PI, 12);
    const loss = (frequency: number): number => number('PISTON.LOSS', { sd, frequency, angle: degrees(45) });
    expect(loss(by(1))).toBeCloseTo(0.55, 2);
    expect(loss(by(2))).toBeCloseTo(2.27, 2);
    expect(loss(by(Math.PI))).toBeCloseTo(6.06, 2);
  });
  test.each(references('trade-rules', 'beam'))('$id', (reference) => {
    const area = (Math.PI * input(reference, 'd') ** 2) / 4;
    const frequency = number('PISTON.NARROWING_BY_DIAMETER', { sd: area });
    if (reference.id.startsWith('beam6'))
      agrees(-number('PISTON.LOSS', { sd: area, frequency, angle: degrees(45) }), reference);
    else agrees(frequency, reference);
  });
});

describe('directivity', () => {
  test.each([...references('piston-radiation', 'DI-')])('$id', (reference) => {
    agrees(number('PISTON.DIRECTIVITY', sized(reference)), reference);
  });
  test.each(references('piston-radiation', 'Q-'))('$id', (reference) => {
    agrees(10 ** (number('PISTON.DIRECTIVITY', sized(reference)) / 10), reference);
  });
  test('is what the pattern gives when it is summed over the half sphere', () => {
    for (const ka of [0.01, 0.5, 2, 6, 15]) {
      const count = 20_000;
      let power = 0;
      for (let index = 0; index < count; index += 1) {
        const theta = ((index + 0.5) / count) * (Math.PI / 2);
        power += pistonFactor(ka * Math.sin(theta)) ** 2 * Math.sin(theta) * (Math.PI / 2 / count);
      }
      const index = number('PISTON.DIRECTIVITY', { sd, frequency: frequencyFor(ka) });
      expect(index).toBeCloseTo(10 * Math.log10(2 / power), 6);
    }
  });
  test('the curve agrees with the number and rises from 3 dB', () => {
    const { y } = curve('PISTON.DIRECTIVITY_CURVE', { sd });
    expect(y[240]).toBeCloseTo(number('PISTON.DIRECTIVITY', { sd, frequency: 320 }), 9);
    expect(y[0]).toBeCloseTo(3.01, 2);
    expect(y.every((value, index) => index === 0 || value > y[index - 1]! - 0.2)).toBe(true);
  });
  test('the match of two drivers is 0 for equals and turns its sign when they change places', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-4, max: 0.1, noNaN: true }),
        fc.double({ min: 1e-4, max: 0.1, noNaN: true }),
        (a, b) => {
          const frequency = 2000;
          const there = number('PISTON.MATCH', { lower: a, upper: b, frequency });
          expect(there).toBeCloseTo(-number('PISTON.MATCH', { lower: b, upper: a, frequency }), 9);
          expect(number('PISTON.MATCH', { lower: a, upper: a, frequency })).toBe(0);
        },
      ),
    );
  });
});

describe('the load of the air', () => {
  test.each(references('piston-radiation', 'R1-'))('$id', (reference) => {
    agrees(number('PISTON.RESISTANCE', sized(reference)), reference);
  });
  test.each(references('piston-radiation', 'X1-'))('$id', (reference) => {
    agrees(number('PISTON.REACTANCE', sized(reference)), reference);
  });
  test.each(references('piston-radiation', 'mair-'))('$id', (reference) => {
    agrees(number('PISTON.AIR_LOAD', { sd: input(reference, 'Sd') }), reference);
  });
  test('low down the reactance is that mass, high up the resistance is 1', () => {
    const frequency = frequencyFor(0.001);
    const mass = number('PISTON.AIR_LOAD', { sd });
    const reactance = number('PISTON.REACTANCE', { sd, frequency });
    expect((2 * Math.PI * frequency * mass) / (1.204 * c * sd * reactance)).toBeCloseTo(1, 6);
    expect(number('PISTON.RESISTANCE', { sd, frequency: frequencyFor(5000) })).toBeCloseTo(1, 5);
  });
  test('the resistance has no step where its two forms meet', () => {
    const at = (ka: number): number => number('PISTON.RESISTANCE', { sd, frequency: frequencyFor(ka) });
    expect(at(0.05 * (1 - 1e-9)) / at(0.05 * (1 + 1e-9))).toBeCloseTo(1, 7);
  });
});

describe('close to a piston, and a line', () => {
  test.each(references('piston-radiation', 'near-'))('$id', (reference) => {
    const given = { sd: Math.PI * input(reference, 'a') ** 2, frequency: input(reference, 'f') };
    agrees(number('PISTON.NEAR', { ...given, distance: input(reference, 'r') }), reference);
  });
  test('from far away nothing is wrong, and against the cone the low level is (a/2r) of the far law', () => {
    expect(number('PISTON.NEAR', { sd, frequency: 1000, distance: 100 })).toBeCloseTo(0, 4);
    const touching = number('PISTON.NEAR', { sd, frequency: 1, distance: 1e-4 });
    expect(touching).toBeCloseTo(20 * Math.log10((2 * 1e-4) / 0.05), 1);
  });
  test('is the sum of rings of the piston', () => {
    const [frequency, distance, rings] = [3000, 0.2, 20_000];
    const k = (2 * Math.PI * frequency) / c;
    let re = 0;
    let im = 0;
    for (let ring = 0; ring < rings; ring += 1) {
      const radius = Math.sqrt((ring + 0.5) / rings) * 0.05;
      const path = Math.hypot(radius, distance);
      re += Math.cos(k * path) / path / rings;
      im += Math.sin(k * path) / path / rings;
    }
    expect(number('PISTON.NEAR', { sd, frequency, distance })).toBeCloseTo(
      20 * Math.log10(Math.hypot(re, im) * distance),
      6,
    );
  });
  test.each(references('piston-radiation', 'line-'))('$id', (reference) => {
    const given = { length: input(reference, 'l'), frequency: input(reference, 'f') };
    agrees(-number('LINE.LOSS', { ...given, angle: degrees(input(reference, 'theta')) }), reference);
  });
  test('a line is the sum of many points', () => {
    const [length, frequency, angle, points] = [0.2, 2500, 0.6, 10_000];
    const k = (2 * Math.PI * frequency) / c;
    let sum = 0;
    for (let point = 0; point < points; point += 1)
      sum += Math.cos(k * ((point + 0.5) / points - 0.5) * length * Math.sin(angle)) / points;
    expect(number('LINE.LOSS', { length, frequency, angle })).toBeCloseTo(-20 * Math.log10(Math.abs(sum)), 5);
  });
});

test('scale: a piston twice as wide does at half the frequency the same', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1e-4, max: 0.1, noNaN: true }),
      fc.double({ min: 20, max: 20_000, noNaN: true }),
      (area, frequency) => {
        for (const name of ['PISTON.DIRECTIVITY', 'PISTON.RESISTANCE', 'PISTON.REACTANCE', 'PISTON.KA']) {
          const one = number(name, { sd: area, frequency });
          expect(number(name, { sd: 4 * area, frequency: frequency / 2 }) / one).toBeCloseTo(1, 9);
        }
      },
    ),
  );
});

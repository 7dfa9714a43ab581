import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { allSlopes, ladderOf, orderOf, passiveSlopes, sectionsOf } from '../../../functions/crossover/slope.ts';
import { slopeCurve } from '../../../functions/crossover/slope-curve.ts';
import { agrees, input, references, type Reference } from '../../references/read.ts';
import { slopeAt } from './slope-at.ts';

const families: Readonly<Record<string, string>> = { Bu: 'BW', Li: 'LR', Be: 'BES' };

/** The name of the slope that a reference is about. */
function nameOf(reference: Reference): string {
  const suffix = reference.inputs['normalisation']?.value === 'asymptote' ? 'A' : '';
  return `${families[reference.id.slice(0, 2)]!}${String(input(reference, 'order'))}${suffix}`;
}
const about = (pattern: RegExp): readonly Reference[] =>
  references('crossover-filters', '').filter(({ id }) => pattern.test(id));

interface Complex {
  readonly re: number;
  readonly im: number;
}
function value(name: string, pass: string, ratio: number): Complex {
  const { level, phase } = slopeAt(name, pass, ratio);
  const size = 10 ** (level / 20);
  return { re: size * Math.cos(phase), im: size * Math.sin(phase) };
}
/** Magnitude of low-pass plus (1) or minus (−1) high-pass. */
function together(name: string, ratio: number, sign: 1 | -1): number {
  const low = value(name, 'low', ratio);
  const high = value(name, 'high', ratio);
  return Math.hypot(low.re + sign * high.re, low.im + sign * high.im);
}
const decibels = (ratio: number): number => 20 * Math.log10(ratio);
const principal = (angle: number): number => ((((angle + 180) % 360) + 360) % 360) - 180;

describe('levels, phases and sums of the tabled slopes', () => {
  test.each(about(/^(Bu|Li)\d-lpdb/))('$id', (each) =>
    agrees(slopeAt(nameOf(each), 'low', input(each, 'f/fc')).level, each),
  );
  test.each(about(/^Be.*-db-/))('$id', (each) => agrees(slopeAt(nameOf(each), 'low', input(each, 'f/fc')).level, each));
  test.each(about(/^(Bu|Li)\d-lpph/))('$id', (each) => {
    const degrees = (slopeAt(nameOf(each), 'low', input(each, 'f/fc')).phase * 180) / Math.PI;
    // −180° and 180° are one angle.
    const off = Math.abs(principal(degrees - (each.expected.value as number)));
    expect(off).toBeLessThanOrEqual(each.tolerance.absolute!);
  });
  test.each(about(/^(Bu|Li)\d-(sum|dif)/))('$id', (each) =>
    agrees(decibels(together(nameOf(each), input(each, 'f/fc'), each.id.includes('-sum-') ? 1 : -1)), each),
  );
});

describe('sections of the Bessel and Butterworth filters', () => {
  test.each(about(/^Be(Q|f)-/))('$id', (each) => {
    const [, kind, order, place] = /^Be(Q|f)-(\d)-(\d)$/.exec(each.id)!;
    const pairs = sectionsOf(`BES${order!}`).filter(({ q }) => q !== undefined);
    const pair = pairs[Number(place)]!;
    agrees(kind === 'Q' ? pair.q : pair.at, each);
  });
  test.each(about(/^BWQ-/))('$id', (each) => agrees(sectionsOf('BW4')[Number(each.id.at(-1))]!.q, each));
});

describe('elements of the ladder on 1 Ω', () => {
  test.each(about(/^gs3-/))('$id', (each) => agrees(ladderOf('BW3')[Number(each.id.at(-1)) - 1], each));
  // The table for equal resistances at both ends is the wrong one for a loudspeaker, and ours must not be it.
  test.fails.each(about(/^g4-/))('$id', (each) => agrees(ladderOf('BW4')[Number(each.id.at(-1)) - 1], each));
  test.each([...passiveSlopes])('%s: all elements are above zero, and the last asymptote is theirs', (name) => {
    const elements = ladderOf(name);
    expect(elements).toHaveLength(orderOf(name));
    for (const element of elements) expect(element).toBeGreaterThan(0);
    const product = elements.reduce((all, one) => all * one, 1);
    const far = decibels(product) + slopeAt(name, 'low', 1e3).level + 20 * orderOf(name) * 3;
    expect(far).toBeCloseTo(0, 4);
  });
});

describe('identities', () => {
  const ratio = fc.double({ min: 0.001, max: 1000, noNaN: true });
  test('Linkwitz–Riley pairs sum to an all-pass, the second order with one reversed', () => {
    fc.assert(
      fc.property(ratio, (u) => {
        expect(together('LR2', u, -1)).toBeCloseTo(1, 12);
        expect(together('LR4', u, 1)).toBeCloseTo(1, 12);
        expect(together('LR8', u, 1)).toBeCloseTo(1, 12);
      }),
    );
  });
  test('Butterworth pairs share the power between them at every frequency', () => {
    fc.assert(
      fc.property(ratio, fc.constantFrom('BW1', 'BW2', 'BW3', 'BW4', 'BW6', 'BW8'), (u, name) => {
        const [low, high] = [slopeAt(name, 'low', u).level, slopeAt(name, 'high', u).level];
        expect(10 ** (low / 10) + 10 ** (high / 10)).toBeCloseTo(1, 12);
      }),
    );
  });
  test('odd Butterworth pairs sum flat either way', () => {
    fc.assert(
      fc.property(ratio, fc.constantFrom('BW1', 'BW3'), (u, name) => {
        expect(together(name, u, 1)).toBeCloseTo(1, 12);
        expect(together(name, u, -1)).toBeCloseTo(1, 12);
      }),
    );
  });
  test('no slope amplifies, each falls without end, and the high-pass mirrors the low-pass', () => {
    fc.assert(
      fc.property(ratio, fc.constantFrom(...allSlopes), (u, name) => {
        const low = slopeAt(name, 'low', u).level;
        expect(low).toBeLessThanOrEqual(1e-12);
        expect(slopeAt(name, 'low', u * 1.01).level).toBeLessThanOrEqual(low + 1e-12);
        expect(slopeAt(name, 'high', 1 / u).level).toBeCloseTo(low, 9);
      }),
    );
  });
  // Thomson's property: the delay of a Bessel low-pass departs from that at 0 Hz only with the power 2n of frequency.
  test.each([2, 3, 4])('the delay of the Bessel low-pass of order %d is flat', (order) => {
    const delay = (u: number): number => {
      const step = 1e-4;
      const phase = (at: number): number => slopeAt(`BES${String(order)}`, 'low', at).phase;
      return (phase(u - step) - phase(u + step)) / (2 * step);
    };
    const departure = (u: number): number => Math.abs(delay(u) / delay(0.01) - 1);
    expect(departure(0.3)).toBeLessThan(0.3 ** (2 * order));
    expect(Math.log2(departure(0.4) / departure(0.2))).toBeGreaterThan(2 * order - 0.7);
  });
  test('a curve holds the same values', () => {
    const curve = slopeCurve('LR4', 'low', 10 * 2 ** 5);
    expect(curve.y[5 * 48]).toBeCloseTo(-6.0206, 4);
    expect(curve.phase![5 * 48]).toBeCloseTo(-Math.PI, 12);
  });
});

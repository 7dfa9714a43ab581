import { multiplied, rootsOf } from '../numeric/polynomial.ts';
import { bracketedRoot } from '../numeric/root.ts';

/** Part of a normalised low-pass: first order, or second order with its Q. `at` is its frequency over the hand-over. */
export interface Section {
  readonly at: number;
  readonly q?: number;
}

/** The slopes that parts are worked out for. BES is 3 dB down at the hand-over; with A, the asymptotes of low-pass and
 *  high-pass meet there. */
export const passiveSlopes = [
  'LR2',
  'LR4',
  'BW1',
  'BW2',
  'BW3',
  'BW4',
  'BES2',
  'BES3',
  'BES4',
  'BES2A',
  'BES3A',
  'BES4A',
] as const;

/** Those that an active filter can have. */
export const allSlopes = [...passiveSlopes, 'LR8', 'BW6', 'BW8'] as const;

/** What the choices mean, for the remarks of functions that take one. */
export const slopeWords =
  'LR is Linkwitz–Riley, 6 dB down at the hand-over; BW Butterworth, 3 dB down; BES Bessel, 3 dB down; BES…A Bessel with the asymptotes of low-pass and high-pass meeting at the hand-over. The figure is the order: 6 dB an octave each.';

function butterworth(order: number): Section[] {
  const pairs = Array.from({ length: Math.floor(order / 2) }, (_, index) => ({
    at: 1,
    q: 1 / (2 * Math.sin(((2 * index + 1) * Math.PI) / (2 * order))),
  }));
  return order % 2 === 1 ? [{ at: 1 }, ...pairs] : pairs;
}

/** Reverse Bessel polynomial for unit delay, constant term 1. */
function bessel(order: number): number[] {
  const coefficients = [1];
  for (let power = 1; power <= order; power += 1)
    coefficients.push((coefficients[power - 1]! * 2 * (order - power + 1)) / (power * (2 * order - power + 1)));
  return coefficients;
}

/** Square of the magnitude of a polynomial on the imaginary axis. */
function squareAt(coefficients: readonly number[], w: number): number {
  let even = 0;
  let odd = 0;
  coefficients.forEach((each, power) => {
    const term = each * w ** power * (power % 4 < 2 ? 1 : -1);
    if (power % 2 === 0) even += term;
    else odd += term;
  });
  return even ** 2 + odd ** 2;
}

/** Where the normalised Bessel low-pass has its hand-over, in rad/s for a delay of 1 s. */
function besselHandover(order: number, asymptotes: boolean): number {
  const coefficients = bessel(order);
  if (asymptotes) return coefficients[order]! ** (-1 / order);
  return bracketedRoot((w) => squareAt(coefficients, w) - 2, 0.1, 10) ?? 1;
}

function besselSections(order: number, asymptotes: boolean): Section[] {
  const unit = besselHandover(order, asymptotes);
  return rootsOf(bessel(order))
    .filter(({ im }) => im > -1e-9)
    .map(({ re, im }) => {
      const size = Math.hypot(re, im);
      return im < 1e-9 ? { at: size / unit } : { at: size / unit, q: size / (-2 * re) };
    })
    .toSorted((a, b) => a.at - b.at);
}

function sectionsFor(name: string): Section[] {
  const [, family, digits, asymptotes] = /^([A-Z]+)(\d)(A?)$/.exec(name) ?? [];
  const order = Number(digits);
  if (family === 'LR') return [...butterworth(order / 2), ...butterworth(order / 2)];
  return family === 'BW' ? butterworth(order) : besselSections(order, asymptotes === 'A');
}

const known = new Map<string, readonly Section[]>();

/** The sections of a slope by its name: LR2, BW3, BES4A. */
export function sectionsOf(name: string): readonly Section[] {
  const sections = known.get(name) ?? sectionsFor(name);
  known.set(name, sections);
  return sections;
}

export const orderOf = (name: string): number =>
  sectionsOf(name).reduce((order, { q }) => order + (q === undefined ? 1 : 2), 0);

/** Denominator of the low-pass in s over the hand-over, from the constant term 1 up. */
export const denominatorOf = (name: string): number[] =>
  sectionsOf(name).reduce<number[]>(
    (product, { at, q }) => multiplied(product, q === undefined ? [1, 1 / at] : [1, 1 / (q * at), 1 / at ** 2]),
    [1],
  );

/**
 * Elements of the ladder for a slope between no source resistance and 1 Ω, for a hand-over at 1 rad/s, from the source:
 * series coil and shunt capacitor in turn. By continued fraction of the odd and even part of the denominator.
 */
export function ladderOf(name: string): number[] {
  const denominator = denominatorOf(name);
  const order = denominator.length - 1;
  let above = denominator.map((each, power) => (power % 2 === order % 2 ? each : 0));
  let below = denominator.map((each, power) => (power % 2 === order % 2 ? 0 : each));
  const fromLoad: number[] = [];
  for (let power = order; power >= 1; power -= 1) {
    const element = above[power]! / below[power - 1]!;
    fromLoad.push(element);
    const rest = above.map((each, index) => each - element * (below[index - 1] ?? 0));
    [above, below] = [below, rest];
  }
  return fromLoad.toReversed();
}

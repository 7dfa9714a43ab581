import { bracketedRoot } from '../numeric/root.ts';

export interface Alignment {
  /** Vas over the net volume. */
  readonly ratio: number;
  /** Tuning over fs. */
  readonly tuning: number;
  readonly qts: number;
}

/** The driver and box that have a given response y⁴/(y⁴ + a1·y³ + a2·y² + a3·y + 1) under a leak. */
export function alignmentOf(a1: number, a2: number, a3: number, leakageQ: number): Alignment | undefined {
  const loss = 1 / leakageQ;
  const lossless = Math.sqrt(a3 / a1);
  const condition = (r: number): number => a1 * r ** 3 - loss * r ** 4 - a3 * r + loss;
  const root = loss === 0 ? lossless : bracketedRoot(condition, 0.5 * lossless, 1.5 * lossless);
  if (root === undefined) return undefined;
  const inverseQ = (a1 - root * loss) * root;
  const tuning = root ** 2;
  const ratio = (a2 - loss * inverseQ - tuning) * tuning - 1;
  return { ratio, tuning, qts: 1 / inverseQ };
}

/** A family of responses: one for every value of its parameter, between two ends. */
interface Family {
  readonly at: (parameter: number, leakageQ: number) => Alignment | undefined;
  readonly from: number;
  readonly to: number;
}

/** Quasi-third-order: the two highest-order terms but one of |G|⁻² vanish. a1 = 2.613 is the fourth-order Butterworth,
 *  below it the same conditions continue with a small peak, as far as h falls. */
const quasiButterworth: Family = {
  at: (a1, leakageQ) => {
    const a2 = a1 ** 2 / 2;
    return alignmentOf(a1, a2, (a2 ** 2 + 2) / (2 * a1), leakageQ);
  },
  from: 8 ** 0.25,
  to: 100,
};

/**
 * Equal ripple: the poles of the fourth-order Butterworth, their real parts times k, scaled so that the last
 * coefficient is 1. Below k = 1 the response ripples by {@link rippleOf}, above it there is none and it sags
 * (sub-Chebyshev).
 */
const chebyshev: Family = {
  at: (k, leakageQ) => {
    const d = (k ** 4 + 6 * k ** 2 + 1) / 8;
    const a3 = (k * Math.sqrt(4 + 2 * Math.SQRT2)) / d ** 0.25;
    const a2 = (1 + k ** 2 * (1 + Math.SQRT2)) / Math.sqrt(d);
    const a1 = (a3 / Math.sqrt(d)) * (1 - (1 - k ** 2) / (2 * Math.SQRT2));
    return alignmentOf(a1, a2, a3, leakageQ);
  },
  from: 0.05,
  to: 20,
};

/** Ripple in dB of the equal-ripple response with k below 1. */
export const rippleOf = (k: number): number => 10 * Math.log10(1 + 1 / Math.sinh(4 * Math.atanh(k)) ** 2);

/** The k of a ripple in dB above 0. */
export const chebyshevOf = (ripple: number): number =>
  Math.tanh(Math.asinh(1 / Math.sqrt(10 ** (ripple / 10) - 1)) / 4);

/** Of a family, the one that suits a total Q; `undefined` where there is none with air in the box. */
function fitting({ at, from, to }: Family, qts: number, leakageQ: number): Alignment | undefined {
  // A response too far towards a high Q for the leak has no box: beyond every Q.
  const gap = (parameter: number): number => (at(parameter, leakageQ)?.qts ?? Infinity) - qts;
  const parameter = bracketedRoot(gap, from, to);
  const found = parameter === undefined ? undefined : at(parameter, leakageQ);
  return found !== undefined && found.ratio > 0 && Math.abs(found.qts / qts - 1) < 1e-6 ? found : undefined;
}

/** The fourth-order Butterworth: of all, the flattest. */
export const butterworth = (leakageQ: number): Alignment => chebyshev.at(1, leakageQ)!;

/** The fourth-order Bessel: the flattest delay. */
export const bessel = (leakageQ: number): Alignment =>
  alignmentOf(105 ** 0.25, 45 / Math.sqrt(105), 10 / 105 ** 0.25, leakageQ)!;

/** The equal-ripple response of a ripple in dB above 0. */
export const rippled = (ripple: number, leakageQ: number): Alignment | undefined =>
  chebyshev.at(chebyshevOf(ripple), leakageQ);

/** The QB3 box for a driver of total Q `qts` with leakage Q at the tuning; `undefined` when there is none. */
export const qb3 = (qts: number, leakageQ: number): Alignment | undefined => fitting(quasiButterworth, qts, leakageQ);

/** The Chebyshev (k below 1) or sub-Chebyshev (above 1) box for a total Q; `undefined` when there is none. */
export const c4 = (qts: number, leakageQ: number): Alignment | undefined => fitting(chebyshev, qts, leakageQ);

/** Two coincident pairs of poles with the tuning at fs: the shortest ringing for a low total Q. */
export function coincident(qts: number, leakageQ: number): Alignment | undefined {
  const excess = 1 / qts - 1 / leakageQ;
  return excess > 0 ? { ratio: excess ** 2 / 4, tuning: 1, qts } : undefined;
}

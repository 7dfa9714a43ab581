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

/** Quasi-third-order: the two highest-order terms but one of |G|⁻² vanish. a1 = 2.613 is the fourth-order Butterworth,
 *  below it the same conditions continue with a small peak. */
function quasiButterworth(a1: number, leakageQ: number): Alignment | undefined {
  const a2 = a1 ** 2 / 2;
  return alignmentOf(a1, a2, (a2 ** 2 + 2) / (2 * a1), leakageQ);
}

/** Where the continuation ends: h is least there, and so no wider Q belongs to it. */
const leastA1 = 8 ** 0.25;
const greatestA1 = 100;

/** The QB3 box for a driver of total Q `qts` with leakage Q at the tuning; `undefined` when there is none. */
export function qb3(qts: number, leakageQ: number): Alignment | undefined {
  const gap = (a1: number): number => (quasiButterworth(a1, leakageQ)?.qts ?? NaN) - qts;
  const a1 = bracketedRoot(gap, leastA1, greatestA1);
  const found = a1 === undefined ? undefined : quasiButterworth(a1, leakageQ);
  return found !== undefined && found.ratio > 0 ? found : undefined;
}

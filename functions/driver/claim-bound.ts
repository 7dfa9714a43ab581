import { soundSpeed } from '../air.ts';
import { c4, type Alignment } from '../enclosure/alignment.ts';
import { largestBetween } from '../numeric/largest.ts';
import { bracketedRoot } from '../numeric/root.ts';

export type ClaimStyle = 'closed' | 'vented';

/** k = η/(F3³·Vb) of a closed box of a total Q, all damping electrical and no air spring but that of the box. */
export function closedConstant(qtc: number): number {
  const a = 1 / qtc ** 2 - 2;
  const f3 = Math.sqrt((a + Math.sqrt(a ** 2 + 4)) / 2);
  return (4 * Math.PI ** 2) / (soundSpeed ** 3 * f3 ** 3 * qtc);
}

/** Half-power frequency over fs of y⁴/(y⁴ + a1·y³ + a2·y² + a3·y + 1). */
function halfPower({ ratio, tuning, qts }: Alignment, leakageQ: number): number | undefined {
  const r = Math.sqrt(tuning);
  const loss = 1 / leakageQ;
  const a1 = 1 / (r * qts) + r * loss;
  const a2 = (ratio + 1) / tuning + tuning + loss / qts;
  const a3 = r / qts + loss / r;
  const gap = (u: number): number =>
    u ** 4 + (a3 ** 2 - 2 * a2) * u ** 3 + (a2 ** 2 + 2 - 2 * a1 * a3) * u ** 2 + (a1 ** 2 - 2 * a2) * u - 1;
  // u = (√(fs·fb)/f)²: the smallest positive root, searched from high frequencies down.
  for (let u = 0.01; u < 1e3; u *= 1.02) {
    if (gap(u * 1.02) >= 0) {
      const root = bracketedRoot(gap, u, u * 1.02);
      return root === undefined ? undefined : r / Math.sqrt(root);
    }
  }
  return undefined;
}

/** The same constant of a vented box of an alignment, all damping of the driver electrical. */
export function ventedConstant(found: Alignment, leakageQ: number): number {
  const f3 = halfPower(found, leakageQ);
  return f3 === undefined || found.ratio <= 0
    ? 0
    : ((4 * Math.PI ** 2) / soundSpeed ** 3) * (found.ratio / (found.qts * f3 ** 3));
}

const known = new Map<string, number>();

/** The greatest η/(F3³·Vb) that a box can have: closed over all Qtc, vented over all Chebyshev boxes with this leakage Q. */
export function largestConstant(style: ClaimStyle, leakageQ: number): number {
  const key = style === 'closed' ? style : `${style} ${String(leakageQ)}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  const value = (q: number): number => {
    const found = c4(q, leakageQ);
    return found === undefined ? 0 : ventedConstant(found, leakageQ);
  };
  const best =
    style === 'closed'
      ? closedConstant(largestBetween(closedConstant, 0.5, 3))
      : value(largestBetween(value, 0.3, 0.8));
  known.set(key, best);
  return best;
}

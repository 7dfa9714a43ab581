/** A number at a value, NaN where there is none. */
export type Reading = (x: number) => Promise<number>;

/** Whether a range spans many times its lower end, so that equal ratios tell more than equal steps. */
export const isWide = ([from, to]: readonly [number, number]): boolean => from > 0 && to / from > 4;

/** Values over a range, both ends included: evenly in ratios where it is wide. */
export function gridOver(range: readonly [number, number], points: number): number[] {
  const [from, to] = range;
  const inRatios = isWide(range);
  return Array.from({ length: points }, (_, index) => {
    const share = index / (points - 1);
    if (index === 0) return from;
    if (index === points - 1) return to;
    return inRatios ? from * (to / from) ** share : from + (to - from) * share;
  });
}

/** So many values are put between those of a grid at most. */
const MOST_BETWEEN = 400;

/** A grid with a value more in the middle of each two neighbours that leave a doubt, so many times over. */
export async function refined<T extends { readonly x: number }>(
  grid: readonly T[],
  look: (x: number) => Promise<T>,
  isDoubtful: (left: T, right: T, before: T | undefined, after: T | undefined) => boolean,
  rounds: number,
): Promise<readonly T[]> {
  let points = grid;
  for (let round = 0; round < rounds; round++) {
    const next: T[] = [];
    for (const [index, left] of points.entries()) {
      const right = points[index + 1];
      next.push(left);
      if (right && isDoubtful(left, right, points[index - 1], points[index + 2]))
        next.push(await look((left.x + right.x) / 2));
    }
    const isDone = next.length === points.length || next.length > grid.length + MOST_BETWEEN;
    points = next;
    if (isDone) break;
  }
  return points;
}

/** Steps by which a bracket is halved: enough to part any two doubles that matter. */
const HALVINGS = 60;

/** The place between two where a truth changes, from the side on which it is as at `inside`. */
export async function edgeBetween(
  isTrue: (x: number) => Promise<boolean>,
  inside: number,
  outside: number,
): Promise<number> {
  let [within, beyond] = [inside, outside];
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (within + beyond) / 2;
    if (middle === within || middle === beyond) break;
    if (await isTrue(middle)) within = middle;
    else beyond = middle;
    if (Math.abs(within - beyond) <= 1e-12 * Math.max(Math.abs(within), Math.abs(beyond))) break;
  }
  return within;
}

/** The root between two values of unlike signs: the method of Brent, Algorithms for Minimization without Derivatives (1973),
 *  chapter 4. Where the reading jumps over zero, the place of the jump. */
export async function rootBetween(
  read: Reading,
  from: number,
  to: number,
  atFrom: number,
  atTo: number,
): Promise<number> {
  let [a, b, fa, fb] = [from, to, atFrom, atTo];
  let [c, fc] = [a, fa];
  let [step, last] = [b - a, b - a];
  for (let round = 0; round < 100; round++) {
    if (Math.abs(fc) < Math.abs(fb)) {
      [a, b, c] = [b, c, b];
      [fa, fb, fc] = [fb, fc, fb];
    }
    const tolerance = 2 * Number.EPSILON * Math.abs(b);
    const half = (c - b) / 2;
    if (Math.abs(half) <= tolerance || fb === 0) return b;
    if (Math.abs(last) < tolerance || Math.abs(fa) <= Math.abs(fb)) {
      step = half;
      last = half;
    } else {
      const next = interpolated(a, b, c, fa, fb, fc, half);
      const isSound =
        2 * next.up < Math.min(3 * half * next.down - Math.abs(tolerance * next.down), Math.abs(last * next.down));
      last = isSound ? step : half;
      step = isSound ? next.up / next.down : half;
    }
    a = b;
    fa = fb;
    b += Math.abs(step) > tolerance ? step : Math.sign(half) * tolerance;
    fb = await read(b);
    if (Number.isNaN(fb)) return b;
    if (fb > 0 === fc > 0) {
      c = a;
      fc = fa;
      step = b - a;
      last = step;
    }
  }
  return b;
}

/** The step of the secant or of the inverse parabola, as a fraction with a positive numerator. */
function interpolated(
  a: number,
  b: number,
  c: number,
  fa: number,
  fb: number,
  fc: number,
  half: number,
): { up: number; down: number } {
  const s = fb / fa;
  let up: number;
  let down: number;
  if (a === c) {
    up = 2 * half * s;
    down = 1 - s;
  } else {
    const q = fa / fc;
    const r = fb / fc;
    up = s * (2 * half * q * (q - r) - (b - a) * (r - 1));
    down = (q - 1) * (r - 1) * (s - 1);
  }
  return up > 0 ? { up, down: -down } : { up: -up, down };
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** The lowest place between two around a lower one, by golden sections. Stops early where the reading falls below zero. */
export async function lowestBetween(
  read: Reading,
  from: number,
  to: number,
): Promise<readonly [x: number, value: number]> {
  let [low, high] = [from, to];
  let [x1, x2] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
  let [f1, f2] = [await read(x1), await read(x2)];
  for (let round = 0; round < 80; round++) {
    if (f1 < 0) return [x1, f1];
    if (f2 < 0) return [x2, f2];
    if (high - low <= 1e-10 * Math.max(Math.abs(low), Math.abs(high)) || Number.isNaN(f1 + f2)) break;
    if (f1 < f2) {
      [high, x2, f2] = [x2, x1, f1];
      x1 = high - GOLDEN * (high - low);
      f1 = await read(x1);
    } else {
      [low, x1, f1] = [x1, x2, f2];
      x2 = low + GOLDEN * (high - low);
      f2 = await read(x2);
    }
  }
  return f1 < f2 ? [x1, f1] : [x2, f2];
}

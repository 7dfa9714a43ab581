/** A fit by least squares. */
export interface Fit {
  readonly values: readonly number[];
  /** One standard deviation of each, from the scatter of the residuals; 0 where nothing is left over. */
  readonly errors: readonly number[];
  /** Root mean square of the residuals. */
  readonly residual: number;
  readonly hasConverged: boolean;
}

/** Solves a symmetric positive system in place by elimination with pivoting; `undefined` when it is singular. */
function solveLinear(matrix: readonly (readonly number[])[], right: readonly number[]): number[] | undefined {
  const size = right.length;
  const rows = matrix.map((row, index) => [...row, right[index]!]);
  for (let column = 0; column < size; column += 1) {
    let pivot = column;
    for (let row = column + 1; row < size; row += 1)
      if (Math.abs(rows[row]![column]!) > Math.abs(rows[pivot]![column]!)) pivot = row;
    [rows[column], rows[pivot]] = [rows[pivot]!, rows[column]!];
    const top = rows[column]!;
    if (!(Math.abs(top[column]!) > 1e-300)) return undefined;
    for (let row = 0; row < size; row += 1) {
      if (row === column) continue;
      const factor = rows[row]![column]! / top[column]!;
      for (let at = column; at <= size; at += 1) rows[row]![at] = rows[row]![at]! - factor * top[at]!;
    }
  }
  const found = rows.map((row, index) => row[size]! / row[index]!);
  return found.every(Number.isFinite) ? found : undefined;
}

const sumOfSquares = (values: readonly number[]): number => values.reduce((sum, each) => sum + each * each, 0);

/** Derivatives of all residuals by each value, by differences to both sides. */
function slopes(residuals: (values: readonly number[]) => readonly number[], at: readonly number[]): number[][] {
  return at.map((value, which) => {
    const step = 1e-6 * Math.max(Math.abs(value), 1e-6);
    const moved = (by: number): readonly number[] =>
      residuals(at.map((each, index) => (index === which ? each + by : each)));
    const [above, below] = [moved(step), moved(-step)];
    return Array.from(above, (each, index) => (each - below[index]!) / (2 * step));
  });
}

const product = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, each, index) => sum + each * b[index]!, 0);

/**
 * Levenberg–Marquardt from a start that lies near. Give values of about the same size, best as logarithms: then all stay
 * positive and steps are shares. Errors are those of the linear model at the end, scaled by the scatter of the residuals.
 */
export function leastSquares(
  residuals: (values: readonly number[]) => readonly number[],
  start: readonly number[],
): Fit | undefined {
  let values = [...start];
  let left = residuals(values);
  let square = sumOfSquares(left);
  if (!Number.isFinite(square)) return undefined;
  let damping = 1e-3;
  let hasConverged = false;
  for (let round = 0; round < 100 && !hasConverged; round += 1) {
    const columns = slopes(residuals, values);
    const gradient = columns.map((column) => product(column, left));
    const normal = columns.map((one) => columns.map((other) => product(one, other)));
    let hasImproved = false;
    for (let attempt = 0; attempt < 30 && !hasImproved && !hasConverged; attempt += 1) {
      const damped = normal.map((row, index) =>
        row.map((each, at) => (at === index ? each * (1 + damping) + 1e-30 : each)),
      );
      const step = solveLinear(damped, gradient);
      const tried = step && values.map((each, index) => each - step[index]!);
      const after = tried ? residuals(tried) : left;
      const total = tried ? sumOfSquares(after) : Infinity;
      if (tried && total <= square) {
        const moved = Math.max(...step.map((each, index) => Math.abs(each) / (Math.abs(tried[index]!) + 1e-9)));
        hasConverged = moved < 1e-10 || square - total <= 1e-14 * square;
        [values, left, square] = [tried, after, total];
        damping = Math.max(damping / 10, 1e-12);
        hasImproved = true;
      } else {
        damping *= 10;
        hasConverged = damping > 1e12;
      }
    }
    if (!hasImproved) break;
  }
  const columns = slopes(residuals, values);
  const normal = columns.map((one) => columns.map((other) => product(one, other)));
  const freedom = left.length - values.length;
  const variance = freedom > 0 ? square / freedom : 0;
  const errors: number[] = [];
  for (const index of values.keys()) {
    const column = solveLinear(
      normal,
      values.map((_, at) => (at === index ? 1 : 0)),
    );
    if (!column) return undefined;
    errors.push(Math.sqrt(Math.max(0, variance * column[index]!)));
  }
  return { values, errors, residual: Math.sqrt(square / left.length), hasConverged };
}

import { edgeBetween } from './scan.ts';

/** How many times finer a range is looked through where nothing was found. */
const FINER = 4;

/** The stretches of a range in which something holds, with their edges found between the values of a grid. */
export async function stretchesIn(
  isTrue: (x: number) => Promise<boolean>,
  grid: readonly number[],
): Promise<(readonly [number, number])[]> {
  const stretches: (readonly [number, number])[] = [];
  let from: number | undefined;
  let before: number | undefined;
  for (const x of grid) {
    const holds = await isTrue(x);
    if (holds && from === undefined) from = before === undefined ? x : await edgeBetween(isTrue, x, before);
    if (!holds && from !== undefined && before !== undefined) {
      stretches.push([from, await edgeBetween(isTrue, before, x)]);
      from = undefined;
    }
    before = x;
  }
  if (from !== undefined && before !== undefined) stretches.push([from, before]);
  return stretches;
}

/** The grid with further values between its own. */
export const finer = (grid: readonly number[]): number[] =>
  grid.flatMap((x, index) => {
    const next = grid[index + 1];
    if (next === undefined) return [x];
    return Array.from({ length: FINER }, (_, part) => x + ((next - x) * part) / FINER);
  });

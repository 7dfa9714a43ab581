import { nelderMead } from 'fmin/src/nelderMead.js';
import { awaited } from './awaited.ts';

/** The simplex is set up anew around the lowest place, each time smaller: in one that has gone flat before a jump it would stay. */
const SIZES = [1 / 9, 1 / 36, 1 / 144, 1 / 576] as const;
/** Steps of one simplex at most, for each input. */
const MOST = 30;
/** A simplex whose corners differ by less than this share of its size and in cost is done with. */
const NEAR = 0.01;

/** Goes downhill from a start inside a unit cube, by the downhill simplex of a kept library. Needs no slope, so that it also ends
 *  at edges beyond which a cost jumps; places outside count as the nearest on the border.
 *  @returns The lowest place, never higher than the start. */
export async function descended(
  cost: (place: readonly number[]) => number | Promise<number>,
  start: readonly number[],
): Promise<readonly number[]> {
  let here = start;
  for (const size of SIZES) {
    const from = here;
    const placeAt = (steps: readonly number[]): readonly number[] =>
      from.map((share, index) => {
        const step = size * (steps[index] ?? 0);
        return Math.min(1, Math.max(0, share > 0.5 ? share - step : share + step));
      });
    const { x } = await awaited<readonly number[], number, { readonly x: readonly number[] }>(
      (steps) => cost(placeAt(steps)),
      (costAt) =>
        nelderMead(
          costAt,
          from.map(() => 0),
          // Drawing in is what the next, smaller simplex does.
          { zeroDelta: 1, maxIterations: MOST * from.length, minErrorDelta: NEAR, sigma: 1 },
        ),
    );
    here = placeAt(x);
  }
  return here;
}

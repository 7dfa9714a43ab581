/** Steps as shares of the range: from a ninth down to one that is lost when values are typed with few digits. */
const FIRST = 1 / 9;
const LAST = 1e-5;
/** So often a step is taken at most. */
const MOST = 300;

/** Goes downhill from a start inside a unit cube, to all sides and slantwise, halving its step where nothing is lower. Needs no
 *  slope, so that it also ends at edges beyond which a cost jumps.
 *  @returns The lowest place, never higher than the start. */
export async function polished(
  cost: (place: readonly number[]) => Promise<number>,
  start: readonly number[],
): Promise<readonly number[]> {
  const directions = directionsIn(start.length);
  let here = start;
  let lowest = await cost(here);
  let taken = 0;
  for (let step = FIRST; step > LAST && taken < MOST;) {
    let next: readonly number[] | undefined;
    for (const direction of directions) {
      const there = here.map((value, index) => Math.min(1, Math.max(0, value + step * (direction[index] ?? 0))));
      const found = await cost(there);
      if (found < lowest) {
        lowest = found;
        next = there;
      }
    }
    taken++;
    if (next) here = next;
    else step /= 2;
  }
  return here;
}

/** All sides and all slants of up to three inputs; of more the sides and the slants of two at a time. */
function directionsIn(dimensions: number): number[][] {
  const all: number[][] = [];
  const most = dimensions <= 3 ? dimensions : 2;
  const extend = (direction: number[], from: number, moved: number): void => {
    if (moved > 0) all.push(direction);
    if (moved === most) return;
    for (let index = from; index < dimensions; index++)
      for (const sense of [1, -1]) extend(direction.with(index, sense), index + 1, moved + 1);
  };
  extend(
    Array.from({ length: dimensions }, () => 0),
    0,
    0,
  );
  return all;
}

/** The root of a continuous function between two places where its sign differs, to the last digits of a double by
 *  bisection; `undefined` where the signs agree or are not numbers. */
export function bracketedRoot(value: (x: number) => number, from: number, to: number): number | undefined {
  let low = from;
  let high = to;
  let atLow = value(low);
  const atHigh = value(high);
  if (atLow === 0) return low;
  if (atHigh === 0) return high;
  if (!(atLow < 0 !== atHigh < 0) || Number.isNaN(atLow) || Number.isNaN(atHigh)) return undefined;
  for (let step = 0; step < 200; step += 1) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) break;
    const atMiddle = value(middle);
    if (atMiddle === 0) return middle;
    if (atMiddle < 0 === atLow < 0) {
      low = middle;
      atLow = atMiddle;
    } else {
      high = middle;
    }
  }
  return (low + high) / 2;
}

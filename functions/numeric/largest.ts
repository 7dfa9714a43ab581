const section = (Math.sqrt(5) - 1) / 2;

/** Where a function with one hump between two places is largest, by golden section to a relative 1e-7. */
export function largestBetween(value: (x: number) => number, from: number, to: number): number {
  let low = from;
  let high = to;
  let left = high - section * (high - low);
  let right = low + section * (high - low);
  let atLeft = value(left);
  let atRight = value(right);
  while (high - low > 1e-7 * Math.abs(high)) {
    if (atLeft > atRight) {
      high = right;
      right = left;
      atRight = atLeft;
      left = high - section * (high - low);
      atLeft = value(left);
    } else {
      low = left;
      left = right;
      atLeft = atRight;
      right = low + section * (high - low);
      atRight = value(right);
    }
  }
  const middle = (low + high) / 2;
  return [from, middle, to].reduce((best, x) => (value(x) > value(best) ? x : best));
}

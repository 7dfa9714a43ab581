/** The value that a share of a sample lies below, interpolated between neighbours in order (definition 7 of Hyndman and Fan,
 *  The American Statistician 50 (1996), the usual one of statistics packages). NaN values are left out; `undefined` of nothing. */
export const percentile = (values: Float64Array, share: number): number | undefined => percentiles(values, [share])[0];

/** Several of them at once, without putting the whole sample in order. */
export function percentiles(values: Float64Array, shares: readonly number[]): (number | undefined)[] {
  const numbers = new Float64Array(values.length);
  let count = 0;
  for (const value of values) if (!Number.isNaN(value)) numbers[count++] = value;
  if (count === 0) return shares.map(() => undefined);
  // What was selected parts the numbers: a greater share is found behind it.
  let parted = 0;
  return shares.map((share) => {
    const place = share * (count - 1);
    const index = Math.floor(place);
    const below = selected(numbers, index < parted ? 0 : parted, count, index);
    parted = index;
    if (place === index) return below;
    // After the selection all that follows is no smaller, so the next in order is the least of it.
    let above = Infinity;
    for (let at = index + 1; at < count; at++) above = Math.min(above, numbers[at]!);
    return below + (above - below) * (place - index);
  });
}

/** The value at a place in order, itself not before the first place looked at, by parting the numbers again and again: Hoare, Algorithm 65, Comm. ACM 4 (1961). */
function selected(numbers: Float64Array, first: number, count: number, index: number): number {
  let left = first;
  let right = count - 1;
  while (left < right) {
    const pivot = numbers[(left + right) >> 1]!;
    let low = left;
    let high = right;
    while (low <= high) {
      while (numbers[low]! < pivot) low++;
      while (numbers[high]! > pivot) high--;
      if (low > high) break;
      const swapped = numbers[low]!;
      numbers[low++] = numbers[high]!;
      numbers[high--] = swapped;
    }
    if (index <= high) right = high;
    else if (index >= low) left = low;
    else break;
  }
  return numbers[index]!;
}

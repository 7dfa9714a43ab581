/** The value that a share of a sample lies below, interpolated between neighbours in order (definition 7 of Hyndman and Fan,
 *  The American Statistician 50 (1996), the usual one of statistics packages). NaN values are left out; `undefined` of nothing. */
export const percentile = (values: Float64Array, share: number): number | undefined => percentiles(values, [share])[0];

/** Several of them, for the price of one sorting. */
export function percentiles(values: Float64Array, shares: readonly number[]): (number | undefined)[] {
  const sorted = values.filter((value) => !Number.isNaN(value)).sort();
  return shares.map((share) => {
    const place = share * (sorted.length - 1);
    const below = sorted[Math.floor(place)];
    const above = sorted[Math.ceil(place)];
    return below === undefined || above === undefined
      ? undefined
      : below + (above - below) * (place - Math.floor(place));
  });
}

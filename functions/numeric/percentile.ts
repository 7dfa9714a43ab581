/** The value that a share of a sample lies below, interpolated between neighbours in order (definition 7 of Hyndman and Fan,
 *  The American Statistician 50 (1996), the usual one of statistics packages). NaN values are left out; `undefined` of nothing. */
export function percentile(values: Float64Array, share: number): number | undefined {
  const sorted = values.filter((value) => !Number.isNaN(value)).sort();
  const place = share * (sorted.length - 1);
  const below = sorted[Math.floor(place)];
  const above = sorted[Math.ceil(place)];
  return below === undefined || above === undefined ? undefined : below + (above - below) * (place - Math.floor(place));
}

/** Whether two sets of plain data hold the same; records of cells (curves, windows) are compared by identity, since an
 *  unchanged cell keeps its record. A picture whose data are the same need not be drawn anew. */
export function sameData(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if ('kind' in a || 'kind' in b || Array.isArray(a) !== Array.isArray(b)) return false;
  const [left, right] = [a as Record<string, unknown>, b as Record<string, unknown>];
  const keys = Object.keys(left);
  return keys.length === Object.keys(right).length && keys.every((key) => sameData(left[key], right[key]));
}

/** For `@property`: data that hold the same are no change. */
export const whenDiffering = {
  attribute: false,
  hasChanged: (now: unknown, before: unknown) => !sameData(now, before),
};

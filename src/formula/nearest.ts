/** The word that was probably meant: the nearest by changed letters, where few enough are changed. */
export function nearest(word: string, words: readonly string[]): string | undefined {
  const limit = Math.max(1, Math.floor(word.length / 3));
  let best: string | undefined;
  let least = limit + 1;
  for (const each of words) {
    const changes = changesBetween(word.toLowerCase(), each.toLowerCase(), limit);
    if (changes < least) [best, least] = [each, changes];
  }
  return best;
}

/** Letters to insert, delete or replace; anything over the limit counts as one more than it. */
function changesBetween(a: string, b: string, limit: number): number {
  if (Math.abs(a.length - b.length) > limit) return limit + 1;
  let row = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      next.push(Math.min((row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1, (row[j - 1] ?? 0) + same));
    }
    row = next;
  }
  return row[b.length] ?? limit + 1;
}

/** Keeps the last few results of a costly function of one thing; what is asked for again stays longest. Nobody changes them.
 *  @param most - How many are kept. */
export function remembering<K, T>(make: (key: K) => T, most = 24): (key: K) => T {
  const known = new Map<K, T>();
  return (key) => {
    const found = known.has(key) ? (known.get(key) as T) : make(key);
    known.delete(key);
    known.set(key, found);
    const [oldest] = known.keys();
    if (known.size > most && oldest !== undefined) known.delete(oldest);
    return found;
  };
}

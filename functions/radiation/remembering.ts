/** How many results are kept. */
const most = 24;

/** Keeps the last few results of a costly function of one number; what is asked for again stays longest. */
export function remembering<T>(make: (key: number) => T): (key: number) => T {
  const known = new Map<number, T>();
  return (key) => {
    const found = known.get(key) ?? make(key);
    known.delete(key);
    known.set(key, found);
    const [oldest] = known.keys();
    if (known.size > most && oldest !== undefined) known.delete(oldest);
    return found;
  };
}

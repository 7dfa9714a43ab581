/** The local storage: small, but what it takes is written at once. Where the browser allows none, nothing is kept. */
export const atOnce = {
  /** Tells whether it was kept. */
  keep: (key: string, text: string): boolean =>
    allowed(false, (store) => {
      store.setItem(key, text);
      return true;
    }),
  read: (key: string): string | null => allowed(null, (store) => store.getItem(key)),
  drop: (key: string): void => allowed(undefined, (store) => store.removeItem(key)),
  /** The keys that begin so. */
  keys: (beginning: string): readonly string[] =>
    allowed([], (store) => Object.keys(store).filter((key) => key.startsWith(beginning))),
};

/** Even to name the storage is an error where cookies are refused. */
function allowed<T>(otherwise: T, act: (store: Storage) => T): T {
  try {
    return act(localStorage);
  } catch {
    return otherwise;
  }
}

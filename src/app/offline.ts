/**
 * Lets the built application open without a network from its second visit on. Does nothing in development, and nothing
 * where the browser refuses service workers, which includes pages opened from a file or over plain HTTP.
 *
 * @returns Whether a copy is kept; a refusal is no failure, since the application works the same with a network.
 */
export async function registerOffline(): Promise<boolean> {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return false;
  try {
    await navigator.serviceWorker.register(new URL('offline-worker.js', document.baseURI));
    return true;
  } catch {
    return false;
  }
}

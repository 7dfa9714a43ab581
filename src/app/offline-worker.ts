/**
 * Keeps a copy of the whole application, so that it opens without a network. The build puts `version` and
 * `files` in front and emits this as a classic script, hence no import and no export.
 */
declare const version: string;
declare const files: readonly string[];

{
  const worker = self as unknown as ServiceWorkerGlobalScope;
  const name = `octavo-${version}`;

  const store = async (): Promise<void> => {
    const cache = await caches.open(name);
    await cache.addAll(files.map((file) => new Request(file, { cache: 'reload' })));
  };

  /** Other versions go only now, when no page runs on them any more: a new version waits until the last page closed. */
  const takeOver = async (): Promise<void> => {
    const others = (await caches.keys()).filter((key) => key.startsWith('octavo-') && key !== name);
    await Promise.all(others.map((key) => caches.delete(key)));
    await worker.clients.claim();
  };

  /** A file is the same whoever asks, so what a server says it varies by does not count. */
  const same = { ignoreSearch: true, ignoreVary: true };

  const answer = async (request: Request): Promise<Response> => {
    const cache = await caches.open(name);
    const kept = await cache.match(request.mode === 'navigate' ? 'index.html' : request, same);
    return kept ?? fetch(request);
  };

  worker.addEventListener('install', (event) => event.waitUntil(store()));
  worker.addEventListener('activate', (event) => event.waitUntil(takeOver()));
  worker.addEventListener('fetch', (event) => {
    const { method, url } = event.request;
    if (method === 'GET' && new URL(url).origin === worker.location.origin) event.respondWith(answer(event.request));
  });
}

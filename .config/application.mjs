/** Building and serving the application, said once for `npm start`, the journeys and the screenshots. */
import { build, preview } from 'vite';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './install.mjs';
import { newest } from './newest.mjs';

const configFile = join(root, '.config/vite.config.ts');
const sources = ['index.html', 'package-lock.json', 'src', 'functions', 'templates', '.config'];

/** Leaves the files that can be served in dist/. */
export async function buildApplication() {
  await build({ root, configFile, logLevel: 'warn' });
}

/** Builds only when a source is younger than what was built last. */
export async function ensureBuilt() {
  const built = join(root, 'dist/index.html');
  if (!existsSync(built) || newest(sources) > newest(['dist/index.html'])) await buildApplication();
}

/**
 * Serves dist/ on the loopback address, on the first free port from the given one up.
 *
 * @returns {Promise<{ address: string, close: () => Promise<void> }>}
 */
export async function serveApplication({ port = 4200 } = {}) {
  const server = await preview({
    root,
    configFile,
    logLevel: 'error',
    preview: { host: '127.0.0.1', port, strictPort: false, open: false },
  });
  return { address: server.resolvedUrls.local[0], close: () => server.close() };
}

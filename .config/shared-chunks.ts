import { dirname, resolve } from 'node:path';
import type { Plugin } from 'vite';

const WORKER = /new URL\('(\.\/[\w-]*worker\.ts)', import\.meta\.url\)/;

/** Bundles workers together with the page, so that what both need is built, fetched and kept once: the catalogue, the grammar,
 *  the units. Left to itself the build makes a bundle of its own for each worker. */
export function sharedChunks(): Plugin {
  return {
    name: 'octavo:shared-chunks',
    apply: 'build',
    enforce: 'pre',
    transform(code, id) {
      const file = WORKER.exec(code)?.[1];
      if (file === undefined || id.includes('/node_modules/')) return undefined;
      const reference = this.emitFile({ type: 'chunk', id: resolve(dirname(id), file) });
      return code.replace(WORKER, `new URL(import.meta.ROLLUP_FILE_URL_${reference})`);
    },
  };
}

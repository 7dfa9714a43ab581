import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { type Plugin, transformWithOxc } from 'vite';

const source = resolve(import.meta.dirname, '../src/app/offline-worker.ts');

/** Emits the service worker that keeps a copy of every built file, named after a digest of them all. */
export function offlineCopy(): Plugin {
  return {
    name: 'octavo:offline-copy',
    apply: 'build',
    enforce: 'post',
    generateBundle: {
      order: 'post',
      async handler(_, bundle) {
        const digest = createHash('sha256');
        const files = Object.keys(bundle)
          .filter((name) => !name.startsWith('.vite/') && !name.endsWith('.map'))
          .toSorted();
        for (const name of files) {
          const file = bundle[name];
          digest.update(name).update(file?.type === 'chunk' ? file.code : (file?.source ?? ''));
        }
        const settings = `const version = '${digest.digest('hex').slice(0, 12)}';\nconst files = ${JSON.stringify(files)};\n`;
        const { code } = await transformWithOxc(await readFile(source, 'utf8'), source);
        this.emitFile({ type: 'asset', fileName: 'offline-worker.js', source: settings + code });
      },
    },
  };
}

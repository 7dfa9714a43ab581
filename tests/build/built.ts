import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build, type Plugin } from 'vite';
import { afterAll } from 'vitest';

const root = resolve(import.meta.dirname, '../..');
const entry = join(root, 'entry.ts');

/** What modules of ours are once they are built with a plugin, packages included. */
export async function built<Exports>(modules: readonly string[], plugin: Plugin): Promise<Exports> {
  const all: Plugin = {
    name: 'entry',
    resolveId: (id) => (id === entry ? id : undefined),
    load: (id) => (id === entry ? modules.map((each) => `export * from '${join(root, each)}';`).join('\n') : undefined),
  };
  const result = await build({
    root,
    configFile: false,
    publicDir: false,
    logLevel: 'error',
    plugins: [all, plugin],
    build: { ssr: entry, write: false, rolldownOptions: { output: { codeSplitting: false } } },
    ssr: { noExternal: true },
  });
  const [chunk] = 'output' in result ? result.output : [];
  const cache = join(root, 'node_modules/.cache');
  await mkdir(cache, { recursive: true });
  const folder = await mkdtemp(join(cache, 'built-'));
  afterAll(() => rm(folder, { recursive: true, force: true }));
  await writeFile(join(folder, 'built.mjs'), chunk?.code ?? '');
  return (await import(pathToFileURL(join(folder, 'built.mjs')).href)) as Exports;
}

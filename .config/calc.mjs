/** `npm run calc`: the command line. Bundles it once into the cache, again when a source changed, and runs it. */
import './node-version.mjs';
import { mkdir, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ensureInstalled, root } from './install.mjs';
import { newest } from './newest.mjs';

const bundle = 'node_modules/.cache/octavo-cli/main.js';
const sources = ['src', 'functions', 'templates', 'package-lock.json', '.config'];

ensureInstalled();
if (newest(sources) >= newest([bundle])) await bundleCommandLine();
await import(pathToFileURL(join(root, bundle)).href);

async function bundleCommandLine() {
  const { build } = await import('vite');
  const result = await build({ configFile: join(root, '.config/calc.config.ts'), logLevel: 'error' });
  const { code } = result.output.find((chunk) => chunk.fileName === 'main.js');
  const target = join(root, bundle);
  // Written aside and renamed, so that another run never reads half a file.
  const draft = `${target}.${process.pid}`;
  await mkdir(join(target, '..'), { recursive: true });
  await writeFile(draft, code);
  await rename(draft, target);
}

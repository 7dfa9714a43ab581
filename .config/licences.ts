import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Plugin } from 'vite';

const root = resolve(import.meta.dirname, '..');
const rule = `\n\n${'-'.repeat(100)}\n\n`;

/**
 * Writes licences.txt beside the built files: our own licence, that of the fonts, and that of every package of which
 * some part was bundled. `collect` belongs in the plugins of the worker too, which is bundled apart.
 */
export function licences(): { collect: () => Plugin; emit: Plugin } {
  const folders = new Set<string>();
  const gather = (ids: Iterable<string>): void => {
    for (const id of ids) {
      const folder = /^.*\/node_modules\/(?:@[^/]+\/)?[^/]+/.exec(id.replace('\0', '').replaceAll('\\', '/'))?.[0];
      if (folder !== undefined && existsSync(join(folder, 'package.json'))) folders.add(folder);
    }
  };
  const collect = (): Plugin => ({
    name: 'octavo:collect-licences',
    apply: 'build',
    generateBundle: (_, bundle) => {
      for (const chunk of Object.values(bundle)) if (chunk.type === 'chunk') gather(chunk.moduleIds);
    },
  });
  const emit: Plugin = {
    name: 'octavo:emit-licences',
    apply: 'build',
    enforce: 'post',
    generateBundle() {
      const own = readFileSync(join(root, 'LICENSE'), 'utf8');
      const fonts = readFileSync(join(root, 'src/app/fonts/OFL.txt'), 'utf8');
      const source = [own, `The fonts\n\n${fonts}`, ...[...folders].toSorted().map(licenceOf)].join(rule);
      this.emitFile({ type: 'asset', fileName: 'licences.txt', source });
    },
  };
  return { collect, emit };
}

function licenceOf(folder: string): string {
  const about: unknown = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const { name, version, license } = about as Record<'name' | 'version' | 'license', string>;
  const files = readdirSync(folder).filter((file) => /^(licen[cs]e|notice|copying)/i.test(file));
  const texts = files.map((file) => readFileSync(join(folder, file), 'utf8').trim());
  return [`${name} ${version} (${license})`, ...texts].join('\n\n');
}

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Plugin } from 'vite';

const root = resolve(import.meta.dirname, '..');
const rule = `\n\n${'-'.repeat(100)}\n\n`;

/** Writes licences.txt beside the built files: our own licence, that of the fonts, and that of every package of which some
 *  part was bundled. */
export function licences(): Plugin {
  return {
    name: 'octavo:licences',
    apply: 'build',
    enforce: 'post',
    generateBundle(_, bundle) {
      const folders = new Set<string>();
      for (const chunk of Object.values(bundle)) {
        for (const id of chunk.type === 'chunk' ? chunk.moduleIds : []) {
          const folder = /^.*\/node_modules\/(?:@[^/]+\/)?[^/]+/.exec(id.replace('\0', '').replaceAll('\\', '/'))?.[0];
          if (folder !== undefined && existsSync(join(folder, 'package.json'))) folders.add(folder);
        }
      }
      const own = readFileSync(join(root, 'LICENSE'), 'utf8');
      const fonts = readFileSync(join(root, 'src/app/fonts/OFL.txt'), 'utf8');
      const source = [own, `The fonts\n\n${fonts}`, ...[...folders].toSorted().map(licenceOf)].join(rule);
      this.emitFile({ type: 'asset', fileName: 'licences.txt', source });
    },
  };
}

function licenceOf(folder: string): string {
  const about: unknown = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const { name, version, license } = about as Record<'name' | 'version' | 'license', string>;
  const files = readdirSync(folder).filter((file) => /^(licen[cs]e|notice|copying)/i.test(file));
  const texts = files.map((file) => readFileSync(join(folder, file), 'utf8').trim());
  return [`${name} ${version} (${license})`, ...texts].join('\n\n');
}

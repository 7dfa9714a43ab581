import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';

const root = resolve(import.meta.dirname, '..');
const engine = join(root, 'node_modules/hyperformula/es');

/** The modules of the calculation engine by their files, as they come. */
export function engineModules(): Map<string, string> {
  const modules = new Map<string, string>();
  const waiting = ['index.mjs', 'i18n/languages/enGB.mjs'];
  for (const file of waiting) {
    if (modules.has(file)) continue;
    const code = readFileSync(join(engine, file), 'utf8');
    modules.set(file, code);
    for (const [, named = ''] of code.matchAll(/^(?:import|export)\b[^;]*?["'](\.[^"']+)["'];?$/gm))
      waiting.push(join(dirname(file), named));
  }
  return modules;
}

/** The files of ours that speak to the engine. */
export function codeToEngine(): readonly string[] {
  const folder = join(root, 'src/engine');
  return readdirSync(folder).map((file) => readFileSync(join(folder, file), 'utf8'));
}

/** What the engine tells of its events with: the one package that it imports. */
export const emitter = (): string => readFileSync(join(root, 'node_modules/tiny-emitter/index.js'), 'utf8');

import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Plugin } from 'vite';
import { saidIn } from './said.ts';
import { withoutUnreached } from './unreached.ts';

const root = resolve(import.meta.dirname, '..');
const parser = join(root, 'node_modules/@lezer/lr/dist/index.js');
const tree = join(root, '.config/lean-tree.ts');
const ours = join(root, 'src/formula');
/** What parses anew only what was edited: formulas are parsed whole. */
const fragments = /function cutAt\([^]*?\nclass FragmentCursor \{[^]*?\n\}\n/;

/** The parser without what nothing of ours can reach. */
function leanModule(): string {
  const whole = readFileSync(parser, 'utf8');
  if (!fragments.test(whole)) throw new Error('The parser parses edited text in another way now.');
  const code = whole
    .replace(fragments, '')
    .replace(/new FragmentCursor\([^]*?\)/, 'null')
    .replace(', IterMode', '');
  const files = [tree, ...readdirSync(ours).flatMap((file) => (file.endsWith('.ts') ? join(ours, file) : []))];
  const roots = files.map((file) => saidIn(readFileSync(file, 'utf8')));
  return withoutUnreached({ sources: new Map([[parser, code]]), roots }).get(parser) ?? '';
}

/** The parser of formulas as it is built into the application: with syntax trees of our own, which a walk is all that is asked of. */
export function leanParser(): Plugin {
  return {
    name: 'octavo:lean-parser',
    apply: 'build',
    enforce: 'pre',
    resolveId: (asked) => (asked === '@lezer/common' ? tree : undefined),
    load: (id) => (id === parser ? leanModule() : undefined),
  };
}

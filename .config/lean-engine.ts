import { HyperFormula } from 'hyperformula';
import type { Plugin } from 'vite';
import { engineFunctions } from '../src/formula/engine-functions.ts';

const inEngine = (file: string): RegExp => new RegExp(`/node_modules/hyperformula/es/${file}$`);

/** Leaves out of the calculation engine what no formula of ours can call, and the words of its own handbook. What it can
 *  calculate stays as `engineFunctions` lists it: a part is kept if one of its functions is in the list. */
export function leanEngine(): Plugin {
  const parts = HyperFormula.getAllFunctionPlugins().filter(({ implementedFunctions, aliases }) =>
    Object.keys({ ...implementedFunctions, ...aliases }).some((name) => engineFunctions.has(name)),
  );
  const kept = new Set(parts.map(({ name }) => name));
  return {
    name: 'octavo:lean-engine',
    apply: 'build',
    enforce: 'pre',
    transform(code, id) {
      if (inEngine('interpreter/functionMetadata/index\\.mjs').test(id)) return 'export const FUNCTION_DOCS = {};';
      // The names that functions have in English; ours are given with the language that we hand over.
      if (inEngine('i18n/languages/enGB\\.mjs').test(id)) return code.replace(/functions: \{[^}]*\}/, 'functions: {}');
      if (!inEngine('interpreter/plugin/index\\.mjs').test(id)) return undefined;
      const lines = code.split('\n').filter((line) => kept.has(/^export \{ (\w+) \}/.exec(line)?.[1] ?? ''));
      if (lines.length !== kept.size) this.error('The calculation engine lists its functions in another way now.');
      return lines.join('\n');
    },
  };
}

import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import type { Plugin } from 'vite';
import { catalogue } from '../functions/index.ts';
import { wordsByName } from '../functions/words.ts';

const beside = fileURLToPath(new URL('../src/engine/words-beside.ts', import.meta.url));

/** What is said of each function, as it is written into its file. */
export const wordsFile = (): string => JSON.stringify(Object.fromEntries(wordsByName(catalogue)));

/** Takes out of the scripts what is said of functions to people, and puts it beside them as data: no calculation needs it. What
 *  a parameter means stays, for messages name it. */
export function leanWords(): Plugin {
  return {
    name: 'octavo:lean-words',
    apply: 'build',
    enforce: 'pre',
    resolveId: (asked, importer) => (asked === './words.ts' && importer?.includes('/src/engine/') ? beside : undefined),
    transform(code, id) {
      if (id === beside) {
        const reference = this.emitFile({ type: 'asset', name: 'words.json', source: wordsFile() });
        return `const address = import.meta.ROLLUP_FILE_URL_${reference};\n${code}`;
      }
      return id.includes('/functions/') && !id.includes('/node_modules/') ? withoutWords(code, id) : undefined;
    },
  };
}

const said = new Set(['summary', 'source', 'example', 'remarks']);

/** The text of a module whose definitions have lost their words. */
export function withoutWords(code: string, id: string): string {
  const file = ts.createSourceFile(id, code, ts.ScriptTarget.Latest);
  const found: ts.ObjectLiteralElementLike[] = [];
  const wordsOf = (object: ts.Node | undefined, names: ReadonlySet<string>): void => {
    if (!object || !ts.isObjectLiteralExpression(object)) return;
    for (const property of object.properties) {
      const name = property.name?.getText(file) ?? '';
      if (names.has(name)) found.push(property);
      if (name === 'returns' && ts.isPropertyAssignment(property)) wordsOf(property.initializer, new Set(['summary']));
    }
  };
  const visit = (node: ts.Node): void => {
    if (ts.isCallExpression(node) && node.expression.getText(file) === 'define') wordsOf(node.arguments[0], said);
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found
    .toSorted((a, b) => b.pos - a.pos)
    .reduce((text, { pos, end }) => text.slice(0, pos) + text.slice(end).replace(/^\s*,/, ''), code);
}

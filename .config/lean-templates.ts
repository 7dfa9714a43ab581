import ts from 'typescript';
import type { Plugin } from 'vite';

/** Takes the line ends and the indents out of the templates that stand in scripts: in a page one space is as good. */
export function leanTemplates(): Plugin {
  return {
    name: 'octavo:lean-templates',
    apply: 'build',
    enforce: 'pre',
    transform(code, id) {
      if (!id.includes('/src/') || id.includes('/node_modules/') || !/\b(?:html|svg)`/.test(code)) return undefined;
      const words = wordsOf(ts.createSourceFile(id, code, ts.ScriptTarget.Latest));
      return words.reduceRight(
        (text, [from, to]) => text.slice(0, from) + lean(text.slice(from, to)) + text.slice(to),
        code,
      );
    },
  };
}

const lean = (words: string): string => words.replaceAll(/\s*\n\s*/g, ' ');

/** Where what is written in templates begins and ends, in order; not what is computed in them. */
function wordsOf(file: ts.SourceFile): readonly (readonly [number, number])[] {
  const found: (readonly [number, number])[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isTaggedTemplateExpression(node) && /^(?:html|svg)$/.test(node.tag.getText(file))) {
      const { template } = node;
      const literals = ts.isTemplateExpression(template)
        ? [template.head, ...template.templateSpans.map(({ literal }) => literal)]
        : [template];
      found.push(...literals.map((literal) => [literal.getStart(file), literal.end] as const));
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found.toSorted(([a], [b]) => a - b);
}

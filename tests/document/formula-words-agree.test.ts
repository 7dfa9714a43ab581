import { describe, expect, test } from 'vitest';
import { formatReference, mapReferences } from '../../src/document/formula-words.ts';
import { isRefusal } from '../../src/document/command.ts';
import { scopeOf } from '../../src/document/scope.ts';
import { sameWord } from '../../src/document/sheets.ts';
import type { OctavoDocument, Sheet } from '../../src/document/types.ts';
import { decodeDocument } from '../../src/exchange/decode.ts';
import { catalogue } from '../../functions/index.ts';
import { compile } from '../../src/formula/compile.ts';
import { functionsByName } from '../../src/formula/types.ts';
import { templates } from '../../templates/index.ts';
import { sampleDocument } from './samples.ts';

const opened = templates.map(({ content }) => decodeDocument(content));
const documents = [sampleDocument(), ...opened.flatMap((each): OctavoDocument[] => (isRefusal(each) ? [] : [each]))];

/** The cells that a formula refers to by its words, names resolved, as `sheet!B4:C5`. */
function byWords({ sheets }: OctavoDocument, standing: Sheet, formula: string): string[] {
  const cells: string[] = [];
  mapReferences(formula, (written) => {
    const sheet = sheets.find(({ name }) => sameWord(name, written.sheet ?? standing.name));
    const { sheet: _, ...bare } = written;
    const plain = formatReference(bare).replaceAll('$', '');
    const named = [...(sheet?.names ?? [])].find(([name]) => sameWord(name, plain))?.[1];
    cells.push(`${sheet?.id ?? '?'}!${named ?? plain}`);
    return written;
  });
  return [...new Set(cells)].sort();
}

/** References are rewritten by words, and calculated by grammar: both must see the same ones. */
describe.each(documents)('in "$title"', (document) => {
  test('words and grammar find the same references', () => {
    let count = 0;
    for (const sheet of document.sheets) {
      const scope = scopeOf(document, sheet.id, functionsByName(catalogue), () => ({ kind: 'unknown' }));
      for (const { text } of sheet.cells.values()) {
        if (!text.startsWith('=')) continue;
        const byGrammar = compile(text, scope).references.map(({ sheet: id, cells }) => `${id}!${cells}`);
        expect(`${text} ${byWords(document, sheet, text).join(' ')}`).toBe(
          `${text} ${[...new Set(byGrammar)].sort().join(' ')}`,
        );
        count++;
      }
    }
    expect(count).toBeGreaterThan(3);
  });
});

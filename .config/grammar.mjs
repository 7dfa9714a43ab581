/** `npm run grammar`: makes src/formula/parser.ts and parser-terms.ts out of the grammar beside it. */
import { buildParserFile } from '@lezer/generator';
import { readFile, writeFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { format, resolveConfig } from 'prettier';

const folder = resolve(import.meta.dirname, '../src/formula');
const grammar = resolve(folder, 'formula.grammar');

/** The text that parser.ts (or parser-terms.ts) should have, formatted like the rest of the sources. */
export async function generateParser(part = 'parser') {
  const files = buildParserFile(await readFile(grammar, 'utf8'), { fileName: grammar, typeScript: true });
  const style = await resolveConfig(resolve(folder, 'parser.ts'));
  return format(part === 'parser' ? files.parser : files.terms, { ...style, parser: 'typescript' });
}

if (process.argv[1] === import.meta.filename) {
  await writeFile(resolve(folder, 'parser.ts'), await generateParser());
  await writeFile(resolve(folder, 'parser-terms.ts'), await generateParser('terms'));
}

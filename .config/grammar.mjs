/** `npm run grammar`: makes src/formula/parser.ts out of the grammar beside it. */
import { buildParserFile } from '@lezer/generator';
import { readFile, writeFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { format, resolveConfig } from 'prettier';

const folder = resolve(import.meta.dirname, '../src/formula');
const grammar = resolve(folder, 'formula.grammar');
const target = resolve(folder, 'parser.ts');

/** The text that parser.ts should have, formatted like the rest of the sources. */
export async function generateParser() {
  const { parser } = buildParserFile(await readFile(grammar, 'utf8'), { fileName: grammar, typeScript: true });
  return format(parser, { ...(await resolveConfig(target)), parser: 'typescript' });
}

if (process.argv[1] === import.meta.filename) await writeFile(target, await generateParser());

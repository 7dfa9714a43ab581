import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { minifySync, parseAst } from 'vite';
import { hear, nothingSaid } from './said.ts';

/** A program with short names for those properties that nothing outside it can know: neither JavaScript and the browser, nor
 *  what is said elsewhere, nor any text in the program itself. Names in capitals stay, for functions of formulas are so called.
 *
 * @param sources - Modules by their files.
 * @param elsewhere - What speaks to the program, or is spoken to by it. */
export function withShortNames(
  sources: ReadonlyMap<string, string>,
  elsewhere: readonly string[],
): ReadonlyMap<string, string> {
  const reserved = wordsOf([...declarations(), ...elsewhere, ...[...sources.values()].flatMap(textsIn)]);
  let cache: Record<string, string | false> = {};
  const short = new Map<string, string>();
  for (const [file, code] of sources) {
    const options = {
      module: true,
      compress: false,
      mangle: false,
      mangleProps: { include: /[a-z]/, reserved, cache },
    };
    const done = minifySync(file, code, options);
    cache = done.mangleCache ?? cache;
    short.set(file, done.code);
  }
  return short;
}

/** What the language and the browser declare, without the remarks on it. */
function declarations(): readonly string[] {
  const folder = dirname(createRequire(import.meta.url).resolve('typescript'));
  const files = readdirSync(folder).filter((file) => /^lib\..*d\.ts$/.test(file));
  return files.map((file) => readFileSync(join(folder, file), 'utf8').replaceAll(/\/\*[^]*?\*\//g, ' '));
}

function textsIn(code: string): readonly string[] {
  const texts: string[] = [];
  hear(parseAst(code).body, nothingSaid(), ({ type, value }) => {
    if (type === 'Literal' || type === 'TemplateElement') texts.push(JSON.stringify(value) ?? '');
    return false;
  });
  return texts;
}

const wordsOf = (texts: readonly string[]): string[] => [
  ...new Set(texts.flatMap((text) => text.match(/[A-Za-z_$][\w$]*/g) ?? [])),
];

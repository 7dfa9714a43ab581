import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';

const root = resolve(import.meta.dirname, '../..');

/** The text of all files in a folder whose names end so. */
const textOf = (folder: string, ending: string): string =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith(ending) && !/catalogue|robust/.test(file))
    .map((file) => readFileSync(join(root, folder, file), 'utf8'))
    .join('\n');

/** The sheet functions that tests of their own call, by their names or as they are exported. */
export function testedNames(): ReadonlySet<string> {
  const tests = textOf('tests/functions', '.test.ts');
  const words = new Set(tests.match(/\w+/g));
  const definitions = textOf('functions', '.ts').matchAll(/export const (\w+) = define\(\{\s*name: '([A-Z0-9_.]+)'/g);
  const exported = [...definitions].filter(([, constant]) => words.has(constant!)).map(([, , name]) => name!);
  return new Set([...exported, ...(tests.match(/[A-Z]+\.[A-Z0-9_]+/g) ?? [])]);
}

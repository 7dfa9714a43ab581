import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { withoutWords, wordsFile } from '../../.config/lean-words.ts';
import { catalogue } from '../../functions/index.ts';
import { sources } from '../../functions/sources.ts';

const folder = resolve(import.meta.dirname, '../../functions');
const modules = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts'))
  .map((name) => ({ name, code: readFileSync(join(folder, name), 'utf8') }));

test('the file of words holds what every definition says, and nothing else', () => {
  const said = catalogue.map(({ name, summary, returns, source, example, remarks }) => {
    const words = { summary, gives: returns.summary, source: { ...source, ...sources[source.source] } };
    return [name, { ...words, example: example.formula, ...(remarks === undefined ? {} : { remarks }) }];
  });
  expect(JSON.parse(wordsFile())).toEqual(Object.fromEntries(said));
});

test('definitions lose their words and keep all else', () => {
  const parameters = "parameters: { side: { quantity: 'length', summary: 'what a side is' } }";
  const compute = 'compute: ({ side }) => ({ summary: side ** 2 })';
  const code = `export const area = define({
    name: 'A.B', summary: 'What, it says.', ${parameters},
    returns: { summary: 'what it gives', quantity: 'area' },
    source: { source: 'own', at: 'a²' },
    example: { formula: '=A.B(2)', gives: 4 }, remarks,
    ${compute},
  });`;
  const left = withoutWords(code, 'area.ts').replaceAll(/\s+/g, ' ');
  expect(left).toBe(
    `export const area = define({ name: 'A.B', ${parameters}, returns: { quantity: 'area' }, ${compute}, });`,
  );
});

test('every summary is taken out, and no name of a parameter', () => {
  const left = modules.map(({ name, code }) => withoutWords(code, name)).join('\n');
  for (const { parameters } of catalogue) for (const name of Object.keys(parameters)) expect(left).toContain(name);
  const kept = catalogue.filter(({ summary }) => left.includes(summary)).map(({ name }) => name);
  // Four that are made by one function of ours, which is given their summaries.
  expect(kept.filter((name) => !name.startsWith('SPREAD.'))).toEqual([]);
});

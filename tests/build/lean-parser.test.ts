import fc from 'fast-check';
import { expect, test } from 'vitest';
import { leanParser } from '../../.config/lean-parser.ts';
import { catalogue } from '../../functions/index.ts';
import { isRefusal } from '../../src/document/command.ts';
import { decodeDocument } from '../../src/exchange/decode.ts';
import { treeOf as whole } from '../../src/formula/tree.ts';
import { templates } from '../../templates/index.ts';
import { built } from './built.ts';

const { treeOf: lean } = await built<{ readonly treeOf: typeof whole }>(['src/formula/tree.ts'], leanParser());

const documents = templates.map(({ content }) => decodeDocument(content));
const texts = documents.flatMap((each) =>
  isRefusal(each) ? [] : each.sheets.flatMap(({ cells }) => [...cells.values()].map(({ text }) => text)),
);
const formulas = [...catalogue.map(({ example }) => example.formula), ...texts.filter((text) => text.startsWith('='))];

/** As texts, which are quicker to compare than their thousands of pieces. */
function expectSame(text: string): void {
  if (JSON.stringify(lean(text)) !== JSON.stringify(whole(text))) expect(lean(text)).toEqual(whole(text));
}

test('the lean parser parts every formula of the catalogue and the starter sheets as the whole one does', () => {
  expect(formulas.length).toBeGreaterThan(1000);
  formulas.forEach(expectSame);
});

test('also while it is being typed', () => {
  for (const text of formulas.filter((_, index) => index % 12 === 0))
    for (let length = 0; length < text.length; length++) expectSame(text.slice(0, length));
});

test('also where pieces of formulas are thrown together', () => {
  const pieces = [...new Set(formulas.join(' ').match(/[\w.]+|"[^"]*"|\S|\s/g))];
  const thrown = fc.array(fc.oneof(fc.constantFrom(...pieces), fc.string()), { maxLength: 40 });
  fc.assert(
    fc.property(thrown, (parts) => {
      expectSame(`=${parts.join('')}`);
    }),
    { numRuns: 3000 },
  );
});

test.each([
  ['open brackets', '='.padEnd(400, '(')],
  ['signs', '='.padEnd(400, '-')],
  ['brackets in brackets', `=${'(1+'.repeat(200)}2${')'.repeat(200)}`],
  ['arguments', `=SUM(${'A1,'.repeat(3000)}B2)`],
  ['terms', `=A1${'+A1*2'.repeat(2000)}`],
])('also with very many %s', (_, text) => {
  expectSame(text);
});

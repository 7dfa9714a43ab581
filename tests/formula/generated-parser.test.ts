import { readFile } from 'node:fs/promises';
import { expect, test } from 'vitest';
import { generateParser } from '../../.config/grammar.mjs';

test('the parser was generated from the grammar as it stands; if not, run: npm run grammar', async () => {
  const present = await readFile(new URL('../../src/formula/parser.ts', import.meta.url), 'utf8');
  expect(present).toBe(await generateParser());
});

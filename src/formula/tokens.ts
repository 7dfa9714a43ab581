import { ExternalTokenizer, type InputStream } from '@lezer/lr';
import { unitSpellings } from '../units/table.ts';
import { parseAddress } from './address.ts';
import { Address, Truth, Unit } from './parser-terms.ts';

/** Spellings that a formula cannot have: quotes open a text, and % divides by a hundred. */
const spellings: readonly string[] = unitSpellings
  .filter((spelling) => !/["%]/.test(spelling))
  .sort((a, b) => b.length - a.length);
const LONGEST = Math.max(...spellings.map((spelling) => spelling.length));

/** What goes on after a unit makes it part of a longer word. */
const isWordLike = (code: number): boolean => code >= 0 && /[\p{L}\p{N}_.(!]/u.test(String.fromCodePoint(code));

function ahead(input: InputStream): string {
  let text = '';
  for (let offset = 0; offset <= LONGEST; offset++) {
    const code = input.peek(offset);
    if (code < 0) break;
    text += String.fromCharCode(code);
  }
  return text;
}

/** The longest unit that stands here; asked for only after a number. */
export const unit = new ExternalTokenizer((input) => {
  const text = ahead(input);
  const found = spellings.find(
    (spelling) => text.startsWith(spelling) && !isWordLike(text.codePointAt(spelling.length) ?? -1),
  );
  if (found) input.acceptToken(Unit, found.length);
});

/** Tells addresses and truths from other words. Whole words are classified, so that `Vb1_net` stays one word. */
export function classify(word: string, _stack?: unknown): number {
  if (parseAddress(word)) return Address;
  return /^(true|false)$/i.test(word) ? Truth : -1;
}

import { ExternalTokenizer, type InputStream } from '@lezer/lr';
import { LONGEST_UNIT, unitAhead } from '../units/table.ts';
import { parseAddress } from './address.ts';
import { Address, Truth, Unit } from './parser-terms.ts';

function ahead(input: InputStream): string {
  let text = '';
  // One character more shows whether the word goes on.
  for (let offset = 0; offset <= LONGEST_UNIT; offset++) {
    const code = input.peek(offset);
    if (code < 0) break;
    text += String.fromCharCode(code);
  }
  return text;
}

/** What mostly follows a number, and begins no unit. */
const NO_UNITS = new Set([...' ,)+-*/^'].map((sign) => sign.charCodeAt(0)));

/** The longest unit that stands here; asked for only after a number. */
export const unit = new ExternalTokenizer((input) => {
  if (NO_UNITS.has(input.next)) return;
  const found = unitAhead(ahead(input));
  if (found !== undefined) input.acceptToken(Unit, found.length);
});

/** Tells addresses and truths from other words. Whole words are classified, so that `Vb1_net` stays one word. */
export function classify(word: string, _stack?: unknown): number {
  if (parseAddress(word)) return Address;
  return /^(true|false)$/i.test(word) ? Truth : -1;
}

import type { Refusal } from '../../document/command.ts';
import type { OctavoDocument } from '../../document/types.ts';
import { formatNumber } from '../../units/show.ts';
import { encodeDocument } from '../encode.ts';
import { readFile } from '../file.ts';
import { checksum, fromBase64Url, toBase64Url } from './bytes.ts';
import { deflate, inflate } from './deflate.ts';

/** The most characters of a link, address and all. Browsers take far more; programs that pass links on cut longer ones. */
export const MOST_CHARACTERS = 40_000;

/** No document that fits into a link is longer, in bytes of JSON. */
const MOST_BYTES = 16_000_000;

const MARK = '#octavo=';
/** The way in which the content is written: a sum, a point, deflated JSON. */
const WRITING = '1';

const count = (number: number): string => formatNumber(number, 12);

/** The whole document as the fragment of an address, which browsers never send to a server. `base` is the address of the
 *  page that is to open it. */
export async function linkTo(document: OctavoDocument, base: string): Promise<string | Refusal> {
  const bytes = new TextEncoder().encode(JSON.stringify(encodeDocument(document)));
  const content = toBase64Url(await deflate(bytes));
  const link = `${base.split('#')[0] ?? ''}${MARK}${WRITING}.${checksum(bytes)}.${content}`;
  if (link.length <= MOST_CHARACTERS) return link;
  const baseline = document.baseline ? ' (letting the pinned baseline go makes it shorter)' : '';
  return {
    refused:
      `“${document.title}” makes a link of ${count(link.length)} characters, and ${count(MOST_CHARACTERS)} is the most ` +
      `that is passed on whole${baseline}. Save a copy to a file and send that instead.`,
  };
}

/** Whether an address means to carry a document. */
export const carriesDocument = (address: string): boolean => address.includes(MARK);

/** The document that an address carries, as a copy with ids of its own; a sentence where it is damaged. */
export async function readLink(address: string): Promise<OctavoDocument | Refusal> {
  // Programs break long links into lines, and take the full stop or the bracket behind them along.
  const fragment = address
    .slice(address.indexOf(MARK) + MARK.length)
    .replaceAll(/\s|%20|%0A|%0D/gi, '')
    .replace(/[^\w-]+$/, '');
  const [writing = '', sum = '', content = '', ...more] = fragment.split('.');
  if (/^[1-9]\d{0,3}$/.test(writing) && writing !== WRITING) {
    return { refused: 'This link was made by a newer Octavo. Reload the page to get the newest, then open it again.' };
  }
  if (writing !== WRITING || more.length > 0) return damaged('it does not begin as a link to a document does');
  const packed = fromBase64Url(content);
  if (!packed) return damaged('it holds characters that no link of ours has, or its end is missing');
  const bytes = await inflate(packed, MOST_BYTES);
  if (!bytes || checksum(bytes) !== sum) return damaged('a part of it is missing or was changed on the way');
  return readFile(new TextDecoder().decode(bytes));
}

const damaged = (what: string): Refusal => ({
  refused: `The document in this link cannot be read: ${what}. Copy the whole link anew, or ask for the file.`,
});

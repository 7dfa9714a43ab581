import { crc32, deflateRawSync, inflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isRefusal } from '../../src/document/command.ts';
import type { OctavoDocument } from '../../src/document/types.ts';
import { decodeDocument } from '../../src/exchange/decode.ts';
import { encodeDocument } from '../../src/exchange/encode.ts';
import { checksum, fromBase64Url, toBase64Url } from '../../src/exchange/link/bytes.ts';
import { carriesDocument, linkTo, MOST_CHARACTERS, readLink } from '../../src/exchange/link/link.ts';
import { templates } from '../../templates/index.ts';
import { anyCommands, played, sampleDocument } from '../document/samples.ts';

const BASE = 'https://sheets.example/octavo/';

async function linked(document: OctavoDocument): Promise<string> {
  const link = await linkTo(document, BASE);
  if (typeof link !== 'string') throw new Error(link.refused);
  return link;
}

async function opened(link: string): Promise<OctavoDocument> {
  const document = await readLink(link);
  if (isRefusal(document)) throw new Error(document.refused);
  return document;
}

const refusal = async (link: string): Promise<string> => {
  const outcome = await readLink(link);
  return isRefusal(outcome) ? outcome.refused : 'no refusal';
};

/** As a fragment is written, from any bytes, by the deflate of another library. */
const fragmentOf = (bytes: Buffer, sum = crc(bytes)): string =>
  `${BASE}#octavo=1.${sum}.${deflateRawSync(bytes).toString('base64url')}`;

function crc(bytes: Uint8Array): string {
  return crc32(bytes).toString(16).padStart(8, '0');
}

describe('a link', () => {
  test.each(templates)('carries the whole of $id as a copy', async ({ content }) => {
    const document = decodeDocument(content);
    if (isRefusal(document)) throw new Error(document.refused);
    const link = await linked(document);
    const again = await opened(link);
    expect(encodeDocument(again)).toEqual(encodeDocument(document));
    expect(again.id).not.toBe(document.id);
  });

  test('keeps all that can be typed, with the baseline', async () => {
    await fc.assert(
      fc.asyncProperty(anyCommands(), async (commands) => {
        const document = played(sampleDocument(), commands).at(-1)?.document ?? sampleDocument();
        expect(encodeDocument(await opened(await linked(document)))).toEqual(encodeDocument(document));
      }),
      { numRuns: 60 },
    );
  });

  test('is an address that needs no escaping, all of the document behind its #', async () => {
    const link = await linked(sampleDocument());
    expect(new URL(link).href).toBe(link);
    expect(new URL(link).pathname + new URL(link).search).toBe('/octavo/');
    expect(carriesDocument(link)).toBe(true);
    expect(carriesDocument(`${BASE}#D24`)).toBe(false);
  });

  test('takes the place of another fragment of the page', async () => {
    const link = await linkTo(sampleDocument(), `${BASE}#octavo=1.old`);
    expect(link).toBe(await linked(sampleDocument()));
  });

  test('is written as other libraries read it', async () => {
    const [, sum = '', content = ''] = new URL(await linked(sampleDocument())).hash.split('.');
    const bytes = inflateRawSync(Buffer.from(content, 'base64url'));
    expect(JSON.parse(bytes.toString('utf8'))).toEqual(encodeDocument(sampleDocument()));
    expect(sum).toBe(crc(bytes));
  });

  test('is opened with line breaks in it and a full stop behind it', async () => {
    const link = await linked(sampleDocument());
    const broken = `${link.slice(0, 80)}\r\n${link.slice(80, 150)} ${link.slice(150)}).`;
    expect(encodeDocument(await opened(broken))).toEqual(encodeDocument(sampleDocument()));
  });
});

describe('a link that is too long', () => {
  test('is refused with its length, the limit and what to do instead', async () => {
    const document = sampleDocument();
    const [first, ...others] = document.sheets;
    const noise = Array.from({ length: 9000 }, (_, index) => Math.abs(Math.sin(index) * 1e9).toString(36)).join(' ');
    const cells = new Map([...first!.cells, ['A9', { text: noise }]]);
    const outcome = await linkTo({ ...document, sheets: [{ ...first!, cells }, ...others] }, BASE);
    expect(outcome).toEqual({
      refused: expect.stringMatching(
        /^“Sample” makes a link of [\d\u2009]+ characters, and 40\u2009000 is the most .* Save a copy to a file/,
      ),
    });
  });

  test('the limit holds for the address and the fragment together', async () => {
    const length = (await linked(sampleDocument())).length;
    const path = 'x'.repeat(MOST_CHARACTERS - length);
    expect(await linkTo(sampleDocument(), BASE + path)).toHaveLength(MOST_CHARACTERS);
    expect(await linkTo(sampleDocument(), `${BASE}${path}x`)).toHaveProperty('refused');
  });
});

describe('a damaged link', () => {
  test('cut off anywhere is refused', async () => {
    const link = await linked(sampleDocument());
    const start = link.indexOf('#octavo=') + '#octavo='.length;
    for (let length = start; length < link.length; length += 5) {
      expect(await refusal(link.slice(0, length))).toMatch(/^The document in this link cannot be read: .+ Copy/);
    }
  });

  test('with one character changed anywhere is refused, or is the same document', async () => {
    const link = await linked(sampleDocument());
    const start = link.indexOf('1.') + 2;
    for (let at = start; at < link.length; at += 3) {
      const other = link[at] === 'A' ? 'B' : 'A';
      const outcome = await readLink(link.slice(0, at) + other + link.slice(at + 1));
      // The last character has bits that stand for nothing.
      if (!isRefusal(outcome)) expect(encodeDocument(outcome)).toEqual(encodeDocument(sampleDocument()));
      else expect(outcome.refused).toContain('Copy the whole link anew');
    }
  });

  test('never throws, whatever stands behind the mark', async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: 'binary' }), async (text) => {
        expect(isRefusal(await readLink(`${BASE}#octavo=${text}`))).toBe(true);
      }),
    );
  });

  test.each([
    ['text that is no JSON', Buffer.from('Dear reader')],
    ['JSON of another kind', Buffer.from('{"drivers": [1, 2, 3]}')],
    ['bytes that are no text', Buffer.from([0xff, 0xfe, 0x80])],
  ])('of %s with a true sum is refused', async (_, bytes) => {
    expect(await refusal(fragmentOf(bytes))).not.toBe('no refusal');
  });

  test('of a newer version says so', async () => {
    expect(await refusal(`${BASE}#octavo=2.00000000.abcd`)).toContain('made by a newer Octavo');
  });

  test('that would grow beyond all bounds is refused', async () => {
    expect(await refusal(fragmentOf(Buffer.alloc(40_000_000, ' ')))).toContain('cannot be read');
  });
});

describe('the parts of a link', () => {
  // RFC 4648, section 10, without padding; the letters of section 5 for the last.
  test.each([
    ['', ''],
    ['f', 'Zg'],
    ['fo', 'Zm8'],
    ['foo', 'Zm9v'],
    ['foob', 'Zm9vYg'],
    ['fooba', 'Zm9vYmE'],
    ['foobar', 'Zm9vYmFy'],
    ['\u00fb\u00ff', '-_8'],
  ])('%j is written %j', (text, written) => {
    const bytes = Uint8Array.from(text, (letter) => letter.charCodeAt(0));
    expect(toBase64Url(bytes)).toBe(written);
    expect(fromBase64Url(written)).toEqual(bytes);
  });

  // The check value of this polynomial, as catalogues of such sums print it.
  test('the sum of the nine digits is the one that is printed', () => {
    expect(checksum(new TextEncoder().encode('123456789'))).toBe('cbf43926');
  });
});

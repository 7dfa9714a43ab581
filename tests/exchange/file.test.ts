import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isRefusal } from '../../src/document/command.ts';
import { newDocument } from '../../src/document/create.ts';
import type { OctavoDocument } from '../../src/document/types.ts';
import { decodeDocument } from '../../src/exchange/decode.ts';
import { encodeDocument } from '../../src/exchange/encode.ts';
import { readFile, writeFile } from '../../src/exchange/file.ts';
import { migrate } from '../../src/exchange/migrations.ts';
import { anyCommands, played, sampleDocument } from '../document/samples.ts';

const opened = (text: string): OctavoDocument => {
  const document = readFile(text);
  if (isRefusal(document)) throw new Error(document.refused);
  return document;
};

const refusalOf = (content: unknown): string => {
  const outcome = decodeDocument(content);
  return isRefusal(outcome) ? outcome.refused : 'no refusal';
};

const content = (changes: object = {}): Record<string, unknown> => ({
  ...encodeDocument(sampleDocument()),
  ...changes,
});

const withCell = (cell: unknown): Record<string, unknown> =>
  content({
    sheets: [{ name: 'One', rows: 9, columns: [{ width: 99 }, { width: 99 }], names: {}, cells: { B4: cell } }],
  });

describe('a file', () => {
  test('reads as what was typed', () => {
    expect(encodeDocument(sampleDocument())).toMatchObject({
      octavo: 1,
      title: 'Sample',
      system: 'metric',
      sheets: [
        {
          name: 'Two drivers',
          names: { Woofer: 'B4', Pair: 'B4:C5' },
          cells: { B4: '38 Hz', D6: { text: '1808 Hz', range: ['800 Hz', '6 kHz'] } },
        },
        { name: 'Box' },
      ],
    });
  });

  test('gives the same document under ids of its own', () => {
    const document = sampleDocument();
    const again = opened(writeFile(document));
    expect(again.id).not.toBe(document.id);
    expect(again.sheets.map(({ id }) => id)).not.toEqual(document.sheets.map(({ id }) => id));
    expect(encodeDocument(again)).toEqual(encodeDocument(document));
  });

  test('written twice is the same text, whatever the order of the edits', () => {
    const document = sampleDocument();
    const [sheet] = document.sheets;
    const cells = new Map([...(sheet?.cells ?? [])].reverse());
    const turned = { ...document, sheets: [{ ...sheet!, cells }, ...document.sheets.slice(1)] };
    expect(writeFile(turned)).toBe(writeFile(document));
  });

  test('with ids takes the place of the document it came from', () => {
    fc.assert(
      fc.property(anyCommands(), (commands) => {
        const document = played(sampleDocument(), commands).at(-1)?.document ?? sampleDocument();
        const stored: unknown = JSON.parse(JSON.stringify(encodeDocument(document, { ids: true })));
        expect(decodeDocument(stored)).toEqual(document);
      }),
      { numRuns: 300 },
    );
  });

  test('may begin with a byte order mark', () => {
    expect(opened(`\uFEFF${writeFile(newDocument('Marked'))}`).title).toBe('Marked');
  });
});

describe('a damaged or foreign file', () => {
  test.each([
    ['is no JSON', 'Fs;38', 'the text is not readable JSON'],
    ['is another kind of JSON', '{"sheets": []}', 'it does not begin with {"octavo": 1'],
    ['is a list', '[1, 2]', 'it does not begin with {"octavo": 1'],
    ['is empty', '', 'the text is not readable JSON'],
    ['comes from the future', '{"octavo": 99}', 'written by a newer Octavo (file version 99; this one reads up to 1)'],
    ['has an odd version', '{"octavo": "one"}', 'has the version "one"; a whole number from 1 is wanted'],
  ])('that %s is refused with the reason', (_, text, reason) => {
    expect(readFile(text)).toEqual({ refused: expect.stringContaining(reason) });
  });

  test.each([
    ['a number for a text', withCell(38), 'sheets[0].cells.B4: an object is wanted, but the number 38 was found.'],
    [
      'a wrong look',
      withCell({ text: '', look: 'loud' }),
      'sheets[0].cells.B4.look: one of "section", "label", "note" is wanted, but the text "loud" was found.',
    ],
    [
      'an unknown field',
      withCell({ text: '', colour: 'red' }),
      'sheets[0].cells.B4.colour: is not known; known are text, unit, range, choices, look, origin.',
    ],
    ['a range with one end', withCell({ text: '', range: ['1 Hz'] }), 'sheets[0].cells.B4.range: two texts are wanted'],
    ['no title', content({ title: undefined }), 'title: a text is wanted, but nothing was found.'],
    [
      'another system',
      content({ system: 'naval' }),
      'system: one of "metric", "imperial" is wanted, but the text "naval" was found.',
    ],
    ['no sheets', content({ sheets: [] }), 'sheets: at least one sheet is wanted.'],
    [
      'a foreign baseline',
      content({ baseline: { pinned: '2026-05-30T14:00:00Z', cells: { Nowhere: {} } } }),
      'there is no sheet "Nowhere"',
    ],
    [
      'a baseline of no time',
      content({ baseline: { pinned: 'yesterday', cells: {} } }),
      'baseline.pinned: a time, as "2026-05-30T14:00:00Z", is wanted, but the text "yesterday" was found.',
    ],
    [
      'a baseline of what is no cell',
      content({ baseline: { pinned: '2026-05-30T14:00:00Z', cells: { Box: { somewhere: '3' } } } }),
      'baseline.cells.Box.somewhere: "somewhere" is no address of a cell, as B4.',
    ],
  ])('with %s says where and what is wanted', (_, value, reason) => {
    expect(refusalOf(value)).toContain(reason);
  });

  test('with a cell outside its sheet says so', () => {
    const sheet = { name: 'One', rows: 9, columns: [{ width: 99 }], names: {}, cells: { A10: 'x' } };
    expect(refusalOf(content({ sheets: [sheet] }))).toContain(
      'A10 lies outside the 9 rows and 1 columns of the sheet.',
    );
  });

  test('with two sheets of one name says so', () => {
    const sheet = { name: 'One', rows: 9, columns: [{ width: 99 }], names: {}, cells: {} };
    const twin = { ...sheet, name: 'ONE' };
    expect(refusalOf(content({ sheets: [sheet, twin] }))).toContain('sheets[1]: There is already a sheet "One"');
  });

  test('with two plots of one id says so', () => {
    const plot = { id: 'p', title: 'Level', kind: 'curves', series: [], limits: [], marks: [] };
    const sheet = { name: 'One', rows: 9, columns: [{ width: 99 }], names: {}, cells: {}, plots: [plot, plot] };
    expect(refusalOf(content({ sheets: [sheet] }))).toContain('plots[1]: the id "p" is already another plot\'s.');
  });

  test('tells how many faults there are', () => {
    expect(refusalOf(content({ title: 1, system: 2 }))).toContain('(and 1 more)');
  });

  test('never throws, whatever it holds', () => {
    fc.assert(
      fc.property(fc.json(), (text) => {
        expect(isRefusal(readFile(text))).toBe(true);
      }),
    );
    fc.assert(
      fc.property(fc.jsonValue(), fc.constantFrom('title', 'system', 'sheets', 'baseline'), (value, field) => {
        const outcome = decodeDocument(content({ [field]: value }));
        expect(isRefusal(outcome) || field === 'title' || field === 'baseline').toBe(true);
      }),
    );
  });

  test('cut off anywhere is refused', () => {
    const text = writeFile(sampleDocument());
    for (let length = 0; length < text.trimEnd().length; length += 7) {
      expect(isRefusal(readFile(text.slice(0, length)))).toBe(true);
    }
  });
});

describe('migrations', () => {
  const steps = [
    (held: Readonly<Record<string, unknown>>) => ({ ...held, octavo: 2, name: held['title'] }),
    (held: Readonly<Record<string, unknown>>) => ({ ...held, octavo: 3, shown: held['name'] }),
  ];

  test('run one after another from the version of the file', () => {
    expect(migrate({ octavo: 1, title: 'T' }, steps)).toMatchObject({ content: { octavo: 3, shown: 'T' } });
    expect(migrate({ octavo: 2, name: 'N' }, steps)).toEqual({ content: { octavo: 3, name: 'N', shown: 'N' } });
    expect(migrate({ octavo: 3 }, steps)).toEqual({ content: { octavo: 3 } });
  });

  test('a version beyond the last is refused', () => {
    expect(migrate({ octavo: 4 }, steps)).toEqual({ refused: expect.stringContaining('reads up to 3') });
  });
});

import { describe, expect, test } from 'vitest';
import { apply } from '../../src/document/apply.ts';
import { isRefusal, type Command } from '../../src/document/command.ts';
import { clipOf } from '../../src/document/commands/cell-edits.ts';
import type { OctavoDocument } from '../../src/document/types.ts';
import { sampleDocument } from './samples.ts';

function done(command: Command, document = sampleDocument()): OctavoDocument {
  const outcome = apply(document, command);
  if (isRefusal(outcome)) throw new Error(outcome.refused);
  return outcome.document;
}

function refused(command: Command, document = sampleDocument()): string {
  const outcome = apply(document, command);
  return isRefusal(outcome) ? outcome.refused : 'not refused';
}

const texts = (document: OctavoDocument, sheet = 'one'): Record<string, string> => {
  const cells = document.sheets.find(({ id }) => id === sheet)?.cells ?? new Map<string, { text: string }>();
  return Object.fromEntries([...cells].map(([address, { text }]) => [address, text]));
};
const namesOf = (document: OctavoDocument, sheet = 'one'): Record<string, string> =>
  Object.fromEntries(document.sheets.find(({ id }) => id === sheet)?.names ?? []);
const plotOf = (document: OctavoDocument, sheet = 'one') => document.sheets.find(({ id }) => id === sheet)?.plots[0];
const cellOf = (document: OctavoDocument, address: string) => document.sheets[0]?.cells.get(address);

describe('writing and clearing', () => {
  test('a new text keeps what the cell is for', () => {
    const document = done({ kind: 'write', sheet: 'one', texts: new Map([['D6', '2 kHz']]) });
    expect(cellOf(document, 'D6')).toEqual({ text: '2 kHz', range: ['800 Hz', '6 kHz'] });
  });

  test('an empty text removes a cell that was only text', () => {
    expect(cellOf(done({ kind: 'write', sheet: 'one', texts: new Map([['B4', '']]) }), 'B4')).toBeUndefined();
  });

  test('clearing keeps what the cells are for, unless the whole cells are cleared', () => {
    expect(cellOf(done({ kind: 'clear', sheet: 'one', cells: 'B4:D6' }), 'D6')).toEqual({
      text: '',
      range: ['800 Hz', '6 kHz'],
    });
    expect(cellOf(done({ kind: 'clear', sheet: 'one', cells: 'B4:D6', whole: true }), 'D6')).toBeUndefined();
  });

  test('attributes are set and removed one by one', () => {
    const set = done({ kind: 'describe', sheet: 'one', cells: 'D6:D7', attributes: { unit: 'kHz' } });
    expect(cellOf(set, 'D6')).toEqual({ text: '1808 Hz', range: ['800 Hz', '6 kHz'], unit: 'kHz' });
    const removed = done({ kind: 'describe', sheet: 'one', cells: 'D6', attributes: { range: undefined } }, set);
    expect(cellOf(removed, 'D6')).toEqual({ text: '1808 Hz', unit: 'kHz' });
  });
});

describe('copying', () => {
  test('tab-separated text fills a block, quoted fields and all', () => {
    const text = '38 Hz\t"two\nlines"\r\n4.8\t"say ""B4"""\r\n';
    const document = done({ kind: 'paste-text', to: { sheet: 'one', cell: 'A12' }, text });
    expect(texts(document)).toMatchObject({ A12: '38 Hz', B12: 'two\nlines', A13: '4.8', B13: 'say "B4"' });
  });

  test('text beyond the edge makes the sheet grow, and undoing makes it shrink again', () => {
    const command: Command = { kind: 'paste-text', to: { sheet: 'one', cell: 'F20' }, text: '1\t2\n3\t4' };
    const outcome = apply(sampleDocument(), command);
    if (isRefusal(outcome)) throw new Error(outcome.refused);
    expect([outcome.document.sheets[0]?.rows, outcome.document.sheets[0]?.columns.length]).toEqual([21, 7]);
    expect(done(outcome.undo, outcome.document)).toEqual(sampleDocument());
  });

  test('cells pasted elsewhere shift their relative references', () => {
    const clip = clipOf(sampleDocument(), 'one', 'D7:D9');
    const document = done({ kind: 'paste', to: { sheet: 'one', cell: 'E8' }, clip });
    expect(texts(document)).toMatchObject({
      E8: '=C5*2+D5',
      E9: '=Woofer*$B$5',
      E10: "='Two drivers'!C6+Box!Volume",
      D7: '=B4*2+C4',
    });
    expect(cellOf(document, 'E10')?.unit).toBe('Hz');
  });

  test('a clip over a larger area is repeated', () => {
    const clip = clipOf(sampleDocument(), 'one', 'B4');
    const document = done({ kind: 'paste', to: { sheet: 'one', cell: 'A12' }, clip, over: 'A12:B13' });
    expect(texts(document)).toMatchObject({ A12: '38 Hz', B12: '38 Hz', A13: '38 Hz', B13: '38 Hz' });
  });

  test('a clip keeps what it took, whatever becomes of the source', () => {
    const clip = clipOf(sampleDocument(), 'one', 'B4');
    const changed = done({ kind: 'write', sheet: 'one', texts: new Map([['B4', '99 Hz']]) });
    expect(texts(done({ kind: 'paste', to: { sheet: 'two', cell: 'C9' }, clip }, changed), 'two')['C9']).toBe('38 Hz');
  });

  test('filling down and right repeats the first cells with their references following', () => {
    const down = done({ kind: 'fill', sheet: 'one', cells: 'D7:D9', direction: 'down' });
    expect(texts(down)).toMatchObject({ D8: '=B5*2+C5', D9: '=B6*2+C6' });
    const right = done({ kind: 'fill', sheet: 'one', cells: 'D7:F7', direction: 'right' });
    expect(texts(right)).toMatchObject({ E7: '=C4*2+D4', F7: '=D4*2+E4' });
  });
});

describe('moving cells', () => {
  test('what referred to them follows: formulas on all sheets, names and plots', () => {
    const document = done({ kind: 'move', from: { sheet: 'one', cells: 'B4:C5' }, to: { sheet: 'one', cell: 'B14' } });
    expect(texts(document)).toMatchObject({
      B14: '38 Hz',
      C15: '2.6',
      D7: '=B14*2+C14',
      D8: '=Woofer*$B$15',
      D9: "='Two drivers'!B15+Box!Volume",
      D10: '=SUM(B14:C15)',
    });
    expect(texts(document)).not.toHaveProperty('B4');
    expect(namesOf(document)).toEqual({ Woofer: 'B14', Pair: 'B14:C15' });
    expect(texts(document, 'two')['B3']).toBe("='Two drivers'!B14");
  });

  test('the sheet grows to hold all of them, empty ones too', () => {
    const named = done({ kind: 'define-name', sheet: 'one', name: 'Empty', cells: 'F20' });
    const document = done(
      { kind: 'move', from: { sheet: 'one', cells: 'F19:F20' }, to: { sheet: 'one', cell: 'G20' } },
      named,
    );
    expect([document.sheets[0]?.rows, document.sheets[0]?.columns.length]).toEqual([21, 7]);
    expect(namesOf(document)['Empty']).toBe('G21');
  });

  test('to another sheet takes names along, and everything still reads what it read', () => {
    const document = done({ kind: 'move', from: { sheet: 'one', cells: 'B4:D7' }, to: { sheet: 'two', cell: 'C10' } });
    expect(texts(document, 'two')).toMatchObject({
      C10: '38 Hz',
      D11: '2.6',
      E13: '=C10*2+D10',
      B3: '=Box!C10',
      B4: '=Box!Woofer',
    });
    expect(texts(document)).toMatchObject({
      D8: '=Box!Woofer*Box!$C$11',
      D9: '=Box!C11+Box!Volume',
      D10: '=SUM(Box!C10:D11)',
    });
    expect(namesOf(document)).toEqual({});
    expect(namesOf(document, 'two')).toEqual({ Volume: 'B2', Woofer: 'C10', Pair: 'C10:D11' });
    expect(plotOf(document)).toMatchObject({ series: [], marks: [] });
  });

  test('to another sheet lets the moved formulas read the sheet that they left', () => {
    const document = done({ kind: 'move', from: { sheet: 'one', cells: 'D7:D9' }, to: { sheet: 'two', cell: 'D7' } });
    expect(texts(document, 'two')).toMatchObject({
      D7: "='Two drivers'!B4*2+'Two drivers'!C4",
      D8: "='Two drivers'!Woofer*'Two drivers'!$B$5",
      D9: "='Two drivers'!B5+Box!Volume",
    });
  });

  test('to another sheet that has one of their names is refused', () => {
    const both = done({ kind: 'define-name', sheet: 'two', name: 'woofer', cells: 'B2' });
    const command: Command = { kind: 'move', from: { sheet: 'one', cells: 'B4' }, to: { sheet: 'two', cell: 'B9' } };
    expect(refused(command, both)).toContain('"Box" has that name already');
  });

  test('a moved formula still reads the cells that it read', () => {
    const document = done({ kind: 'move', from: { sheet: 'one', cells: 'D7' }, to: { sheet: 'one', cell: 'A1' } });
    expect(texts(document)['A1']).toBe('=B4*2+C4');
    expect(plotOf(document)?.series[1]?.cell).toBe('A1');
  });
});

describe('rows and columns', () => {
  test('inserted rows carry everything with them', () => {
    const document = done({ kind: 'insert', sheet: 'one', axis: 'rows', at: 4, count: 2 });
    expect(texts(document)).toMatchObject({
      B4: '38 Hz',
      B7: '4.8',
      D9: '=B4*2+C4',
      D10: '=Woofer*$B$7',
      D11: "='Two drivers'!B7+Box!Volume",
      D12: '=SUM(B4:C7)',
    });
    expect(namesOf(document)).toEqual({ Woofer: 'B4', Pair: 'B4:C7' });
    expect(plotOf(document)).toMatchObject({ series: [{ cell: 'Woofer' }, { cell: 'D9' }], marks: [{ cell: 'D8' }] });
    expect(document.sheets[0]?.rows).toBe(22);
  });

  test('inserted columns too, with references from other sheets', () => {
    const document = done({ kind: 'insert', sheet: 'one', axis: 'columns', at: 1, count: 1 });
    expect(texts(document)).toMatchObject({ C4: '38 Hz', E7: '=C4*2+D4', E10: '=SUM(C4:D5)' });
    expect(texts(document, 'two')['B3']).toBe("='Two drivers'!C4");
    expect(document.sheets[0]?.columns.map(({ title }) => title)).toEqual([
      'Column 0',
      undefined,
      'Column 1',
      'Column 2',
      'Column 3',
      'Column 4',
      'Column 5',
    ]);
  });

  test('a deleted row takes its cells, its names and its marks, and shortens ranges', () => {
    const document = done({ kind: 'delete', sheet: 'one', axis: 'rows', at: 3, count: 1 });
    expect(texts(document)).toMatchObject({ B4: '4.8', D6: '=#REF!*2+#REF!', D9: '=SUM(B4:C4)' });
    expect(namesOf(document)).toEqual({ Pair: 'B4:C4' });
    expect(document.sheets[0]?.rows).toBe(19);
  });

  test('a baseline follows', () => {
    const cells = new Map([
      [
        'one',
        new Map([
          ['B5', '4.8'],
          ['D7', '=B5*2'],
        ]),
      ],
    ]);
    const pinned = done({ kind: 'pin', baseline: { pinned: 'now', cells } });
    const document = done({ kind: 'insert', sheet: 'one', axis: 'rows', at: 4, count: 1 }, pinned);
    expect(document.baseline?.cells.get('one')).toEqual(
      new Map([
        ['B6', '4.8'],
        ['D8', '=B6*2'],
      ]),
    );
  });

  test('the last row cannot go', () => {
    expect(refused({ kind: 'delete', sheet: 'one', axis: 'rows', at: 0, count: 20 })).toContain(
      'at least one of its rows',
    );
  });

  test('a column stays within sensible widths', () => {
    const width = (wanted: number) =>
      done({ kind: 'column', sheet: 'one', column: 0, attributes: { width: wanted } }).sheets[0]?.columns[0]?.width;
    expect([width(240.4), width(2), width(99_999)]).toEqual([240, 32, 1200]);
  });
});

describe('sheets', () => {
  test('a renamed sheet is followed by every formula that writes its name', () => {
    const document = done({ kind: 'rename-sheet', sheet: 'one', name: 'Pair' });
    expect(texts(document)['D9']).toBe('=Pair!B5+Box!Volume');
    expect(texts(document, 'two')).toMatchObject({ B3: '=Pair!B4', B4: '=Pair!Woofer' });
  });

  test('a duplicate refers to itself, by name as well, and has names and plots of its own', () => {
    const document = done({ kind: 'duplicate-sheet', sheet: 'one', id: 'copy' });
    expect(document.sheets.map(({ name }) => name)).toEqual(['Two drivers', 'Two drivers 2', 'Box']);
    expect(texts(document, 'copy')).toMatchObject({
      D7: '=B4*2+C4',
      D8: '=Woofer*$B$5',
      D9: "='Two drivers 2'!B5+Box!Volume",
    });
    expect(namesOf(document, 'copy')).toEqual({ Woofer: 'B4', Pair: 'B4:C5' });
    expect(plotOf(document, 'copy')).toEqual(plotOf(document));
    expect(texts(document)['D9']).toBe("='Two drivers'!B5+Box!Volume");
    expect(texts(document, 'two')['B3']).toBe("='Two drivers'!B4");
    const again = done({ kind: 'duplicate-sheet', sheet: 'copy', id: 'third' }, document);
    expect(again.sheets.map(({ name }) => name)).toEqual(['Two drivers', 'Two drivers 2', 'Two drivers 3', 'Box']);
    expect(texts(again, 'third')['D9']).toBe("='Two drivers 3'!B5+Box!Volume");
  });

  test.each([
    ['', 'at least one character'],
    ['box', 'already a sheet "Box"'],
    ['a!b', "cannot hold ' ! [ ]"],
    [' Box', 'cannot begin or end with a space'],
    ['x'.repeat(61), 'at most 60 characters; this one has 61'],
  ])('cannot be called "%s"', (name, reason) => {
    expect(refused({ kind: 'rename-sheet', sheet: 'one', name })).toContain(reason);
  });

  test('the only sheet cannot be deleted', () => {
    const one = done({ kind: 'delete-sheet', sheet: 'two' });
    expect(one.sheets).toHaveLength(1);
    expect(refused({ kind: 'delete-sheet', sheet: 'one' }, one)).toContain('only sheet');
  });

  test('can be reordered', () => {
    expect(done({ kind: 'move-sheet', sheet: 'one', to: 1 }).sheets.map(({ id }) => id)).toEqual(['two', 'one']);
  });
});

describe('names', () => {
  test('a renamed name is followed on all sheets, in plots, and nowhere else', () => {
    const document = done({ kind: 'rename-name', sheet: 'one', from: 'woofer', to: 'Bass' });
    expect(namesOf(document)).toEqual({ Bass: 'B4', Pair: 'B4:C5' });
    expect(texts(document)['D8']).toBe('=Bass*$B$5');
    expect(texts(document, 'two')['B4']).toBe("='Two drivers'!Bass");
    expect(plotOf(document)?.series[0]?.cell).toBe('Bass');
    expect(namesOf(document, 'two')).toEqual({ Volume: 'B2' });
  });

  test('of another sheet stay when they read the same', () => {
    const both = done({ kind: 'define-name', sheet: 'two', name: 'Woofer', cells: 'B2' });
    const written = done({ kind: 'write', sheet: 'two', texts: new Map([['C1', '=Woofer']]) }, both);
    const document = done({ kind: 'rename-name', sheet: 'one', from: 'Woofer', to: 'Bass' }, written);
    expect(texts(document, 'two')).toMatchObject({ C1: '=Woofer', B4: "='Two drivers'!Bass" });
  });

  test('defining a name again gives it new cells', () => {
    expect(namesOf(done({ kind: 'define-name', sheet: 'one', name: 'WOOFER', cells: '$C$4' }))).toEqual({
      Pair: 'B4:C5',
      WOOFER: 'C4',
    });
  });

  test.each([
    ['', 'at least one character'],
    ['2x', 'begins with a letter'],
    ['my name', 'holds a space'],
    ['a-b', 'holds "-"'],
    ['B4', 'is the address of a cell; choose a name such as B4_1'],
    ['true', 'already means a truth'],
  ])('"%s" is no name', (name, reason) => {
    expect(refused({ kind: 'define-name', sheet: 'one', name, cells: 'B4' })).toContain(reason);
  });

  test('cannot take the place of another name', () => {
    expect(refused({ kind: 'rename-name', sheet: 'one', from: 'Woofer', to: 'pair' })).toContain(
      '"Pair" already names B4:C5',
    );
  });

  test('outside the sheet are refused', () => {
    expect(refused({ kind: 'define-name', sheet: 'one', name: 'Fresh', cells: 'A20:A21' })).toBe(
      'A20:A21 lies outside the 20 rows and 6 columns of "Two drivers".',
    );
  });

  test('of what is no cell are refused', () => {
    expect(refused({ kind: 'define-name', sheet: 'one', name: 'Fresh', cells: 'here' })).toContain(
      'no cell and no range',
    );
  });
});

describe('plots', () => {
  const plot = { id: 'plot-1', title: 'Other', kind: 'curves', series: [], limits: [], marks: [] } as const;

  test('are replaced in their place, added at the end, and deleted', () => {
    const added = done({ kind: 'put-plot', sheet: 'one', plot: { ...plot, id: 'plot-2' } });
    const replaced = done({ kind: 'put-plot', sheet: 'one', plot }, added);
    expect(replaced.sheets[0]?.plots.map(({ id, title }) => [id, title])).toEqual([
      ['plot-1', 'Other'],
      ['plot-2', 'Other'],
    ]);
    expect(done({ kind: 'delete-plot', sheet: 'one', plot: 'plot-1' }, replaced).sheets[0]?.plots).toHaveLength(1);
    expect(refused({ kind: 'delete-plot', sheet: 'one', plot: 'none' })).toContain('no longer there');
  });
});

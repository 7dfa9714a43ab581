import { describe, expect, test } from 'vitest';
import { apply } from '../../../src/document/apply.ts';
import { isRefusal, type Command } from '../../../src/document/command.ts';
import { clipOf } from '../../../src/document/commands/cell-edits.ts';
import { sampleDocument } from '../samples.ts';
import { done, refused, texts, namesOf, plotOf, cellOf } from './done.ts';

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
    expect(refused({ kind: 'describe', sheet: 'one', cells: 'A1:ZZ9999', attributes: { look: 'note' } })).toContain(
      'the most is 2000000',
    );
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

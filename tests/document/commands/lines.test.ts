import { describe, expect, test } from 'vitest';
import { done, refused, texts, namesOf, plotOf } from './done.ts';

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

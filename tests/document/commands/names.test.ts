import { describe, expect, test } from 'vitest';
import { done, refused, texts, namesOf, plotOf } from './done.ts';

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
    expect(plotOf(done({ kind: 'define-name', sheet: 'one', name: 'WOOFER', cells: 'C4' }))?.series[0]?.cell).toBe(
      'WOOFER',
    );
  });

  test('a deleted name leaves its cells to the plots, and its word to the formulas', () => {
    const document = done({ kind: 'delete-name', sheet: 'one', name: 'woofer' });
    expect(namesOf(document)).toEqual({ Pair: 'B4:C5' });
    expect(plotOf(document)?.series[0]?.cell).toBe('B4');
    expect(texts(document)['D8']).toBe('=Woofer*$B$5');
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

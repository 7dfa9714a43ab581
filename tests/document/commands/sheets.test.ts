import { describe, expect, test } from 'vitest';
import { done, refused, texts, namesOf, plotOf } from './done.ts';

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

describe('plots', () => {
  const plot = { id: 'plot-1', title: 'Other', kind: 'curves', series: [], limits: [], marks: [] } as const;

  test('are replaced in their place, added at the end, and deleted', () => {
    const added = done({ kind: 'put-plot', sheet: 'one', plot: { ...plot, id: 'plot-2' } });
    const replaced = done({ kind: 'put-plot', sheet: 'one', plot }, added);
    expect(replaced.sheets[0]?.plots.map(({ id, title }) => [id, title])).toEqual([
      ['plot-1', 'Other'],
      ['plot-2', 'Other'],
    ]);
    const moved = done({ kind: 'put-plot', sheet: 'one', plot: { ...plot, id: 'plot-2' }, at: 0 }, replaced);
    expect(moved.sheets[0]?.plots.map(({ id }) => id)).toEqual(['plot-2', 'plot-1']);
    expect(done({ kind: 'delete-plot', sheet: 'one', plot: 'plot-1' }, replaced).sheets[0]?.plots).toHaveLength(1);
    expect(refused({ kind: 'delete-plot', sheet: 'one', plot: 'none' })).toContain('no longer there');
  });
});

import { describe, expect, test } from 'vitest';
import { filledIn, rectangleOf } from '../../src/document/area.ts';
import { isRefusal } from '../../src/document/command.ts';
import { decodeDocument } from '../../src/exchange/decode.ts';
import { encodeDocument } from '../../src/exchange/encode.ts';
import { parseQuantity } from '../../src/units/parse.ts';
import { templates } from '../../templates/index.ts';

describe.each(templates)('the starter sheet $id', ({ content }) => {
  const document = decodeDocument(content);
  if (isRefusal(document)) throw new Error(document.refused);

  test('is written as our own file writes it', () => {
    expect(encodeDocument(document)).toEqual(content);
  });

  test('gives every input a range that can be read and that holds its value', () => {
    for (const sheet of document.sheets) {
      for (const [address, { text, range }] of sheet.cells) {
        // An input may wait for its first answer.
        if (!range || text === '' || text.startsWith('=')) continue;
        const [low, value, high] = [range[0], text, range[1]].map((each) => parseQuantity(each)?.value ?? Number.NaN);
        expect(`${address}: ${Number(low) <= Number(value) && Number(value) <= Number(high)}`).toBe(`${address}: true`);
      }
    }
  });

  test('names and plots refer to cells that hold something', () => {
    for (const { cells, names, plots } of document.sheets) {
      const dangling = plots
        .flatMap(({ series, limits, marks, ground = [] }) => [
          ...[...series, ...limits, ...marks].map(({ cell }) => cell),
          ...series.flatMap(({ column, across, names: named }) => (column ? [] : [across ?? [], named ?? []].flat())),
          ...ground,
        ])
        .map((cell) => names.get(cell) ?? cell)
        .filter((area) => filledIn(cells, rectangleOf(area)).length === 0);
      expect(dangling).toEqual([]);
      expect([...names.values()].filter((area) => !area.includes(':') && !cells.has(area))).toEqual([]);
    }
  });
});

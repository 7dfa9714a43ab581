import { describe, expect, test } from 'vitest';
import { readArguments } from '../../src/cli/arguments.ts';
import { findCells } from '../../src/cli/find-cell.ts';
import { sampleDocument } from '../document/samples.ts';

describe('the arguments', () => {
  test('of a formula', () => {
    expect(readArguments(['=1+1', '--json'])).toEqual({ kind: 'formula', formula: '=1+1', json: true });
  });

  test('of a document, with what is set and asked for, in order', () => {
    expect(
      readArguments(['box.json', '--set', 'Volume=12 L', '--set=B4==A4*2', '--get', 'Qtc', "--get='My sheet'!B4"]),
    ).toEqual({
      kind: 'document',
      file: 'box.json',
      set: [
        { cell: 'Volume', text: '12 L' },
        { cell: 'B4', text: '=A4*2' },
      ],
      get: ['Qtc', "'My sheet'!B4"],
      json: false,
    });
  });

  test('keep an equals sign in the name of a sheet', () => {
    expect(readArguments(['box.json', '--set', "'a=b'!B4=12 L"])).toMatchObject({
      set: [{ cell: "'a=b'!B4", text: '12 L' }],
    });
  });

  test.each([
    [[], 'A formula or a file is wanted.'],
    [['a.json', 'b.json'], '"b.json" was given too'],
    [['a.json', '--sett', 'x'], 'There is no option --sett'],
    [['a.json', '--set'], "--set wants NAME=TEXT, as in --set 'Volume=12 L'."],
    [['a.json', '--set', 'Volume'], 'but got "Volume"'],
    [['a.json', '--get'], '--get wants the cell to print'],
    [['=1', '--get', 'B4'], 'belong to a file'],
    [['--functions', 'a.json'], '--functions takes nothing beside it'],
  ])('%j are refused with the remedy', (given, reason) => {
    expect(readArguments(given)).toEqual({ wrong: expect.stringContaining(reason) });
  });
});

describe('a cell', () => {
  const found = (written: string): string => {
    const cells = findCells(sampleDocument(), written);
    return 'wrong' in cells ? cells.wrong : `${cells.sheet.name}: ${cells.cells}`;
  };

  test.each([
    ['B4', 'Two drivers: B4'],
    ['$b$4:c5', 'Two drivers: B4:C5'],
    ['woofer', 'Two drivers: B4'],
    ['Volume', 'Box: B2'],
    ['Box!Volume', 'Box: B2'],
    ["'two drivers'!Pair", 'Two drivers: B4:C5'],
    ['Nowhere!B4', 'There is no sheet "Nowhere" in this document; there are "Two drivers", "Box".'],
    ['ZZ999', 'ZZ999 lies outside the 20 rows and 6 columns of "Two drivers".'],
    ['Wofer', 'Nothing is called "Wofer" here; is "Woofer" meant?'],
    ['Box!Tuning', 'Nothing is called "Tuning" here. Names are Volume.'],
  ])('%s is found', (written, expected) => {
    expect(found(written)).toBe(expected);
  });
});

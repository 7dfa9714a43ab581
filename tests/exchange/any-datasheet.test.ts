import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { driverParameters } from '../../functions/driver/parameters.ts';
import { readDatasheet } from '../../src/exchange/datasheet/read.ts';

const read = (text: string) => readDatasheet(text)[0]!;

const printable = driverParameters.filter(({ field }) => field !== 'price' && field !== 'displaced');
const unitFor: Readonly<Record<string, string>> = {
  frequency: 'Hz',
  volume: 'L',
  resistance: 'Ω',
  inductance: 'mH',
  area: 'cm²',
  mass: 'g',
  compliance: 'mm/N',
  mechanicalResistance: 'kg/s',
  forceFactor: 'T·m',
  travel: 'mm',
  power: 'W',
  level: 'dB',
  length: 'mm',
  ratio: '',
};
const sheetOf = fc.shuffledSubarray([...printable], { minLength: 1 }).chain((fields) =>
  fc.tuple(
    ...fields.map(({ symbol, quantity }) =>
      fc.record({
        label: fc.constant(symbol),
        number: fc.integer({ min: 1, max: 99_999 }).map((value) => String(value / 100)),
        unit: fc.constant(unitFor[quantity] ?? ''),
        separator: fc.constantFrom(': ', ' = ', '\t', ' ', ' ........ ', '    '),
      }),
    ),
  ),
);

describe('any sheet', () => {
  test('says the same in any order and with any separators', () => {
    fc.assert(
      fc.property(sheetOf, (rows) => {
        const text = rows
          .map(({ label, separator, number, unit }) => `${label}${separator}${number} ${unit}`.trim())
          .join('\n');
        const { rows: found } = read(text);
        const taken = Object.fromEntries(
          found.filter(({ meaning }) => meaning !== 'basis').map((row) => [row.label, row.text]),
        );
        expect(taken).toEqual(
          Object.fromEntries(rows.map(({ label, number, unit }) => [label, `${number} ${unit}`.trim()])),
        );
      }),
    );
  });

  test('loses no line: each is taken, asked or listed', () => {
    const words = fc.constantFrom(
      'Fs',
      '38',
      'Hz',
      ':',
      '\t',
      'Qts',
      '0,3',
      'ohm',
      '(',
      ')',
      '±',
      'dB',
      '1 W',
      ';',
      'Vas',
      'x',
      '|',
      '-',
      '"',
    );
    const line = fc.array(words, { minLength: 1, maxLength: 8 }).map((each) => each.join(' '));
    fc.assert(
      fc.property(fc.array(line, { maxLength: 12 }), (lines) => {
        const readings = readDatasheet(lines.join('\n'));
        expect(readings.length).toBeGreaterThan(0);
        const told = new Set(readings.flatMap(({ rows, unread }) => [...rows, ...unread].map((each) => each.line)));
        const pieces = readings.flatMap(({ name, rows, unread }) => [
          name,
          ...rows.map(({ found }) => found),
          ...unread.map(({ text }) => text),
        ]);
        for (const [index, each] of lines.entries()) {
          const isBlank = !/[\p{L}\p{N}]/u.test(each);
          const plain = each.replaceAll('\t', ' ').trim();
          const isJoined = pieces.some((piece) => piece !== '' && (piece.includes(plain) || plain.includes(piece)));
          expect([each, isBlank || told.has(index + 1) || isJoined]).toEqual([each, true]);
        }
        for (const { rows } of readings)
          for (const row of rows) expect(row.text !== '' || row.question !== undefined).toBe(true);
      }),
    );
  });

  test('junk never throws', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 400 }), (text) => void readDatasheet(text)));
    fc.assert(
      fc.property(
        fc.string({ maxLength: 400 }),
        (text) => void readDatasheet(`Fs ${text}\nQts\t${text}\n${text} 38 Hz`),
      ),
    );
    for (const word of ['__proto__', 'constructor', 'toString'])
      expect(() => readDatasheet(`Fs ${word}`)).not.toThrow();
    expect(read('').rows).toEqual([]);
    expect(read('x'.repeat(100_000)).unread[0]?.why).toContain('100000 characters');
  });
});

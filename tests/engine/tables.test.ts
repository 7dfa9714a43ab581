import { describe, expect, test } from 'vitest';
import { createEngine } from '../../src/engine/direct.ts';
import { sheetWith, told, typed, type Told } from './sheet.ts';

const rows = { A1: 'Fs', B1: '38 Hz', A2: 'Qms', B2: '4.8', A3: 'Qes', B3: '0.42', A4: 'Re', B4: '5.8 Ω' };
const driver = { ...rows, D1: '=DRIVER(A1:A4,B1:B4)', D2: '=DRIVER(A1:B4)' };

const errors = (all: Told, cell: string): readonly string[] =>
  (all.state(cell)?.findings ?? []).filter(({ level }) => level === 'error').map(({ message }) => message);

describe('a number of another kind in a table', () => {
  test.each([
    ['B4', '5 L', 'a volume in the place of ohms; B4, “Re”, holds a volume. Type a number in Ω there.'],
    [
      'B2',
      '2 Hz',
      'a frequency in the place of a plain number; B2, “Qms”, holds a frequency. Type a plain number there.',
    ],
    ['B1', '=2 mm', 'a length in the place of a frequency; B1, “Fs”, holds a length. Type a number in Hz there.'],
  ])('of a driver is told with its cell and what belongs there: %s as %s', async (cell, text, message) => {
    const engine = createEngine();
    const all = await told(engine, sheetWith(driver));
    expect([all.value('D1').kind, all.value('D2').kind]).toEqual(['record', 'record']);
    all.take(await engine.write([typed(cell, text)]));
    expect(errors(all, 'D1')).toEqual([`DRIVER, values: ${message}`]);
    expect(errors(all, 'D2')).toEqual([`DRIVER, labels: ${message}`]);
    expect(all.value('D1').kind).toBe('problem');
    all.take(await engine.write([typed(cell, rows[cell as 'B4'])]));
    expect([all.value('D1').kind, all.value('D2').kind]).toEqual(['record', 'record']);
  });

  test('belongs there once its row has another label', async () => {
    const engine = createEngine();
    const all = await told(engine, sheetWith({ ...driver, B4: '5 L' }));
    expect(errors(all, 'D1')).toHaveLength(1);
    all.take(await engine.write([typed('A4', 'Vas')]));
    expect(errors(all, 'D1')).toEqual([]);
    expect(all.value('D1').kind).toBe('record');
  });

  test.each([
    ['2.83 V', '', 90],
    ['2.828 V', '', 90],
    ['1 W', '', 90],
    ['1', '', 90],
    ['1 V', '“1 V” is not known', undefined],
    ['2.83 W', '“2.83 W” is not known', undefined],
    ['=1 mW', '“0.001 W” is not known', undefined],
    ['1 W in Re', '', 90 + 10 * Math.log10(8 / 5.8)],
  ])('is told apart in the basis of a level: %s', async (basis, message, level) => {
    const engine = createEngine();
    const levels = { A5: 'Level', B5: '90 dB', A6: 'Level basis', B6: '1 W', A7: 'Nominal ohms', B7: '8 Ω' };
    const all = await told(engine, sheetWith({ ...rows, ...levels, D1: '=DRIVER(A1:A7,B1:B7)', D2: '=DRIVER(A1:B7)' }));
    all.take(await engine.write([typed('B6', basis)]));
    for (const cell of ['D1', 'D2']) {
      expect(all.message(cell)).toContain(message);
      const { value } = (await engine.evaluate('s', `${cell}.level`)) as {
        readonly value: { readonly value?: number };
      };
      if (level === undefined) expect(value.value).toBeUndefined();
      else expect(value.value).toBeCloseTo(level, 1);
    }
  });

  test('of a column that holds one quantity is told, wherever it stands', async () => {
    const sheet = { A1: '500 Hz', A2: '2 mm', A3: '2 kHz', B1: '90 dB', B2: '88 dB', B3: '85 dB' };
    const all = await told(createEngine(), sheetWith({ ...sheet, C1: '=CURVE.READ(A1:A3,B1:B3)' }));
    expect(errors(all, 'C1')).toEqual([
      'CURVE.READ, frequencies: a length in the place of a frequency; A2 holds a length. Type a number in Hz there.',
    ]);
  });

  test('of a table of parts is told by its column', async () => {
    const parts = { A1: 'series', B1: 'chain', D1: '1.06 mH', E1: '0.3 Ω', A2: 'across', F2: '5.6 Ω' };
    const all = await told(createEngine(), sheetWith({ ...parts, G1: '=NETWORK.OF(A1:F1)', G2: '=NETWORK.OF(A1:F2)' }));
    expect(all.value('G1').kind).toBe('record');
    expect(errors(all, 'G2')).toEqual([
      'NETWORK.OF, parts: ohms in the place of a capacitance; F2 holds ohms. Type a number in µF there.',
    ]);
  });

  test('is read where it is a text, if it is what belongs there', async () => {
    const engine = createEngine();
    const texts = { ...rows, B1: "'38 Hz", B2: '="4.8"', B4: '="5.8 ohm"', A5: 'Vas', B5: "'0.5 ft³" };
    const all = await told(engine, sheetWith({ ...texts, D2: '=DRIVER(A1:B5)' }));
    expect(all.value('D2').kind).toBe('record');
    expect((await engine.evaluate('s', 'D2.vas')).value).toEqual({ kind: 'number', value: 0.014158423296 });
    all.take(await engine.write([typed('B5', "'28 Hz")]));
    expect(all.message('D2')).toContain('The row “Vas” needs a number, but holds “28 Hz”');
    const parts = { A1: 'series', B1: 'chain', D1: '="1.06 mH"', E1: "'0.3 ohm", G1: '=NETWORK.OF(A1:F1)' };
    expect((await told(createEngine(), sheetWith(parts))).value('G1').kind).toBe('record');
  });

  test('of a range that is added up is told with the cells that differ', async () => {
    const sheet = {
      A1: '1 Hz',
      A2: '0',
      A3: 'words',
      A4: '3',
      B1: '=SUM(A1:A4)',
      B2: '=SUM(A1:A3)',
    };
    const all = await told(createEngine(), sheetWith(sheet));
    expect(errors(all, 'B1')).toEqual([
      'SUM cannot mix a frequency and a plain number: A1 holds a frequency, A4 a plain number. Give all of them one kind of unit.',
    ]);
    expect(errors(all, 'B2')).toEqual([]);
    expect(all.number('B2')).toBe(1);
  });

  test.each(['SUM', 'AVERAGE', 'MAX', 'MEDIAN', 'STDEV'])(
    'of a range leaves %s its unit beside texts, empty cells and zeros',
    async (name) => {
      const sheet = { A1: '10 L', A2: '0', A3: 'none yet', A5: '=""', A6: '4 L', B1: `=${name}(A1:A6)`, B2: '=B1+1 L' };
      const all = await told(createEngine(), sheetWith(sheet));
      expect(all.state('B1')?.type).toMatchObject({ kind: 'number', quantity: 'volume' });
      expect(errors(all, 'B2')).toEqual([]);
    },
  );
});

import { describe, expect, test } from 'vitest';
import { createEngine } from '../../src/engine/direct.ts';
import { sheetWith, told, typed } from './sheet.ts';

const messageOf = async (formula: string, cells: Readonly<Record<string, string>> = {}): Promise<string> =>
  (await told(createEngine(), sheetWith({ ...cells, Z1: formula }))).message('Z1');

describe('an argument that cannot be taken', () => {
  test('names the empty cell, the argument and what is wanted', async () => {
    const message = await messageOf('=CLOSED.QTC(0.386, "28.52 L", B5)');
    expect(message).toMatch(/^CLOSED\.QTC, volume .*: B5 is empty; type a volume there\.$/);
  });

  test('says on which sheet the empty cell is, where it is another one', async () => {
    const [sheet] = sheetWith({ A1: '=CLOSED.QTC(0.386, "28.52 L", Boxes!B5)' });
    const other = { id: 'b', name: 'Boxes', cells: new Map<string, string>(), names: new Map<string, string>() };
    const all = await told(createEngine(), sheet ? [sheet, other] : []);
    expect(all.message('A1')).toContain('Boxes!B5 is empty');
  });

  test('names limit, value and remedy of a number out of range', async () => {
    const message = await messageOf('=CLOSED.QTC(B1, "28.52 L", "12 L")', { B1: '-0.4' });
    expect(message).toMatch(/^CLOSED\.QTC, qts \(.*\) must be .*, but B1 is −0\.4/);
    expect(message).toMatch(/\. Type a value that is .*\.$/);
  });

  test('says that a count must be whole, and which whole numbers are near', async () => {
    const message = await messageOf('=SUBS.LEVEL(100 dB, B1)', { B1: '2.5' });
    expect(message).toBe('SUBS.LEVEL, count (how many) must be a whole number, but B1 is 2.5. Type 2 or 3.');
  });

  test('takes no half a driver', async () => {
    const driver = 'DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "5.8 Ω", "132 cm²", "5.5 mm")';
    expect(await messageOf(`=DRIVER.GROUP(${driver}, 1.5)`)).toMatch(/^DRIVER\.GROUP, parallel .* Type 1 or 2\.$/);
  });

  test('takes a count that a calculation misses by rounding', async () => {
    const all = await told(createEngine(), sheetWith({ A1: '=SUBS.LEVEL(100 dB, 10*(0.1+0.2))' }));
    expect(all.number('A1')).toBeCloseTo(100 + 20 * Math.log10(3), 9);
  });

  test('takes degrees of a rise for kelvins, and fahrenheits for five ninths of one', async () => {
    const cells = { A1: '=DRIVER.HOT_LOSS("100 °C")', A2: '=DRIVER.HOT_LOSS(180 °F)', A3: '="100"&" °C"' };
    const all = await told(createEngine(), sheetWith({ ...cells, A4: '=DRIVER.HOT_LOSS(A3)' }));
    for (const address of ['A1', 'A2', 'A4']) expect(all.number(address)).toBeCloseTo(20 * Math.log10(1.393), 12);
  });

  test('names what a text is not', async () => {
    const message = await messageOf('=CLOSED.QTC(0.386, "28.52 L", B1)', { B1: '=CONCATENATE("so ", "big")' });
    expect(message).toContain('B1 holds the text “so big”');
  });

  test('reads a computed text that is a quantity, and refuses one of another kind', async () => {
    const engine = createEngine();
    const all = await told(engine, sheetWith({ A1: '="12"&" L"', A2: '=CLOSED.QTC(0.386, "28.52 L", A1)' }));
    expect(all.number('A2')).toBeCloseTo(0.386 * Math.sqrt(1 + 28.52 / 12), 12);
    all.take(await engine.write([typed('A1', '="38"&" Hz"')]));
    expect(all.message('A2')).toContain('“38 Hz” is a frequency');
  });

  test('lists the words of a choice', async () => {
    const message = await messageOf('=CURVE.READ(1 kHz, 90 dB, B1)', { B1: '="noi"&"se"' });
    expect(message).toMatch(/B1 is “noise”; choose one of level, /);
  });

  test('says what a cell holds where it is neither a number nor a word', async () => {
    const engine = createEngine();
    const cells = {
      A1: 'TRUE',
      A2: '=IF(A1, CHECK.AT_LEAST(1, 3, 2, "Pad"), "noise")',
      A3: '=CURVE.READ(1 kHz, 90 dB, A2)',
    };
    const all = await told(engine, sheetWith(cells));
    expect(all.message('A3')).not.toContain('[object');
    expect(all.message('A3')).toMatch(/A2|verdict/);
  });
});

describe('a formula that cannot be right', () => {
  test('gives its finding as its problem, quotes and all', async () => {
    const all = await told(createEngine(), sheetWith({ A1: '=CLOSED.QTC(0.386, "38 Hz", "12 L")', A2: '=A1*2' }));
    const [finding] = all.state('A1')?.findings ?? [];
    expect(finding?.message).toContain('"38 Hz"');
    expect(all.message('A1')).toBe(finding?.message);
    expect(all.value('A2')).toMatchObject({ message: finding?.message, origin: { sheet: 's', cell: 'A1' } });
  });

  test('is put right by the edit that mends it', async () => {
    const engine = createEngine();
    const all = await told(engine, sheetWith({ A1: '12 L', A2: '38 Hz', A3: '=A1+A2', A4: '=A3*2' }));
    expect(all.value('A4').kind).toBe('problem');
    all.take(await engine.write([typed('A2', '8 L')]));
    expect(all.number('A3')).toBeCloseTo(0.02, 15);
    expect(all.number('A4')).toBeCloseTo(0.04, 15);
  });
});

describe('what the engine itself refuses', () => {
  test.each([
    ['=1/B1', /divided by zero/],
    ['=SQRT(-1)', /root of something negative/],
    ['=IF(B3>0, 1, B2)*2', /not of the kind that is wanted/],
    ['=MATCH(3, B1:B2, 0)', /not found/],
    ['=INDEX(B1:B2, 7)', /outside what the function allows/],
    ['=CHOOSE(9, 1, 2)', /between 1 and the number of entries/],
  ])('%s is told in a sentence', async (formula, sentence) => {
    const message = await messageOf(formula, { B2: 'words' });
    expect(message).toMatch(sentence);
    expect(message).toMatch(/^[A-Z].*\.$/);
    expect(message).not.toMatch(/#[A-Z]/);
  });

  test('a column that has no room says so, and comes when there is room', async () => {
    const engine = createEngine();
    const cells = { B1: '500 Hz', B2: '1 kHz', C1: '=CURVE.COLUMN(CURVE.READ(1 kHz, 90 dB), B1:B2)', C2: '7' };
    const all = await told(engine, sheetWith(cells));
    expect(all.message('C1')).toMatch(/no room: clear the cells below/);
    all.take(await engine.write([typed('C2', '')]));
    expect([all.number('C1'), all.number('C2')]).toEqual([90, 90]);
    expect(all.state('C2')?.type).toEqual(all.state('C1')?.type);
  });
});

test('a column of another kind says so in each of its cells', async () => {
  const engine = createEngine();
  const box = 'CLOSED.BOX(DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "5.8 Ω", "132 cm²", "5.5 mm"), "12 L")';
  const cells = { A1: `=BOX.RESPONSE(${box})`, A2: `=BOX.IMPEDANCE(${box})`, B1: '500 Hz', B2: '1 kHz' };
  const all = await told(engine, sheetWith({ ...cells, C1: '=CURVE.COLUMN(A1, B1:B2)' }));
  expect(all.state('C2')?.type).toMatchObject({ quantity: 'level' });
  all.take(await engine.write([typed('C1', '=CURVE.COLUMN(A2, B1:B2)')]));
  expect(all.state('C2')?.type).toMatchObject({ quantity: 'resistance' });
});

describe('doubts', () => {
  test.each([
    ['100 °C', '100 K', 'doubt'],
    ['150 °C', '150 K', 'error'],
  ])('says how a rise is typed where a cell holds a temperature of %s', async (temperature, rise, level) => {
    const all = await told(createEngine(), sheetWith({ A1: temperature, A2: '=DRIVER.HOT_LOSS(A1)' }));
    const said = level === 'error' ? all.message('A2') : all.state('A2')?.findings?.[0]?.message;
    expect(said).toContain(`Is it a temperature? A rise is typed in kelvin: ${rise}.`);
  });

  const driver = 'DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "5.8 Ω", "132 cm²", "5.5 mm")';

  test('of a formula tried out stand in its state and nowhere else', async () => {
    const engine = createEngine();
    const all = await told(engine, sheetWith({ B1: '5', A1: '=B1+1' }));
    const tried = await engine.evaluate('s', `BOX.HIGH_PASS(CLOSED.BOX(${driver}, "12 L"), "500 Hz", 4)`);
    expect(tried.findings).toEqual([expect.objectContaining({ level: 'doubt' })]);
    all.take(await engine.write([typed('B1', '6')]));
    expect(all.state('A1')?.findings).toEqual([]);
  });

  test('are told where the value stays the same', async () => {
    const engine = createEngine();
    const box = `CLOSED.BOX(${driver}, "12 L")`;
    const all = await told(engine, sheetWith({ B1: '35 Hz', A1: `=FIELD(BOX.HIGH_PASS(${box}, B1, 4), "volume")` }));
    const before = all.value('A1');
    expect(all.state('A1')?.findings).toEqual([]);
    all.take(await engine.write([typed('B1', '500 Hz')]));
    expect(all.value('A1')).toEqual(before);
    expect(all.state('A1')?.findings).toEqual([expect.objectContaining({ level: 'doubt' })]);
    all.take(await engine.write([typed('B1', '35 Hz')]));
    expect(all.state('A1')?.findings).toEqual([]);
  });

  test('of two calls in one formula are both told', async () => {
    const of = (frequency: string): string =>
      `FIELD(BOX.HIGH_PASS(CLOSED.BOX(${driver}, "12 L"), ${frequency}, 4), "volume")`;
    const all = await told(createEngine(), sheetWith({ B1: '500 Hz', B2: '600 Hz', A1: `=${of('B1')}+${of('B2')}` }));
    expect(all.state('A1')?.findings.map(({ message }) => /B\d/.exec(message)?.[0])).toEqual(['B1', 'B2']);
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { labelOf } from '../../../functions/driver/labels.ts';
import { complete, linked, type Parameters } from '../../../functions/driver/relations.ts';
import type { Table } from '../../../functions/define.ts';
import type { Driver } from '../../../functions/values/driver.ts';
import { Problem } from '../../../functions/values/problem.ts';
import type { Sentence } from '../../../functions/values/say.ts';
import { call, driver, number, woofer } from '../enclosure/call.ts';
import { expectClose, input, references, withId, type Reference } from '../enclosure/reference.ts';

const values = references('driver-parameters');
const speak = (sentence: Sentence): string =>
  sentence.map((part) => (typeof part === 'string' ? part : String(part.value))).join('');
const column = (cells: Table[number]): Table => cells.map((cell) => [cell]);
const sheet = (rows: Readonly<Record<string, number | string>>): unknown =>
  call('DRIVER', { labels: column(Object.keys(rows)), values: column(Object.values(rows)) });
const read = (rows: Readonly<Record<string, number | string>>): Driver => {
  const result = sheet(rows);
  if (result instanceof Problem) throw new Error(speak(result.message));
  return result as Driver;
};

const names = {
  Re: 're',
  BL: 'bl',
  Mms: 'mms',
  Cms: 'cms',
  Rms: 'rms',
  Sd: 'sd',
  fs: 'fs',
  Qes: 'qes',
  Qms: 'qms',
  Vas: 'vas',
} as const;
function given(each: Reference): Parameters {
  const result: Parameters = {};
  for (const [theirs, ours] of Object.entries(names)) if (theirs in each.inputs) result[ours] = input(each, theirs);
  return result;
}

describe('relations between the parameters', () => {
  const fields = {
    fs: 'fs',
    Qms: 'qms',
    Qes: 'qes',
    Qts: 'qts',
    Vas: 'vas',
    Cms: 'cms',
    Mms: 'mms',
    Rms: 'rms',
    BL: 'bl',
    spl283: 'level',
  } as const;
  const known = values.filter(({ id }) => (id.split('-').at(-1) ?? '') in fields && !id.startsWith('pub'));
  test('there are values to hold them against', () => expect(known.length).toBeGreaterThan(20));
  test.each(known)('$id', (each) => {
    const field = fields[each.id.split('-').at(-1) as keyof typeof fields];
    expectClose(complete(given(each)).known[field]!, each);
  });
  test.each(withId(values, /-eta0$/))('$id', (each) =>
    expectClose(number('DRIVER.EFFICIENCY', { driver: driver(given(each)) }), each),
  );
  // A published example, rounded there; its air is not stated.
  test.each(withId(values, /^pub-/))('$id', (each) => {
    const field = fields[each.id.split('-').at(-1) as keyof typeof fields];
    expectClose(complete(given(each)).known[field]!, each);
  });
  test('whatever determines the set gives it back', () => {
    const whole = complete({ fs: 38, qms: 4.8, qes: 0.42, vas: 0.02852, re: 5.8, sd: 0.0132 }).known;
    for (const start of [
      ['fs', 'qms', 'qts', 'mms', 're', 'sd'],
      ['mms', 'cms', 'rms', 'bl', 're', 'sd'],
      ['fs', 'qms', 'bl', 'cms', 're', 'vas'],
    ] as const) {
      const again = complete(Object.fromEntries(start.map((name) => [name, whole[name]]))).known;
      for (const name of linked) expect(again[name]! / whole[name]!, `${start.join()} ${name}`).toBeCloseTo(1, 9);
    }
  });
});

describe('a datasheet in rows', () => {
  test.each([
    ['Resonance Fs', 'fs'],
    ['FS', 'fs'],
    ['Moving mass Mms', 'mms'],
    ['Voice-coil resistance Re', 're'],
    ['Cone area Sd', 'sd'],
    ['Thermal limit Pe', 'pe'],
    ['Level', 'level'],
    ['Break-up', 'breakup'],
    ['Voice-coil inductance Le', 'le'],
    ['Price', 'price'],
    ['Mechanical resistance Rms', 'rms'],
    ['Nominal', 'nominal'],
    ['Total Q', 'qts'],
    ['Thermal power (rms)', 'pe'],
  ])('%s', (label, field) => expect(labelOf(label)).toMatchObject({ field }));
  test('level basis and name', () => {
    expect(labelOf('Level basis')).toBe('basis');
    expect(labelOf('Driver')).toBe('name');
    expect(labelOf('Colour')).toBeUndefined();
  });
  test('is completed, and says what was', () => {
    const made = read({
      Driver: 'W-165 A',
      Fs: 38,
      Qms: 4.8,
      Qes: 0.42,
      Vas: 0.02852,
      Re: 5.8,
      'Cone area Sd': 0.0132,
      Level: 89.2,
      'Level basis': '2.83 V',
    });
    expect(made.name).toBe('W-165 A');
    expect(made.bl).toBeCloseTo(7.079, 3);
    expect(made.derived).toEqual(expect.arrayContaining(['qts', 'cms', 'mms', 'rms', 'bl']));
    expect(made.doubts).toEqual([]);
  });
  test('a level for one watt is brought to 2.83 V', () => {
    const rows = { Fs: 38, Nominal: 4, Re: 3.1, Level: 88 };
    expect(read({ ...rows, 'Level basis': '1 W' }).level).toBeCloseTo(91.02, 2);
    // A cell with a quantity holds its number alone.
    expect(read({ ...rows, 'Level basis': 1 }).level).toBeCloseTo(91.02, 2);
    expect(read({ ...rows, 'Level basis': 2.83 }).level).toBe(read({ ...rows, 'Level basis': '2.83 V' }).level);
    expect(read({ ...rows, 'Level basis': '1 W in Re' }).level).toBeCloseTo(92.12, 2);
    expect(read(rows).level).toBe(88);
    expect(speak(read(rows).doubts[0]!)).toContain('2.83 V is assumed');
  });
  test('planted contradictions are all found, with what the other values give', () => {
    const made = read({
      Fs: 35,
      Qms: 5,
      Qes: 0.5,
      Qts: 0.4,
      Vas: 0.07,
      Sd: 0.0214,
      Mms: 0.027,
      Cms: 0.766e-3,
      Bl: 9.4,
      Re: 5.8,
      Level: 92,
      'Level basis': '2.83 V, 1 m',
    });
    const said = made.doubts.map(speak);
    expect(said).toHaveLength(4);
    expect(said.map((each) => each.split(' ')[0])).toEqual(['Qts', 'Bl', 'Vas', 'Level']);
    const computed = made.doubts.map(
      (doubt) => (doubt.filter((part) => typeof part !== 'string')[1] as { value: number }).value,
    );
    expect(computed[0]).toBeCloseTo(0.4545, 4);
    expect(computed[1]).toBeCloseTo(8.299, 2);
    expect(computed[2]! * 1e3).toBeCloseTo(49.75, 1);
    expect(computed[3]).toBeCloseTo(89.75, 1);
    expect(number('DRIVER.LEVEL_GAP', { driver: made })).toBeCloseTo(2.25, 1);
  });
  test.each([
    ['Sd', 132e-6, 0.0132],
    ['Sd', 132, 0.0132],
    ['Mms', 15.2, 0.0152],
    ['Vas', 28.5, 0.0285],
    ['Cms', 1.15, 0.00115],
    ['Xmax', 5.5, 0.0055],
    ['Le', 0.55, 0.00055],
  ])('%s of %d: a guess at the slip', (label, value, meant) => {
    const [doubt] = read({ [label]: value }).doubts;
    expect(speak(doubt!)).toContain('did you mean');
    expect((doubt!.filter((part) => typeof part !== 'string')[1] as { value: number }).value / meant).toBeCloseTo(1, 9);
  });
  test.each([['n/a'], ['5,8 ohm?'], [0], [-3], [1e300]])('Re of %s is a problem that names the row', (value) => {
    const result = sheet({ Fs: 38, Re: value });
    expect(result).toBeInstanceOf(Problem);
    expect(speak((result as Problem).message)).toContain('“Re”');
  });
  test('unknown rows are doubted only when they hold a number', () => {
    expect(read({ Fs: 38, Colour: 'black' }).doubts).toEqual([]);
    expect(speak(read({ Fs: 38, Wobble: 3 }).doubts[0]!)).toContain('“Wobble”');
  });
  test('any cells give a driver or a problem, never a throw', () => {
    const cell = fc.oneof(fc.string(), fc.double(), fc.boolean(), fc.constant(null));
    const label = fc.oneof(
      fc.constantFrom('Fs', 'Qts', 'Qms', 'Qes', 'Sd', 'Mms', 'Re', 'Bl', 'Vas', 'Level', 'Level basis', 'Name'),
      cell,
    );
    fc.assert(
      fc.property(fc.array(fc.tuple(label, cell), { maxLength: 12 }), (rows) => {
        const result = call('DRIVER', { labels: rows });
        if (result instanceof Problem) return;
        for (const value of Object.values(result as Driver))
          if (typeof value === 'number') expect(value).toSatisfy(Number.isFinite);
      }),
    );
  });
});

describe('levels', () => {
  test('of an invented woofer', () => {
    expect(number('DRIVER.LEVEL', { driver: woofer })).toBeCloseTo(89.17, 2);
    expect(number('DRIVER.EFFICIENCY', { driver: woofer })).toBeCloseTo(0.003638, 5);
  });
  test('without a printed level there is no gap', () =>
    expect(call('DRIVER.LEVEL_GAP', { driver: woofer })).toBeInstanceOf(Problem));
  test('1 W into 8 Ω is nearly 2.83 V', () =>
    expect(number('LEVEL.FROM_WATT', { level: 88, ohms: 8 })).toBeCloseTo(88.0048, 4));
  test('the impedance peaks at Re·(1 + Qms/Qes)', () => {
    const still = driver({ fs: 40, qms: 5, qes: 0.5, re: 6 });
    const made = call('DRIVER.IMPEDANCE', { driver: still }) as { y: Float64Array };
    expect(made.y[96]).toBeCloseTo(66, 9);
  });
});

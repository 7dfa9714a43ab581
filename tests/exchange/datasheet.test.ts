import { describe, expect, test } from 'vitest';
import type { DriverEntry } from '../../src/document/shelf/entry.ts';
import { answered } from '../../src/document/shelf/reading.ts';
import { readDatasheet } from '../../src/exchange/datasheet/read.ts';
import { writeDatasheet } from '../../src/exchange/datasheet/write.ts';
import { decodeShelf } from '../../src/exchange/shelf-file.ts';
import drivers from '../../templates/drivers.json' with { type: 'json' };

const NOTHING = new Map<number, string>();
const read = (text: string) => readDatasheet(text)[0]!;
/** What was understood without a question, by label. */
const texts = (text: string): Record<string, string> =>
  Object.fromEntries(answered(read(text), NOTHING).map((row) => [row.label, row.text]));
const questions = (text: string): Record<string, readonly string[]> =>
  Object.fromEntries(
    read(text).rows.flatMap(({ label, question }) =>
      question ? [[label, question.choices.map((each) => each.text)]] : [],
    ),
  );
const shelf = decodeShelf(drivers) as readonly DriverEntry[];

describe('one row', () => {
  test.each([
    ['Fs 38 Hz', 'Fs', '38 Hz'],
    ['fs: 38 Hz', 'Fs', '38 Hz'],
    ['Resonance frequency (Fs) = 38 Hertz', 'Fs', '38 Hz'],
    ['Resonance Fs [Hz]: 38', 'Fs', '38 Hz'],
    ['F s 38 Hz', 'Fs', '38 Hz'],
    ['Free air resonance ......... 38Hz', 'Fs', '38 Hz'],
    ['Qts: 0.386', 'Qts', '0.386'],
    ['Q ts 0,386', 'Qts', '0.386'],
    ['Qₜₛ 0.386', 'Qts', '0.386'],
    ['Vas = 1.01 ft³', 'Vas', '1.01 ft³'],
    ['Vas 28.5 litres (1.01 cu. ft)', 'Vas', '28.5 L'],
    ['Re (ohms) 5.8', 'Re', '5.8 Ω'],
    ['DC resistance, Re: 5.8 Ω', 'Re', '5.8 Ω'],
    ['Sd 132 cm2', 'Sd', '132 cm²'],
    ['Effective piston area 132 cm 2', 'Sd', '132 cm²'],
    ['Sd 0.0132 m^2', 'Sd', '0.0132 m²'],
    ['Xmax ±5.5 mm', 'Xmax', '5.5 mm'],
    ['Xmax +/- 5.5 mm', 'Xmax', '5.5 mm'],
    ['Xmax 11 mm p-p', 'Xmax', '11 mm p-p'],
    ['Linear excursion, peak to peak: 11 mm', 'Xmax', '11 mm p-p'],
    ['Xmax (p-p) 0.44 in', 'Xmax', '0.22 in'],
    ['Le (1 kHz) 0.55 mH', 'Le', '0.55 mH'],
    ['Voice coil inductance @ 1 kHz: 0,55 mH', 'Le', '0.55 mH'],
    ['Le 550 uH', 'Le', '550 µH'],
    ['BL 7.08 Tm', 'Bl', '7.08 T·m'],
    ['B x L product 7.08 N/A', 'Bl', '7.08 T·m'],
    ['Cms 1.154 mm/N', 'Cms', '1.154 mm/N'],
    ['Cms 1.154·10⁻³ m/N', 'Cms', '1.154e-3 m/N'],
    ['Rms 0.756 Ns/m', 'Rms', '0.756 kg/s'],
    ['Power handling (RMS) 70 W', 'Pe', '70 W'],
    ['RMS power 70 watts', 'Pe', '70 W'],
    ['P nom 70 W', 'Pe', '70 W'],
    ['Vas 62 Ltr.', 'Vas', '62 L'],
    ['Nominal impedance: 8 Ohm', 'Nominal', '8 Ω'],
    ['Impedance 8 Ω', 'Nominal', '8 Ω'],
    ['Moving mass incl. air load Mms 15.2 g', 'Mms', '15.2 g'],
    ['Flange diameter 6.5"', 'Flange', '6.5 in'],
    ['Fs 38 Hz ± 15 %', 'Fs', '38 Hz'],
    ['Fs ~ 1’900 Hz', 'Fs', '1900 Hz'],
    ['Price: € 62', 'Price', '62 €'],
    ['Price: 62', 'Price', '62 ¤'],
    ['Price: 62,50 EUR', 'Price', '62.50 €'],
  ])('%s', (line, label, text) => {
    expect(texts(line)[label]).toBe(text);
  });

  test.each([
    ['Sensitivity 89 dB (2.83 V/1 m)', 'at 2.83 V'],
    ['Sensitivity 2.83V/1m: 89 dB', 'at 2.83 V'],
    ['Sensitivity 2.83V/1m 89 dB', 'at 2.83 V'],
    ['SPL [dB @ 2,83 V, 1 m] 89', 'at 2.83 V'],
    ['Sensitivity 1W/1m 89 dB', 'at 1 W into nominal'],
    ['Sensitivity: 89 dB/W/m', 'at 1 W into nominal'],
    ['Sensitivity 89 dB (1 W into Re, 1 m)', 'at 1 W into Re'],
  ])('%s carries its basis', (line, basis) => {
    expect(texts(line)).toEqual({ Level: '89 dB', 'Level basis': basis });
  });

  test.each([
    ['Mmd 14 g', /air load/],
    ['Xmech 12 mm', /mechanical limit/],
    ['Frequency range 40-5000 Hz', /no row/],
    ['Maximum power 200 W', /lasting power/],
    ['Max SPL 110 dB', /largest level/],
    ['Sd 132 g', /an area is wanted, but g is the unit of a mass/],
    ['Zmin 6.2 ohm', /nominal ohms/],
    ['Fs n/a', /no value/],
    ['Welcome to our catalogue', /no label/],
    ['Colour: 17', /not known/],
  ])('%s is not taken, and why is said', (line, why) => {
    const { rows, unread } = read(line);
    expect(rows).toEqual([]);
    expect(unread.map((each) => each.why).join()).toMatch(why);
  });

  test('an addition of its own is told beside what is taken', () => {
    expect(read('Xmax 5.5 mm').rows[0]?.remark).toBe('read as one-way');
    expect(read('Fs 38 Hz ± 15 %').rows[0]?.remark).toContain('± 15 %');
    expect(read('Pe 70 W long life').rows[0]?.remark).toBe('“long life” left out');
    expect(read('Le < 0.1 mH').rows[0]?.remark).toContain('limit');
  });
});

describe('what is open becomes a question', () => {
  test.each([
    ['Sd 132', 'Sd', ['132 cm²', '132 in²']],
    ['Fs 38', 'Fs', ['38 Hz']],
    ['Fs 1,900 Hz', 'Fs', ['1900 Hz', '1.900 Hz']],
    ['Fs 36-40 Hz', 'Fs', ['36 Hz', '38 Hz', '40 Hz']],
    ['Pe 70/120 W', 'Pe', ['70 W', '120 W']],
    ['Re 2 x 4 ohm', 'Re', ['2 Ω', '8 Ω', '4 Ω']],
    ['Fs 38 Hz\nFs 42 Hz', 'Fs', ['38 Hz', '42 Hz']],
    ['Vas 28.5 L (2 ft³)', 'Vas', ['28.5 L', '2 ft³']],
    ['Sensitivity 89 dB', 'Level basis', ['at 2.83 V', 'at 1 W into nominal', 'at 1 W into Re']],
    ['SPL 89 dB 2.83V\nSPL 90 dB 2.83V', 'Level', ['89 dB', '90 dB']],
  ])('%s', (text, label, choices) => {
    expect(questions(text)[label]).toEqual(choices);
    expect(texts(text)[label]).toBeUndefined();
  });

  test('an answer is taken as given, and what is not answered is left out', () => {
    const reading = read('Sd 132\nFs 38 Hz\nSensitivity 89 dB');
    expect(answered(reading, new Map([[0, '132 cm²']]))).toEqual([
      { label: 'Sd', text: '132 cm²' },
      { label: 'Fs', text: '38 Hz' },
      { label: 'Level', text: '89 dB' },
    ]);
  });

  test('only a single plausible choice is suggested', () => {
    expect(read('Fs 38').rows[0]?.question?.suggested).toBe('38 Hz');
    expect(read('Sd 132').rows[0]?.question?.suggested).toBeUndefined();
  });
});

describe('whole sheets', () => {
  test('several drivers stand in columns', () => {
    const [first, second, ...more] = readDatasheet(
      'Parameter\tUnit\tW-130\tW-165\nFs\tHz\t52\t38\nQts\t\t0,41\t0,39\nVas\tL\t10,9\t28,5\nRe\tΩ\t-\t5,8\n',
    );
    expect(more).toEqual([]);
    expect(first?.name).toBe('W-130');
    expect(answered(first!, NOTHING).map(({ text }) => text)).toEqual(['52 Hz', '0.41', '10.9 L']);
    expect(second?.name).toBe('W-165');
    expect(answered(second!, NOTHING).map(({ text }) => text)).toEqual(['38 Hz', '0.39', '28.5 L', '5.8 Ω']);
  });

  test('several drivers stand in columns set apart by spaces', () => {
    const found = readDatasheet('Name    W-130    W-165\nFs      52 Hz    38 Hz\nQts     0.41     0.39');
    expect(found.map(({ name, rows }) => [name, ...rows.map(({ text }) => text)])).toEqual([
      ['W-130', '52 Hz', '0.41'],
      ['W-165', '38 Hz', '0.39'],
    ]);
  });

  test('a label, its symbol and its value may have a cell each, ruled by bars', () => {
    expect(texts('| Resonance | Fs | 38 Hz |\n|---|---|---|\n| Total Q | Qts | 0.386 |')).toEqual({
      Fs: '38 Hz',
      Qts: '0.386',
    });
  });

  test('a value may stand on the line below its label, or all on one line', () => {
    expect(texts('Fs\n38 Hz\n\nQts\n0.386')).toEqual({ Fs: '38 Hz', Qts: '0.386' });
    expect(texts('Fs=38Hz, Qts=0.386; Re=5.8Ω')).toEqual({ Fs: '38 Hz', Qts: '0.386', Re: '5.8 Ω' });
    expect(texts('Q ts 0,43   Q ms 5,2')).toEqual({ Qts: '0.43', Qms: '5.2' });
    expect(texts('Fs 38 Hz Qms 4.8 Qes 0.42')).toEqual({ Fs: '38 Hz', Qms: '4.8', Qes: '0.42' });
  });

  test('words above everything may be the name, and are only offered', () => {
    const reading = read('W-165 A, mid-bass\n\nFs 38 Hz');
    expect(reading.name).toBe('');
    expect(reading.heading).toBe('W-165 A, mid-bass');
  });

  test('also where it holds a number', () => {
    expect(read('Dome tweeter 26 mm\nFs 780 Hz').heading).toBe('Dome tweeter 26 mm');
    expect(read('W 17 K\n\nFs 38 Hz\nQts 0.4').heading).toBe('W 17 K');
    expect(read('Fs 38 Hz\nW 17 K').heading).toBe(undefined);
  });

  test.each(shelf.map((entry) => [entry.name, entry] as const))('%s is read back from our own text', (_, entry) => {
    const { name, rows, unread } = read(writeDatasheet(entry));
    expect(name).toBe(entry.name);
    expect(unread).toEqual([]);
    expect(rows.map(({ text }) => text)).toEqual(
      entry.rows.map(({ text }) => (text.startsWith('2.83 V') ? 'at 2.83 V' : text)),
    );
  });
});

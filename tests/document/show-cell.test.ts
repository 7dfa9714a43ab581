import { describe, expect, test } from 'vitest';
import type { CellRecord } from '../../functions/values/record.ts';
import { measured, say } from '../../functions/values/say.ts';
import { newSheet } from '../../src/document/create.ts';
import { recordText } from '../../src/document/record-text.ts';
import { showCell, shownText } from '../../src/document/show-cell.ts';
import type { UnitSystem } from '../../src/document/types.ts';
import type { CellState } from '../../src/engine/types.ts';

const place = { sheet: 's', cell: 'B4', findings: [] };
const frequency = { kind: 'number', quantity: 'frequency', dimension: { s: -1 } } as const;
const volume = { kind: 'number', quantity: 'volume', dimension: { m: 3 } } as const;
const ofRecord = (record: CellRecord): CellState => ({
  ...place,
  value: { kind: 'record', record },
  type: { kind: 'record', record: record.kind },
});
const line = (state: CellState, text: string, unit?: string, system: UnitSystem = 'metric'): string =>
  shownText(showCell(state, { text, ...(unit !== undefined && { unit }) }, around(system)));

const sheets = [
  { ...newSheet('Sheet'), id: 's', cells: new Map([['A5', { text: 'Volume' }]]) },
  { ...newSheet('My box'), id: 't' },
];
const around = (system: UnitSystem) => ({ system, sheets });

const driver = {
  kind: 'driver',
  name: 'W-165 A',
  fs: 38,
  qts: 0.386,
  vas: 0.02852,
  re: 5.8,
  sd: 0.0132,
  derived: ['qts'],
  doubts: [],
} as const;

describe('a number', () => {
  const state: CellState = { ...place, value: { kind: 'number', value: 0.0121 }, type: volume };

  test('that was typed is shown in its own unit with its own digits', () => {
    expect(line(state, '12.10 L')).toBe('12.10 L');
    expect(line({ ...state, value: { kind: 'number', value: 38 }, type: frequency }, '38 Hz')).toBe('38 Hz');
  });

  test('that was computed is shown in the unit asked for', () => {
    expect(line(state, '=B4*2', 'L')).toBe('12.1 L');
    expect(line({ ...state, value: { kind: 'number', value: 1500 }, type: frequency }, '=B4', 'kHz')).toBe('1.5 kHz');
  });

  test('in the other system of units is shown in a unit of that system', () => {
    expect(line(state, '12.1 L', undefined, 'imperial')).toBe('0.4273 ft³');
  });
});

describe('a record', () => {
  test('a verdict says its word, its reason and its note, in the units of the document', () => {
    const verdict = {
      kind: 'verdict',
      status: 'caution',
      word: 'Tight',
      reason: say`The box holds ${measured(0.0121, 'volume')}.`,
      note: say`Measure first.`,
    } as const;
    expect(showCell(ofRecord(verdict), undefined, around('metric'))).toEqual({
      kind: 'verdict',
      status: 'caution',
      word: 'Tight',
      reason: 'The box holds 12.1 L.',
      note: 'Measure first.',
    });
    expect(line(ofRecord(verdict), '=CHECK', undefined, 'imperial')).toBe(
      'Tight: The box holds 0.4273 ft³. Measure first.',
    );
  });

  test('a driver shows its name and key figures, and is copied with all of them', () => {
    expect(showCell(ofRecord(driver), undefined, around('metric'))).toEqual({
      kind: 'record',
      title: 'W-165 A',
      text: 'Fs 38 Hz, Qts 0.386, Vas 28.52 L, Re 5.8 Ω, Sd 132 cm²',
    });
    expect(recordText(driver, 'metric')).toContain('W-165 A: ');
    expect(recordText(driver, 'metric').split('; ')).toHaveLength(5);
    const nameless = { ...driver, name: '' };
    expect(recordText(nameless, 'metric')).toMatch(/^Unnamed driver: Fs 38 Hz; /);
    expect(shownText(showCell(ofRecord(nameless), undefined, around('metric')))).toMatch(/^Unnamed driver: Fs 38 Hz, /);
  });

  test('a curve shows itself under its title', () => {
    const curve = {
      kind: 'curve',
      title: 'Level at 1 m',
      quantity: 'level',
      y: new Float64Array(577).fill(89),
      from: 20,
      to: 20_000,
    } as const;
    expect(showCell(ofRecord(curve), undefined, around('metric'))).toEqual({
      kind: 'curve',
      curve,
      text: 'Level at 1 m',
    });
    expect(recordText(curve, 'metric')).toContain('Highest 89.0 dB');
  });

  test('a window shows its ends', () => {
    const limit = (name: string, at: number) => ({ name, at, stretched: at });
    const [low, high] = [limit('resonance', 1700), limit('narrowing', 1923)];
    const window = {
      kind: 'window',
      floors: [low],
      ceilings: [high],
      low,
      high,
      octaves: 0.18,
      stretchedOctaves: 0.9,
    } as const;
    expect(line(ofRecord(window), '=PAIR.WINDOW()')).toBe(
      'Shared window: Low 1\u2009700 Hz, High 1\u2009923 Hz, Width 0.18 oct',
    );
  });
});

test.each([
  [{ kind: 'problem', message: 'No.', origin: { sheet: 's', cell: 'B5' } }, 'Problem: No. (in B5, Volume)'],
  [{ kind: 'problem', message: 'No.', origin: { sheet: 't', cell: 'B5' } }, "Problem: No. (in 'My box'!B5)"],
  [{ kind: 'empty' }, ''],
  [{ kind: 'text', text: 'LR4' }, 'LR4'],
  [{ kind: 'truth', truth: true }, 'TRUE'],
  [{ kind: 'problem', message: 'Vas must be above 0.' }, 'Problem: Vas must be above 0.'],
] as const)('%j reads "%s"', (value, text) => {
  expect(line({ ...place, value, type: { kind: 'unknown' } }, '=X')).toBe(text);
});

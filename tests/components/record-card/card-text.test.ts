import { describe, expect, test } from 'vitest';
import type { Driver } from '../../../functions/values/driver.ts';
import { measured, say } from '../../../functions/values/say.ts';
import type { Network } from '../../../functions/values/network.ts';
import type { Window } from '../../../functions/values/window.ts';
import type { CardState, CardValue } from '../../../src/components/record-card/content.ts';
import { linesOf, textOf } from '../../../src/components/record-card/card-text.ts';
import { curveOf } from '../plot/curves.ts';

const woofer: Driver = { kind: 'driver', name: 'Woofer', fs: 38, vas: 0.0285, derived: [], doubts: [say`Is it?`] };
const window: Window = {
  kind: 'window',
  floors: [{ name: 'resonance', at: 1500, stretched: 1200 }],
  ceilings: [{ name: 'narrowing', at: 3000, stretched: 3500 }],
  low: { name: 'resonance', at: 1500, stretched: 1200 },
  high: { name: 'narrowing', at: 3000, stretched: 3500 },
  octaves: 1,
  stretchedOctaves: 1.54,
};

const stateOf = (value: CardValue): CardState => ({
  sheet: 's',
  cell: 'B4',
  value,
  type: { kind: 'number', quantity: 'volume' },
  unit: 'L',
  findings: [],
});

describe('the lines of a card', () => {
  test('have values in the unit of the reader', () => {
    const vas = (system: 'metric' | 'imperial') => linesOf(woofer, system).find(({ name }) => name === 'vas')!.text;
    expect(vas('metric')).toBe('28.5\u00a0L');
    // One cubic foot is 28.316846592 L exactly.
    expect(vas('imperial')).toBe('1.006\u00a0ft³');
  });

  test('do not repeat the title', () => {
    expect(linesOf(woofer, 'metric').some(({ name }) => name === 'name')).toBe(false);
  });
});

describe('the text of a card', () => {
  test('is the value of a number in its unit', () => {
    expect(textOf(stateOf({ kind: 'number', value: 0.0121 }), 'metric')).toBe('12.1\u00a0L');
  });

  test('is the whole message of a problem', () => {
    expect(textOf(stateOf({ kind: 'problem', message: 'vb must be above 0 L.' }), 'metric')).toBe(
      'vb must be above 0 L.',
    );
  });

  test('is a line a field for a driver, and its doubts', () => {
    const lines = textOf(stateOf({ kind: 'record', record: woofer }), 'metric').split('\n');
    expect(lines[0]).toBe('Woofer');
    expect(lines).toContain('Fs\t38\u00a0Hz');
    expect(lines.at(-1)).toBe('Is it?');
  });

  test('is reason and note for a verdict', () => {
    const record = {
      kind: 'verdict',
      status: 'fail',
      word: 'Too low',
      reason: say`Crossing at ${measured(1808, 'frequency')} is too low.`,
      note: say`Protect the tweeter.`,
    } as const;
    expect(textOf(stateOf({ kind: 'record', record }), 'metric')).toBe(
      'Too low\nCrossing at 1\u2009808 Hz is too low.\nProtect the tweeter.',
    );
  });

  test('is every rule of a shared window with both its ends', () => {
    const text = textOf(stateOf({ kind: 'record', record: window }), 'metric');
    expect(text).toContain('resonance\tfrom 1\u2009500\u00a0Hz\tstretched 1\u2009200\u00a0Hz');
    expect(text).toContain('narrowing\tup to 3\u2009000\u00a0Hz\tstretched 3\u2009500\u00a0Hz');
  });

  test('is a table of a curve in the unit of its heading, where the curve holds', () => {
    const record = curveOf('travel', (hertz) => 0.004 * (100 / hertz), [50, 200]);
    const [, heading, ...rows] = textOf(stateOf({ kind: 'record', record }), 'metric').split('\n');
    expect(heading).toBe('Hz\tmm');
    for (const row of rows) {
      const [hertz = 0, travel = 0] = row.split('\t').map(Number);
      expect(travel * hertz).toBeCloseTo(400, 1);
    }
    expect(rows.length).toBe(96);
  });
});

test('a table comes out tab-separated under its head, a network as the table of its legs', () => {
  const network: Network = {
    kind: 'network',
    name: 'Low-pass',
    legs: [
      { place: 'series', form: 'chain', inductance: 0.001, coilResistance: 0.4, label: 'low-pass coil' },
      { place: 'shunt', form: 'chain', capacitance: 6.8e-6, resistance: 2.2 },
    ],
  };
  expect(textOf(stateOf({ kind: 'record', record: network }), 'metric').replaceAll('\u00a0', ' ')).toBe(
    [
      'Low-pass',
      'Leg\tWhere\tResistor\tCoil\tCoil resistance\tCapacitor',
      'low-pass coil\tin series\t\t1 mH\t0.4 Ω\t',
      '2\tacross, parts in series\t2.2 Ω\t\t\t6.8 µF',
    ].join('\n'),
  );
});

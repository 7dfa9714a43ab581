import { describe, expect, test } from 'vitest';
import { fieldOf, fieldsOf, quantityOf, sentenceOf, summarise } from '../../../functions/values/fields.ts';
import type { Curve } from '../../../functions/values/curve.ts';
import type { Window } from '../../../functions/values/window.ts';
import { frequencies } from '../../../functions/values/grid.ts';
import { box, curve, woofer } from '../enclosure/call.ts';

const made = box('CLOSED.BOX', { driver: woofer, volume: 0.0121 });
const window: Window = {
  kind: 'window',
  floors: [],
  ceilings: [],
  low: { name: 'resonance', at: 1000, stretched: 800 },
  high: { name: 'narrowing', at: 4000, stretched: 4400 },
  octaves: 2,
  stretchedOctaves: 2.46,
};

describe('fields of records', () => {
  test('are read without regard to case', () => {
    expect(fieldOf(woofer, 'Fs')).toBe(38);
    expect(fieldOf(made, 'QTC')).toBeCloseTo(0.708, 3);
    expect(fieldOf(window, 'lowName')).toBe('resonance');
    expect(fieldOf(window, 'centre')).toBeCloseTo(2000, 9);
    expect(fieldOf(woofer, 'colour')).toBeUndefined();
  });
  test('a curve is read inside its band only, in its own quantity', () => {
    const whole = curve('BOX.IMPEDANCE', { box: made });
    const part: Curve = { ...whole, y: Float64Array.from(frequencies), from: 20, to: 80 };
    expect(fieldOf(part, 'minimum')).toBeCloseTo(20, 9);
    expect(fieldOf(part, 'maximum')).toBeCloseTo(80, 9);
    expect(quantityOf(part, 'maximum')).toBe('resistance');
  });
  test('a verdict says status, word and reason', () => {
    const verdict = {
      kind: 'verdict',
      status: 'good',
      word: 'Good',
      reason: ['By ', { value: 3, quantity: 'level' }, ' dB.'],
    } as const;
    expect(fieldOf(verdict, 'reason')).toBe('By 3 dB.');
    expect(fieldOf(verdict, 'note')).toBeUndefined();
  });
  test('names are unique and lower case in every kind', () => {
    for (const kind of ['driver', 'box', 'curve', 'verdict', 'window'] as const) {
      const names = fieldsOf(kind).map(({ name }) => name);
      expect(new Set(names).size).toBe(names.length);
      expect(names).toEqual(names.map((name) => name.toLowerCase()));
    }
  });
  test('a summary leaves out what the record does not hold', () => {
    const lines = summarise(made);
    expect(lines.find(({ name }) => name === 'volume')).toMatchObject({ value: 0.0121, quantity: 'volume' });
    expect(lines.find(({ name }) => name === 'tuning')).toBeUndefined();
    expect(sentenceOf(made)).toContainEqual({ value: 0.0121, quantity: 'volume' });
  });
});

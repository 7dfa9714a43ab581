import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { slopeCurve } from '../../../functions/crossover/slope-curve.ts';
import { readAt } from '../../../functions/values/interpolate.ts';
import { agrees, input, references } from '../../references/read.ts';
import { call, degrees, number, refusal, spoken, verdict } from '../radiation/call.ts';

/** What each rule is given at a value, and three values: good, caution, fail. Common practice, no source. */
const rules: readonly (readonly [string, (value: number) => Record<string, unknown>, readonly number[], string])[] = [
  ['RULE.RESONANCE', (value) => ({ handover: value, fs: 850 }), [1700, 1300, 1200], 'safe start'],
  ['RULE.TRAVEL', (value) => ({ travel: value, xmax: 0.35e-3 }), [0.245e-3, 0.3e-3, 0.36e-3], 'runs out of travel'],
  ['RULE.NARROWING', (value) => ({ handover: value, sd: 0.0132 }), [1900, 2600, 2700], 'audible hole'],
  ['RULE.DIRECTIVITY', (value) => ({ handover: value, lower: 0.0132, upper: 7e-4 }), [1800, 2300, 4000], 'a dip'],
  ['RULE.BREAKUP', (value) => ({ handover: value, breakup: 5200 }), [2600, 3400, 3500], 'stays audible'],
  ['RULE.SPACING', (value) => ({ handover: value, spacing: 0.139 }), [2400, 3400, 3500], 'several nulls'],
  ['RULE.NULL', (value) => ({ angle: degrees(value) }), [30, 25, 19], 'falls into it'],
  ['RULE.OVERLAP', (value) => ({ lowerTop: value, upperBottom: 800 }), [3200, 2000, 1500], 'reaches further'],
  ['RULE.BAND', (value) => ({ low: 300, high: value }), [2400, 1500, 500], 'run into each other'],
  ['RULE.CHAMBER', (value) => ({ handover: 300, resonance: value }), [150, 200, 310], 'more litres'],
];

describe.each(rules)('%s', (name, given, values, words) => {
  test('is good, a caution, a fail, and says what follows', () => {
    expect(values.map((value) => verdict(name, given(value)).status)).toEqual(['good', 'caution', 'fail']);
    expect(spoken(verdict(name, given(values[2]!)).reason)).toContain(words);
  });
  test('its thresholds can be bent, and may not contradict each other', () => {
    const wide = loosened(name);
    expect(verdict(name, { ...given(values[1]!), ...wide }).status).toBe('good');
    expect(refusal(name, { ...given(values[1]!), good: wide.caution, caution: wide.good })).toContain('stricter');
  });
  test('never grows better on the way from good to fail', () => {
    const rank = { good: 0, caution: 1, fail: 2 };
    const [first, , last] = values as [number, number, number];
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), (a, b) => {
        const at = (share: number): number => rank[verdict(name, given(first + (last - first) * share)).status];
        expect(at(Math.max(a, b))).toBeGreaterThanOrEqual(at(Math.min(a, b)));
      }),
    );
  });
});

/** Thresholds so loose that a caution becomes good: less of what should be much, more of what should be little. */
function loosened(name: string): { readonly good: number; readonly caution: number } {
  if (name === 'RULE.NULL') return { good: 0.1, caution: 0.05 };
  return /RESONANCE|BREAKUP|OVERLAP|BAND|CHAMBER/.test(name) ? { good: 0.5, caution: 0.2 } : { good: 8, caution: 9 };
}

describe('pads', () => {
  test.each([
    [5.3, 'good'],
    [0, 'good'],
    [10.5, 'caution'],
    [-0.5, 'fail'],
  ] as const)('a driver %d dB over the system is %s', (over, status) => {
    expect(verdict('RULE.PAD', { system: 84.7, level: 84.7 + over }).status).toBe(status);
  });
  test('a driver that is too quiet cannot be turned up', () => {
    expect(spoken(verdict('RULE.PAD', { system: 90, level: 88 }).reason)).toContain('without active drive');
  });
});

describe('rules as they are told', () => {
  test.each(references('trade-rules', 't2'))('$id', (reference) => {
    const fs = input(reference, 'fs');
    const handover = reference.expected.value as number;
    const good = reference.id.startsWith('t2oct') ? 4 : 2;
    expect(verdict('RULE.RESONANCE', { handover, fs, good }).status).toBe('good');
    expect(verdict('RULE.RESONANCE', { handover: handover * 0.999, fs, good, caution: 1 }).status).toBe('caution');
  });
  test('at twice the resonance a second-order filter leaves it 12.3 dB down', () => {
    const [reference] = references('trade-rules', 'att-');
    const { y } = slopeCurve('BW2', 'high', 2 * input(reference!, 'fs'));
    expect(-readAt(y, input(reference!, 'fs'))).toBeCloseTo(reference!.expected.value as number, 2);
  });
  test('overlap and its middle', () => {
    const [overlap] = references('trade-rules', 'ov-');
    const [middle] = references('trade-rules', 'mid-');
    const [low, high] = [input(overlap!, 'upper_low'), input(overlap!, 'lower_high')];
    agrees(number('OVERLAP.BELOW', { frequency: high, floor: low }), overlap!);
    const windowOf = (at: number) => ({ name: 'limit', at, stretched: at });
    const window = { kind: 'window', low: windowOf(low), high: windowOf(high) };
    agrees(number('PAIR.CENTRE', { window }), middle!);
    expect(verdict('RULE.OVERLAP', { lowerTop: high, upperBottom: low }).status).toBe('good');
  });
  test.each(references('trade-rules', 'ctc-'))('spacing, $id', (reference) => {
    const wavelengths = reference.id.includes('half') ? 0.5 : 1;
    const spacing = reference.expected.value as number;
    const frequency = input(reference, 'f');
    expect(number('SPACING.WAVELENGTHS', { spacing, frequency })).toBeCloseTo(wavelengths, 9);
    expect(verdict('RULE.SPACING', { handover: frequency, spacing, good: wavelengths }).status).toBe('good');
  });
  test.each(references('trade-rules', 'ebp-'))('hint, $id', (reference) => {
    const word = { sealed: 'closed', either: 'either', vented: 'vented' }[String(reference.expected.value)];
    expect(call('RULE.BOX_BY_RATIO', { fs: input(reference, 'EBP') * 0.4, qes: 0.4 })).toBe(word);
  });
  test.each(references('trade-rules', 'qts-'))('hint, $id', (reference) => {
    const word = { sealed: 'closed', vented: 'vented' }[String(reference.expected.value)];
    expect(call('RULE.BOX_BY_Q', { qts: input(reference, 'Qts') })).toBe(word);
  });
});

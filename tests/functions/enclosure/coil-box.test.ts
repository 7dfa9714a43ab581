import { describe, expect, test } from 'vitest';
import { Problem } from '../../../functions/values/problem.ts';
import { box, call, curve, number, woofer } from './call.ts';

const coil = { driver: woofer, handover: 400, sample: 0.001, ohms: 0.3, shape: 2 };

describe('box and coil suit each other', () => {
  test.each([
    ['CLOSED.COIL_BOX', { qtc: Math.SQRT1_2 }],
    ['VENTED.COIL_BOX', { family: 'QB3' }],
  ])('%s: the coil for the impedance in the box has the resistance of the box', (name, more) => {
    const made = box(name, { ...coil, ...more });
    // 400 Hz is 10 Hz · 2^(log2 40): read off the curve between its two neighbours.
    const place = 48 * Math.log2(40);
    const { y } = curve('BOX.IMPEDANCE', { box: made });
    const z = y[Math.floor(place)]! + (place % 1) * (y[Math.ceil(place)]! - y[Math.floor(place)]!);
    const inductance = (2 * z) / (2 * Math.PI * 400);
    expect(0.3 * (inductance / 0.001) ** 0.6).toBeCloseTo(made.seriesResistance, 4);
  });
  test('the litres are those for that resistance given by hand', () => {
    const made = box('CLOSED.COIL_BOX', { ...coil, qtc: Math.SQRT1_2 });
    const { seriesResistance } = made;
    expect(seriesResistance).toBeGreaterThan(0.3);
    expect(number('CLOSED.VOLUME_FOR', { driver: woofer, qtc: Math.SQRT1_2, seriesResistance })).toBeCloseTo(
      made.volume,
      9,
    );
    expect(number('BOX.QTC', { box: made })).toBeCloseTo(Math.SQRT1_2, 9);
    const vented = box('VENTED.COIL_BOX', { ...coil, family: 'QB3' });
    const byHand = { driver: woofer, seriesResistance: vented.seriesResistance };
    expect(number('VENTED.QB3_VOLUME', byHand)).toBeCloseTo(vented.volume, 9);
  });
  test('a coil that lifts Qts above the wanted Qtc is a problem', () => {
    expect(call('CLOSED.COIL_BOX', { ...coil, qtc: 0.4, ohms: 3 })).toBeInstanceOf(Problem);
  });
});

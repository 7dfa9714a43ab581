import { expect, test } from 'vitest';
import type { Box } from '../../../functions/values/box.ts';
import { box, curve, woofer } from './call.ts';

const boxes = {
  closed: box('CLOSED.BOX', { driver: woofer, volume: 0.0121 }),
  lossy: box('CLOSED.BOX', { driver: woofer, volume: 0.0121, leakageQ: 9, absorptionQ: 6 }),
  vented: box('VENTED.BOX', { driver: woofer, volume: 0.0223, tuning: 39.6 }),
  filled: box('VENTED.BOX', { driver: woofer, volume: 0.03, tuning: 33, absorptionQ: 20, portQ: 40 }),
  bandpass: box('BANDPASS.BOX', { driver: woofer, rear: 0.012, front: 0.008, tuning: 70 }),
  baffle: box('BAFFLE.BOX', { driver: woofer }),
};
const asked = ['BOX.RESPONSE', 'BOX.TRAVEL', 'BOX.IMPEDANCE', 'BOX.LEVEL', 'BOX.PORT_SPEED', 'BOX.TRAVEL'] as const;
const answersOf = (name: string, of: Box): boolean => name !== 'BOX.PORT_SPEED' || of.style === 'vented';

// Their loads and travels share arrays, which serve one box after the other.
test('boxes asked about in turn answer as each does alone', () => {
  const all = Object.entries(boxes);
  const alone = new Map(
    all.flatMap(([style, of]) =>
      asked
        .filter((name) => answersOf(name, of))
        // A copy is a box that was never asked about.
        .map((name) => [`${style} ${name}`, curve(name, { box: { ...of }, portArea: 0.0036, volts: 20 })] as const),
    ),
  );
  const inTurn = asked.flatMap((name) =>
    all.filter(([, of]) => answersOf(name, of)).map(([style, of]) => [style, name, of] as const),
  );
  const found = inTurn.map(
    ([style, name, of]) => [style, name, curve(name, { box: of, portArea: 0.0036, volts: 20 })] as const,
  );
  for (const [style, name, { y, phase }] of found) {
    const expected = alone.get(`${style} ${name}`)!;
    expect(y, `${style} ${name}`).toEqual(expected.y);
    expect(phase, `${style} ${name}`).toEqual(expected.phase);
  }
});

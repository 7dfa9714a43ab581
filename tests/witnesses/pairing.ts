import { exactly, type Witness } from './witness.ts';

const hand = { source: 'worked by hand', confirmed: 'computed' } as const;
const models = {
  source: 'worked outside in two models, a transfer function and a circuit',
  confirmed: 'computed',
} as const;
const window = 'PAIR.WINDOW("resonance", 800 Hz, 800 Hz, "narrowing", 3200 Hz, 3200 Hz)';
const overlap = {
  source: 'two octaves of overlap, hand-over in the middle: common practice',
  confirmed: 'practice',
} as const;
const mains =
  'CLOSED.BOX(DRIVER.OF("52 Hz", 4.2, 0.46, "10.91 L", "5.9 ohm", "85 cm2", "4.5 mm", "0.45 mH"), "6 L", "0.3 ohm")';

export const pairingWitnesses: readonly Witness[] = [
  { formula: `=PAIR.LOW(${window})`, gives: 800, within: exactly, ...overlap },
  { formula: `=PAIR.HIGH(${window})`, gives: 3200, within: exactly, ...overlap },
  { formula: `=PAIR.CENTRE(${window})`, gives: 1600, within: exactly, ...overlap },
  { formula: `=PAIR.OCTAVES(${window})`, gives: 2, within: exactly, ...overlap },
  {
    formula: '=PAIR.WINDOW("resonance", 1700 Hz, 1275 Hz, "narrowing", 1923 Hz, 2631 Hz)',
    field: 'stretchedoctaves',
    gives: 1.045114001,
    within: { relative: 1e-8 },
    ...hand,
  },
  { formula: '=OVERLAP.BELOW("3.2 kHz", "800 Hz")', gives: 2, within: exactly, ...overlap },
  { formula: '=OVERLAP.ABOVE("800 Hz", "3.2 kHz")', gives: 2, within: exactly, ...overlap },
  { formula: '=SUBS.LEVEL("101.7 dB", 2)', gives: 107.72, ...hand },
  { formula: '=SUBS.COUNT("101.7 dB", "106 dB")', gives: 2, within: exactly, ...models },
  {
    formula: `=SUBS.RELIEF(BOX.TRAVEL(${mains}), BOX.TRAVEL(BOX.HIGH_PASS(${mains}, "85 Hz", 2)))`,
    gives: 5.5,
    ...models,
    within: { absolute: 0.2 },
  },
];

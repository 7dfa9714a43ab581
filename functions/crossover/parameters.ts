import { usual } from '../usual.ts';
import { passiveSlopes } from './slope.ts';

/** Parameters that several crossover functions share. */
export const slope = { choice: passiveSlopes, summary: 'family and order of the filter' } as const;
export const pass = { choice: ['low', 'high'], summary: 'the side that passes' } as const;
export const frequency = { ...usual.frequency, typical: [50, 8000], summary: 'hand-over' } as const;
export const ohms = { ...usual.ohms, typical: [2, 32], summary: 'real ohms of the load around the hand-over' } as const;
export const inductance = { quantity: 'inductance', min: 1e-9, max: 10, typical: [1e-5, 0.03] } as const;
export const capacitance = { quantity: 'capacitance', min: 1e-12, max: 1, typical: [5e-7, 1e-3] } as const;
export const resistance = { ...usual.ohms, typical: [0.1, 200] } as const;
export const coilResistance = {
  quantity: 'resistance',
  min: 0,
  max: 1e6,
  default: 0,
  typical: [0, 3],
  summary: 'wire resistance of each coil',
} as const;
export const network = { record: 'network', summary: 'the filter' } as const;
export const load = { record: 'curve', summary: 'impedance of the driver where it is mounted, with phase' } as const;
export const place = {
  quantity: 'ratio',
  min: 1,
  max: 99,
  default: 1,
  summary: 'which one, counted from the amplifier',
} as const;

/** A driver, a filter and a load in one line, for examples that stand on their own. */
export const demoWoofer = 'DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "5.8 ohm", "132 cm2", "5.5 mm", "0.55 mH")';
export const demoTweeter = 'DRIVER.OF("850 Hz", 2.6, 1.05, "0.007383 L", "5.6 ohm", "7 cm2", "0.35 mm", "0.03 mH")';
export const demoLow = 'NETWORK.LOW("LR2", "1900 Hz", "6.3 ohm")';
export const demoHigh = 'NETWORK.HIGH("LR2", "1900 Hz", "5.9 ohm")';

/** The two ways of a loudspeaker: a flattened woofer in its box and a padded tweeter. */
export const demoLowWay = `WAY.OF(CLOSED.BOX(${demoWoofer}, "12.1 L"), NETWORK.JOIN(NETWORK.LOW("LR2", "1900 Hz", "5.8 ohm"), NETWORK.FLATTEN("5.8 ohm", "16.4 µF")))`;
export const demoHighWay = `WAY.OF(${demoTweeter}, NETWORK.JOIN(${demoHigh}, NETWORK.PAD("2.7 ohm", "6.8 ohm")), 0, 0, 0, "reversed")`;

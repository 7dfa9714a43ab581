import type { Leg } from '../values/network.ts';
import { ladderOf } from './slope.ts';

const withResistance = (coilResistance: number): Pick<Leg, 'coilResistance'> =>
  coilResistance === 0 ? {} : { coilResistance };

/** Ladder of a low-pass between an amplifier and a resistance: coil in series, capacitor across, in turn. */
export const lowPassLegs = (name: string, frequency: number, ohms: number, coilResistance = 0): Leg[] =>
  ladderOf(name).map((element, index) =>
    index % 2 === 0
      ? {
          place: 'series',
          form: 'chain',
          inductance: (element * ohms) / (2 * Math.PI * frequency),
          ...withResistance(coilResistance),
          label: 'low-pass coil',
        }
      : {
          place: 'shunt',
          form: 'chain',
          capacitance: element / (ohms * 2 * Math.PI * frequency),
          label: 'low-pass capacitor',
        },
  );

/** Ladder of a high-pass: the mirror image, with a capacitor for every coil of the reciprocal value. */
export const highPassLegs = (name: string, frequency: number, ohms: number, coilResistance = 0): Leg[] =>
  ladderOf(name).map((element, index) =>
    index % 2 === 0
      ? {
          place: 'series',
          form: 'chain',
          capacitance: 1 / (element * ohms * 2 * Math.PI * frequency),
          label: 'high-pass capacitor',
        }
      : {
          place: 'shunt',
          form: 'chain',
          inductance: ohms / (element * 2 * Math.PI * frequency),
          ...withResistance(coilResistance),
          label: 'high-pass coil',
        },
  );

/**
 * Ladder of a band-pass: in the low-pass of the width of the band, every coil gets a capacitor in series and every
 * capacitor a coil across it, each pair resonant at the middle of the band.
 */
export function bandPassLegs(name: string, from: number, to: number, ohms: number, coilResistance = 0): Leg[] {
  const middle = (2 * Math.PI) ** 2 * from * to;
  return lowPassLegs(name, to - from, ohms, coilResistance).map((leg) =>
    leg.place === 'series'
      ? { ...leg, capacitance: 1 / (middle * leg.inductance!), label: 'band-pass coil and capacitor' }
      : {
          ...leg,
          form: 'tank',
          inductance: 1 / (middle * leg.capacitance!),
          ...withResistance(coilResistance),
          label: 'band-pass capacitor and coil',
        },
  );
}

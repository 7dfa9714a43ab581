import { define } from '../define.ts';
import { usual } from '../usual.ts';
import { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';

const re = { ...usual.ohms, summary: 'direct-current resistance of the voice coil' } as const;
const le = {
  quantity: 'inductance',
  min: 1e-9,
  max: 10,
  typical: [5e-6, 5e-3],
  summary: 'inductance of the voice coil',
} as const;
const factor = {
  quantity: 'ratio',
  min: 0.1,
  max: 10,
  default: 1,
  typical: [1, 1.3],
  summary: 'resistor over Re: 1 is exact for an ideal coil, 1.25 a habit of the trade',
} as const;
const fs = { ...usual.frequency, summary: 'resonance of the driver in its box' } as const;
const qms = { ...usual.q, summary: 'mechanical Q there' } as const;
const qes = { ...usual.q, summary: 'electrical Q there' } as const;
const flattening = { source: 'own', at: 'dual of Re and Le: R = Re, C = Le/R²' } as const;
const trapping = {
  source: 'own',
  at: 'dual of the motional branch: L = Re·Qes/(2π·fs), C = 1/(2π·fs·Qes·Re), R = Re·(1 + Qes/Qms)',
} as const;
const trapRemark =
  'In a closed box take resonance and Q in the box. Exact for a voice coil without inductance, and right far below where that matters.';

export const flattenResistor = define({
  name: 'FLATTEN.RESISTOR',
  summary: 'The resistor of the branch across a driver that flattens the rise of its voice coil.',
  parameters: { re, factor },
  returns: { quantity: 'resistance', summary: 'resistor, in series with the capacitor' },
  source: flattening,
  example: { formula: '=FLATTEN.RESISTOR("5.7 Ω")', gives: 5.7 },
  remarks: 'It heats up as a treble resistor does: about as much as the driver would take above the hand-over.',
  compute: (given) => given.re * given.factor,
});

export const flattenCapacitor = define({
  name: 'FLATTEN.CAPACITOR',
  summary: 'The capacitor of the branch across a driver that flattens the rise of its voice coil.',
  parameters: { re, le, factor },
  returns: { quantity: 'capacitance', summary: 'capacitor, in series with the resistor' },
  source: flattening,
  example: { formula: '=FLATTEN.CAPACITOR("5.7 Ω", "0.62 mH")', gives: 0.00001908 },
  remarks:
    'Real coils lose in the iron, so that a smaller capacitor often does better: look at the impedance with the branch. Bipolar capacitors only.',
  compute: (given) => given.le / (given.re * given.factor) ** 2,
});

export const flattenNetwork = define({
  name: 'FLATTEN.NETWORK',
  summary: 'The branch of a resistor and a capacitor across a driver that flattens the rise of its voice coil.',
  parameters: { re, le, factor },
  returns: { record: 'network', summary: 'filter of one leg across the driver' },
  source: flattening,
  example: {
    formula: '=FLATTEN.NETWORK("5.7 Ω", "0.62 mH")',
    gives: { name: 'Impedance flattening' },
  },
  remarks: 'Beside TRAP.NETWORK neither is exact any more: look at NETWORK.IMPEDANCE of both together.',
  compute(given) {
    const resistance = given.re * given.factor;
    return {
      kind: 'network' as const,
      name: 'Impedance flattening',
      legs: [
        {
          place: 'shunt' as const,
          form: 'chain' as const,
          resistance,
          capacitance: given.le / resistance ** 2,
          label: 'impedance flattening',
        },
      ],
    };
  },
});

interface Resonance {
  readonly fs: number;
  readonly qms: number;
  readonly qes: number;
  readonly re: number;
}

const trapOf = ({ fs, qms, qes, re }: Resonance) => {
  const angular = 2 * Math.PI * fs;
  return { resistance: re * (1 + qes / qms), inductance: (re * qes) / angular, capacitance: 1 / (angular * qes * re) };
};

export const trapResistor = define({
  name: 'TRAP.RESISTOR',
  summary: 'The resistance of the branch across a driver that flattens its resonance, that of the coil included.',
  parameters: { fs, qms, qes, re },
  returns: { quantity: 'resistance', summary: 'resistor and coil resistance together' },
  source: trapping,
  example: { formula: '=TRAP.RESISTOR("936 Hz", 4.4, 1.2, "5.1 Ω")', gives: 6.49 },
  remarks: trapRemark,
  compute: (given) => trapOf(given).resistance,
});

export const trapCoil = define({
  name: 'TRAP.COIL',
  summary: 'The coil of the branch across a driver that flattens its resonance.',
  parameters: { fs, qes, re },
  returns: { quantity: 'inductance', summary: 'coil' },
  source: trapping,
  example: { formula: '=TRAP.COIL("936 Hz", 1.2, "5.1 Ω")', gives: 0.001041 },
  remarks: `Its own resistance is a part of TRAP.RESISTOR, so thin wire does. ${trapRemark}`,
  compute: (given) => trapOf({ ...given, qms: 1 }).inductance,
});

export const trapCapacitor = define({
  name: 'TRAP.CAPACITOR',
  summary: 'The capacitor of the branch across a driver that flattens its resonance.',
  parameters: { fs, qes, re },
  returns: { quantity: 'capacitance', summary: 'capacitor' },
  source: trapping,
  example: { formula: '=TRAP.CAPACITOR("936 Hz", 1.2, "5.1 Ω")', gives: 0.00002778 },
  remarks: `Bipolar capacitors only. ${trapRemark}`,
  compute: (given) => trapOf({ ...given, qms: 1 }).capacitance,
});

export const trapNetwork = define({
  name: 'TRAP.NETWORK',
  summary: 'The branch of resistor, coil and capacitor across a driver that flattens its resonance.',
  parameters: {
    fs,
    qms,
    qes,
    re,
    coilResistance: {
      quantity: 'resistance',
      min: 0,
      max: 1e6,
      default: 0,
      summary: 'resistance of the coil, taken off the resistor',
    },
  },
  returns: { record: 'network', summary: 'filter of one leg across the driver' },
  source: trapping,
  example: {
    formula: '=TRAP.NETWORK("936 Hz", 4.4, 1.2, "5.1 Ω", "1.2 Ω")',
    gives: { name: 'Resonance trap' },
  },
  remarks: trapRemark,
  compute(given) {
    const { resistance, inductance, capacitance } = trapOf(given);
    const { coilResistance } = given;
    if (coilResistance > resistance)
      return new Problem(
        say`The coil has ${measured(coilResistance, 'resistance')}, but the whole branch may have only ${measured(resistance, 'resistance')}; wind it of thicker wire.`,
        'coilResistance',
      );
    const rest = resistance - coilResistance;
    return {
      kind: 'network' as const,
      name: 'Resonance trap',
      legs: [
        {
          place: 'shunt' as const,
          form: 'chain' as const,
          ...(rest > 0 && { resistance: rest }),
          inductance,
          coilResistance,
          capacitance,
          label: 'resonance trap',
        },
      ],
    };
  },
});

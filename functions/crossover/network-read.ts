import { define } from '../define.ts';
import { notWhole } from '../electrical/impedance.ts';
import { curveOf } from '../values/complex-curve.ts';
import type { Curve } from '../values/curve.ts';
import type { Network } from '../values/network.ts';
import type { Problem } from '../values/problem.ts';
import { inputImpedance, transferOf } from './ladder.ts';
import { resistorLoad } from './load-resistor.ts';
import { noSuchPart } from './no-such-part.ts';
import { demoHigh, demoLow, demoTweeter, load, network, place } from './parameters.ts';

type Part = 'resistance' | 'inductance' | 'coilResistance' | 'capacitance';

function nth(given: { readonly network: Network; readonly place: number }, part: Part, noun: string): number | Problem {
  const counted = part === 'coilResistance' ? 'inductance' : part;
  const legs = given.network.legs.filter((leg) => leg[counted] !== undefined);
  const leg = legs[given.place - 1];
  if (leg !== undefined) return leg[part] ?? 0;
  return noSuchPart(`“${given.network.name}”`, legs.length, noun, given.place);
}

const parameters = { network, place } as const;
const source = { source: 'own', at: 'as put into the filter' } as const;
const pad = 'NETWORK.PAD("2.7 ohm", "6.8 ohm")';

export const networkCoil = define({
  name: 'NETWORK.COIL',
  summary: 'The value of a coil of a filter.',
  parameters,
  returns: { quantity: 'inductance', summary: 'inductance' },
  source,
  example: { formula: `=NETWORK.COIL(${demoLow})`, gives: 0.001055 },
  compute: (given) => nth(given, 'inductance', 'coil'),
});

export const networkCoilResistance = define({
  name: 'NETWORK.COIL_RESISTANCE',
  summary: 'The wire resistance of a coil of a filter.',
  parameters,
  returns: { quantity: 'resistance', summary: 'resistance, 0 when none was given' },
  source,
  example: { formula: '=NETWORK.COIL_RESISTANCE(NETWORK.LOW("LR2", "1900 Hz", "6.3 ohm", "0.3 ohm"))', gives: 0.3 },
  compute: (given) => nth(given, 'coilResistance', 'coil'),
});

export const networkCapacitor = define({
  name: 'NETWORK.CAPACITOR',
  summary: 'The value of a capacitor of a filter.',
  parameters,
  returns: { quantity: 'capacitance', summary: 'capacitance' },
  source,
  example: { formula: `=NETWORK.CAPACITOR(${demoLow})`, gives: 0.00000665 },
  compute: (given) => nth(given, 'capacitance', 'capacitor'),
});

export const networkResistor = define({
  name: 'NETWORK.RESISTOR',
  summary: 'The value of a resistor of a filter.',
  parameters,
  returns: { quantity: 'resistance', summary: 'resistance' },
  source,
  example: { formula: `=NETWORK.RESISTOR(${pad}, 2)`, gives: 6.8 },
  compute: (given) => nth(given, 'resistance', 'resistor'),
});

const solution = {
  source: 'own',
  at: 'voltages and currents of the ladder from the driver back to the amplifier',
} as const;

export const networkResponse = define({
  name: 'NETWORK.RESPONSE',
  summary: 'The voltage at the driver over that at the amplifier, on the real impedance of the driver.',
  parameters: { network, load },
  returns: { record: 'curve', of: 'level', summary: 'level in dB with phase' },
  source: solution,
  example: {
    formula: `=CURVE.AT(NETWORK.RESPONSE(${demoHigh}, LOAD.RESISTOR("5.9 ohm")), "1900 Hz")`,
    gives: -6.02,
  },
  remarks: 'The electrical side alone. The driver’s own response comes on top: see WAY.LEVEL.',
  compute: (given): Curve | Problem =>
    notWhole(given.load, 'load') ??
    curveOf(
      { title: 'Voltage at the driver', quantity: 'level', from: given.load.from, to: given.load.to },
      transferOf(given.network, given.load),
    ),
});

export const networkImpedance = define({
  name: 'NETWORK.IMPEDANCE',
  summary: 'The impedance of filter and driver together, as the amplifier sees it.',
  parameters: { network, load },
  returns: { record: 'curve', of: 'resistance', summary: 'impedance with phase' },
  source: solution,
  example: {
    formula: `=NETWORK.IMPEDANCE(${pad}, DRIVER.IMPEDANCE(${demoTweeter}))`,
    gives: { quantity: 'resistance', title: 'Impedance with filter' },
  },
  compute: (given): Curve | Problem => notWhole(given.load, 'load') ?? inputImpedance(given.network, given.load),
});

export const networkLoadEffect = define({
  name: 'NETWORK.LOAD_EFFECT',
  summary: 'How far the voltage at the driver departs from that into a resistance, because its impedance is not one.',
  parameters: {
    network,
    load,
    ohms: { quantity: 'resistance', min: 1e-3, max: 1e6, summary: 'resistance that the parts were worked out for' },
  },
  returns: { record: 'curve', of: 'level', summary: 'difference in dB' },
  source: solution,
  example: {
    formula: `=NETWORK.LOAD_EFFECT(${demoHigh}, DRIVER.IMPEDANCE(${demoTweeter}), "5.9 ohm")`,
    gives: { quantity: 'level', title: 'Effect of the load' },
  },
  remarks:
    'At the resonance of a tweeter the coil across it meets a hump of many ohms: the filter no longer falls there as it should, and the cone moves more.',
  compute: (given): Curve | Problem => {
    const wrong = notWhole(given.load, 'load');
    if (wrong) return wrong;
    const real = transferOf(given.network, given.load);
    const ideal = transferOf(given.network, resistorLoad(given.ohms));
    const { from, to } = given.load;
    const y = real.re.map(
      (re, index) =>
        10 * Math.log10((re ** 2 + real.im[index]! ** 2) / (ideal.re[index]! ** 2 + ideal.im[index]! ** 2)),
    );
    return { kind: 'curve', title: 'Effect of the load', quantity: 'level', y, from, to };
  },
});

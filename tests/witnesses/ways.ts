import { high, low } from './subjects.ts';
import type { Witness } from './witness.ts';

const ladder = {
  source: 'computed independently with numpy: ladder and driver as one circuit of elements, pressure ρ·ω·U/2π',
  confirmed: 'computed',
} as const;

export const waysWitnesses: readonly Witness[] = [
  {
    formula: `=CURVE.AT(WAY.LEVEL(${low}), "640 Hz")`,
    vouches: ['WAY.LEVEL', 'WAY.OF'],
    gives: 88.28835,
    within: { absolute: 0.001 },
    ...ladder,
  },
  {
    formula: `=CURVE.AT(WAY.LEVEL(${high}), "2560 Hz")`,
    vouches: ['WAY.LEVEL', 'WAY.OF'],
    gives: 80.986204,
    within: { absolute: 0.001 },
    ...ladder,
  },
  {
    formula: `=CURVE.AT(WAY.DRIVE(${high}), "1280 Hz")`,
    vouches: ['WAY.DRIVE'],
    gives: -12.956835,
    within: { absolute: 0.0001 },
    ...ladder,
  },
  {
    formula: `=CURVE.AT(WAY.IMPEDANCE(${low}), "1280 Hz")`,
    vouches: ['WAY.IMPEDANCE'],
    gives: 7.9060211,
    within: { relative: 1e-5 },
    ...ladder,
  },
  {
    formula: `=CURVE.AT(WAY.TRAVEL(${high}, "20 V"), "1280 Hz")`,
    vouches: ['WAY.TRAVEL'],
    gives: 0.00015772221,
    within: { relative: 1e-5 },
    ...ladder,
  },
  {
    formula: `=CURVE.AT(WAY.OFF_AXIS(${low}, "30°"), "1280 Hz")`,
    vouches: ['WAY.OFF_AXIS'],
    gives: 83.318784,
    within: { absolute: 0.001 },
    source:
      'computed independently with numpy: ladder and driver as one circuit of elements, pressure ρ·ω·U/2π, 2·J1(x)/x by scipy',
    confirmed: 'computed',
  },
  {
    formula: `=CURVE.AT(WAY.TRAVEL(WAY.ACTIVE(${high}, FILTER.SLOPE("1280 Hz", "LR4", "high")), "20 V"), "1280 Hz")`,
    vouches: ['WAY.ACTIVE'],
    gives: 0.000078861105,
    within: { relative: 1e-5 },
    source: 'half of the travel without that filter, by the circuit of elements with numpy',
    confirmed: 'computed',
  },
  {
    formula: `=CURVE.AT(WAY.OFF_AXIS(WAY.ACTIVE(${low}, FILTER.SLOPE("1280 Hz", "LR4", "low")), "45°", 0), "1280 Hz")`,
    vouches: ['WAY.ACTIVE'],
    gives: 76.6479673,
    within: { absolute: 0.001 },
    source: 'its level on the axis by the circuit of elements, less 1.2842157 dB, 2·J1(x)/x by scipy',
    confirmed: 'computed',
  },
  {
    formula: `=CURVE.AT(WAY.LEVEL(WAY.ACTIVE(${low}, FILTER.SLOPE("1280 Hz", "LR4", "low"))), "1280 Hz")`,
    vouches: ['WAY.ACTIVE'],
    gives: 77.932183,
    within: { absolute: 0.001 },
    source:
      'computed independently with numpy: ladder and driver as one circuit of elements, pressure ρ·ω·U/2π, less 6.02 dB',
    confirmed: 'computed',
  },
  {
    formula:
      '=CURVE.AT(WAY.LEVEL(WAY.MEASURED(FILTER.SLOPE("640 Hz", "BW2", "high"), LOAD.RESISTOR("8 ohm"), NETWORK.WIRE("8 ohm"))), "1280 Hz")',
    vouches: ['WAY.MEASURED'],
    gives: -6.2838893,
    within: { absolute: 0.0001 },
    source: '8 Ω ahead of 8 Ω halve the voltage; Butterworth 1/(1 + u⁻⁴); by hand',
    confirmed: 'computed',
  },
  {
    formula: `=CURVE.AT(SYSTEM.LEVEL(${low}, ${high}), "1280 Hz")`,
    vouches: ['SYSTEM.LEVEL'],
    gives: 85.060707,
    within: { absolute: 0.001 },
    ...ladder,
  },
  {
    formula: `=CURVE.AT(SYSTEM.OFF_AXIS(0, "30°", ${low}, ${high}), "1280 Hz")`,
    vouches: ['SYSTEM.OFF_AXIS'],
    gives: 84.543853,
    within: { absolute: 0.001 },
    source:
      'computed independently with numpy: ladder and driver as one circuit of elements, pressure ρ·ω·U/2π, 2·J1(x)/x by scipy',
    confirmed: 'computed',
  },
  {
    formula: `=CURVE.AT(SYSTEM.IMPEDANCE(${low}, ${high}), "1280 Hz")`,
    vouches: ['SYSTEM.IMPEDANCE'],
    gives: 9.4669252,
    within: { relative: 1e-5 },
    ...ladder,
  },
  {
    formula: `=CURVE.AT(SYSTEM.REVERSED(${low}, ${high}), "1280 Hz")`,
    vouches: ['SYSTEM.REVERSED'],
    gives: 84.313601,
    within: { absolute: 0.001 },
    ...ladder,
  },
  {
    formula: `=CURVE.AT(SYSTEM.DELAY(${low}, ${high}), "1280 Hz")`,
    vouches: ['SYSTEM.DELAY'],
    gives: 0.00011268444,
    within: { relative: 0.005 },
    source:
      'computed independently with numpy: ladder and driver as one circuit of elements, pressure ρ·ω·U/2π, slope of its phase',
    confirmed: 'computed',
  },
  {
    formula: `=SYSTEM.HANDOVER(${low}, ${high})`,
    gives: 1915.0149,
    within: { relative: 0.0001 },
    source:
      'computed independently with numpy: ladder and driver as one circuit of elements, pressure ρ·ω·U/2π, root with scipy',
    confirmed: 'computed',
  },
  { formula: `=SYSTEM.PHASE_GAP(${low}, ${high})`, gives: 1.219592, within: { absolute: 0.002 }, ...ladder },
  { formula: `=SYSTEM.NULL_DEPTH(${low}, ${high})`, gives: 3.1152389, within: { absolute: 0.02 }, ...ladder },
];

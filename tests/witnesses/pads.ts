import { tweeter } from './subjects.ts';
import { exactly, type Witness } from './witness.ts';

const byHand = { source: 'worked by hand', confirmed: 'computed' } as const;
const everyPair = {
  source: 'every pair of E12 tried with numpy, squares of the errors of loss and ohms in dB added',
  confirmed: 'computed',
} as const;

export const padsWitnesses: readonly Witness[] = [
  { formula: '=PAD.SERIES("3 dB", "8 Ω")', gives: 2.3364337, within: { relative: 1e-6 }, ...byHand },
  { formula: '=PAD.SHUNT("3 dB", "8 Ω")', gives: 19.392174, within: { relative: 1e-6 }, ...byHand },
  { formula: '=PAD.LOSS("2.7 Ω", "6.8 Ω", "6.1 Ω")', gives: 5.2948541, within: { absolute: 1e-5 }, ...byHand },
  { formula: '=PAD.INPUT("2.7 Ω", "6.8 Ω", "6.1 Ω")', gives: 5.9155039, within: { relative: 1e-6 }, ...byHand },
  { formula: '=PAD.SINGLE("5.3 dB", "6.1 Ω")', gives: 5.1287092, within: { relative: 1e-6 }, ...byHand },
  { formula: '=PAD.STANDARD_SERIES("5.3 dB", "6.1 Ω", "E12")', gives: 2.7, within: { relative: 1e-6 }, ...everyPair },
  { formula: '=PAD.STANDARD_SHUNT("5.3 dB", "6.1 Ω", "E12")', gives: 6.8, within: { relative: 1e-6 }, ...everyPair },
  {
    formula: '=TABLE.AT(PAD.PAIRS("5.3 dB", "6.1 Ω"), 1, "Shunt", 1 Ω)',
    vouches: ['PAD.PAIRS', 'TABLE.AT'],
    gives: 6.8,
    within: { relative: 1e-6 },
    ...everyPair,
  },
  {
    formula: `=TABLE.AT(PAD.PAIRS_AT("5.3 dB", DRIVER.IMPEDANCE(${tweeter}), "2560 Hz"), 1, "Series", 1 Ω)`,
    vouches: ['PAD.PAIRS_AT'],
    gives: 2.7,
    within: { relative: 1e-6 },
    ...everyPair,
  },
  {
    formula: `=CURVE.AT(PAD.IMPEDANCE(DRIVER.IMPEDANCE(${tweeter}), "2.7 Ω", "6.8 Ω"), "1280 Hz")`,
    vouches: ['PAD.IMPEDANCE'],
    gives: 6.7617385,
    within: { relative: 1e-6 },
    source: 'computed independently with numpy: Kirchhoff’s laws, complex',
    confirmed: 'computed',
  },
  {
    formula: `=CURVE.AT(PAD.RESPONSE(DRIVER.IMPEDANCE(${tweeter}), "2.7 Ω", "6.8 Ω"), "1280 Hz")`,
    vouches: ['PAD.RESPONSE'],
    gives: -4.3330129,
    within: { absolute: 1e-5 },
    source: 'computed independently with numpy: Kirchhoff’s laws, complex',
    confirmed: 'computed',
  },
  {
    formula: '=PAD.DRIVE("100 W", "8 Ω", "12 dB", 0.15)',
    gives: 3.8913977,
    within: { relative: 1e-6 },
    source: 'peak √(2·P·R), less 12 dB, times √0.15, by hand',
    confirmed: 'computed',
  },
  {
    formula: '=PAD.HEAT("3.891 V", "2.7 Ω", "6.8 Ω", "6.1 Ω", "series")',
    gives: 1.1681611,
    within: { relative: 1e-6 },
    ...byHand,
  },
  {
    formula: '=FLATTEN.RESISTOR("5.7 Ω", 1.25)',
    gives: 7.125,
    within: exactly,
    source: '1.25·Re: common practice',
    confirmed: 'practice',
  },
  {
    formula: '=FLATTEN.CAPACITOR("5.7 Ω", "0.62 mH")',
    gives: 1.9082795e-5,
    within: { relative: 1e-6 },
    source: 'Le/R², by hand',
    confirmed: 'computed',
  },
  {
    formula:
      '=CURVE.AT(NETWORK.IMPEDANCE(FLATTEN.NETWORK("5.7 Ω", "0.62 mH"), NETWORK.IMPEDANCE(NETWORK.LEG("series", "chain", , "0.62 mH"), LOAD.RESISTOR("5.7 Ω"))), "5120 Hz")',
    vouches: ['FLATTEN.NETWORK'],
    gives: 5.7,
    within: { relative: 1e-5 },
    source: 'the dual of R and L across R and L leaves R at every frequency: identity',
    confirmed: 'computed',
  },
  { formula: '=TRAP.RESISTOR("936 Hz", 4.4, 1.2, "5.1 Ω")', gives: 6.4909091, within: { relative: 1e-6 }, ...byHand },
  { formula: '=TRAP.COIL("936 Hz", 1.2, "5.1 Ω")', gives: 0.0010406285, within: { relative: 1e-6 }, ...byHand },
  { formula: '=TRAP.CAPACITOR("936 Hz", 1.2, "5.1 Ω")', gives: 2.7783878e-5, within: { relative: 1e-6 }, ...byHand },
  {
    formula:
      '=CURVE.AT(NETWORK.IMPEDANCE(TRAP.NETWORK("850 Hz", 2.6, 1.05, "5.6 Ω"), DRIVER.IMPEDANCE(DRIVER.OF("850 Hz", 2.6, 1.05, "0.007383 L", "5.6 ohm", "7 cm2", "0.35 mm"))), "640 Hz")',
    vouches: ['TRAP.NETWORK'],
    gives: 5.6,
    within: { relative: 1e-5 },
    source: 'the dual of the motional branch across the driver leaves Re at every frequency: identity',
    confirmed: 'computed',
  },
];

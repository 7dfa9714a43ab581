import { highPass, tweeter } from './subjects.ts';
import { exactly, type Witness } from './witness.ts';

const byHand = { source: 'worked by hand', confirmed: 'computed' } as const;
const kirchhoff = {
  source: 'computed independently with numpy: Kirchhoff’s laws, complex',
  confirmed: 'computed',
} as const;
const asPut = { source: 'as put in', confirmed: 'computed' } as const;

export const crossoverWitnesses: readonly Witness[] = [
  {
    formula: '=TABLE.AT(FILTER.SECTIONS("1 kHz", "BW8", "low"), 4, "Q", 1)',
    vouches: ['FILTER.SECTIONS'],
    gives: 2.5629,
    source: 'Williams & Taylor, Electronic Filter Design Handbook, Butterworth poles of eighth order',
    confirmed: 'memory',
  },
  {
    formula: '=TABLE.AT(FILTER.SECTIONS("1 kHz", "BES4", "low"), 2, "Frequency", 1 Hz)',
    vouches: ['FILTER.SECTIONS'],
    gives: 1603.3575,
    source: 'scipy.signal.bessel, fourth order, 3 dB down at the hand-over',
    confirmed: 'computed',
  },
  {
    formula: `=TABLE.AT(NETWORK.HEAT(NETWORK.JOIN(NETWORK.LOW("LR2", "1900 Hz", "6.3 ohm"), NETWORK.PAD("2.7 ohm", "6.8 ohm")), DRIVER.IMPEDANCE(${tweeter}), "10 V", "639 Hz", "641 Hz"), 2, "Average", 1 W)`,
    vouches: ['NETWORK.HEAT'],
    gives: 4.5476288,
    within: { relative: 1e-6 },
    ...kirchhoff,
  },
  {
    formula: '=CURVE.AT(FILTER.SLOPE("640 Hz", "LR4", "low"), "1280 Hz")',
    vouches: ['FILTER.SLOPE'],
    gives: -24.608978,
    within: { absolute: 1e-5 },
    source: 'squared Butterworth: 1/(1 + u⁴), by hand',
    confirmed: 'computed',
  },
  {
    formula: '=FILTER.COIL("LR2", "low", "1900 Hz", "6.3 ohm")',
    gives: 0.0010554486,
    within: { relative: 1e-5 },
    source: 'R/(Q·…): coil 2R/ω, capacitor 1/(2ωR), by hand',
    confirmed: 'computed',
  },
  {
    formula: '=FILTER.CAPACITOR("LR2", "low", "1900 Hz", "6.3 ohm")',
    gives: 6.6480762e-6,
    within: { relative: 1e-5 },
    source: 'coil 2R/ω, capacitor 1/(2ωR), by hand',
    confirmed: 'computed',
  },
  { formula: '=FILTER.CORNER("1.0 mH", "6.8 µF")', gives: 1930.0372, within: { relative: 1e-6 }, ...byHand },
  { formula: '=FILTER.Q("1.0 mH", "6.8 µF", "6.3 ohm")', gives: 0.51951131, within: { relative: 1e-6 }, ...byHand },
  {
    formula: '=CURVE.AT(NETWORK.RESPONSE(NETWORK.LOW("BW2", "640 Hz", "8 ohm"), LOAD.RESISTOR("8 ohm")), "1280 Hz")',
    vouches: ['NETWORK.LOW', 'NETWORK.RESPONSE'],
    gives: -12.304489,
    within: { absolute: 0.0001 },
    source: 'Butterworth 1/(1 + u⁴) into its own resistance, by hand',
    confirmed: 'computed',
  },
  {
    formula: '=CURVE.AT(NETWORK.RESPONSE(NETWORK.HIGH("BW3", "640 Hz", "8 ohm"), LOAD.RESISTOR("8 ohm")), "320 Hz")',
    vouches: ['NETWORK.HIGH'],
    gives: -18.129134,
    within: { absolute: 0.0001 },
    source: 'Butterworth 1/(1 + u⁻⁶) into its own resistance, by hand',
    confirmed: 'computed',
  },
  {
    formula:
      '=CURVE.AT(NETWORK.RESPONSE(NETWORK.BAND("BW2", "320 Hz", "640 Hz", "8 ohm"), LOAD.RESISTOR("8 ohm")), "1280 Hz")',
    vouches: ['NETWORK.BAND'],
    gives: -21.791567,
    within: { absolute: 0.0001 },
    source: 'low-pass of the width of the band, shifted; by hand',
    confirmed: 'computed',
  },
  {
    formula: '=CURVE.AT(NETWORK.RESPONSE(NETWORK.WIRE("0.2 ohm"), LOAD.RESISTOR("8 ohm")), "1280 Hz")',
    vouches: ['NETWORK.WIRE'],
    gives: -0.21447731,
    within: { absolute: 0.0001 },
    ...byHand,
  },
  {
    formula: '=CURVE.AT(NETWORK.RESPONSE(NETWORK.PAD("2.7 ohm", "6.8 ohm"), LOAD.RESISTOR("8 ohm")), "1280 Hz")',
    vouches: ['NETWORK.PAD'],
    gives: -4.7837807,
    within: { absolute: 0.0001 },
    ...byHand,
  },
  {
    formula: '=CURVE.AT(NETWORK.IMPEDANCE(NETWORK.FLATTEN("5.8 ohm", "16 µF"), LOAD.RESISTOR("8 ohm")), "1280 Hz")',
    vouches: ['NETWORK.FLATTEN', 'NETWORK.IMPEDANCE'],
    gives: 4.8982003,
    within: { relative: 1e-6 },
    ...kirchhoff,
  },
  {
    formula:
      '=CURVE.AT(NETWORK.IMPEDANCE(NETWORK.TRAP("6.5 ohm", "1.04 mH", "28 µF"), LOAD.RESISTOR("8 ohm")), "1280 Hz")',
    vouches: ['NETWORK.TRAP'],
    gives: 4.0434684,
    within: { relative: 1e-6 },
    ...kirchhoff,
  },
  {
    formula:
      '=CURVE.AT(NETWORK.RESPONSE(NETWORK.NOTCH("22 ohm", "0.22 mH", "4.7 µF"), LOAD.RESISTOR("8 ohm")), "1280 Hz")',
    vouches: ['NETWORK.NOTCH'],
    gives: -0.39937408,
    within: { absolute: 0.0001 },
    ...kirchhoff,
  },
  {
    formula: '=CURVE.AT(NETWORK.RESPONSE(NETWORK.SHELF("4.3 ohm", "1.02 mH"), LOAD.RESISTOR("8 ohm")), "1280 Hz")',
    vouches: ['NETWORK.SHELF'],
    gives: -3.1595566,
    within: { absolute: 0.0001 },
    ...kirchhoff,
  },
  {
    formula:
      '=CURVE.AT(NETWORK.RESPONSE(NETWORK.JOIN(NETWORK.WIRE("1 ohm"), NETWORK.PAD("2.7 ohm", "6.8 ohm")), LOAD.RESISTOR("8 ohm")), "1280 Hz")',
    vouches: ['NETWORK.JOIN'],
    gives: -6.0492925,
    within: { absolute: 0.0001 },
    ...byHand,
  },
  {
    formula:
      '=CURVE.AT(NETWORK.RESPONSE(NETWORK.LEG("series", "chain", , "1.06 mH", "0.3 ohm"), LOAD.RESISTOR("8 ohm")), "1280 Hz")',
    vouches: ['NETWORK.LEG'],
    gives: -3.4477919,
    within: { absolute: 0.0001 },
    ...kirchhoff,
  },
  {
    formula: '=NETWORK.COIL(NETWORK.LOW("LR2", "1900 Hz", "6.3 ohm", "0.3 ohm"))',
    gives: 0.0010554486,
    within: { relative: 1e-5 },
    source: '2R/ω, by hand',
    confirmed: 'computed',
  },
  {
    formula: '=NETWORK.COIL_RESISTANCE(NETWORK.LOW("LR2", "1900 Hz", "6.3 ohm", "0.3 ohm"))',
    gives: 0.3,
    within: exactly,
    ...asPut,
  },
  {
    formula: '=NETWORK.CAPACITOR(NETWORK.LOW("LR2", "1900 Hz", "6.3 ohm", "0.3 ohm"))',
    gives: 6.6480762e-6,
    within: { relative: 1e-5 },
    source: '1/(2ωR), by hand',
    confirmed: 'computed',
  },
  { formula: '=NETWORK.RESISTOR(NETWORK.PAD("2.7 ohm", "6.8 ohm"), 2)', gives: 6.8, within: exactly, ...asPut },
  {
    formula: '=NETWORK.COIL(NETWORK.CHANGE(NETWORK.LOW("LR2", "1900 Hz", "6.3 ohm", "0.3 ohm"), "coil", 1, "1.2 mH"))',
    vouches: ['NETWORK.CHANGE'],
    gives: 0.0012,
    within: exactly,
    ...asPut,
  },
  {
    formula: '=NETWORK.CAPACITOR(NETWORK.ROUND(NETWORK.LOW("LR2", "1900 Hz", "6.3 ohm", "0.3 ohm")))',
    vouches: ['NETWORK.ROUND'],
    gives: 6.8e-6,
    within: { relative: 1e-9 },
    source: 'IEC 60063, E12: 6.65 lies nearest to 6.8',
    confirmed: 'read',
  },
  {
    formula: '=NETWORK.CORNER(NETWORK.LOW("LR2", "1900 Hz", "6.3 ohm", "0.3 ohm"), "6.3 ohm")',
    gives: 1900,
    within: { relative: 0.0001 },
    source: 'definition: the corner it was made for',
    confirmed: 'computed',
  },
  {
    formula: '=NETWORK.Q(NETWORK.LOW("LR2", "1900 Hz", "6.3 ohm", "0.3 ohm"), "6.3 ohm")',
    gives: 0.5,
    within: { relative: 0.0001 },
    source: 'Linkwitz–Riley of second order: Q = ½',
    confirmed: 'memory',
  },
  {
    formula: `=CURVE.AT(NETWORK.LOAD_EFFECT(${highPass}, DRIVER.IMPEDANCE(${tweeter}), "5.9 ohm"), "1280 Hz")`,
    vouches: ['NETWORK.LOAD_EFFECT'],
    gives: 6.0844785,
    within: { absolute: 0.0001 },
    ...kirchhoff,
  },
  {
    formula: '=CURVE.AT(NETWORK.RESPONSE(NETWORK.OF(A1:F2), LOAD.RESISTOR("8 ohm")), "1280 Hz")',
    cells: { A1: 'series', B1: 'chain', D1: '1.06 mH', E1: '0.3 ohm', A2: 'across', B2: 'chain', F2: '6.8 µF' },
    vouches: ['NETWORK.OF'],
    gives: -1.7526704,
    within: { absolute: 0.0001 },
    ...kirchhoff,
  },
];

import { bandpass, closed, radiator, vented, woofer } from './subjects.ts';
import type { Witness } from './witness.ts';

const circuit = {
  source:
    'computed independently with numpy: circuit of physical elements (mms, cms, rms, bl, air springs) at one frequency',
  confirmed: 'computed',
} as const;

/** What a box was given or is by its nature, and must still hold. */
const held = (formula: string, field: string, gives: number): Witness => ({
  formula: `=${formula}`,
  field,
  gives,
  within: { relative: 1e-12 },
  source: 'as given, or none in a wall',
  confirmed: 'computed',
});

export const boxesWitnesses: readonly Witness[] = [
  held(`VENTED.COIL_BOX(${woofer}, "QB3", "400 Hz", "1 mH", "0.3 ohm", 2, , 9, 1.2)`, 'leakageq', 9),
  held(`VENTED.COIL_BOX(${woofer}, "QB3", "400 Hz", "1 mH", "0.3 ohm", 2, , 9, 1.2)`, 'fill', 1.2),
  held(`BAFFLE.BOX(${woofer}, "0.4 ohm")`, 'fill', 1),
  held(`BAFFLE.BOX(${woofer}, "0.4 ohm")`, 'seriesresistance', 0.4),
  held(`BOX.HIGH_PASS(CLOSED.BOX(${woofer}, "12 L", "0.4 ohm"), "30 Hz", 2)`, 'seriesresistance', 0.4),
  held(`RADIATOR.BOX(${woofer}, "20 L", "210 cm2", "120 g", "0.9 mm/N", "1.5 kg/s", 2)`, 'radiators', 2),
  {
    formula: `=CURVE.AT(BOX.RESPONSE(${vented}), "20 Hz")`,
    vouches: ['BOX.RESPONSE'],
    gives: -23.632036,
    within: { absolute: 1e-5 },
    ...circuit,
  },
  {
    formula: `=CURVE.AT(BOX.RESPONSE(${vented}), "80 Hz")`,
    vouches: ['BOX.RESPONSE'],
    gives: -0.045902825,
    within: { absolute: 1e-5 },
    ...circuit,
  },
  {
    formula: `=CURVE.PHASE(BOX.RESPONSE(${closed}), "80 Hz")`,
    vouches: ['BOX.RESPONSE', 'CURVE.PHASE'],
    gives: 1.3760688,
    within: { absolute: 1e-6 },
    ...circuit,
  },
  {
    formula: `=CURVE.AT(BOX.TRAVEL(${vented}, "20 V"), "40 Hz")`,
    vouches: ['BOX.TRAVEL'],
    gives: 0.0034181448,
    within: { relative: 1e-5 },
    ...circuit,
  },
  {
    formula: `=CURVE.AT(BOX.IMPEDANCE(${vented}), "20 Hz")`,
    vouches: ['BOX.IMPEDANCE'],
    gives: 25.531725,
    within: { relative: 1e-5 },
    ...circuit,
  },
  {
    formula: `=CURVE.AT(BOX.PORT_SPEED(${vented}, "36.3 cm2", "20 V"), "40 Hz")`,
    vouches: ['BOX.PORT_SPEED'],
    gives: 21.437477,
    within: { relative: 1e-5 },
    ...circuit,
  },
  {
    formula: `=CURVE.AT(BOX.RADIATOR_TRAVEL(${radiator}, "20 V"), "40 Hz")`,
    vouches: ['BOX.RADIATOR_TRAVEL'],
    gives: 0.0053301331,
    within: { relative: 1e-5 },
    ...circuit,
  },
  {
    formula: `=BOX.TRAVEL_LIMIT(${closed}, "20 V")`,
    gives: 97.615514,
    within: { relative: 1e-5 },
    source:
      'computed independently with numpy: circuit of physical elements (mms, cms, rms, bl, air springs) at one frequency, root with scipy',
    confirmed: 'computed',
  },
  {
    formula: `=BOX.TRAVEL_VOLTS(${closed}, "20 Hz")`,
    gives: 9.3364987,
    within: { relative: 1e-5 },
    source:
      'computed independently with numpy: circuit of physical elements (mms, cms, rms, bl, air springs) at one frequency, largest of 2000 frequencies',
    confirmed: 'computed',
  },
  {
    formula: `=BOX.TRAVEL_POWER(${closed}, "8 ohm", "20 Hz")`,
    gives: 10.896276,
    within: { relative: 1e-5 },
    source:
      'computed independently with numpy: circuit of physical elements (mms, cms, rms, bl, air springs) at one frequency, U²/R',
    confirmed: 'computed',
  },
  {
    formula: `=BOX.TRAVEL_POWER_AT(${vented}, "8 ohm", "39.6 Hz")`,
    gives: 57.890834,
    within: { absolute: 0.02 },
    source:
      'computed independently with numpy: circuit of physical elements (mms, cms, rms, bl, air springs) at one frequency, largest with scipy',
    confirmed: 'computed',
  },
  {
    formula: `=CURVE.AT(BOX.DELAY(${vented}), "80 Hz")`,
    vouches: ['BOX.DELAY'],
    gives: 0.0029913281,
    within: { relative: 1e-5 },
    source:
      'computed independently with numpy: circuit of physical elements (mms, cms, rms, bl, air springs) at one frequency, slope of its phase',
    confirmed: 'computed',
  },
  {
    formula: `=BOX.QTC(${closed})`,
    gives: 0.70761544,
    within: { relative: 1e-6 },
    source: 'worked by hand',
    confirmed: 'computed',
  },
  {
    formula: `=BOX.RESONANCE(${closed})`,
    gives: 69.624305,
    within: { relative: 1e-6 },
    source: 'worked by hand',
    confirmed: 'computed',
  },
  {
    formula: `=BOX.SERIES_LOSS(CLOSED.BOX(${woofer}, "12.1 L", "0.6 ohm"))`,
    gives: 0.85503961,
    within: { absolute: 1e-5 },
    source: '20·lg(6.4/5.8), by hand',
    confirmed: 'computed',
  },
  {
    formula: `=BOX.CUTOFF(${closed})`,
    gives: 69.574292,
    within: { relative: 1e-5 },
    source: 'half-power frequency of a second-order high-pass, by hand',
    confirmed: 'computed',
  },
  {
    formula: `=BOX.CUTOFF(${vented}, "3 dB")`,
    gives: 41.304863,
    within: { relative: 1e-5 },
    source:
      'computed independently with numpy: circuit of physical elements (mms, cms, rms, bl, air springs) at one frequency, root with scipy',
    confirmed: 'computed',
  },
  {
    formula: `=BOX.PEAK(CLOSED.BOX(${woofer}, "8 L"))`,
    gives: 0.31789124,
    within: { absolute: 1e-5 },
    source: 'Small 1972: Qtc²/√(Qtc² − ¼), by hand',
    confirmed: 'computed',
  },
  {
    formula: `=BOX.PEAK_AT(CLOSED.BOX(${woofer}, "8 L"))`,
    gives: 157.51787,
    within: { relative: 0.0001 },
    source: 'Small 1972: fc/√(1 − 1/(2·Qtc²)), by hand',
    confirmed: 'computed',
  },
  {
    formula: `=BOX.RIPPLE(CLOSED.BOX(${woofer}, "8 L"))`,
    gives: 0.31789124,
    within: { absolute: 0.0001 },
    source: 'the one peak of a second-order high-pass over its flat level, by hand',
    confirmed: 'computed',
  },
  {
    formula: `=BOX.CUTOFF_HIGH(${bandpass}, "3 dB")`,
    gives: 121.36673,
    within: { relative: 0.0001 },
    source:
      'computed independently with numpy: circuit of physical elements (mms, cms, rms, bl, air springs) at one frequency, 3 dB below its highest level',
    confirmed: 'computed',
  },
  {
    formula: `=TABLE.AT(BOX.STEP(${closed}, "50 ms"), 21, "Response")`,
    vouches: ['BOX.STEP'],
    gives: -0.20792394,
    within: { absolute: 0.0002 },
    source: 'closed form of a second-order high-pass: e^(−at)·(cos − a/ω·sin), by hand',
    confirmed: 'computed',
  },
  {
    formula: `=BOX.OVERSHOOT(${closed})`,
    gives: 0.20805027,
    within: { absolute: 0.0002 },
    source: 'closed form of a second-order high-pass, lowest of 200 001 times',
    confirmed: 'computed',
  },
  {
    formula: `=BOX.RINGING(${closed})`,
    gives: 0.00991175,
    within: { absolute: 2e-5 },
    source: 'closed form of a second-order high-pass, last time above 5 %',
    confirmed: 'computed',
  },
  {
    formula: `=CURVE.AT(BOX.RESPONSE(BOX.HIGH_PASS(${closed}, "80 Hz", 2)), "80 Hz")`,
    vouches: ['BOX.HIGH_PASS'],
    gives: -4.9735024,
    within: { absolute: 1e-5 },
    source:
      'computed independently with numpy: circuit of physical elements (mms, cms, rms, bl, air springs) at one frequency and 3.01 dB at the corner of a Butterworth',
    confirmed: 'computed',
  },
];

import { closed, woofer } from './subjects.ts';
import { exactly, type Witness } from './witness.ts';

const causes = '0.12, 0.03, 0.03, 0.02, 0.02, 20000';
/** The allowance is four standard errors of what 20 000 runs can tell. */
const scattered = {
  source:
    'four million runs with numpy: lognormal causes, Fs, Q, Vas and Bl moved one by one, second-order high-pass in closed form',
  confirmed: 'computed',
} as const;

export const spreadWitnesses: readonly Witness[] = [
  {
    formula: `=SPREAD.DRIVER(${woofer}, 0.8)`,
    field: 'fs',
    gives: 42.485292,
    within: { relative: 1e-5 },
    source: 'Fs goes with 1/√(Mms·Cms), by hand',
    confirmed: 'computed',
  },
  {
    formula: `=SPREAD.PERCENTILE(SPREAD.FALL(${closed}, "3 dB"), 0.5)`,
    vouches: ['SPREAD.FALL'],
    gives: 69.656824,
    within: { relative: 0.0001 },
    source: 'no cause varies, so every run is the box itself; second-order high-pass 3 dB down, by hand',
    confirmed: 'computed',
  },
  {
    formula: `=SPREAD.PERCENTILE(SPREAD.RESONANCE(${closed}), 0.5)`,
    vouches: ['SPREAD.RESONANCE', 'SPREAD.PERCENTILE'],
    gives: 69.624305,
    within: { relative: 1e-5 },
    source: 'no cause varies, so every run is the box itself; fs·√(1 + Vas/Vb)',
    confirmed: 'computed',
  },
  {
    formula: `=SPREAD.PERCENTILE(SPREAD.QTC(${closed}), 0.5)`,
    vouches: ['SPREAD.QTC'],
    gives: 0.70761544,
    within: { relative: 1e-5 },
    source: 'no cause varies, so every run is the box itself; Qts·√(1 + Vas/Vb)',
    confirmed: 'computed',
  },
  {
    formula: `=SPREAD.PERCENTILE(SPREAD.PEAK(CLOSED.BOX(${woofer}, "8 L")), 0.5)`,
    vouches: ['SPREAD.PEAK'],
    gives: 0.31789124,
    within: { absolute: 0.0001 },
    source: 'no cause varies, so every run is the box itself; Qtc²/√(Qtc² − ¼)',
    confirmed: 'computed',
  },
  {
    formula: `=SPREAD.PERCENTILE(SPREAD.LEVEL(${closed}), 0.5)`,
    vouches: ['SPREAD.LEVEL'],
    gives: 89.170477,
    within: { absolute: 0.001 },
    source: 'no cause varies, so every run is the box itself; pressure of the moving mass',
    confirmed: 'computed',
  },
  {
    formula: `=SPREAD.ODDS(SPREAD.RESONANCE(${closed}), "60 Hz", "80 Hz")`,
    gives: 1,
    within: exactly,
    source: 'no cause varies, so every run is the box itself; 69.6 Hz lies inside',
    confirmed: 'computed',
  },
  {
    formula: `=TABLE.ROWS(SPREAD.CAUSES(${closed}, "f3", 0.12, 0.03, 0.03, 0.02))`,
    vouches: ['SPREAD.CAUSES'],
    gives: 5,
    within: exactly,
    source: 'five causes: Cms, Bl, Mms, Re and the volume',
    confirmed: 'computed',
  },
  {
    formula: `=SPREAD.PERCENTILE(SPREAD.RESONANCE(${closed}, ${causes}), 0.9)`,
    vouches: ['SPREAD.RESONANCE', 'SPREAD.PERCENTILE'],
    gives: 71.9067,
    within: { absolute: 0.088 },
    ...scattered,
  },
  {
    formula: `=SPREAD.PERCENTILE(SPREAD.QTC(${closed}, ${causes}), 0.9)`,
    vouches: ['SPREAD.QTC'],
    gives: 0.76765,
    within: { absolute: 0.0023 },
    ...scattered,
  },
  {
    formula: `=SPREAD.PERCENTILE(SPREAD.FALL(${closed}, "3 dB", ${causes}), 0.1)`,
    vouches: ['SPREAD.FALL'],
    gives: 64.4626,
    within: { absolute: 0.177 },
    ...scattered,
  },
  {
    formula: `=SPREAD.PERCENTILE(SPREAD.PEAK(CLOSED.BOX(${woofer}, "8 L"), ${causes}), 0.9)`,
    vouches: ['SPREAD.PEAK'],
    gives: 0.65477,
    within: { absolute: 0.0141 },
    ...scattered,
  },
  {
    formula: `=SPREAD.PERCENTILE(SPREAD.LEVEL(${closed}, ${causes}), 0.9)`,
    vouches: ['SPREAD.LEVEL'],
    gives: 89.69259,
    within: { absolute: 0.0197 },
    source: 'normal with 20·log e·√(0.03² + 0.03² + 0.02²), 1.28155 times it above the middle, by hand',
    confirmed: 'computed',
  },
  {
    formula: `=SPREAD.ODDS(SPREAD.RESONANCE(${closed}, ${causes}), "66 Hz", "72 Hz")`,
    vouches: ['SPREAD.ODDS'],
    gives: 0.89735,
    within: { absolute: 0.0086 },
    ...scattered,
  },
  {
    formula: `=TABLE.AT(SPREAD.CAUSES(${closed}, "f3", 0.12, 0.03, 0.03, 0.02), 1, "Share of the variance", 1)`,
    vouches: ['SPREAD.CAUSES'],
    gives: 0.710985,
    within: { absolute: 1e-5 },
    source: 'derivatives of F3 in closed form by differences with numpy: the force factor comes first',
    confirmed: 'computed',
  },
  {
    formula:
      '=SPREAD.PERCENTILE(SPREAD.NETWORK(NETWORK.LEG("series", "chain", , , , "31.08495 µF"), LOAD.RESISTOR("8 Ω"), "640 Hz", 0, 0.1, 0, 20000), 0.9)',
    vouches: ['SPREAD.NETWORK'],
    gives: -2.6889114,
    within: { absolute: 0.0063 },
    source: 'the level rises with the capacitor, so that its quantile is that of 8 % more of it, by hand',
    confirmed: 'computed',
  },
];

import { closed, woofer } from './subjects.ts';
import type { Witness } from './witness.ts';

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
    source: 'no cause varies, so every run is the box itself; 69.6 Hz lies inside',
    confirmed: 'computed',
  },
  {
    formula: `=TABLE.ROWS(SPREAD.CAUSES(${closed}, "f3", 0.12, 0.03, 0.03, 0.02))`,
    vouches: ['SPREAD.CAUSES'],
    gives: 5,
    source: 'five causes: Cms, Bl, Mms, Re and the volume',
    confirmed: 'computed',
  },
];

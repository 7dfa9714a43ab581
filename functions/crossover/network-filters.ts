import { define } from '../define.ts';
import { usual } from '../usual.ts';
import type { Network } from '../values/network.ts';
import { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';
import { bandPassLegs, highPassLegs, lowPassLegs } from './legs.ts';
import { coilResistance, frequency, ohms, slope } from './parameters.ts';
import { slopeWords } from './slope.ts';

const draft = `Worked out for a resistance; on a real driver look at NETWORK.RESPONSE, and treat it as a first draft until it is measured in the cabinet. ${slopeWords}`;
const given = { slope, frequency, ohms, coilResistance } as const;
const source = {
  source: 'own',
  at: 'ladder between no source resistance and a resistance, by continued fraction of the denominator',
} as const;

export const networkLow = define({
  name: 'NETWORK.LOW',
  summary: 'A passive low-pass for a load of some ohms.',
  parameters: given,
  returns: { record: 'network', summary: 'coils in series, capacitors across' },
  source,
  example: { formula: '=NETWORK.LOW("LR2", "1900 Hz", "6.3 ohm")', gives: { name: 'LR2 low-pass', legs: 2, coils: 1 } },
  remarks: draft,
  compute: (wanted): Network => ({
    kind: 'network',
    name: `${wanted.slope} low-pass`,
    legs: lowPassLegs(wanted.slope, wanted.frequency, wanted.ohms, wanted.coilResistance),
  }),
});

export const networkHigh = define({
  name: 'NETWORK.HIGH',
  summary: 'A passive high-pass for a load of some ohms.',
  parameters: given,
  returns: { record: 'network', summary: 'capacitors in series, coils across' },
  source,
  example: {
    formula: '=NETWORK.HIGH("BW3", "2500 Hz", "5.9 ohm")',
    gives: { name: 'BW3 high-pass', legs: 3, capacitors: 2 },
  },
  remarks: draft,
  compute: (wanted): Network => ({
    kind: 'network',
    name: `${wanted.slope} high-pass`,
    legs: highPassLegs(wanted.slope, wanted.frequency, wanted.ohms, wanted.coilResistance),
  }),
});

export const networkBand = define({
  name: 'NETWORK.BAND',
  summary: 'A passive band-pass for a load of some ohms.',
  parameters: {
    slope: { ...slope, summary: 'family and order of each side' },
    from: { ...usual.frequency, summary: 'lower hand-over' },
    to: { ...usual.frequency, summary: 'upper hand-over' },
    ohms,
    coilResistance,
  },
  returns: { record: 'network', summary: 'coil and capacitor in series, capacitor and coil across, in turn' },
  source: { source: 'own', at: 'low-pass of the width of the band, shifted by s → (s² + ω₀²)/s' },
  example: {
    formula: '=NETWORK.BAND("BW2", "300 Hz", "3 kHz", "6 ohm")',
    gives: { name: 'BW2 band-pass', legs: 2, coils: 2, capacitors: 2 },
  },
  remarks: `Exactly as far down at both hand-overs as the low-pass is at its own, and without gain between. ${draft}`,
  compute: (wanted): Network | Problem =>
    wanted.from < wanted.to * 0.999
      ? {
          kind: 'network',
          name: `${wanted.slope} band-pass`,
          legs: bandPassLegs(wanted.slope, wanted.from, wanted.to, wanted.ohms, wanted.coilResistance),
        }
      : new Problem(
          say`The lower hand-over ${measured(wanted.from, 'frequency')} must lie below the upper one ${measured(wanted.to, 'frequency')}; exchange them.`,
          'from',
        ),
});

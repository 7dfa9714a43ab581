import { define } from '../define.ts';
import type { Leg } from '../values/network.ts';
import type { Problem } from '../values/problem.ts';
import { highPassLegs, lowPassLegs } from './legs.ts';
import { noSuchPart } from './no-such-part.ts';
import { capacitance, frequency, inductance, ohms, pass, place, slope } from './parameters.ts';
import { slopeWords } from './slope.ts';

const source = {
  source: 'own',
  at: 'ladder between no source resistance and a resistance, by continued fraction of the denominator',
} as const;
const given = { slope, pass, frequency, ohms, place } as const;
const draft =
  'For a resistance: flatten the driver first, take its real ohms at the hand-over, and treat the result as a first draft until it is measured in the cabinet.';

interface Wanted {
  readonly slope: string;
  readonly pass: string;
  readonly frequency: number;
  readonly ohms: number;
  readonly place: number;
}

function part(wanted: Wanted, kind: 'inductance' | 'capacitance', noun: string): number | Problem {
  const build = wanted.pass === 'high' ? highPassLegs : lowPassLegs;
  const values = build(wanted.slope, wanted.frequency, wanted.ohms).flatMap((leg: Leg) => leg[kind] ?? []);
  return (
    values[wanted.place - 1] ??
    noSuchPart(`This ${wanted.slope} ${wanted.pass}-pass`, values.length, noun, wanted.place)
  );
}

export const filterCoil = define({
  name: 'FILTER.COIL',
  summary: 'A coil of a passive low-pass or high-pass into a resistance.',
  parameters: given,
  returns: { quantity: 'inductance', summary: 'inductance' },
  source,
  example: { formula: '=FILTER.COIL("LR2", "low", "1900 Hz", "6.3 ohm")', gives: 0.001055 },
  remarks: `${draft} ${slopeWords}`,
  compute: (wanted) => part(wanted, 'inductance', 'coil'),
});

export const filterCapacitor = define({
  name: 'FILTER.CAPACITOR',
  summary: 'A capacitor of a passive low-pass or high-pass into a resistance.',
  parameters: given,
  returns: { quantity: 'capacitance', summary: 'capacitance' },
  source,
  example: { formula: '=FILTER.CAPACITOR("LR2", "low", "1900 Hz", "6.3 ohm")', gives: 0.00000665 },
  remarks: `${draft} ${slopeWords}`,
  compute: (wanted) => part(wanted, 'capacitance', 'capacitor'),
});

const coil = { ...inductance, summary: 'coil' } as const;
const capacitor = { ...capacitance, summary: 'capacitor' } as const;

export const filterCorner = define({
  name: 'FILTER.CORNER',
  summary: 'The corner of a second-order filter of one coil and one capacitor, as with shop values.',
  parameters: { coil, capacitor },
  returns: { quantity: 'frequency', summary: 'corner, the hand-over of an LR2 or BW2' },
  source: { source: 'own', at: 'f = 1/(2π·√(L·C))' },
  example: { formula: '=FILTER.CORNER("1.0 mH", "6.8 µF")', gives: 1930 },
  remarks: 'It does not depend on the load; the Q does.',
  compute: (parts) => 1 / (2 * Math.PI * Math.sqrt(parts.coil * parts.capacitor)),
});

export const filterQ = define({
  name: 'FILTER.Q',
  summary: 'The Q of a second-order filter of one coil and one capacitor on its load.',
  parameters: { coil, capacitor, ohms },
  returns: { quantity: 'ratio', summary: '0.5 for LR2, 0.707 for BW2, 0.577 for Bessel' },
  source: { source: 'own', at: 'Q = R·√(C/L)' },
  example: { formula: '=FILTER.Q("1.0 mH", "6.8 µF", "6.3 ohm")', gives: 0.52 },
  remarks: 'The same for low-pass and high-pass. More ohms raise it: a load that rises with frequency makes a hump.',
  compute: (parts) => parts.ohms * Math.sqrt(parts.capacitor / parts.coil),
});

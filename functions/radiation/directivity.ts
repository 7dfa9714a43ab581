import { define } from '../define.ts';
import { besselJ1 } from '../numeric/bessel.ts';
import { usual } from '../usual.ts';
import type { Curve } from '../values/curve.ts';
import { frequencies } from '../values/grid.ts';
import { sd, sizeOf } from './piston.ts';

/** Radiation resistance of a piston of size ka in a wall, over ρ·c·Sd: 1 − J1(2ka)/ka. */
export const resistanceRatio = (ka: number): number =>
  ka < 0.05 ? ka ** 2 / 2 - ka ** 4 / 12 + ka ** 6 / 144 : 1 - besselJ1(2 * ka) / ka;

/** Sound on the axis over that of the same power sent everywhere alike, dB. */
const directivityIndex = (ka: number): number => 10 * Math.log10(ka ** 2 / resistanceRatio(ka));

const frequency = { ...usual.frequency, summary: 'frequency' } as const;
const source = { source: 'beranek1954', at: 'piston in an infinite baffle, Q = (ka)²/(1 − J1(2ka)/ka)' } as const;

export const pistonDirectivity = define({
  name: 'PISTON.DIRECTIVITY',
  summary: 'The directivity index of a piston in a wall: its level on the axis over that of its power sent everywhere.',
  parameters: { sd, frequency },
  returns: { quantity: 'level', summary: 'directivity index' },
  source,
  example: { formula: '=PISTON.DIRECTIVITY("137 cm²", "1654 Hz")', gives: 5.88 },
  remarks: 'Counted against a full sphere: 3 dB at low frequencies, because the wall blocks half of it.',
  compute: (given) => directivityIndex(sizeOf(given.sd, given.frequency)),
});

export const pistonDirectivityCurve = define({
  name: 'PISTON.DIRECTIVITY_CURVE',
  summary: 'The directivity index of a piston in a wall over frequency.',
  parameters: { sd },
  returns: { record: 'curve', of: 'level', summary: 'directivity index' },
  source,
  example: { formula: '=CURVE.AT(PISTON.DIRECTIVITY_CURVE("137 cm²"), "1654 Hz")', gives: 5.88 },
  compute: (given): Curve => ({
    kind: 'curve',
    title: 'Directivity index of a piston',
    quantity: 'level',
    y: frequencies.map((each) => directivityIndex(sizeOf(given.sd, each))),
    from: frequencies[0]!,
    to: frequencies.at(-1)!,
  }),
});

export const pistonMatch = define({
  name: 'PISTON.MATCH',
  summary: 'How much more directive the lower of two drivers is than the upper one where they are handed over.',
  parameters: {
    lower: { ...usual.area, summary: 'radiating area of the driver that plays below' },
    upper: { ...usual.area, summary: 'radiating area of the driver that plays above' },
    frequency: { ...usual.frequency, summary: 'hand-over' },
  },
  returns: { quantity: 'level', summary: 'difference of the directivity indices' },
  source: { source: 'own', at: 'difference of PISTON.DIRECTIVITY at the hand-over' },
  example: { formula: '=PISTON.MATCH("132 cm²", "7 cm²", "1808 Hz")', gives: 3.11 },
  remarks:
    'So much the power in the room steps up when the upper driver takes over while the axis stays even. Pistons in a wall; a cabinet narrower than the wavelength lessens both.',
  compute: (given) =>
    directivityIndex(sizeOf(given.lower, given.frequency)) - directivityIndex(sizeOf(given.upper, given.frequency)),
});

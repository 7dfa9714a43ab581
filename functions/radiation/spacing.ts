import { define } from '../define.ts';
import { soundSpeed } from '../air.ts';
import { usual } from '../usual.ts';

export const spacing = { ...usual.length, summary: 'distance between the centres of the drivers' } as const;
export const frequency = { ...usual.frequency, summary: 'frequency, usually the hand-over' } as const;

export const spacingBetween = define({
  name: 'SPACING.BETWEEN',
  summary: 'The distance between the centres of two drivers mounted edge to edge with a gap.',
  parameters: {
    flangeA: { ...usual.length, summary: 'outer diameter of the first frame' },
    flangeB: { ...usual.length, summary: 'outer diameter of the second frame' },
    gap: { quantity: 'length', min: 0, max: 100, summary: 'gap between the frames' },
  },
  returns: { quantity: 'length', summary: 'distance between centres' },
  source: { source: 'own', at: 'half of each frame and the gap' },
  example: { formula: '=SPACING.BETWEEN("170 mm", "104 mm", "4 mm")', gives: 0.141 },
  remarks:
    'Give the outer diameter of the frame, not of the cone. For frames that are cut flat, give twice the distance from the centre to the flat.',
  compute: (given) => (given.flangeA + given.flangeB) / 2 + given.gap,
});

export const spacingLimit = define({
  name: 'SPACING.LIMIT',
  summary: 'The frequency at which the spacing is a given number of wavelengths.',
  parameters: {
    spacing,
    wavelengths: { quantity: 'ratio', min: 0.01, max: 100, default: 1, summary: 'spacing in wavelengths' },
  },
  returns: { quantity: 'frequency', summary: 'highest frequency that keeps to it' },
  source: { source: 'practice', at: 'one wavelength between centres at the hand-over' },
  example: { formula: '=SPACING.LIMIT("139 mm", 1)', gives: 2469 },
  remarks: 'At one wavelength the first null stands 30° above and below the axis; at 1.4 it is at 21°.',
  compute: (given) => (given.wavelengths * soundSpeed) / given.spacing,
});

export const spacingNull = define({
  name: 'SPACING.NULL',
  summary: 'The angle above and below the axis at which two drivers in step first cancel.',
  parameters: { spacing, frequency },
  returns: { quantity: 'angle', summary: 'angle of the first null, 90° when there is none' },
  source: { source: 'linkwitz1976', at: 'noncoincident drivers: the paths differ by half a wavelength at asin(c/2fd)' },
  example: { formula: '=SPACING.NULL("139 mm", "1808 Hz")', gives: 0.752 },
  remarks:
    'For drivers in phase at that frequency, as with LR2 and LR4. When the spacing is under half a wavelength there is no null, and the answer is 90°. With 90° between the drivers, as BW3 has it, the lobe tilts and this does not hold.',
  compute: (given) => Math.asin(Math.min(1, soundSpeed / (2 * given.frequency * given.spacing))),
});

export const spacingWavelengths = define({
  name: 'SPACING.WAVELENGTHS',
  summary: 'The spacing of two drivers in wavelengths at a frequency.',
  parameters: { spacing, frequency },
  returns: { quantity: 'ratio', summary: 'spacing over wavelength' },
  source: { source: 'own', at: 'spacing · frequency / speed of sound' },
  example: { formula: '=SPACING.WAVELENGTHS("139 mm", "1808 Hz")', gives: 0.732 },
  remarks: 'One or less is common practice at the hand-over.',
  compute: (given) => (given.spacing * given.frequency) / soundSpeed,
});

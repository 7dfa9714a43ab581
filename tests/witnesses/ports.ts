import { vented } from './subjects.ts';
import type { Witness } from './witness.ts';

const byHand = { source: 'worked by hand', confirmed: 'computed' } as const;
const helmholtz = {
  source: 'Helmholtz resonator with 0.732 diameters, the rounded sum of 8/(3π) and 0.613 radii, by hand',
  confirmed: 'computed',
} as const;

export const portsWitnesses: readonly Witness[] = [
  { formula: '=PORT.AREA("68 mm")', gives: 0.0036316811, within: { relative: 1e-6 }, ...byHand },
  { formula: '=PORT.SLOT_AREA("200 mm", "25 mm")', gives: 0.005, within: { relative: 1e-6 }, ...byHand },
  {
    formula: '=PORT.LENGTH("16 L", "40 Hz", "50 mm")',
    gives: 0.19223621,
    within: { relative: 0.002 },
    source: 'Helmholtz resonator with 0.732 diameters, computed in another language',
    confirmed: 'computed',
  },
  {
    formula: '=PORT.LENGTH("22.3 L", "39.6 Hz", "68 mm")',
    gives: 0.260071,
    within: { relative: 0.0001 },
    ...helmholtz,
  },
  {
    formula: '=PORT.TUNING("22.3 L", "260 mm", "68 mm")',
    gives: 39.604538,
    within: { relative: 0.0001 },
    ...helmholtz,
  },
  {
    formula: '=PORT.RESONANCE("260 mm", "68 mm")',
    gives: 554.0626,
    within: { relative: 0.0005 },
    source: 'half a wave in the length with 8/(3π) and 0.6133 radii (Levine, Schwinger 1948), by hand',
    confirmed: 'computed',
  },
  {
    formula: '=PORT.RESONANCE("260 mm", "68 mm")',
    gives: 553.94866,
    within: { relative: 0.0001 },
    source: 'half a wave in the corrected length, by hand',
    confirmed: 'computed',
  },
  { formula: '=PORT.VOLUME("260 mm", "68 mm", 1, "3 mm")', gives: 0.0011182185, within: { relative: 1e-6 }, ...byHand },
  {
    formula: '=PORT.CLEARANCE("250 mm", "260 mm", "68 mm")',
    gives: -0.078,
    source: 'one diameter behind the inner end: common practice, no source',
    confirmed: 'practice',
  },
  {
    formula: '=PORT.SLOT_TUNING("25 L", "180 mm", "200 mm", "25 mm")',
    gives: 50.033506,
    within: { relative: 0.001 },
    source: 'Helmholtz resonator, end correction of a circle of equal area, computed in another language',
    confirmed: 'computed',
  },
  {
    formula: '=PORT.SLOT_LENGTH("25 L", "50 Hz", "200 mm", "25 mm")',
    gives: 0.18035442,
    within: { relative: 0.001 },
    source: 'the same turned round, by hand',
    confirmed: 'computed',
  },
  {
    formula: '=PORT.LEAST_AREA("137 cm2", "5.5 mm", "40 Hz")',
    gives: 0.0024112,
    within: { relative: 0.0001 },
    source: '0.8·fb·Vd: common practice, from memory',
    confirmed: 'practice',
  },
  { formula: '=PORT.ROUND_OF("50 cm2")', gives: 0.079788456, within: { relative: 1e-6 }, ...byHand },
  {
    formula: '=PORT.LARGEST("22.3 L", "39.6 Hz", "250 mm")',
    gives: 0.059113856,
    within: { relative: 0.0001 },
    source: 'corrected length plus one diameter equals the depth, root with scipy',
    confirmed: 'computed',
  },
  {
    formula: `=TABLE.AT(PORT.SEARCH(${vented}, "1 m", "70 mm"), 1, "Length", 1 mm)`,
    vouches: ['PORT.SEARCH'],
    gives: 0.27710133,
    within: { relative: 0.002 },
    ...helmholtz,
  },
  ...(
    [
      ['Diameter', '1 mm', 0.065],
      ['Tuning', '1 Hz', 44.449497],
      ['Speed', '1 m/s', 16.07908],
    ] as const
  ).map(([column, unit, gives]) => ({
    formula: `=TABLE.AT(PORT.SEARCH(${vented}, "250 mm", "68 mm", "12 V"), 1, "${column}", ${unit})`,
    vouches: ['PORT.SEARCH'],
    gives,
    within: { relative: 1e-6 },
    source: 'every set tried with numpy; port speed from the circuit of masses, springs and leak, not from its ratios',
    confirmed: 'computed' as const,
  })),
  {
    formula: `=TABLE.AT(PORT.SLOT_SEARCH(${vented}, "1 m", "180 mm", "20 mm"), 1, "Length", 1 mm)`,
    vouches: ['PORT.SLOT_SEARCH'],
    gives: 0.24902417,
    within: { relative: 1e-6 },
    source: 'Helmholtz resonator, circle of equal area, inner end mirrored in one wall, computed in another language',
    confirmed: 'computed',
  },
  {
    formula: '=PORT.FLARED_LENGTH("22.3 L", "39.6 Hz", "68 mm", "20 mm")',
    gives: 0.28078505,
    within: { relative: 0.001 },
    source: 'air of a quarter circle by its section, integrated with scipy; flanged mouth of 0.85 radii',
    confirmed: 'computed',
  },
  {
    formula: '=PORT.ELBOW("250 mm", "260 mm", "68 mm")',
    gives: 0.03918585,
    within: { relative: 1e-5 },
    source:
      'length along the middle of a quarter turn, half a diameter outside it and half free: common practice, no source',
    confirmed: 'practice',
  },
];

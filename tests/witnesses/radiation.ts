import { exactly, type Witness } from './witness.ts';

const hand = { source: 'worked by hand', confirmed: 'computed' } as const;
const library = {
  source: 'relations of the piston in an infinite baffle, with Bessel and Struve functions of a general library',
  confirmed: 'computed',
} as const;
const practice = { source: 'common practice, no source', confirmed: 'practice' } as const;
const within = { relative: 1e-6 } as const;

/** Area with a radius of 66.0367 mm, of the printed values; c is 343.2 m/s. */
const sd = '"137 cm²"';

export const radiationWitnesses: readonly Witness[] = [
  { formula: '=PISTON.LOSS("132 cm²", "2 kHz", "30°")', gives: 1.5767, ...library },
  { formula: '=PISTON.NARROWING("136.847776 cm²", "45°", "6 dB")', gives: 2588.698481, ...library, within },
  { formula: `=PISTON.NARROWING_BY_DIAMETER(${sd})`, gives: 2598.555137, ...library, within },
  { formula: `=PISTON.NARROWING_BY_KA(${sd}, 1)`, gives: 827.1457899, ...library, within },
  { formula: `=PISTON.KA(${sd}, "1 kHz")`, gives: 1.2089767, ...library },
  { formula: '=PISTON.WIDTH("132 cm²", "2989 Hz")', gives: 1.346555, ...library },
  { formula: '=PISTON.NULL("132 cm²", "4 kHz")', gives: 0.939413, ...library },
  { formula: `=PISTON.DIRECTIVITY(${sd}, "1 kHz")`, gives: 4.067134, ...library },
  { formula: '=PISTON.MATCH("132 cm²", "7 cm²", "1808 Hz")', gives: 3.1145, ...library },
  { formula: `=PISTON.RESISTANCE(${sd}, "827.1457899 Hz")`, gives: 0.4232751922, ...library, within },
  { formula: `=PISTON.REACTANCE(${sd}, "827.1457899 Hz")`, gives: 0.6467637283, ...library, within },
  { formula: `=PISTON.AIR_LOAD(${sd})`, gives: 0.0009245944046, ...library, within },
  { formula: '=PISTON.NEAR("136.847776 cm²", "3 kHz", "25 cm")', gives: -0.2277748853, ...library, within },
  { formula: '=LINE.LOSS("12 cm", "3 kHz", "30°")', gives: 4.363204539, ...library, within },
  { formula: '=SPACING.BETWEEN("170 mm", "104 mm", "4 mm")', gives: 0.141, within: exactly, ...hand },
  { formula: '=SPACING.LIMIT("156 mm", 1)', gives: 2200, within: exactly, ...practice },
  { formula: '=SPACING.NULL("139 mm", "1808 Hz")', gives: 0.7516, ...hand },
  { formula: '=SPACING.WAVELENGTHS("78 mm", "2200 Hz")', gives: 0.5, within: exactly, ...hand },
  { formula: '=SPACING.LOBE("20 cm", "1 kHz", "20°")', gives: -1.827247, ...hand },
  { formula: '=SPACING.TILT("20 cm", "1 kHz", "60°")', gives: -0.29005, ...hand },
  { formula: '=SPACING.WINDOW("20 cm", "1 kHz", "6 dB")', gives: 1.216058, ...hand },
  { formula: '=SPACING.EARS_LOW("20 cm", "1 kHz", "2 m", "6 dB")', gives: -1.391978, ...hand },
  { formula: '=SPACING.EARS_HIGH("20 cm", "1 kHz", "2 m", "6 dB")', gives: 1.391978, ...hand },
  {
    formula: '=EDGE.FREQUENCY("25 cm")',
    gives: 460,
    within: exactly,
    source: 'articles on the diffraction step after Olson 1969: 115 m/s over the width',
    confirmed: 'read',
  },
  { formula: '=EDGE.SHELF_RESISTANCE("20 cm", "4 dB", "8 Ω")', gives: 4.679146, ...hand },
  { formula: '=EDGE.SHELF_INDUCTANCE("20 cm", "4 dB", "8 Ω")', gives: 0.00102877, ...hand },
  {
    formula: '=EDGE.RIPPLE("220 mm", "380 mm", "110 mm", "240 mm")',
    gives: 5.2834,
    source: 'the same sum over 3600 directions, computed in another language on the same frequencies',
    confirmed: 'computed',
    within: { absolute: 0.005 },
  },
  { formula: '=EDGE.RADIUS_FREQUENCY("19 mm")', gives: 2257.9, ...practice },
  { formula: '=ROOM.DIP("2 m", "0.8 m", "1 m")', gives: 252.075, ...hand },
  { formula: '=ROOM.WALL_DIP("60 cm")', gives: 143, within: exactly, ...hand },
  { formula: '=ROOM.LOWEST_MODE("5.2 m")', gives: 33, within: exactly, ...hand },
];

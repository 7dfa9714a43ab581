import { low, woofer } from './subjects.ts';
import type { Witness } from './witness.ts';

const byHand = { source: 'worked by hand', confirmed: 'computed' } as const;
const limited = {
  source: 'computed independently with numpy: filter and driver as one circuit of elements, raised to the limit',
  confirmed: 'computed',
} as const;
const straight = { source: 'the lower of two straight curves', confirmed: 'computed' } as const;

export const levelWitnesses: readonly Witness[] = [
  { formula: '=LEVEL.RATIO("6 dB")', gives: 1.9952623, within: { relative: 1e-6 }, ...byHand },
  { formula: '=LEVEL.FROM_RATIO(2)', gives: 6.0205999, within: { relative: 1e-6 }, ...byHand },
  { formula: '=LEVEL.POWER_OF(2)', gives: 3.0103, within: { relative: 1e-6 }, ...byHand },
  { formula: '=LEVEL.SUM("88 dB", "91 dB")', gives: 92.764349, within: { relative: 1e-6 }, ...byHand },
  { formula: '=LEVEL.SUM_IN_STEP("88 dB", "91 dB")', gives: 95.649482, within: { relative: 1e-6 }, ...byHand },
  { formula: '=LEVEL.SUM_AT_ANGLE("90 dB", "87 dB", "120°")', gives: 88.994054, within: { relative: 1e-6 }, ...byHand },
  { formula: '=LEVEL.TO_WATT("91 dB", "4 ohm")', gives: 87.984871, within: { relative: 1e-6 }, ...byHand },
  { formula: '=LEVEL.BY_POWER("87.3 dB", "60 W")', gives: 105.08151, within: { relative: 1e-6 }, ...byHand },
  {
    formula: '=LEVEL.BY_TRAVEL("137 cm²", "5.5 mm", "50 Hz")',
    gives: 94.045693,
    within: { absolute: 0.0001 },
    source: 'simple source in half space, by hand',
    confirmed: 'computed',
  },
  { formula: '=LEVEL.DISTANCE_LOSS("2.8 m", "3 dB")', gives: 4.4562805, within: { relative: 1e-6 }, ...byHand },
  {
    formula: '=LEVEL.AT_SEAT("84.7 dB", "2.8 m", "3 dB", "3 dB")',
    gives: 83.24372,
    within: { relative: 1e-6 },
    ...byHand,
  },
  {
    formula: '=LEVEL.WATTS("84.7 dB", "2.8 m", "3 dB", "3 dB", "100 dB")',
    gives: 47.436314,
    within: { relative: 1e-5 },
    ...byHand,
  },
  {
    formula: '=LEVEL.VOLTS("84.7 dB", "2.8 m", "3 dB", "3 dB", "100 dB")',
    gives: 19.480516,
    within: { relative: 1e-5 },
    ...byHand,
  },
  { formula: '=LEVEL.HEADROOM("100 W", "47 W")', gives: 3.2790214, within: { relative: 1e-6 }, ...byHand },
  { formula: '=LEVEL.CLIP_VOLTS("50 W", "8 ohm")', gives: 20, ...byHand },
  {
    formula:
      '=TABLE.AT(LEVEL.LEDGER("89.2 dB", "2.83 V", "8 ohm", "4.5 dB", 0, "2.8 m", "3 dB", "3 dB", "100 dB", "100 W"), 6, "Level", 1 dB)',
    vouches: ['LEVEL.LEDGER'],
    gives: 83.24372,
    within: { relative: 1e-5 },
    source: 'the decibels added by hand',
    confirmed: 'computed',
  },
  {
    formula: `=CURVE.AT(LIMIT.TRAVEL(${low}), "40 Hz")`,
    vouches: ['LIMIT.TRAVEL'],
    gives: 89.846359,
    within: { absolute: 0.001 },
    ...limited,
  },
  {
    formula: `=CURVE.AT(LIMIT.HEAT(${low}, "70 W"), "640 Hz")`,
    vouches: ['LIMIT.HEAT'],
    gives: 106.32274,
    within: { absolute: 0.001 },
    ...limited,
  },
  {
    formula:
      '=CURVE.AT(LIMIT.PORT(WAY.OF(VENTED.BOX(DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "5.8 ohm", "132 cm2", "5.5 mm"), "22.3 L", "39.6 Hz")), "36.3 cm2"), "40 Hz")',
    vouches: ['LIMIT.PORT'],
    gives: 100.60453,
    within: { absolute: 0.001 },
    ...limited,
  },
  {
    formula: `=CURVE.AT(LIMIT.RADIATOR(WAY.OF(RADIATOR.BOX(${woofer}, "20 L", "210 cm2", "120 g", "0.9 mm/N", "1.5 kg/s", 1, "10 mm"))), "40 Hz")`,
    vouches: ['LIMIT.RADIATOR'],
    gives: 105.40055,
    within: { absolute: 0.001 },
    ...limited,
  },
  {
    formula: `=CURVE.AT(LIMIT.VOLTAGE(${low}, "20 V"), "640 Hz")`,
    vouches: ['LIMIT.VOLTAGE'],
    gives: 105.27322,
    within: { absolute: 0.001 },
    ...limited,
  },
  {
    formula: `=CURVE.AT(LIMIT.CURRENT(${low}, "5 A"), "640 Hz")`,
    vouches: ['LIMIT.CURRENT'],
    gives: 105.33225,
    within: { absolute: 0.001 },
    ...limited,
  },
  {
    formula: '=CURVE.AT(LIMIT.LOWEST(CURVE.READ(1 kHz, 90 dB), CURVE.READ(1 kHz, 80 dB)), "1 kHz")',
    vouches: ['LIMIT.LOWEST'],
    gives: 80,
    ...straight,
  },
  {
    formula:
      '=LIMIT.AT("1 kHz", CURVE.READ(1 kHz, 90 dB, "level", "Upper"), CURVE.READ(1 kHz, 80 dB, "level", "Lower"))',
    gives: 'Lower',
    ...straight,
  },
  {
    formula:
      '=TABLE.AT(LIMIT.MAP("100 Hz", "1 kHz", CURVE.READ(1 kHz, 90 dB), CURVE.READ(1 kHz, 80 dB)), 1, "Lowest level", 1 dB)',
    vouches: ['LIMIT.MAP'],
    gives: 80,
    ...straight,
  },
  { formula: '=CREST.POWER("100 W", "12 dB")', gives: 12.619147, within: { relative: 1e-6 }, ...byHand },
  { formula: '=CREST.TREBLE_SHARE("1900 Hz")', gives: 0.3407588, within: { relative: 1e-6 }, ...byHand },
  {
    formula: '=HEAT.RISE("40 W", 1.9)',
    gives: 61.254293,
    within: { relative: 0.0001 },
    source: 'quadratic solved by hand',
    confirmed: 'computed',
  },
  { formula: '=HEAT.LOSS(61.25)', gives: 1.8734232, within: { relative: 1e-5 }, ...byHand },
  {
    formula: '=HEARING.TIME("94 dB")',
    gives: 3600,
    source: 'NIOSH 98-126, table 1-1: 94 dBA for 1 h',
    confirmed: 'read',
  },
  {
    formula: '=HEARING.TIME("100 dB")',
    gives: 900,
    source: 'NIOSH 98-126, table 1-1: 100 dBA for 15 min',
    confirmed: 'read',
  },
  {
    formula: '=HEARING.DOSE(2 h, 94 dB)',
    gives: 2,
    source: 'NIOSH 98-126, D = ΣC/T: 2 h of an allowed 1 h',
    confirmed: 'computed',
  },
  {
    formula: '=HEARING.DAY_LEVEL(2 h, 94 dB)',
    gives: 88.0103,
    within: { relative: 1e-5 },
    source: 'NIOSH 98-126, TWA = 10·lg D + 85, by hand',
    confirmed: 'computed',
  },
  {
    formula: '=HEARING.WEEK("90 dB")',
    gives: 14286.609,
    within: { relative: 0.0001 },
    source: 'ITU-T H.870: 80 dBA for 40 h a week, halved for 3 dB',
    confirmed: 'memory',
  },
  {
    formula: '=HEARING.TIME_OSHA("100 dB")',
    gives: 7200,
    source: '29 CFR 1910.95, table G-16: 100 dBA for 2 h',
    confirmed: 'memory',
  },
  {
    formula: '=HEARING.VERDICT("100 dB", "1 h")',
    field: 'status',
    gives: 'fail',
    source: 'NIOSH 98-126, table 1-1: 100 dBA for 15 min',
    confirmed: 'read',
  },
  {
    formula: '=TREBLE.TRAVEL("7 cm²", "100 dB", "1044 Hz")',
    gives: 0.00049004911,
    within: { relative: 0.0001 },
    source: 'simple source in half space, by hand',
    confirmed: 'computed',
  },
  {
    formula: '=TREBLE.TRAVEL_AT("7 cm²", "100 dB", "1044 Hz", "LR4")',
    gives: 0.00024502455,
    within: { relative: 0.0001 },
    source: 'u²/(1 + u⁴) has its peak ½ at u = 1',
    confirmed: 'computed',
  },
  {
    formula: '=TREBLE.FLOOR("7 cm²", "0.35 mm", "100 dB", "LR4", 0.7)',
    gives: 1044.0523,
    within: { relative: 0.0001 },
    source: 'the same turned round, by hand',
    confirmed: 'computed',
  },
];

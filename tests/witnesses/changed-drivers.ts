import { woofer } from './subjects.ts';
import type { Witness } from './witness.ts';

/** Every number of one driver, by the signs of a datasheet in SI. */
type Numbers = Readonly<Record<string, number>>;

const held = (formula: string, numbers: Numbers): readonly Witness[] =>
  Object.entries(numbers).map(([field, gives]) => ({
    formula: `=${formula}`,
    field,
    gives,
    within: { relative: 1e-8 },
    source:
      'computed independently with numpy from mass, compliance, losses, force factor, resistance and area, which the change acts on',
    confirmed: 'computed',
  }));

const plain: Numbers = {
  fs: 38,
  qms: 4.8,
  qes: 0.42,
  qts: 0.386206897,
  vas: 0.02852,
  re: 5.8,
  sd: 0.0132,
  mms: 0.0151982105429,
  cms: 0.00115419878684,
  rms: 0.755987620997,
  bl: 7.07892502072,
  xmax: 0.0055,
  le: 0.00055,
  pe: 70,
  level: 89.1704770372,
};

/** Drivers that are given, changed or put together: not one of their numbers may go astray. */
export const changedDriversWitnesses: readonly Witness[] = [
  ...held(woofer, plain),
  ...held(`DRIVER.SERIES(${woofer}, "0.6 ohm")`, {
    ...plain,
    qes: 0.463448275862,
    qts: 0.422641509434,
    re: 6.4,
    level: 88.3154374287,
  }),
  ...held(`DRIVER.GROUP(${woofer}, 2, 3)`, {
    ...plain,
    vas: 0.17112,
    re: 8.7,
    sd: 0.0792,
    mms: 0.0911892632574,
    cms: 0.000192366464473,
    rms: 4.53592572598,
    bl: 21.2367750622,
    le: 0.000825,
    pe: 420,
    level: 95.1910769504,
  }),
  ...held(`DRIVER.HOT(${woofer}, "100 K")`, {
    ...plain,
    qes: 0.58506,
    qts: 0.521496139319,
    re: 8.0794,
    level: 86.2914547087,
  }),
  ...held(`SPREAD.DRIVER(${woofer}, 0.8, 1.1, 0.9, 1.05)`, {
    ...plain,
    fs: 44.783429475148,
    qms: 5.09116882454,
    qes: 0.386571186574,
    qts: 0.359290358717,
    vas: 0.022816,
    re: 6.09,
    mms: 0.0136783894886,
    cms: 0.000923359029472,
    bl: 7.78681752279,
    level: 90.4896945701,
  }),
];

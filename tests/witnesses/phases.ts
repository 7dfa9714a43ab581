import { closed, high, low, lowPass, tweeter, woofer, woofer3, woofer5 } from './subjects.ts';
import type { Witness } from './witness.ts';

/** The phase of a curve at a frequency of the grid, radians. */
const phase = (curve: string, gives: number, frequency = '1280 Hz'): Witness => ({
  formula: `=CURVE.PHASE(${curve}, "${frequency}")`,
  gives,
  vouches: [curve.slice(0, curve.indexOf('('))],
  within: { relative: 1e-8 },
  source: 'computed independently with numpy: drivers, box and filters as one circuit of element values',
  confirmed: 'computed',
});

const of = (driver: string): string => `DRIVER.IMPEDANCE(${driver})`;

/** Two ways with flattening and pad: their phases decide whether they add up; and loads, whose phases an amplifier
 *  feels. */
export const phasesWitnesses: readonly Witness[] = [
  phase(`BOX.LEVEL(${closed})`, 1.376068779422, '80 Hz'),
  phase(`BOX.IMPEDANCE(${closed})`, 0.604966711985),
  phase(
    `NETWORK.RESPONSE(NETWORK.JOIN(${lowPass}, NETWORK.FLATTEN("5.8 ohm", "16.4 µF")), BOX.IMPEDANCE(${closed}))`,
    -1.213433028571,
  ),
  phase(`WAY.DRIVE(${low})`, -1.213433028571),
  phase(`WAY.LEVEL(${low})`, -1.812196570698),
  phase(`WAY.LEVEL(${high})`, -0.359086084387),
  phase(`WAY.OFF_AXIS(${low}, 0, 0)`, -1.812196570698),
  phase(`WAY.IMPEDANCE(${low})`, 0.888792581588),
  phase(`SYSTEM.LEVEL(${low}, ${high})`, -1.422782961862),
  phase(`SYSTEM.OFF_AXIS(0, 0, ${low}, ${high})`, -1.422782961862),
  phase(`SYSTEM.REVERSED(${low}, ${high})`, -2.238761869819),
  phase(`SYSTEM.IMPEDANCE(${low}, ${high})`, 0.33286688649),
  phase('IMPEDANCE.TWO_COILS("6.1 Ω", "0.7 mH", "0.9 mH", "4.5 Ω")', 0.567267570476, '640 Hz'),
  phase('IMPEDANCE.EMPIRICAL("6 Ω", "2 Ω", 0.8, "6 Ω", 0.6)', 0.555269001204, '640 Hz'),
  phase(`IMPEDANCE.LOSSY(DRIVER.IMPEDANCE(${woofer}), "0.55 mH", 0.7)`, 0.235833006823, '640 Hz'),
  phase(`LOAD.PARALLEL(${of(woofer5)}, ${of(woofer3)})`, -0.418119230407, '40 Hz'),
  phase(`LOAD.WIRED("1+2 | 3", ${of(woofer5)}, ${of(woofer3)}, ${of(woofer5)})`, -0.881780134919, '80 Hz'),
  phase(`LOAD.VOLTAGE("1+2", 1, ${of(woofer5)}, ${of(tweeter)})`, -0.322516109463, '80 Hz'),
  phase(`PAD.IMPEDANCE(${of(tweeter)}, "2.7 Ω", "6.8 Ω")`, -0.140665379302),
  phase(`PAD.RESPONSE(${of(tweeter)}, "2.7 Ω", "6.8 Ω")`, -0.092326693956),
  {
    formula: '=CURVE.PHASE(EDGE.STEP("220 mm"), "1280 Hz")',
    gives: 0.242617873419,
    vouches: ['EDGE.STEP'],
    within: { relative: 1e-8 },
    source: 'arctan 2t − arctan t with t = √½·f·width/115 m/s, worked by hand',
    confirmed: 'computed',
  },
];

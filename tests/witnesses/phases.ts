import { closed, high, low, lowPass } from './subjects.ts';
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

/** Two ways with flattening and pad: their phases decide whether they add up. */
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
  {
    formula: '=CURVE.PHASE(EDGE.STEP("220 mm"), "1280 Hz")',
    gives: 0.242617873419,
    vouches: ['EDGE.STEP'],
    within: { relative: 1e-8 },
    source: 'arctan 2t − arctan t with t = √½·f·width/115 m/s, worked by hand',
    confirmed: 'computed',
  },
];

import { closed, high, low, lowPass, sweep, tweeter, tweeterWay, woofer, woofer3, woofer5 } from './subjects.ts';
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

/** The same, by another way than the circuit. */
const phaseBy = (
  source: string,
  curve: string,
  gives: number,
  frequency: string,
  more: Partial<Witness> = {},
): Witness => ({ ...phase(curve, gives, frequency), source, ...more });

const surface = 'Kirchhoff’s integral over the whole surface of the panel instead of its edge, with numpy';
const near = { within: { relative: 1e-3 } };
const harmonics = 'source on a sphere by spherical Hankel functions and Legendre polynomials of scipy';
const inCabinet = `the circuit of the way with numpy, times the ${harmonics}; sphere of half the step at 115 m/s over the width`;
const shelf = '"179.6875 mm", "4.5 dB", "6.4 Ω", "0.4 Ω"';
const divider = 'coil with its wire beside the resistor, ahead of 6.4 Ω, with numpy; coil by a root of half the loss';

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
  phase(`AROUND.AXIS(, ${tweeterWay})`, 1.43992329937, '2560 Hz'),
  phaseBy(inCabinet, `AROUND.AXIS("220 mm", ${tweeterWay})`, 1.60475442645, '2560 Hz'),
  phaseBy(inCabinet, `AROUND.AT("horizontal", "120°", "220 mm", ${tweeterWay})`, -1.628248327654, '640 Hz'),
  phaseBy(harmonics, 'EDGE.SPHERE("20 cm")', 0.309621235786, '640 Hz'),
  phaseBy(harmonics, 'EDGE.SPHERE("20 cm", "120°")', -0.066305286067, '1280 Hz'),
  phaseBy(divider, `EDGE.SHELF_LOSS(${shelf})`, -0.227703104982, '640 Hz'),
  phaseBy(divider, `EDGE.SHELF_LOAD(${shelf})`, 0.171667776481, '320 Hz'),
  phaseBy(surface, 'EDGE.DIFFRACTION("220 mm", "380 mm", "110 mm", "240 mm")', -0.0530538257, '1280 Hz', near),
  phaseBy(
    surface,
    'EDGE.DIFFRACTION("220 mm", "380 mm", "110 mm", "240 mm", , , "30°")',
    0.0707774065,
    '1280 Hz',
    near,
  ),
  phaseBy(
    surface,
    'EDGE.DIFFRACTION("220 mm", "380 mm", "80 mm", "240 mm", , , , "45°")',
    0.0962606503,
    '2560 Hz',
    near,
  ),
  phaseBy(
    'direct sound and image below the floor, with numpy',
    'ROOM.REFLECTION("2.8 m", "0.9 m", "1 m", 0.7)',
    0.334878408205,
    '320 Hz',
  ),
  phaseBy(
    'phase of the same way, and −180° of a Linkwitz–Riley slope of fourth order at its corner',
    `WAY.LEVEL(WAY.ACTIVE(${low}, FILTER.SLOPE("1280 Hz", "LR4", "low")))`,
    1.329396083,
    '1280 Hz',
    { vouches: ['WAY.ACTIVE'] },
  ),
  phaseBy(
    'the row as given, 35°',
    'WAY.LEVEL(WAY.MEASURED(MEASURE.LEVEL("160 88 -20\n1280 90 35"), MEASURE.IMPEDANCE("160 7 10\n1280 9 30")))',
    0.610865238,
    '1280 Hz',
    { vouches: ['WAY.MEASURED'] },
  ),
  phaseBy('the row as given, 25°', 'MEASURE.IMPEDANCE("100; 6,1; 10\n1280; 7,5; 25")', 0.436332313, '1280 Hz'),
  phaseBy(
    'the circuit that the sweep was computed from with numpy, −23.95647° at 40 Hz',
    `MEASURE.FITTED(${sweep})`,
    -0.418119276,
    '40 Hz',
    { within: { relative: 1e-6 } },
  ),
  {
    formula: '=CURVE.PHASE(EDGE.STEP("220 mm"), "1280 Hz")',
    gives: 0.242617873419,
    vouches: ['EDGE.STEP'],
    within: { relative: 1e-8 },
    source: 'arctan 2t − arctan t with t = √½·f·width/115 m/s, worked by hand',
    confirmed: 'computed',
  },
];

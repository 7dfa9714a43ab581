import { same, turns, type Identity } from '../identity.ts';
import { woofer } from '../subjects.ts';

const z = `DRIVER.IMPEDANCE(${woofer})`;
const at = (curve: string, frequency = '1280 Hz'): string => `CURVE.AT(${curve}, "${frequency}")`;
const flat = (ohms: string): string => `LOAD.RESISTOR("${ohms}")`;
const w40 = 'DRIVER.OF("40 Hz", 4.8, 0.42, "28.52 L", "5.8 Ω", "132 cm²", "5.5 mm")';
const three = '"1 | 2", ';
const mixed = `LOAD.MIXED("400 Hz", ${w40}, ${woofer})`;
const x = 'QTY("6.283185307179586 Ω")';

export const loadsIdentities: readonly Identity[] = [
  same(
    'limit',
    'IMPEDANCE.LOSSY',
    at(`IMPEDANCE.LOSSY(${z}, "0.55 mH", 1)`),
    at(z),
    'with an exponent of one the coil is the plain one',
  ),
  same(
    'limit',
    'IMPEDANCE.COIL',
    at('IMPEDANCE.COIL("5.7 Ω", "0.357 mH", 1)'),
    'SQRT(5.7^2+(2*PI()*1280*0.000357)^2)',
    'with an exponent of one it is a coil',
    { within: 1e-7 },
  ),
  same(
    'limit',
    'IMPEDANCE.TWO_COILS',
    at('IMPEDANCE.TWO_COILS("6.1 Ω", "0.7 mH", "0.9 mH", "1000000 Ω")'),
    at('IMPEDANCE.COIL("6.1 Ω", "1.6 mH", 1)'),
    'without a loss across it the second coil adds to the first',
    { within: 1e-5 },
  ),
  same(
    'another way',
    'IMPEDANCE.EMPIRICAL',
    at(`IMPEDANCE.EMPIRICAL("6 Ω", ${x}/TAN(0.35*PI()), 0.7, ${x}, 0.7)`, '5120 Hz'),
    at('IMPEDANCE.COIL("6 Ω", "1 mH", 0.7)', '5120 Hz'),
    'a coil of constant loss angle is one case of the empirical one',
  ),
  same(
    'round trip',
    'LOAD.LOWEST LOAD.LOWEST_AT',
    `CURVE.AT(${z}, LOAD.LOWEST_AT(${z}, "60 Hz", "1 kHz"))`,
    `LOAD.LOWEST(${z}, "60 Hz", "1 kHz")`,
    'where it is lowest it has its lowest value',
    { within: 1e-4 },
  ),
  same(
    'scale law',
    'LOAD.PARALLEL LOAD.SERIES',
    `4*${at(`LOAD.PARALLEL(${z}, ${z})`)}`,
    at(`LOAD.SERIES(${z}, ${z})`),
    'half of one, twice of one',
  ),
  same(
    'limit',
    'LOAD.HANDOVER',
    at(`LOAD.HANDOVER(${flat('6 Ω')}, ${flat('4 Ω')}, "1.8 kHz")`, '10 kHz'),
    'QTY("4 Ω")',
    'above the hand-over the upper driver alone is the load',
  ),
  same(
    'another way',
    'LOAD.WIRED',
    at(`LOAD.WIRED("1+2 | 3", ${z}, ${z}, ${flat('4 Ω')})`),
    at(`LOAD.PARALLEL(LOAD.SERIES(${z}, ${z}), ${flat('4 Ω')})`),
    'the same wiring, put together by hand',
  ),
  same(
    'balance',
    'LOAD.VOLTAGE',
    `LEVEL.RATIO(${at(`LOAD.VOLTAGE("1+2", 1, ${flat('6 Ω')}, ${flat('2 Ω')})`)})+LEVEL.RATIO(${at(`LOAD.VOLTAGE("1+2", 2, ${flat('6 Ω')}, ${flat('2 Ω')})`)})`,
    '1',
    'in series the voltages add up to that of the amplifier',
  ),
  same(
    'balance',
    'LOAD.SHARE',
    `${at(`LOAD.SHARE(${three}1, ${z}, ${flat('5 Ω')})`)}+${at(`LOAD.SHARE(${three}2, ${z}, ${flat('5 Ω')})`)}`,
    '1',
    'the shares of power are the whole',
  ),
  same(
    'another way',
    'LOAD.WIRINGS SUBS.LEVEL',
    `TABLE.AT(LOAD.WIRINGS(${z}, "89.2 dB", 2), 2, "Level", 1 dB)`,
    'SUBS.LEVEL("89.2 dB", 2)',
    'two in parallel play as two of a kind do',
  ),
  same(
    'balance',
    'LOAD.MIXED',
    `TABLE.AT(${mixed}, 2, "Share 1", 1)+TABLE.AT(${mixed}, 2, "Share 2", 1)`,
    '1',
    'the shares of power are the whole',
  ),
  turns(
    'LOAD.VERDICT',
    `LOAD.VERDICT(${flat('3.201 Ω')}, "4 Ω")`,
    `LOAD.VERDICT(${flat('3.199 Ω')}, "4 Ω")`,
    'four fifths of what the amplifier is made for',
  ),
  same(
    'round trip',
    'LOAD.NOMINAL LOAD.PERMITTED',
    `LOAD.PERMITTED(LOAD.NOMINAL(${flat('6 Ω')}))`,
    'QTY("6 Ω")',
    'the rating permits what it was made from',
  ),
  same(
    'symmetry',
    'LOAD.RATING',
    `LOAD.RATING(${flat('6.41 Ω')})-LOAD.RATING(${flat('6.39 Ω')})`,
    'QTY("2 Ω")',
    'the rating steps from 6 to 8 Ω at four fifths of 8',
  ),
  same(
    'scale law',
    'LOAD.DISSIPATION',
    at(`LOAD.DISSIPATION(CURVE.SCALE(${z}, 2))`),
    `2*${at(`LOAD.DISSIPATION(${z})`)}`,
    'twice the ohms in all',
  ),
  same(
    'another way',
    'LOAD.PHASE CURVE.PHASE',
    `TAN(CURVE.PHASE(IMPEDANCE.COIL("6 Ω", "1 mH", 1), "1280 Hz")/QTY("1 rad"))`,
    `TAN(${at('LOAD.PHASE(IMPEDANCE.COIL("6 Ω", "1 mH", 1))')}/QTY("1 rad"))*2*PI()*1280*0.001/6/TAN(${at('LOAD.PHASE(IMPEDANCE.COIL("6 Ω", "1 mH", 1))')}/QTY("1 rad"))`,
    'the tangent is reactance over resistance',
  ),
  same(
    'balance',
    'LOAD.POWER LOAD.CURRENT LOAD.RESISTIVE',
    at(`LOAD.POWER(${z}, "10 V")`),
    `${at(`LOAD.CURRENT(${z}, "10 V")`)}^2*${at(`LOAD.RESISTIVE(${z})`)}`,
    'the square of the current times the resistance',
  ),
  same(
    'scale law',
    'LOAD.VOLTS',
    'LOAD.VOLTS("400 W", "8 Ω")',
    '2*LOAD.VOLTS("100 W", "8 Ω")',
    'four times the watts, twice the volts',
  ),
  same(
    'balance',
    'LOAD.RESISTOR',
    at(`LOAD.PARALLEL(${flat('8 Ω')}, ${flat('8 Ω')})`),
    'QTY("4 Ω")',
    'two of 8 Ω beside one another',
  ),
];

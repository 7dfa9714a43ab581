import { same, type Identity } from '../identity.ts';
import { closed, high, highPass, low, tweeter, tweeterWay } from '../subjects.ts';

const at = (curve: string, frequency = '1280 Hz'): string => `CURVE.AT(${curve}, "${frequency}")`;
const on = (network: string, ohms: string): string => `NETWORK.RESPONSE(${network}, LOAD.RESISTOR("${ohms}"))`;
const seen = (network: string, ohms: string): string => `NETWORK.IMPEDANCE(${network}, LOAD.RESISTOR("${ohms}"))`;
const bw3 = (pass: string): string => at(on(`NETWORK.${pass}("BW3", "1 kHz", "6 Ω")`, '6 Ω'));
const bw1 = (pass: string): string => seen(`NETWORK.${pass}("BW1", "1 kHz", "6 Ω")`, '6 Ω');
const band = on('NETWORK.BAND("BW2", "320 Hz", "5120 Hz", "6 Ω")', '6 Ω');
const lr2 = '"LR2", "low", "1900 Hz", "6.3 Ω"';
const made = 'NETWORK.LOW("LR2", "1900 Hz", "6.3 Ω")';
const rounded = `NETWORK.ROUND(${made})`;
const handover = `SYSTEM.HANDOVER(${low}, ${high})`;
const there = (curve: string): string => `CURVE.AT(${curve}, ${handover})`;
const upright = high.replace(', "reversed"', '');
const later = (delay: string): string => `WAY.OF(${tweeter}, ${highPass}, 0, 0, 0, "normal", 0, "${delay}")`;
const filter = 'FILTER.SLOPE("3 kHz", "LR4", "low")';
const heat = 'NETWORK.HEAT(NETWORK.PAD("2.7 Ω", "6.8 Ω"), LOAD.RESISTOR("6.1 Ω"), "10 V")';

export const crossoverIdentities: readonly Identity[] = [
  same(
    'balance',
    'FILTER.SLOPE',
    at('FILTER.SLOPE("2 kHz", "LR4", "low")'),
    `2*${at('FILTER.SLOPE("2 kHz", "BW2", "low")')}`,
    'LR4 is BW2 twice',
  ),
  same(
    'balance',
    'FILTER.SECTIONS',
    'TABLE.AT(FILTER.SECTIONS("2 kHz", "BW4", "low"), 1, "Q", 1)*TABLE.AT(FILTER.SECTIONS("2 kHz", "BW4", "low"), 2, "Q", 1)',
    '1/SQRT(2)',
    'at the corner each section plays its Q, and all together half power',
  ),
  same(
    'round trip',
    'FILTER.COIL FILTER.CAPACITOR FILTER.CORNER',
    `FILTER.CORNER(FILTER.COIL(${lr2}), FILTER.CAPACITOR(${lr2}))`,
    'QTY("1900 Hz")',
    'the parts for 1900 Hz resonate there',
  ),
  same(
    'round trip',
    'FILTER.Q',
    `FILTER.Q(FILTER.COIL(${lr2}), FILTER.CAPACITOR(${lr2}), "6.3 Ω")`,
    '0.5',
    'the parts of a filter of Q ½ have Q ½',
  ),
  same(
    'balance',
    'NETWORK.LOW NETWORK.HIGH NETWORK.RESPONSE',
    `10^(${bw3('LOW')}/QTY("10 dB"))+10^(${bw3('HIGH')}/QTY("10 dB"))`,
    '1',
    'the powers of Butterworth branches add up to the whole',
  ),
  same(
    'symmetry',
    'NETWORK.BAND',
    at(band, '640 Hz'),
    at(band, '2560 Hz'),
    'a band is alike on both sides of its middle',
    { within: 1e-8 },
  ),
  same(
    'another way',
    'NETWORK.WIRE',
    at(on('NETWORK.WIRE("0.2 Ω")', '8 Ω')),
    'LEVEL.FROM_RATIO(8/8.2)',
    'a divider of two resistors',
  ),
  same(
    'limit',
    'NETWORK.FLATTEN',
    at(seen('NETWORK.FLATTEN("6 Ω", "1000 µF")', '6 Ω'), '20 kHz'),
    'QTY("3 Ω")',
    'high up the capacitor is a wire',
    { within: 1e-4 },
  ),
  same(
    'limit',
    'NETWORK.TRAP',
    `CURVE.LOWEST(${seen('NETWORK.TRAP("6 Ω", "1 mH", "15.46 µF")', '6 Ω')})`,
    'QTY("3 Ω")',
    'at its resonance the trap is its resistor',
    { within: 1e-4 },
  ),
  same(
    'limit',
    'NETWORK.NOTCH',
    `CURVE.LOWEST(${on('NETWORK.NOTCH("22 Ω", "1 mH", "15.46 µF")', '8 Ω')})`,
    'LEVEL.FROM_RATIO(8/30)',
    'at its resonance the notch is its resistor',
    { within: 1e-4 },
  ),
  same(
    'another way',
    'NETWORK.LEG',
    at(on('NETWORK.LEG("series", "chain", , "1 mH", "0.3 Ω")', '8 Ω')),
    'QTY("-10 dB")*LOG10((8.3^2+(2*PI()*1280*0.001)^2)/64)',
    'a divider of coil and resistor',
    { within: 1e-7 },
  ),
  same(
    'another way',
    'NETWORK.COIL',
    `NETWORK.COIL(${made})`,
    `FILTER.COIL(${lr2})`,
    'the part that the filter asks for',
  ),
  same(
    'another way',
    'NETWORK.CAPACITOR',
    `NETWORK.CAPACITOR(${made})`,
    `FILTER.CAPACITOR(${lr2})`,
    'the part that the filter asks for',
  ),
  same(
    'limit',
    'NETWORK.COIL_RESISTANCE',
    'QTY("6.3 Ω")+NETWORK.COIL_RESISTANCE(NETWORK.LOW("LR2", "20 kHz", "6.3 Ω", "0.3 Ω"))',
    at(seen('NETWORK.LOW("LR2", "20 kHz", "6.3 Ω", "0.3 Ω")', '6.3 Ω'), '10 Hz'),
    'for slow currents a coil is its wire',
    { within: 1e-5 },
  ),
  same(
    'round trip',
    'NETWORK.CHANGE',
    `NETWORK.COIL(NETWORK.CHANGE(NETWORK.CHANGE(${made}, "coil", 1, "1.2 mH"), "coil", 1, NETWORK.COIL(${made})))`,
    `NETWORK.COIL(${made})`,
    'changed and changed back',
  ),
  same(
    'another way',
    'NETWORK.ROUND',
    `NETWORK.CAPACITOR(${rounded})`,
    `STANDARD.NEAREST(NETWORK.CAPACITOR(${made}), "E12")`,
    'the nearest value there is',
  ),
  same(
    'another way',
    'NETWORK.CORNER',
    `NETWORK.CORNER(${rounded}, "6.3 Ω")`,
    `FILTER.CORNER(NETWORK.COIL(${rounded}), NETWORK.CAPACITOR(${rounded}))`,
    'the resonance of its two parts',
    { within: 1e-6 },
  ),
  same(
    'another way',
    'NETWORK.Q',
    `NETWORK.Q(${rounded}, "6.3 Ω")`,
    `FILTER.Q(NETWORK.COIL(${rounded}), NETWORK.CAPACITOR(${rounded}), "6.3 Ω")`,
    'the Q of its two parts',
    { within: 1e-6 },
  ),
  same(
    'balance',
    'NETWORK.IMPEDANCE',
    at(`LOAD.PARALLEL(${bw1('LOW')}, ${bw1('HIGH')})`),
    'QTY("6 Ω")',
    'branches of first order together are a resistance',
  ),
  same(
    'limit',
    'NETWORK.LOAD_EFFECT',
    `QTY("10 dB")+${at(`NETWORK.LOAD_EFFECT(${highPass}, LOAD.RESISTOR("5.9 Ω"), "5.9 Ω")`)}`,
    'QTY("10 dB")',
    'on the resistance it was made for the load has no effect',
  ),
  same(
    'balance',
    'NETWORK.HEAT',
    `TABLE.TOTAL(${heat}, "Average", 1 W)`,
    'QTY("100 W")/(PAD.INPUT("2.7 Ω", "6.8 Ω", "6.1 Ω")/QTY("1 Ω"))',
    'what goes in is warm somewhere',
  ),
  same(
    'round trip',
    'WAY.MEASURED',
    at(`WAY.LEVEL(WAY.MEASURED(WAY.LEVEL(WAY.OF(${tweeter})), DRIVER.IMPEDANCE(${tweeter}), ${highPass}))`),
    at(`WAY.LEVEL(${tweeterWay})`),
    'the curves of a model taken for measured ones make the same way',
  ),
  same(
    'another way',
    'WAY.ACTIVE',
    `${at(`WAY.LEVEL(WAY.ACTIVE(${tweeterWay}, ${filter}))`)}-${at(`WAY.LEVEL(${tweeterWay})`)}`,
    at(filter),
    'what it adds is the filter alone',
  ),
  same(
    'another way',
    'WAY.OFF_AXIS',
    `${at(`WAY.LEVEL(${tweeterWay})`, '10240 Hz')}-${at(`WAY.OFF_AXIS(${tweeterWay}, "45°")`, '10240 Hz')}`,
    'PISTON.LOSS("7 cm²", "10240 Hz", "45°")',
    'a way beside its axis loses what its piston does',
  ),
  same(
    'limit',
    'WAY.TRAVEL',
    at(`WAY.TRAVEL(WAY.OF(${closed}), "20 V")`, '40 Hz'),
    at(`BOX.TRAVEL(${closed}, "20 V")`, '40 Hz'),
    'without a filter the way moves as its box says',
  ),
  same(
    'limit',
    'SYSTEM.OFF_AXIS',
    at(`SYSTEM.OFF_AXIS(0, 0, ${low}, ${high})`),
    at(`SYSTEM.LEVEL(${low}, ${high})`),
    'no angle is the axis',
  ),
  same(
    'scale law',
    'SYSTEM.DELAY',
    `${at(`SYSTEM.DELAY(${later('3 ms')})`)}-${at(`SYSTEM.DELAY(${later('1 ms')})`)}`,
    'QTY("2 ms")',
    'two milliseconds more are two more',
  ),
  same(
    'balance',
    'SYSTEM.HANDOVER',
    there(`WAY.LEVEL(${low})`),
    there(`WAY.LEVEL(${high})`),
    'there both ways are as loud',
    { within: 1e-5 },
  ),
  same(
    'another way',
    'SYSTEM.REVERSED',
    at(`SYSTEM.REVERSED(${low}, ${high})`),
    at(`SYSTEM.LEVEL(${low}, ${upright})`),
    'the upper way wired the other way',
  ),
  same(
    'another way',
    'SYSTEM.NULL_DEPTH',
    `SYSTEM.NULL_DEPTH(${low}, ${high})`,
    `${there(`SYSTEM.LEVEL(${low}, ${high})`)}-${there(`SYSTEM.REVERSED(${low}, ${high})`)}`,
    'how much the sum falls when the upper way is reversed',
    { within: 1e-3 },
  ),
  same(
    'balance',
    'SYSTEM.PHASE_GAP LEVEL.SUM_AT_ANGLE',
    `LEVEL.SUM_AT_ANGLE(${there(`WAY.LEVEL(${low})`)}, ${there(`WAY.LEVEL(${high})`)}, SYSTEM.PHASE_GAP(${low}, ${high}))`,
    there(`SYSTEM.LEVEL(${low}, ${high})`),
    'two sounds at that angle make the sum',
    { within: 1e-4 },
  ),
  same(
    'another way',
    'SPREAD.NETWORK',
    `SPREAD.PERCENTILE(SPREAD.NETWORK(${highPass}, LOAD.RESISTOR("5.9 Ω"), "2560 Hz", 0, 0, 0), 0.5)`,
    at(on(highPass, '5.9 Ω'), '2560 Hz'),
    'parts without tolerance are the parts',
  ),
];

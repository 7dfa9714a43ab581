import type { Identity } from './identity.ts';
import { loadsIdentities } from './second/loads.ts';
import { aroundIdentities } from './second/around.ts';
import { cabinetIdentities } from './second/cabinet.ts';
import { crossoverIdentities } from './second/crossover.ts';
import { curveIdentities } from './second/curve.ts';
import { driverIdentities } from './second/driver.ts';
import { electricalIdentities } from './second/electrical.ts';
import { enclosureIdentities } from './second/enclosure.ts';
import { levelIdentities } from './second/level.ts';
import { pairingIdentities } from './second/pairing.ts';
import { radiationIdentities } from './second/radiation.ts';
import { restIdentities } from './second/rest.ts';
import { closed, sweep } from './subjects.ts';

/** Without inductance, so that the peak of the impedance is the resonance alone. */
const coilless = 'DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "5.8 ohm", "132 cm2", "5.5 mm")';
const pair = 'PAIR.WINDOW("resonance", 1700 Hz, 1275 Hz, "narrowing", 1923 Hz, 2631 Hz)';
const cabinet = '"360 mm", "220 mm", "280 mm", "15 mm"';
const plate = (length: string): string => `PANEL.MODE("${length}", "280 mm", "18 mm")`;
const braced = (at: string): string => `PANEL.BRACED("360 mm", "280 mm", "18 mm", "${at}")`;

const basket = {
  A1: 'Sheet',
  B1: '2',
  C1: '31 ¤',
  D1: 'Wood',
  A2: 'Coil',
  B2: '4',
  C2: '7.5 ¤',
  D2: 'Parts',
  A3: 'Terminal',
  B3: '2',
  C3: '4 ¤',
  D3: 'Parts',
};

export const identities: readonly Identity[] = [
  {
    nature: 'another way',
    cells: {
      A1: 'Mms',
      B1: '15.2 g',
      A2: 'Cms',
      B2: '1.15 mm/N',
      A3: 'Rms',
      B3: '0.76 kg/s',
      A4: 'Bl',
      B4: '7.08 T·m',
      A5: 'Re',
      B5: '5.8 Ω',
      A6: 'Sd',
      B6: '132 cm²',
    },
    formula: '=BOX.QTC(BAFFLE.BOX(DRIVER(A1:A6, B1:B6)))',
    equals: '=SQRT(0.0152/0.00115)/(0.76+7.08^2/5.8)',
    vouches: ['DRIVER'],
    within: 1e-9,
    because: 'a mass on a spring with the friction of its suspension and of its coil',
  },
  {
    nature: 'another way',
    formula: '=DRIVER.QTS(4.8, 0.42)',
    equals: `=10^(CURVE.AT(BOX.RESPONSE(BAFFLE.BOX(${coilless})), "38 Hz")/QTY("20 dB"))`,
    vouches: ['DRIVER.QTS'],
    within: 1e-4,
    because: 'the response at resonance in an endless wall is Qts times the flat one, in the solved circuit',
  },
  {
    nature: 'another way',
    formula: '=CLOSED.RESONANCE("38 Hz", "28.52 L", "12.1 L")',
    equals: `=CURVE.PEAK_AT(BOX.IMPEDANCE(CLOSED.BOX(${coilless}, "12.1 L")))`,
    vouches: ['CLOSED.RESONANCE'],
    within: 2e-3,
    because: 'the impedance of the solved circuit peaks at the resonance',
  },
  {
    nature: 'round trip',
    formula: `=CURVE.PEAK(BOX.TRAVEL(${closed}, BOX.TRAVEL_VOLTS(${closed}, "20 Hz")), "20 Hz")`,
    equals: '=QTY("5.5 mm")',
    vouches: ['BOX.TRAVEL_VOLTS'],
    within: 1e-4,
    because: 'driven with these volts the cone just reaches its Xmax',
  },
  {
    nature: 'round trip',
    formula: '=PORT.SLOT_AREA("200 mm", "25 mm")',
    equals: '=PORT.AREA(PORT.ROUND_OF(PORT.SLOT_AREA("200 mm", "25 mm")))',
    vouches: ['PORT.SLOT_AREA', 'PORT.ROUND_OF', 'PORT.AREA'],
    within: 1e-12,
    because: 'the round port of the same area has that area',
  },
  {
    nature: 'another way',
    formula: '=PORT.VOLUME("260 mm", "68 mm", 3)',
    equals: '=CABINET.NET_VOLUME("262 mm", PORT.AREA("68 mm", 3)/QTY("1 m")+QTY("2 mm"), "1.002 m", "1 mm")',
    vouches: ['PORT.VOLUME'],
    within: 1e-9,
    because: 'a box as long as the ports, one metre deep and as wide as their area holds as much',
  },
  {
    nature: 'limit',
    formula: '=PORT.FLARED_LENGTH("22.3 L", "39.6 Hz", "68 mm", "0.1 mm", 1, "outer end")',
    equals: '=PORT.LENGTH("22.3 L", "39.6 Hz", "68 mm")',
    vouches: ['PORT.FLARED_LENGTH'],
    within: 1e-3,
    because: 'a flare of no size leaves a plain port, flanged outside and free inside',
  },
  {
    nature: 'another way',
    formula:
      '=CURVE.AT(NETWORK.RESPONSE(NETWORK.SHELF(EDGE.SHELF_RESISTANCE("220 mm", "4.5 dB", "6.4 Ω"), EDGE.SHELF_INDUCTANCE("220 mm", "4.5 dB", "6.4 Ω")), LOAD.RESISTOR("6.4 Ω")), "700 Hz")',
    equals: '=CURVE.AT(EDGE.SHELF_LOSS("220 mm", "4.5 dB", "6.4 Ω"), "700 Hz")',
    vouches: ['NETWORK.SHELF', 'EDGE.SHELF_RESISTANCE', 'EDGE.SHELF_INDUCTANCE', 'EDGE.SHELF_LOSS'],
    within: 1e-9,
    because: 'the ladder with the parts of the shelf falls by what the shelf is said to take',
  },
  {
    nature: 'another way',
    formula: '=CURVE.AT(NETWORK.IMPEDANCE(NETWORK.PAD("2.7 ohm", "6.8 ohm"), LOAD.RESISTOR("6.8 ohm")), "1 kHz")',
    equals:
      '=NETWORK.RESISTOR(NETWORK.PAD("2.7 ohm", "6.8 ohm"), 1)+NETWORK.RESISTOR(NETWORK.PAD("2.7 ohm", "6.8 ohm"), 2)/2',
    vouches: ['NETWORK.RESISTOR'],
    within: 1e-12,
    because: 'the ladder sees the first resistor and half of the second, which has its like across it',
  },
  {
    nature: 'balance',
    formula: `=PAIR.LOW(${pair})*2^(PAIR.OCTAVES(${pair})/QTY("1 oct"))`,
    equals: `=PAIR.HIGH(${pair})`,
    vouches: ['PAIR.LOW', 'PAIR.HIGH', 'PAIR.OCTAVES'],
    within: 1e-12,
    because: 'as many octaves above the lower end lies the upper one',
  },
  {
    nature: 'balance',
    formula: `=CABINET.WEIGHT(${cabinet}, "front covers", 3, 0.4)-CABINET.WEIGHT(${cabinet})`,
    equals: '=BRACE.VOLUME("220 mm", "280 mm", "15 mm", 0.4, 3)*QTY("740 kg/m3")',
    vouches: ['BRACE.VOLUME', 'CABINET.WEIGHT'],
    within: 1e-9,
    because: 'braces make a cabinet heavier by their volume times the density',
  },
  {
    nature: 'another way',
    formula: '=CABINET.CLEARANCE("280 mm", "15 mm", "78 mm")',
    equals: '=CABINET.NET_VOLUME("1.03 m", "1.03 m", "280 mm", "15 mm")/QTY("1 m2")+QTY("15 mm")-QTY("78 mm")',
    vouches: ['CABINET.CLEARANCE'],
    within: 1e-9,
    because: 'behind a driver lies the inner depth, and the front panel in which it stands, less its own depth',
  },
  {
    nature: 'limit',
    formula: `=${braced('180 mm')}`,
    equals: `=${plate('180 mm')}`,
    vouches: ['PANEL.BRACED'],
    within: 1e-12,
    because: 'a brace in the middle leaves two panels of half the length',
  },
  {
    nature: 'limit',
    formula: `=${braced('360 mm')}`,
    equals: `=${plate('360 mm')}`,
    vouches: ['PANEL.BRACED'],
    within: 1e-12,
    because: 'a brace along the edge braces nothing',
  },
  {
    nature: 'balance',
    formula: '=SIN(CABINET.TIP_ANGLE("220 mm", "500 mm")/QTY("1 rad"))*QTY("500 mm")',
    equals: '=COS(CABINET.TIP_ANGLE("220 mm", "500 mm")/QTY("1 rad"))*QTY("110 mm")',
    vouches: ['CABINET.TIP_ANGLE'],
    within: 1e-12,
    because: 'leaning that far, the centre of mass stands above the edge of the base: no moment is left',
  },
  {
    nature: 'balance',
    cells: basket,
    formula: '=BASKET.TOTAL(A1:A3, B1:B3, C1:C3)',
    equals: '=TABLE.TOTAL(BASKET.TABLE(A1:A3, B1:B3, C1:C3), "Price", 1 ¤)',
    vouches: ['BASKET.TOTAL', 'BASKET.TABLE'],
    within: 1e-12,
    because: 'the lines of the list add up to the total',
  },
  {
    nature: 'balance',
    cells: basket,
    formula: '=BASKET.SHARE("Wood", A1:A3, B1:B3, C1:C3, D1:D3)+BASKET.SHARE("Parts", A1:A3, B1:B3, C1:C3, D1:D3)',
    equals: '=1',
    vouches: ['BASKET.SHARE'],
    within: 1e-12,
    because: 'the shares of all groups are the whole',
  },
  {
    nature: 'another way',
    formula: `=CURVE.AT(MEASURE.FITTED(${sweep}), "60 Hz")`,
    equals: `=CURVE.AT(DRIVER.IMPEDANCE(MEASURE.DRIVER(${sweep.replace(', ', ', "Woofer", ')})), "60 Hz")`,
    vouches: ['MEASURE.FITTED', 'MEASURE.DRIVER'],
    within: 1e-3,
    because: 'the driver that was found has the impedance that was fitted, in the circuit of a driver',
  },
  {
    nature: 'another way',
    formula: `=MEASURE.QTS("5.8 Ω", CURVE.PEAK(MEASURE.FITTED(${sweep})), "38 Hz", "26.53 Hz", "54.44 Hz")`,
    equals: `=TABLE.AT(MEASURE.SWEEP(${sweep}), 1, "Qts")`,
    vouches: ['MEASURE.SWEEP'],
    within: 2e-3,
    because: 'three points of the same curve by the classical formulas',
  },
  {
    nature: 'another way',
    formula: `=BOX.QTC(BAFFLE.BOX(SPREAD.DRIVER(${coilless}, 1, 1, 1, 1.393)))`,
    equals: `=BOX.QTC(BAFFLE.BOX(DRIVER.HOT(${coilless}, 100)))`,
    vouches: ['SPREAD.DRIVER', 'DRIVER.HOT'],
    within: 1e-9,
    because: 'a coil that has gained 39.3 % of its ohms is one that is 100 K hotter',
  },
  {
    nature: 'another way',
    formula: '=MEASURE.MIDDLE_OHMS("5.8 Ω", "72.0857 Ω")',
    equals: `=CURVE.AT(DRIVER.IMPEDANCE(${coilless}), "26.526 Hz")`,
    vouches: ['MEASURE.MIDDLE_OHMS'],
    within: 1e-3,
    because: 'the circuit has these ohms at fs·√x, where x + 1/x tells the mechanical Q',
  },
  {
    nature: 'round trip',
    formula: '=PISTON.KA("132 cm²", MEASURE.NEAR_LIMIT("132 cm²"))',
    equals: '=1',
    vouches: ['MEASURE.NEAR_LIMIT'],
    within: 1e-12,
    because: 'there the circumference of the piston is one wavelength',
  },
  {
    nature: 'round trip',
    formula: '=CURVE.AT(EDGE.STEP("220 mm"), CURVE.LOWEST_AT(EDGE.STEP("220 mm"), "300 Hz", "3 kHz"))',
    equals: '=CURVE.LOWEST(EDGE.STEP("220 mm"), "300 Hz", "3 kHz")',
    vouches: ['CURVE.LOWEST_AT', 'CURVE.LOWEST'],
    within: 1e-9,
    because: 'where it is lowest it has its lowest value',
  },
  ...loadsIdentities,
  ...aroundIdentities,
  ...cabinetIdentities,
  ...crossoverIdentities,
  ...curveIdentities,
  ...driverIdentities,
  ...electricalIdentities,
  ...enclosureIdentities,
  ...levelIdentities,
  ...pairingIdentities,
  ...radiationIdentities,
  ...restIdentities,
];

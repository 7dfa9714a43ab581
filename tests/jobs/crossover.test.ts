import { tweeter, woofer } from './drivers.ts';
import { testJobs } from './job.ts';

const c = 343.2;
const middleOfStep = 115 / 0.22;

testJobs([
  {
    job: 'decide how much of the cabinet step to make up, and what that costs',
    cells: {
      Width: '220 mm',
      MakeUp: '4.5 dB',
      Ohms: '6.4 Ω',
      Step: '=EDGE.FREQUENCY(Width)',
      Resistor: '=EDGE.SHELF_RESISTANCE(Width, MakeUp, Ohms)',
      Coil: '=EDGE.SHELF_INDUCTANCE(Width, MakeUp, Ohms)',
      Low: '=CURVE.AT(EDGE.STEP(Width), "10 Hz")',
      High: '=CURVE.AT(EDGE.SHELF_LOSS(Width, MakeUp, Ohms), "20 kHz")',
      Load: '=CURVE.AT(EDGE.SHELF_LOAD(Width, MakeUp, Ohms), "20 kHz")',
      Lift: '=CURVE.AT(ROOM.WALLS("30 cm"), "20 Hz")',
    },
    gives: {
      Step: [middleOfStep, 0.5],
      Resistor: [6.4 * (10 ** (4.5 / 20) - 1), 1e-6],
      Coil: [(6.4 * (10 ** (4.5 / 20) - 1) * 10 ** (-4.5 / 40)) / (2 * Math.PI * middleOfStep), 1e-8],
      Low: [-20 * Math.log10(2), 0.01],
      High: [-4.5, 0.02],
      Load: [6.4 * 10 ** (4.5 / 20), 0.05],
      Lift: [3.01, 0.1],
    },
    from: 'Z·(10^(A/20) − 1); its corner where half of the decibels are taken; a wall doubles what goes out low down',
  },
  {
    job: 'place a driver on the panel and round its edges',
    cells: {
      Middle: '=EDGE.RIPPLE("300 mm", "300 mm", "150 mm", "150 mm")',
      Aside: '=EDGE.RIPPLE("300 mm", "300 mm", "110 mm", "190 mm")',
      Round: '=EDGE.RIPPLE("300 mm", "300 mm", "150 mm", "150 mm", , "40 mm")',
      Better: '=CHECK.AT_LEAST(Middle, Aside, , "Ripple of the middle")',
      Softer: '=CHECK.AT_LEAST(Middle, Round, , "Ripple of the sharp edge")',
      Even: '=EDGE.PLACE_VERDICT("300 mm", "300 mm", "150 mm", "150 mm")',
      From: '=EDGE.RADIUS_FREQUENCY("19 mm")',
      Beside: '=CURVE.AT(EDGE.DIFFRACTION("300 mm", "300 mm", "150 mm", "150 mm", , , "90°"), "1 kHz")',
    },
    gives: { Better: 'good', Softer: 'good', Even: 'caution', From: [c / (8 * 0.019), 1], Beside: [-6.02, 0.01] },
    from: 'four equal ways add up at one frequency, unequal ones do not; an eighth of a wavelength; half the pressure along the panel',
  },
  {
    job: 'pad a tweeter on its real ohms, with what the pad does to them',
    cells: {
      Loss: '5.3 dB',
      Z: '6.1 Ω',
      Series: '=PAD.SERIES(Loss, Z)',
      Shunt: '=PAD.SHUNT(Loss, Z)',
      Input: '=PAD.INPUT(Series, Shunt, Z)',
      Single: '=PAD.SINGLE(Loss, Z)',
      Shop: '=PAD.LOSS(PAD.STANDARD_SERIES(Loss, Z), PAD.STANDARD_SHUNT(Loss, Z), Z)',
      Tweeter: tweeter,
      Filter: '=NETWORK.HIGH("LR2", "1900 Hz", Z)',
      Alone: '=NETWORK.JOIN(Filter, NETWORK.LEG("series", "chain", Single))',
      Shifted:
        '=CURVE.AT(NETWORK.RESPONSE(Alone, LOAD.RESISTOR(Z)), "1900 Hz")-CURVE.AT(NETWORK.RESPONSE(Alone, LOAD.RESISTOR(Z)), "30 kHz")',
    },
    gives: {
      Series: [6.1 * (1 - 10 ** (-5.3 / 20)), 1e-9],
      Shunt: [(6.1 * 10 ** (-5.3 / 20)) / (1 - 10 ** (-5.3 / 20)), 1e-9],
      Input: [6.1, 1e-9],
      Single: [6.1 * (10 ** (5.3 / 20) - 1), 1e-9],
      Shop: [5.3, 0.2],
      Shifted: [singleResistor(), 0.02],
    },
    from: 'constant-resistance divider by Ohm; behind one resistor the filter sees 11.2 Ω instead of 6.1, so it peaks, by complex numbers',
  },
  {
    job: 'draft a first filter on flattened real ohms, and see the sum',
    cells: {
      Woofer: woofer,
      Tweeter: tweeter,
      Handover: '1900 Hz',
      Box: '=CLOSED.BOX(Woofer, "12.1 L")',
      Flat: '=FLATTEN.NETWORK("5.8 Ω", "0.55 mH")',
      Capacitor: '=FLATTEN.CAPACITOR("5.8 Ω", "0.55 mH")',
      Ohms: '=CURVE.AT(NETWORK.IMPEDANCE(Flat, BOX.IMPEDANCE(Box)), Handover)',
      Low: '=NETWORK.LOW("LR2", Handover, "6.3 Ω")',
      Coil: '=NETWORK.COIL(Low)',
      Cap: '=NETWORK.CAPACITOR(Low)',
      Bare: '=CURVE.AT(BOX.IMPEDANCE(Box), Handover)',
      Ways: '=WAY.OF(Box, NETWORK.JOIN(Low, Flat))',
      High: '=WAY.OF(Tweeter, NETWORK.JOIN(NETWORK.HIGH("LR2", Handover, "5.7 Ω"), NETWORK.PAD("2.7 Ω", "6.8 Ω")), , , , "reversed")',
      Sum: '=SYSTEM.LEVEL(Ways, High)',
      Crossing: '=SYSTEM.HANDOVER(Ways, High)',
      Alone: '=CURVE.AT(WAY.LEVEL(Ways), Crossing)',
      Other: '=CURVE.AT(WAY.LEVEL(High), Crossing)',
      Same: '=CURVE.AT(Sum, Crossing)-LEVEL.SUM_AT_ANGLE(Alone, Other, SYSTEM.PHASE_GAP(Ways, High))',
    },
    gives: {
      Capacitor: [0.00055 / 5.8 ** 2, 1e-9],
      Coil: [(2 * 6.3) / (2 * Math.PI * 1900), 1e-7],
      Cap: [1 / (2 * 6.3 * 2 * Math.PI * 1900), 1e-9],
      Bare: [Math.hypot(5.8, 2 * Math.PI * 1900 * 0.00055 - ((5.8 / 0.42) * 38) / 1900), 0.01],
      Ohms: [5.8, 0.15],
      Crossing: [1900, 300],
      Same: [0, 0.01],
    },
    from: 'L = 2R/ω and C = 1/(2Rω); C = Le/Re²; 5.8 Ω with 0.55 mH and the moving mass as a capacitor are 8.56 Ω there',
  },
  {
    job: 'take parts from the shop, and see which of them matters',
    cells: {
      Low: '=NETWORK.LOW("LR2", "1900 Hz", "6.3 Ω")',
      Shop: '=NETWORK.ROUND(Low)',
      Coil: '=NETWORK.COIL(Shop)',
      Capacitor: '=NETWORK.CAPACITOR(Shop)',
      Corner: '=NETWORK.CORNER(Shop, "6.3 Ω")',
      Q: '=NETWORK.Q(Shop, "6.3 Ω")',
      Near: '=CHECK.WITHIN(Corner, "1805 Hz", "1995 Hz", , "Corner")',
      Load: '=LOAD.RESISTOR("6.3 Ω")',
      Coils: '=SPREAD.NETWORK(Shop, Load, "1900 Hz", 0.1, 0, 0)',
      Caps: '=SPREAD.NETWORK(Shop, Load, "1900 Hz", 0, 0.01, 0)',
      Wide: '=SPREAD.PERCENTILE(Coils, 0.95)-SPREAD.PERCENTILE(Coils, 0.05)',
      Tight: '=SPREAD.PERCENTILE(Caps, 0.95)-SPREAD.PERCENTILE(Caps, 0.05)',
      Rank: '=CHECK.AT_LEAST(Wide, 3*Tight, , "Spread of coils")',
    },
    gives: {
      Coil: [0.001, 1e-12],
      Capacitor: [6.8e-6, 1e-15],
      Corner: [1 / (2 * Math.PI * Math.sqrt(0.001 * 6.8e-6)), 1],
      Q: [6.3 * Math.sqrt(6.8e-6 / 0.001), 0.002],
      Near: 'good',
      Rank: 'good',
    },
    from: '1/(2π√(LC)) and R·√(C/L); a tenth of a coil moves more than a hundredth of a capacitor',
  },
  {
    job: 'choose the wire of a coil by its ohms and its price',
    cells: {
      Coil: '3.3 mH',
      Ohms: '=COIL.RESISTANCE(Coil, "1.2 mm")',
      Length: '=COIL.WIRE_LENGTH(Coil, "1.2 mm")',
      Same: '=WIRE.RESISTANCE(Length, "1.2 mm")/Ohms',
      Price: '=COIL.PRICE(Coil, "1.2 mm", 30 ¤)/Weight',
      Weight: '=COIL.WEIGHT(Coil, "1.2 mm")',
      Woofer: woofer,
      Back: '=BOX.SERIES_LOSS(CLOSED.BOX(Woofer, "12.1 L", Ohms))',
      Loss: '=Back-LEVEL.FROM_RATIO(1+Ohms/QTY("5.8 Ω"))',
      Share: '=CHECK.AT_MOST(Ohms/QTY("5.8 Ω"), 0.05, 0.2, "Coil against the driver")',
    },
    gives: { Same: [1, 0.01], Price: [30, 1e-9], Loss: [0, 1e-9], Share: 'caution' },
    from: 'the ohms and the kilograms of its own wire; the loss of a divider; 0.7 Ω or so are more than a twentieth of the driver',
  },
]);

/** Level at the corner over that high up of an LR2 for 6.1 Ω on 6.1·10^(5.3/20) Ω, dB. */
function singleResistor(): number {
  const w = 2 * Math.PI * 1900;
  const [coil, capacitor] = [(2 * 6.1) / w, 1 / (2 * 6.1 * w)];
  const ohms = 6.1 * 10 ** (5.3 / 20);
  const level = (frequency: number): number => {
    const at = 2 * Math.PI * frequency;
    const x = at * coil;
    const square = ohms ** 2 + x ** 2;
    const [re, im] = [(ohms * x ** 2) / square, (ohms ** 2 * x) / square];
    return 20 * Math.log10(Math.hypot(re, im) / Math.hypot(re, im - 1 / (at * capacitor)));
  };
  return level(1900) - level(30_000);
}

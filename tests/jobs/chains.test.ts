import { woofer } from './drivers.ts';
import { testJobs } from './job.ts';

const decibels = (ratio: number): number => 20 * Math.log10(ratio);
const copper = 1.7241e-8;
const parallel = (one: number, other: number): number => (one * other) / (one + other);
const qts = parallel(4.8, 0.42);
const litresFor = (qtc: number, total: number): number => 0.02852 / ((qtc / total) ** 2 - 1);
/** Moving mass for 38 Hz, 132 cm² and 28.52 L. */
const mms = 0.0151982105;
const atBell = (mass: number): number => 38 * Math.sqrt(mms / (mms + mass));
const sweep =
  '"10 7.30962 33.4446\n14 8.78822 43.1897\n20 12.48329 53.6205\n25 18.13860 58.0801\n30 29.65874 56.0514\n34 49.74300 42.1655\n36 64.32873 25.2575\n38 72.26503 0.2777\n40 64.73858 -23.5963\n42 52.00529 -39.0211\n46 34.52652 -52.4312\n52 22.80725 -57.0185\n60 16.24347 -55.8681\n80 10.55122 -47.2246\n120 7.70461 -31.7217\n200 6.67624 -13.8430\n400 6.77179 4.2030\n800 7.66544 17.4498\n1600 9.38359 28.4752\n3200 12.40472 37.9990"';
const flat = 'WAY.MEASURED(MEASURE.LEVEL("10 88 0\n40000 88 0"), LOAD.RESISTOR("8 Ω")';
const wound = 200 * 2 * Math.PI * 0.0225;
const bobbin = (3.15e-5 * 0.0225 ** 2 * 200 ** 2) / (6 * 0.0225 + 9 * 0.02 + 10 * 0.015);
const plate = (a: number, b: number): number =>
  (Math.PI / 2) * Math.sqrt((3e9 * 0.018 ** 2) / (12 * (1 - 0.09) * 740)) * (1 / a ** 2 + 1 / b ** 2);
const drive = Math.sqrt(2 * 100 * 10 ** -1.2 * 0.15 * 8);
const through = drive / (2.7 + parallel(6.8, 5.6));

/** From what lies on the bench to what is decided, through several functions in a row. */
testJobs([
  {
    job: 'go from an own sweep and ten grams of clay to the litres of a box',
    cells: {
      Mass: `=MEASURE.MASS("38 Hz", "${atBell(0.01).toFixed(4)} Hz", "10 g")`,
      Shift: `=MEASURE.CHECK_MASS("38 Hz", "${atBell(0.01).toFixed(4)} Hz")`,
      Driver: `=MEASURE.DRIVER(${sweep}, "Mine", "5.8 Ω", "132 cm²", Mass)`,
      Vas: '=FIELD(Driver, "vas")',
      Force: '=FIELD(Driver, "bl")',
      Level: '=DRIVER.LEVEL(Driver)',
      Litres: '=CLOSED.VOLUME_FOR(Driver, 0.7071)',
      Corner: '=BOX.CUTOFF(CLOSED.BOX(Driver, Litres))',
    },
    gives: {
      Mass: [mms, 2e-6],
      Shift: 'good',
      Vas: [0.02852, 5e-6],
      Force: [7.078925, 1e-3],
      Level: [89.17048, 0.002],
      Litres: [litresFor(0.7071, qts), 1e-5],
      Corner: [(38 * 0.7071) / qts, 0.02],
    },
    from: 'the sweep was computed with numpy from the parameters that must come back; Small 1972 by hand',
  },
  {
    job: 'take one passive radiator, or two, in the place of a port',
    cells: {
      Woofer: woofer,
      One: '=RADIATOR.BOX(Woofer, "20 L", "210 cm²", "120 g", "0.9 mm/N", "1.5 kg/s")',
      Two: '=RADIATOR.BOX(Woofer, "20 L", "210 cm²", "120 g", "0.9 mm/N", "1.5 kg/s", 2)',
      Tuning: '=BOX.RESONANCE(One)',
      TuningOfTwo: '=BOX.RESONANCE(Two)',
      Notch: '=RADIATOR.NOTCH("120 g", "0.9 mm/N")',
      Deep: '=CURVE.AT(BOX.LEVEL(One), "20 Hz")',
      DeepOfTwo: '=CURVE.AT(BOX.LEVEL(Two), "20 Hz")',
      Far: '=CURVE.AT(BOX.RADIATOR_TRAVEL(One, "10 V"), "20 Hz")',
      FarOfTwo: '=CURVE.AT(BOX.RADIATOR_TRAVEL(Two, "10 V"), "20 Hz")',
      Cone: '=CURVE.AT(BOX.TRAVEL(One, "10 V"), "20 Hz")',
      Heavier: '=RADIATOR.MASS("20 L", Tuning, "210 cm²", "0.9 mm/N", 2)',
    },
    gives: {
      Tuning: [29.909994, 1e-3],
      TuningOfTwo: [39.429376, 1e-3],
      Notch: [15.314692, 1e-3],
      Deep: [64.608154, 1e-5],
      DeepOfTwo: [57.645934, 1e-5],
      Far: [0.010352043, 1e-7],
      FarOfTwo: [0.0046364248, 1e-7],
      Cone: [0.012692129, 1e-7],
      Heavier: [0.12 * (39.429376 / 29.909994) ** 2, 1e-4],
    },
    from: 'circuit of masses, springs and losses at each frequency with numpy; levels without the coil inductance, travel with it',
  },
  {
    job: 'bring two ways into step that stand at different depths',
    cells: {
      Low: `=WAY.ACTIVE(${flat}), FILTER.SLOPE("1280 Hz", "LR4", "low"))`,
      Deep: `=WAY.ACTIVE(${flat}, , , , , "30 mm"), FILTER.SLOPE("1280 Hz", "LR4", "high"))`,
      Late: '=CURVE.AT(SYSTEM.LEVEL(Low, Deep), "1280 Hz")',
      Waits: `=WAY.ACTIVE(${flat}, , , , , , , , QTY("30 mm")/QTY("343.2 m/s")), FILTER.SLOPE("1280 Hz", "LR4", "low"))`,
      InStep: '=CURVE.AT(SYSTEM.LEVEL(Waits, Deep), "1280 Hz")',
      Ripple: '=CURVE.RIPPLE(SYSTEM.LEVEL(Waits, Deep), "100 Hz", "10 kHz")',
      Gap: '=SYSTEM.PHASE_GAP(Low, Deep)',
      Crossing: '=SYSTEM.HANDOVER(Waits, Deep)',
    },
    gives: {
      Late: [88 + decibels(Math.cos((Math.PI * 1280 * 0.03) / 343.2)), 1e-4],
      InStep: [88, 1e-6],
      Ripple: [0, 1e-6],
      Gap: [-(2 * Math.PI * 1280 * 0.03) / 343.2, 1e-6],
      Crossing: [1280, 0.01],
    },
    from: 'two halves of the pressure, the deeper one late by 2πf·d/c: their sum is the cosine of half that angle',
  },
  {
    job: 'hand over three ways with active slopes, and see what the lower filter does to the highs',
    cells: {
      Low: `=WAY.ACTIVE(${flat}), FILTER.SLOPE("320 Hz", "LR4", "low"))`,
      Mid: `=WAY.ACTIVE(WAY.ACTIVE(${flat}), FILTER.SLOPE("320 Hz", "LR4", "high")), FILTER.SLOPE("2560 Hz", "LR4", "low"))`,
      High: `=WAY.ACTIVE(${flat}), FILTER.SLOPE("2560 Hz", "LR4", "high"))`,
      All: '=SYSTEM.LEVEL(Low, Mid, High)',
      Lower: '=CURVE.AT(All, "320 Hz")',
      Between: '=CURVE.AT(All, "640 Hz")',
      Reversed: `=CURVE.AT(SYSTEM.LEVEL(Low, WAY.ACTIVE(WAY.ACTIVE(${flat}, , , , , , "reversed"), FILTER.SLOPE("320 Hz", "LR4", "high")), FILTER.SLOPE("2560 Hz", "LR4", "low")), High), "2560 Hz")`,
    },
    gives: {
      Lower: [88 - 0.14102930536174207, 1e-6],
      Between: [88 - 0.15299366427767785, 1e-6],
      Reversed: [88 - 15.051497972066105, 1e-6],
    },
    from: 'sum of the transfer functions with numpy',
  },
  {
    job: 'know what the resistors of a pad must stand at a party',
    cells: {
      Volts: '=PAD.DRIVE("100 W", "8 Ω", "12 dB", 0.15)',
      Series: '=PAD.HEAT(Volts, "2.7 Ω", "6.8 Ω", "5.6 Ω", "series")',
      Shunt: '=PAD.HEAT(Volts, "2.7 Ω", "6.8 Ω", "5.6 Ω", "shunt")',
      Driver: '=PAD.HEAT(Volts, "2.7 Ω", "6.8 Ω", "5.6 Ω", "driver")',
      Whole:
        '=Series+Shunt+Driver-CURVE.AT(LOAD.POWER(PAD.IMPEDANCE(LOAD.RESISTOR("5.6 Ω"), "2.7 Ω", "6.8 Ω"), Volts), "5 kHz")',
      Loss: '=PAD.LOSS("2.7 Ω", "6.8 Ω", "5.6 Ω")',
    },
    gives: {
      Volts: [drive, 1e-9],
      Series: [through ** 2 * 2.7, 1e-9],
      Shunt: [(through * parallel(6.8, 5.6)) ** 2 / 6.8, 1e-9],
      Driver: [(through * parallel(6.8, 5.6)) ** 2 / 5.6, 1e-9],
      Whole: [0, 1e-9],
      Loss: [decibels(1 + 2.7 / parallel(6.8, 5.6)), 1e-9],
    },
    from: 'Ohm’s law; a crest factor of 12 dB is 20·lg of peak over rms; what goes in comes out as heat',
  },
  {
    job: 'add up a day of noise, at the bench and at the concert',
    cells: {
      D1: '2 h',
      E1: '91 dB',
      D2: '30 min',
      E2: '97 dB',
      D3: '4 h',
      E3: '85 dB',
      Dose: '=HEARING.DOSE(D1:D3, E1:E3)',
      Level: '=HEARING.DAY_LEVEL(D1:D3, E1:E3)',
      Alone: '=HEARING.TIME(E2)',
      Other: '=HEARING.TIME_OSHA(E2)',
      Verdict: '=HEARING.VERDICT(Level, 8 h)',
    },
    gives: {
      Dose: [1 + 1 + 0.5, 1e-9],
      Level: [85 + 10 * Math.log10(2.5), 0.02],
      Alone: [1800, 1e-9],
      Other: [(8 * 3600) / 2 ** (7 / 5), 1e-6],
      Verdict: 'fail',
    },
    from: 'NIOSH 98-126, table 1-1: 91 dBA for 2 h, 97 dBA for 30 min; OSHA halves at 5 dB',
  },
  {
    job: 'hang a woofer over 20 m of thin wire, and size its box for that',
    cells: {
      Woofer: woofer,
      Wire: '=CABLE.RESISTANCE("20 m", "1.5 mm²")',
      Tired: '=DRIVER.SERIES(Woofer, Wire)',
      Q: '=FIELD(Tired, "qts")',
      Litres: '=CLOSED.VOLUME_FOR(Woofer, 0.7071, Wire)',
      Loss: '=DRIVER.LEVEL(Woofer)-DRIVER.LEVEL(Tired)',
      Damping: '=CABLE.DAMPING("20 m", "1.5 mm²", "8 Ω")',
      Warm: '=WIRE.RESISTANCE("40 m", "1.382 mm", 60 °C)/WIRE.RESISTANCE("40 m", "1.382 mm")',
    },
    gives: {
      Wire: [(40 * copper) / 1.5e-6, 1e-3],
      Q: [parallel(4.8, (0.42 * (5.8 + (40 * copper) / 1.5e-6)) / 5.8), 1e-4],
      Litres: [litresFor(0.7071, parallel(4.8, (0.42 * (5.8 + (40 * copper) / 1.5e-6)) / 5.8)), 2e-5],
      Loss: [decibels(1 + (40 * copper) / 1.5e-6 / 5.8), 2e-3],
      Damping: [8 / ((40 * copper) / 1.5e-6), 0.05],
      Warm: [1 + 0.00393 * 40, 1e-6],
    },
    from: 'copper of 17.241 nΩm at 20 °C, there and back, 0.393 % a kelvin; Qes grows as the ohms',
  },
  {
    job: 'wind a coil on a bobbin, and see what its wire costs in level',
    cells: {
      Coil: '=COIL.INDUCTANCE(200, "30 mm", "20 mm", "15 mm")',
      Turns: '=COIL.TURNS_ON(Coil, "30 mm", "20 mm", "15 mm")',
      Ohms: `=WIRE.RESISTANCE("${String(wound)} m", "0.8 mm")`,
      Q: '=COIL.Q(Coil, Ohms, "200 Hz")',
      Through:
        '=CURVE.AT(NETWORK.RESPONSE(NETWORK.LEG("series", "chain", , Coil, Ohms), LOAD.RESISTOR("6 Ω")), "10 Hz")',
      Gauge: '=WIRE.DIAMETER(20)',
    },
    gives: {
      Coil: [bobbin, 5e-7],
      Turns: [200, 1e-6],
      Ohms: [(copper * wound) / (Math.PI * 0.0004 ** 2), 1e-4],
      Q: [(2 * Math.PI * 200 * bobbin) / ((copper * wound) / (Math.PI * 0.0004 ** 2)), 2e-3],
      Through: [-decibels(1 + (copper * wound) / (Math.PI * 0.0004 ** 2) / 6), 1e-3],
      Gauge: [0.127e-3 * 92 ** (16 / 39), 1e-9],
    },
    from: 'Wheeler 1928 in SI, mean radius 22.5 mm; the AWG by its definition; a divider by hand',
  },
  {
    job: 'make a tower that stands, and brace its side',
    cells: {
      Falls: '=CABINET.TIP_ANGLE("200 mm", "500 mm")',
      Bare: '=PANEL.MODE("1 m", "300 mm", "18 mm")',
      Middle: '=PANEL.BRACED("1 m", "300 mm", "18 mm", "500 mm")',
      Golden: '=PANEL.BRACED("1 m", "300 mm", "18 mm", "618 mm")',
      Litres:
        '=CABINET.NET_VOLUME("1 m", "200 mm", "300 mm", "18 mm", BRACE.VOLUME("200 mm", "300 mm", "18 mm", 0.5, 2))',
    },
    gives: {
      Falls: [Math.atan(0.2), 1e-9],
      Bare: [plate(1, 0.3), 0.05],
      Middle: [plate(0.5, 0.3), 0.05],
      Golden: [plate(0.618, 0.3), 0.05],
      Litres: [(0.964 - 2 * 0.5 * 0.018) * 0.164 * 0.264, 1e-9],
    },
    from: 'thin plate on supported edges, 3 GPa and 740 kg/m³, by hand; half the base over the height',
  },
  {
    job: 'say how likely a heavier cone drops the resonance below a limit',
    cells: {
      Woofer: woofer,
      Sample: '=SPREAD.RESONANCE(CLOSED.BOX(Woofer, "12.1 L"), 0, 0, 0.1, 0, 0, 20000)',
      Odds: `=SPREAD.ODDS(Sample, , "${String((38 * Math.sqrt(1 + 28.52 / 12.1)) / Math.sqrt(1.1))} Hz")`,
      Middle: '=SPREAD.PERCENTILE(Sample, 0.5)',
      Again: '=SPREAD.PERCENTILE(SPREAD.RESONANCE(CLOSED.BOX(Woofer, "12.1 L"), 0, 0, 0.1, 0, 0, 20000), 0.5)-Middle',
    },
    gives: { Odds: [0.1703, 0.01], Middle: [38 * Math.sqrt(1 + 28.52 / 12.1), 0.1], Again: [0, 0] },
    from: 'f ∝ 1/√mass: the share of a normal distribution above ln 1.1/0.1 is 17.0 %, by scipy',
  },
  {
    job: 'average two places of the microphone, and put the curve into cells',
    cells: {
      Left: '=MEASURE.LEVEL("100 80\n1600 88")',
      Right: '=MEASURE.LEVEL("100 84\n1600 88")',
      Mean: '=CURVE.SCALE(CURVE.ADD(Left, Right), 0.5)',
      Normal: '=CURVE.SHIFT(Mean, -CURVE.AT(Mean, "1600 Hz"))',
      Low: '=CURVE.AT(Normal, "200 Hz")',
      Table: '=CURVE.TABLE(Normal, 1, "200 Hz", "800 Hz")',
      Rows: '=TABLE.ROWS(Table)',
      Last: '=TABLE.AT(Table, 3, "Value", 1 dB)',
      Passes: '=CURVE.CROSSES(Normal, "-3 dB", "upwards", "100 Hz", "1600 Hz")',
    },
    gives: { Low: [-4.5, 0.02], Rows: [3, 0], Last: [-1.5, 0.02], Passes: [400, 2] },
    from: 'from 82 to 88 dB in four octaves: 1.5 dB an octave',
  },
  {
    job: 'come to 7.4 µF with what the shop has, and see the corner that it makes',
    cells: {
      Pairs: '=STANDARD.PAIRS("7.4 µF", "parallel", "E12", 1)',
      Made: '=TABLE.TEXT(Pairs, 1, "Made of")',
      Together: '=TABLE.AT(Pairs, 1, "Together", 1 µF)',
      Corner: '=FILTER.CORNER("1.2 mH", Together)',
      Q: '=FILTER.Q("1.2 mH", Together, "6 Ω")',
    },
    gives: {
      Made: '2.7 µF and 4.7 µF',
      Together: [7.4e-6, 1e-12],
      Corner: [1 / (2 * Math.PI * Math.sqrt(1.2e-3 * 7.4e-6)), 1e-3],
      Q: [6 * Math.sqrt(7.4e-6 / 1.2e-3), 1e-9],
    },
    from: 'capacitors side by side add up; f = 1/(2π√LC), Q = R·√(C/L)',
  },
  {
    job: 'measure a woofer close to its cone, and the rest through a gate',
    cells: {
      Near: '=MEASURE.LEVEL("20 100\n800 112")',
      Far: '=CURVE.SHIFT(Near, MEASURE.NEAR_OFFSET("132 cm²", "1 m"))',
      Bass: '=CURVE.AT(Far, "40 Hz")',
      Holds: '=MEASURE.NEAR_LIMIT("132 cm²")',
      Gate: '=MEASURE.GATE_LIMIT("4 ms")',
      Gated: '=MEASURE.LEVEL("250 87\n20000 89")',
      Whole: '=CURVE.JOIN(Far, Gated, "400 Hz", 0.5 oct, FALSE)',
      From: '=FIELD(Whole, "from")',
      High: '=CURVE.AT(Whole, "5120 Hz")',
      Trusted: '=MEASURE.CHECK_CURVE(MEASURE.MINIMUM_PHASE(Whole), "40 Hz", "10 kHz")',
    },
    gives: {
      Bass: [100 + 12 / Math.log2(40) + decibels(Math.sqrt(0.0132 / Math.PI) / 2), 0.02],
      Holds: [343.2 / (2 * Math.PI * Math.sqrt(0.0132 / Math.PI)), 0.5],
      Gate: [250, 1e-9],
      From: [20, 1e-9],
      High: [87 + 2 * (Math.log2(5120 / 250) / Math.log2(80)), 0.02],
      Trusted: 'good',
    },
    from: 'Keele 1974: a/(2r) from the cone to a metre, up to ka = 1; straight lines in octaves',
  },
]);

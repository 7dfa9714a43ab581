import { middle, tweeter, woofer } from './drivers.ts';
import { testJobs } from './job.ts';

const c = 343.2;
const degree = Math.PI / 180;
/** Travel of a small piston for a level at 1 m into half space. */
const travel = (level: number, sd: number, frequency: number): number =>
  (Math.SQRT2 * 2e-5 * 10 ** (level / 20) * 2 * Math.PI) / (1.2041 * sd * (2 * Math.PI * frequency) ** 2);
/** Where LR4 halves the travel and that is the share of Xmax allowed. */
const travelFloor = Math.sqrt(travel(100, 7e-4, 1) / 2 / (0.7 * 0.35e-3));

const target = { Target: '100 dB', Gap: '4 mm', Spacing: '=SPACING.BETWEEN("170 mm", "104 mm", Gap)' };

testJobs([
  {
    job: 'pair a woofer and a tweeter: the shared window and what binds it at both ends',
    cells: {
      ...target,
      Woofer: woofer,
      Tweeter: tweeter,
      Resonance: '=2*Tweeter.fs',
      Travel: '=TREBLE.FLOOR(Tweeter.sd, Tweeter.xmax, Target, "LR4")',
      Narrowing: '=PISTON.NARROWING(Woofer.sd, "45°", "3 dB")',
      Breakup: '=5200 Hz/2',
      Apart: '=SPACING.LIMIT(Spacing)',
      D1: 'resonance',
      E1: '=Resonance',
      D2: 'travel',
      E2: '=Travel',
      D3: 'narrowing',
      E3: '=Narrowing',
      D4: 'spacing',
      E4: '=Apart',
      D5: 'break-up',
      E5: '=Breakup',
      Window: '=PAIR.WINDOW(D1:D2, E1:E2, E1:E2, D3:D5, E3:E5, E3:E5)',
      Octaves: '=PAIR.OCTAVES(Window)',
      Middle: '=PAIR.CENTRE(Window)',
      Verdict: '=PAIR.VERDICT(Window)',
    },
    gives: {
      Travel: [travelFloor, 1],
      Narrowing: [1923, 2],
      Apart: [c / 0.141, 1],
      Octaves: [Math.log2(1923 / 1700), 0.002],
      Middle: [Math.sqrt(1923 * 1700), 2],
      Verdict: /Resonance.*narrowing/,
    },
    from: 'travel = √2·p·2πr/(ρ·Sd·ω²); 2·J1(x)/x is 0.708 at x = 1.614, so 1923 Hz at 45°; c over the spacing',
  },
  {
    job: 'match levels after what the cabinet takes',
    cells: {
      Woofer: '89.2 dB',
      MakeUp: '4.5 dB',
      Tweeter: '90 dB',
      System: '=Woofer-MakeUp',
      Pad: '=Tweeter-System',
      Verdict: '=RULE.PAD(System, Tweeter)',
    },
    gives: { System: [84.7, 1e-9], Pad: [5.3, 1e-9], Verdict: 'good' },
    from: '89.2 − 4.5 and 90 − 84.7, by hand',
  },
  {
    job: 'keep a tweeter off its resonance, and see its hump in the filter',
    cells: {
      Tweeter: '=DRIVER.OF("850 Hz", 2.6, 1.05, "0.007383 L", "5.6 Ω", "7 cm²", "0.35 mm")',
      Handover: '1700 Hz',
      Verdict: '=RULE.RESONANCE(Handover, Tweeter.fs)',
      Filter: '=NETWORK.HIGH("LR2", Handover, "5.6 Ω")',
      Hump: '=CURVE.AT(NETWORK.LOAD_EFFECT(Filter, DRIVER.IMPEDANCE(Tweeter), "5.6 Ω"), Tweeter.fs)',
    },
    gives: { Verdict: 'good', Hump: [loadEffect(), 2e-3] },
    from: 'capacitor, and coil beside the 19.5 Ω of the resonance, against coil beside 5.6 Ω, by complex numbers',
  },
  {
    job: 'keep a tweeter within its travel, whatever slope and level',
    cells: {
      Tweeter: tweeter,
      Fourth: '=TREBLE.FLOOR(Tweeter.sd, Tweeter.xmax, "100 dB", "LR4")',
      Second: '=TREBLE.FLOOR(Tweeter.sd, Tweeter.xmax, "100 dB", "LR2")',
      Louder: '=TREBLE.FLOOR(Tweeter.sd, Tweeter.xmax, "106.02 dB", "LR4")',
    },
    gives: {
      Fourth: [travelFloor, 1],
      Second: [travelFloor * Math.SQRT2, 1.5],
      Louder: [travelFloor * Math.SQRT2, 1.5],
    },
    from: 'LR4 leaves half the travel at the hand-over, LR2 all of it below; travel goes with 1/f² and doubles with 6 dB',
  },
  {
    job: 'see where a woofer narrows, and how much is missing off to the side',
    cells: {
      Woofer: woofer,
      Narrowing: '=PISTON.NARROWING(Woofer.sd, "45°", "3 dB")',
      Loss: '=PISTON.LOSS(Woofer.sd, Narrowing, "45°")',
      Dip: '=CURVE.AT(PISTON.OFF_AXIS(Woofer.sd, "45°"), Narrowing)',
      Match: '=PISTON.MATCH(Woofer.sd, "7 cm²", Narrowing)',
      Verdict: '=RULE.NARROWING(Narrowing, Woofer.sd)',
    },
    gives: {
      Narrowing: [(1.61374 * c) / (2 * Math.PI * Math.sqrt(0.0132 / Math.PI) * Math.sin(45 * degree)), 4],
      Loss: [3, 0.01],
      Dip: [-3, 0.01],
      Match: [3.509, 0.005],
      Verdict: 'good',
    },
    from: '2·J1(x)/x falls by 3 dB at x = 1.614, and (ka)²/(1 − J1(2ka)/ka) of both, by scipy',
  },
  {
    job: 'keep the break-up of a cone below the filter',
    cells: {
      Handover: '1808 Hz',
      Breakup: '5200 Hz',
      Verdict: '=RULE.BREAKUP(Handover, Breakup)',
      Left: '=CURVE.AT(FILTER.SLOPE(Handover, "LR4", "low"), Breakup)',
    },
    gives: { Verdict: 'good', Left: [-20 * Math.log10(1 + (5200 / 1808) ** 4), 0.02] },
    from: 'LR4 is 1/(1 + x⁴)',
  },
  {
    job: 'know where the voices of two drivers cancel, and the window for the ears',
    cells: {
      Spacing: '139 mm',
      Handover: '1808 Hz',
      Null: '=SPACING.NULL(Spacing, Handover)',
      Low: '=SPACING.EARS_LOW(Spacing, Handover, "2.8 m")',
      High: '=SPACING.EARS_HIGH(Spacing, Handover, "2.8 m")',
    },
    gives: {
      Null: [Math.asin(c / (2 * 0.139 * 1808)), 1e-3],
      High: [2.8 * Math.tan(Math.asin((Math.acos(10 ** (-3 / 20)) * c) / (Math.PI * 0.139 * 1808))), 2e-3],
      Low: [-2.8 * Math.tan(Math.asin((Math.acos(10 ** (-3 / 20)) * c) / (Math.PI * 0.139 * 1808))), 2e-3],
    },
    from: 'two equal points: cos(π·d·sin θ/λ) is −3 dB, and nought at asin(c/2fd)',
  },
  {
    job: 'compare two woofers round a tweeter with two and a half ways',
    cells: {
      Woofer: woofer,
      Box: '=CLOSED.BOX(Woofer, "15 L")',
      Wide: '=SPACING.NULL("278 mm", "1900 Hz")',
      Near: '=SPACING.NULL("139 mm", "1900 Hz")',
      One: '=DRIVER.LEVEL(Woofer)',
      Both: '=LEVEL.SUM_IN_STEP(One, One)',
      Load: '=LOAD.PARALLEL(BOX.IMPEDANCE(Box), BOX.IMPEDANCE(Box))',
      Lowest: '=LOAD.LOWEST(Load, "100 Hz", "2 kHz")',
      Up: '=WAY.OF(Box, , , "139 mm")',
      Down: '=WAY.OF(Box, , , "-139 mm")',
      Above: '=CURVE.AT(CURVE.DIFFERENCE(SYSTEM.OFF_AXIS(0, Wide, Up, Down), SYSTEM.LEVEL(Up, Down)), "1900 Hz")',
      Deep: '=CHECK.AT_MOST(Above, "-30 dB", , "Level at the null")',
    },
    gives: {
      Deep: 'good',
      Wide: [19 * degree, 0.1 * degree],
      Near: [40.5 * degree, 0.1 * degree],
      Both: [89.2 + 6.02, 0.1],
      Lowest: [2.91, 0.02],
    },
    from: 'asin(c/2fd); twice the voice at half the ohms, 5.8 Ω and some inductance at 410 Hz over 2',
  },
  {
    job: 'pick a midrange: both windows, the band, and the smallest regret among several',
    cells: {
      Woofer: woofer,
      Mid: middle,
      Band: '=RULE.BAND("208 Hz", "2984 Hz")',
      Level: '=DRIVER.LEVEL(Mid)-(DRIVER.LEVEL(Woofer)-4 dB)',
      D1: 'M-115 A',
      E1: '1.0',
      F1: '3.7',
      D2: 'M-54 D',
      E2: '0.2',
      F2: '6.9',
      D3: 'M-80 X',
      E3: '0.5',
      F3: '9.0',
      E4: '0.5',
      F4: '-3',
      Best: '=RANK.BEST(D1:D3, E4:F4, E1:F3)',
      Regret: '=MIN(RANK.REGRET(D1:D3, E4:F4, E1:F3))',
    },
    gives: { Band: 'good', Best: 'M-115 A', Regret: [0, 1e-9], Level: [4.4, 0.15] },
    from: '3.8 octaves; printed 89.6 dB and 89.2 dB less 4; the first is best in both columns, so it has nothing to regret',
  },
  {
    job: 'size the chamber of a midrange against its hand-over',
    cells: {
      Mid: middle,
      Chamber: '=CLOSED.BOX(Mid, "4 L")',
      Qtc: '=BOX.QTC(Chamber)',
      Resonance: '=BOX.RESONANCE(Chamber)',
      High: '=RULE.CHAMBER("210 Hz", Resonance)',
      Low: '=RULE.CHAMBER("180 Hz", Resonance)',
    },
    gives: {
      Qtc: [0.36 * Math.sqrt(1 + 4.393 / 4), 0.001],
      Resonance: [72 * Math.sqrt(1 + 4.393 / 4), 0.1],
      High: 'good',
      Low: 'caution',
    },
    from: 'Qts and Fs times √(1 + Vas/Vb); half the hand-over must not lie below the resonance',
  },
  {
    job: 'judge a whole team from its windows and levels',
    cells: {
      Window: '=PAIR.WINDOW("resonance", 1700 Hz, 1275 Hz, "narrowing", 2396 Hz, 3278 Hz)',
      D1: '88.6 dB',
      E1: '90 dB',
      D2: '2000 Hz',
      Octaves: '=PAIR.OCTAVES(Window)',
      Verdict: '=TEAM.VERDICT(D2, D1:E1, , , , Window)',
    },
    gives: { Octaves: [Math.log2(2396 / 1700), 0.001], Verdict: /caution.*a hair less than the 0.5 wanted/ },
    from: 'the window is 0.495 octaves wide and holds 2 kHz',
  },
]);

/** Volts at 850 Hz behind an LR2 filter on the resonance of the tweeter over those on 5.6 Ω, dB. */
function loadEffect(): number {
  const corner = 2 * Math.PI * 1700;
  const capacitor = 1 / (2 * corner * 5.6);
  const coil = (2 * 5.6) / corner;
  const w = 2 * Math.PI * 850;
  const level = (ohms: number): number => {
    // Coil beside the load: Z = jωL·R/(R + jωL).
    const x = w * coil;
    const square = ohms ** 2 + x ** 2;
    const [re, im] = [(ohms * x ** 2) / square, (ohms ** 2 * x) / square];
    return 20 * Math.log10(Math.hypot(re, im) / Math.hypot(re, im - 1 / (w * capacitor)));
  };
  // At its resonance the tweeter is Re·(1 + Qms/Qes).
  return level(5.6 * (1 + 2.6 / 1.05)) - level(5.6);
}

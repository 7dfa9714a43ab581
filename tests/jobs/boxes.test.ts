import { longThrow, smallWoofer, woofer } from './drivers.ts';
import { testJobs } from './job.ts';

const rho = 1.2041;
const c = 343.2;
const qts = 1 / (1 / 4.8 + 1 / 0.42);
const litresFor = (qtc: number, total: number): number => 0.02852 / ((qtc / total) ** 2 - 1);
/** −3 dB of a second-order high-pass. */
const cutoff = (fc: number, q: number): number => {
  const a = 1 / q ** 2 - 2;
  return fc * Math.sqrt((a + Math.sqrt(a * a + 4)) / 2);
};
const peakOf = (q: number): number => 20 * Math.log10(q ** 2 / Math.sqrt(q ** 2 - 0.25));
const behindResistance = 1 / (1 / 4.8 + 1 / (0.42 * (6.4 / 5.8)));
/** Level at 1 m into half space of a cone at its travel. */
const levelOfTravel = (sd: number, travel: number, frequency: number): number =>
  20 * Math.log10((rho * sd * (travel / Math.SQRT2) * (2 * Math.PI * frequency) ** 2) / (2 * Math.PI) / 2e-5);

testJobs([
  {
    job: 'find the litres of a closed box for a Q, and what bass it makes',
    cells: {
      Woofer: woofer,
      Litres: '=CLOSED.VOLUME_FOR(Woofer, 0.7071)',
      Box: '=CLOSED.BOX(Woofer, Litres)',
      Resonance: '=BOX.RESONANCE(Box)',
      Three: '=BOX.CUTOFF(Box)',
      Ten: '=BOX.CUTOFF(Box, "10 dB")',
      Peak: '=BOX.PEAK(CLOSED.BOX(Woofer, "9 L"))',
      Travel: '=CURVE.PEAK(BOX.TRAVEL(Box, "20 V"), "20 Hz")',
      Limit: '=BOX.TRAVEL_LIMIT(Box, "20 V")',
      Watts: '=BOX.TRAVEL_POWER(Box, "8 Ω")',
    },
    gives: {
      Litres: [litresFor(0.7071, qts), 1e-5],
      Resonance: [(38 * 0.7071) / qts, 0.1],
      Three: [(38 * 0.7071) / qts, 0.1],
      Ten: [(38 * 0.7071) / qts / 9 ** 0.25, 0.2],
      Peak: [peakOf(qts * Math.sqrt(1 + 28.52 / 9)), 1e-3],
      Travel: [0.0117, 0.0002],
      Limit: [98, 1],
      Watts: [10.9, 0.1],
    },
    from: 'Small 1972 by hand: Vb = Vas/((Qtc/Qts)² − 1), fc = Fs·Qtc/Qts, −10 dB at fc/∜9; peak 20·lg(Q²/√(Q² − ¼)) above 0.707; travel of a circuit of elements with numpy',
  },
  {
    job: 'size the box after the coil: Q, litres and loss with series resistance',
    cells: {
      Woofer: woofer,
      Series: '0.6 Ω',
      Box: '=CLOSED.BOX(Woofer, "12.1 L", Series)',
      Qtc: '=BOX.QTC(Box)',
      Loss: '=BOX.SERIES_LOSS(Box)',
      Peak: '=BOX.PEAK(Box)',
      Three: '=BOX.CUTOFF(Box)',
      Litres: '=CLOSED.VOLUME_FOR(Woofer, 0.7071, Series)',
    },
    gives: {
      Qtc: [behindResistance * Math.sqrt(1 + 28.52 / 12.1), 1e-4],
      Loss: [20 * Math.log10(6.4 / 5.8), 1e-4],
      Peak: [0.12, 0.01],
      Three: [64.1, 0.1],
      Litres: [litresFor(0.7071, behindResistance), 1e-5],
    },
    from: 'Qes·(Re + R)/Re by hand',
  },
  {
    job: 'let the coil of the filter and the box find each other',
    cells: {
      Woofer: woofer,
      Box: '=CLOSED.COIL_BOX(Woofer, 0.7071, "400 Hz", "1 mH", "0.15 Ω")',
      Ohms: '=Box.seriesResistance',
      Qtc: '=BOX.QTC(Box)',
      Litres: '=Box.volume',
      Again: '=CLOSED.VOLUME_FOR(Woofer, 0.7071, Ohms)/QTY("1 L")-Litres/QTY("1 L")',
    },
    gives: { Qtc: [0.7071, 1e-5], Again: [0, 1e-4] },
    from: 'the box has the Q that was wanted, with the litres that its own series resistance asks for',
  },
  {
    job: 'stuff a box',
    cells: {
      Woofer: woofer,
      Box: '=CLOSED.BOX(Woofer, "12.1 L", 0, 1.15)',
      Qtc: '=BOX.QTC(Box)',
      Resonance: '=BOX.RESONANCE(Box)',
      Three: '=BOX.CUTOFF(Box)',
    },
    gives: {
      Qtc: [qts * Math.sqrt(1 + 28.52 / (12.1 * 1.15)), 1e-4],
      Resonance: [38 * Math.sqrt(1 + 28.52 / (12.1 * 1.15)), 0.01],
      Three: [cutoff(66.3, 0.674), 0.1],
    },
    from: 'the same formulas with 1.15 times the litres',
  },
  {
    job: 'tune a vented box with its losses, and see what a smaller one costs',
    cells: {
      Woofer: woofer,
      Box: '=VENTED.ALIGNED(Woofer, "QB3")',
      Litres: '=Box.volume',
      Tuning: '=Box.tuning',
      Three: '=BOX.CUTOFF(Box)',
      Ten: '=BOX.CUTOFF(Box, "10 dB")',
      Small: '=VENTED.BOX(Woofer, "16 L", "45 Hz")',
      Ripple: '=BOX.RIPPLE(Small)',
      Higher: '=BOX.CUTOFF(Small)',
    },
    gives: {
      Litres: [0.0223, 0.0002],
      Tuning: [39.6, 0.2],
      Three: [41.2, 0.3],
      Ten: [30.6, 0.3],
      Ripple: [0.9, 0.05],
      Higher: [47.4, 0.3],
    },
    from: 'Small 1973 with a leakage Q of 7, solved with numpy',
  },
  {
    job: 'find a port that is wide enough and fits, or the nearest set that does',
    cells: {
      Woofer: woofer,
      Box: '=VENTED.BOX(Woofer, "22.3 L", "39.6 Hz")',
      Diameter: '68 mm',
      Depth: '250 mm',
      Length: '=PORT.LENGTH("22.3 L", "39.6 Hz", Diameter)',
      Fits: '=PORT.CLEARANCE(Depth, Length, Diameter)',
      Speed: '=CURVE.PEAK(BOX.PORT_SPEED(Box, PORT.AREA(Diameter), "20 V"), "20 Hz", "200 Hz")',
      Pipe: '=PORT.RESONANCE(Length, Diameter)',
      Elbow: '=PORT.ELBOW(Depth, Length, Diameter)',
      Sets: '=PORT.SEARCH(Box, Depth, Diameter, "12 V")',
      Behind: '=PORT.CLEARANCE(Depth, TABLE.AT(Sets, 1, "Length", 1 mm), TABLE.AT(Sets, 1, "Diameter", 1 mm))',
      Some: '=CHECK.AT_LEAST(Behind, "-0.1 mm", , "Room behind the port")',
    },
    gives: {
      Length: [(c ** 2 * Math.PI * 0.034 ** 2) / ((2 * Math.PI * 39.6) ** 2 * 0.0223) - 0.732 * 0.068, 1e-6],
      Fits: [-0.078, 0.001],
      Speed: [23.3, 0.2],
      Elbow: [0.26 - (0.25 - 0.068 - 0.068) - (Math.PI / 2) * 0.068, 0.0005],
      Some: 'good',
      Pipe: [c / (2 * (0.26 + 0.732 * 0.068)), 1],
    },
    from: 'c²·S/(ωb²·V) − 0.732·d; half a wave in the length with its ends; speed of a circuit of elements with numpy',
  },
  {
    job: 'protect a vented woofer below its tuning',
    cells: {
      Woofer: woofer,
      Box: '=VENTED.BOX(Woofer, "22.3 L", "39.6 Hz")',
      Deep: '=CURVE.AT(BOX.TRAVEL(Box, "20 V"), "20 Hz")',
      Beyond: '=BOX.TRAVEL_LIMIT(Box, "20 V")',
      Stops: '=CURVE.AT(BOX.TRAVEL(Box, "20 V"), Beyond)',
      Filtered: '=CURVE.PEAK(BOX.TRAVEL(BOX.HIGH_PASS(Box, "35 Hz", 4), "20 V"), "10 Hz", "39 Hz")',
      Cone: '=BOX.TRAVEL_POWER(Box, "8 Ω", "39.6 Hz")',
    },
    gives: { Deep: [0.0277, 0.00005], Stops: [0.0055, 5e-6], Filtered: [0.0069, 0.0002], Cone: [19.4, 0.2] },
    from: 'circuit of elements with numpy',
  },
  {
    job: 'say honestly what bass is heard: F3, F6, F10 and the lift of the room',
    cells: {
      Woofer: woofer,
      Box: '=CLOSED.BOX(Woofer, "12.1 L")',
      Three: '=BOX.CUTOFF(Box)',
      Six: '=BOX.CUTOFF(Box, "6 dB")',
      Ten: '=BOX.CUTOFF(Box, "10 dB")',
      Heard: '=CURVE.ADD(BOX.RESPONSE(Box), ROOM.LIFT("5.2 m", 12 dB/oct, "20 dB"))',
      Deep: '=CURVE.AT(Heard, "16.5 Hz")',
    },
    gives: {
      Three: [69.6, 0.1],
      Six: [69.6 / (10 ** 0.6 - 1) ** 0.25, 0.1],
      Ten: [69.6 / 9 ** 0.25, 0.1],
      Deep: [-10 * Math.log10(1 + (69.6 / 16.5) ** 4) + 12, 0.1],
    },
    from: 'a flat closed box is a second-order Butterworth filter; an octave below the lowest mode of 33 Hz the room lifts by 12 dB',
  },
  {
    job: 'hand mains over to a sub: what the high-pass gains',
    cells: {
      Mains: smallWoofer,
      Box: '=CLOSED.BOX(Mains, "6 L", "0.3 Ω")',
      Resonance: '=BOX.RESONANCE(Box)',
      Qtc: '=BOX.QTC(Box)',
      Full: '=BOX.TRAVEL_POWER(Box, "8 Ω")',
      Passed: '=BOX.TRAVEL_POWER(BOX.HIGH_PASS(Box, "85 Hz", 2), "8 Ω")',
      Gain: '=LEVEL.POWER_OF(Passed/Full)',
      Slope: '=CURVE.AT(BOX.RESPONSE(BOX.HIGH_PASS(Box, Resonance, 2)), Resonance)',
    },
    gives: {
      Resonance: [52 * Math.sqrt(1 + 10.91 / 6), 0.1],
      Qtc: [(1 / (1 / 4.2 + 1 / (0.46 * (6.2 / 5.9)))) * Math.sqrt(1 + 10.91 / 6), 0.002],
      Full: [9, 0.3],
      Passed: [33, 1],
      Gain: [5.5, 0.1],
      Slope: [20 * Math.log10(0.73) - 3.01, 0.05],
    },
    from: 'closed box by hand; at fc the box is Qtc and the filter −3 dB; watts of a circuit of elements with numpy',
  },
  {
    job: 'count the subs for a level at a frequency',
    cells: {
      Sub: longThrow,
      One: '=LEVEL.BY_TRAVEL(Sub.sd, Sub.xmax, "30 Hz")',
      Count: '=SUBS.COUNT(One, "106 dB")',
      Two: '=SUBS.LEVEL(One, 2)',
      Watts: '=SUBS.LEVEL(One, 2, "same watts")',
    },
    gives: {
      One: [levelOfTravel(0.0335, 0.015, 30), 0.01],
      Count: [2, 0],
      Two: [levelOfTravel(0.0335, 0.015, 30) + 6.02, 0.01],
      Watts: [levelOfTravel(0.0335, 0.015, 30) + 3.01, 0.01],
    },
    from: 'ρ·Sd·x·ω²/2π at 1 m in half space; twice the cone at the same volts is 6 dB, at the same watts 3 dB',
  },
  {
    job: 'replace a driver that is no longer made, and see what changes',
    cells: {
      Old: woofer,
      New: '=DRIVER.OF("42.5 Hz", 4.8, 0.47, "22.8 L", "5.8 Ω", "132 cm²", "5 mm", "0.5 mH")',
      Before: '=BOX.CUTOFF(CLOSED.BOX(Old, "12.1 L"))',
      After: '=BOX.CUTOFF(CLOSED.BOX(New, "12.1 L"))',
      Q: '=BOX.QTC(CLOSED.BOX(New, "12.1 L"))',
      Level: '=DRIVER.LEVEL(New)-DRIVER.LEVEL(Old)',
      Verdict: '=CHECK.WITHIN(Q, 0.6, 0.8, 0.1, "Q of the new driver in the old box")',
    },
    gives: {
      Before: [69.6, 0.1],
      After: [cutoff(42.5 * Math.sqrt(1 + 22.8 / 12.1), (1 / (1 / 4.8 + 1 / 0.47)) * Math.sqrt(1 + 22.8 / 12.1)), 0.1],
      Level: [10 * Math.log10(((42.5 / 38) ** 3 * (22.8 / 28.52) * 0.42) / 0.47), 0.01],
      Verdict: 'good',
    },
    from: 'Small 1972 and the ratio of the efficiencies, by hand',
  },
  {
    job: 'warm the coil up: decibels lost and the new Q',
    cells: {
      Woofer: woofer,
      Hot: '=DRIVER.HOT(Woofer, 100)',
      Loss: '=DRIVER.HOT_LOSS(100)',
      Q: '=BOX.QTC(CLOSED.BOX(Hot, "12.1 L"))',
    },
    gives: {
      Loss: [20 * Math.log10(1.393), 0.01],
      Q: [(1 / (1 / 4.8 + 1 / (0.42 * 1.393))) * Math.sqrt(1 + 28.52 / 12.1), 0.001],
    },
    from: 'Re·(1 + 0.00393·ΔT) and Qes with it',
  },
  {
    job: 'see what runs out first at every frequency',
    cells: {
      Woofer: woofer,
      Box: '=CLOSED.BOX(Woofer, "12.1 L")',
      Way: '=WAY.OF(Box)',
      Travel: '=LIMIT.TRAVEL(Way)',
      Heat: '=LIMIT.HEAT(Way)',
      Clip: '=LIMIT.VOLTAGE(Way, LEVEL.CLIP_VOLTS("50 W", "8 Ω"))',
      Deep: '=LIMIT.AT("40 Hz", Travel, Heat, Clip)',
      High: '=LIMIT.AT("300 Hz", Travel, Heat, Clip)',
      Loud: '=CURVE.AT(LIMIT.LOWEST(Travel, Heat, Clip), "40 Hz")',
      Map: '=TABLE.ROWS(LIMIT.MAP("20 Hz", "2 kHz", Travel, Heat, Clip))',
    },
    gives: { Deep: /ravel/, High: /oltage|mplifier|lip/, Loud: [levelOfTravel(0.0132, 0.0055, 40), 0.05], Map: [2, 0] },
    from: 'ρ·Sd·x·ω²/2π at 40 Hz; 20 V on 5.8 Ω are 69 W, less than the 70 W of the coil',
  },
  {
    job: 'let a tweeter live behind a small amplifier',
    cells: {
      Average: '=CREST.POWER("100 W", "12 dB")',
      Share: '=CREST.TREBLE_SHARE("1900 Hz")',
      Watts: '=Average*Share',
      Clipped: '=CREST.POWER("100 W", "3 dB")*Share/Watts',
      Verdict: '=CHECK.AT_MOST(Watts, "5 W", "10 W", "Average power of the tweeter")',
    },
    gives: { Average: [200 / 10 ** 1.2, 1e-6], Clipped: [10 ** 0.9, 1e-6], Verdict: 'good' },
    from: 'the peaks of a sine of 100 W are 200 W; music of a crest of 12 dB averages a sixteenth of them',
  },
]);

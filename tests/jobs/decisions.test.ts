import { woofer } from './drivers.ts';
import { testJobs } from './job.ts';

const c = 343.2;
const density = 1.204;
const decibels = (ratio: number): number => 20 * Math.log10(ratio);
/** A closed box of 12.1 L times its filling. */
const q = (fill: number): number => (1 / (1 / 4.8 + 1 / 0.42)) * Math.sqrt(1 + 28.52 / (12.1 * fill));
/** Ten decibels down: (1 − u)² + u/Q² = 10 with u = (fc/f)². */
const f10 = (fill: number): number => {
  const half = 1 / (2 * q(fill) ** 2) - 1;
  return (38 * Math.sqrt(1 + 28.52 / (12.1 * fill))) / Math.sqrt(-half + Math.sqrt(half ** 2 + 9));
};
const one = decibels((density * 0.033 * 0.009 * (2 * Math.PI * 30) ** 2) / (Math.SQRT2 * 2 * Math.PI * 2e-5));
const pad = 91 + 10 * Math.log10(2.83 ** 2 / 8) - (86 + 10 * Math.log10(2.83 ** 2 / 4) - 4.5);
const left = 10 ** (-pad / 20);
const loud = 84.7 - 3 * Math.log2(2.8) + 3 + 10 * Math.log10(20);
const ears = 2.8 * Math.tan(Math.asin((Math.acos(10 ** (-3 / 20)) * c) / (Math.PI * 0.139 * 1808)));
const mass = (fs: number, loaded: number): number => 0.01 / ((fs / loaded) ** 2 - 1);

testJobs([
  {
    job: 'ask how many subs of a kind make 105 dB at 30 Hz in a room that lifts them',
    cells: {
      Sub: '=DRIVER.OF("28 Hz", 5, 0.45, "60 L", "5.6 Ω", "330 cm²", "9 mm")',
      One: '=LEVEL.BY_TRAVEL(Sub.sd, Sub.xmax, "30 Hz")',
      Two: '=SUBS.LEVEL(One, 2)+6 dB',
      Needed: '=SUBS.COUNT(One, "105 dB", "6 dB")',
    },
    gives: { One: [one, 0.001], Two: [one + decibels(2) + 6, 0.001], Needed: [2, 0] },
    from: 'a simple source in half space moving Sd·Xmax',
  },
  {
    job: 'count the cable and the coil before the box is sawn',
    cells: {
      Woofer: woofer,
      Run: '=CABLE.RESISTANCE("8 m", "1.5 mm²")',
      Ahead: '=Run+COIL.RESISTANCE("1.5 mH", "1.2 mm")',
      Seen: '=DRIVER.SERIES(Woofer, Ahead)',
      Litres: '=CLOSED.VOLUME_FOR(Woofer, 0.707, Ahead)',
      Again: '=CLOSED.VOLUME(Seen.qts, Seen.vas, 0.707)/Litres',
    },
    gives: { Run: [(2 * 8 * 1.7241e-8) / 1.5e-6, 1e-6], Again: [1, 1e-9] },
    from: 'ohms of copper; the driver behind them needs the same box as the driver with them',
  },
  {
    job: 'take a slot for a port, and see whether it is wide enough',
    cells: {
      Slot: '=PORT.SLOT_AREA("180 mm", "22 mm")',
      Round: '=PORT.ROUND_OF(Slot)',
      Needs: '=PORT.LEAST_AREA("132 cm²", "5.5 mm", "39.6 Hz")',
      Wide: '=CHECK.AT_LEAST(Slot, Needs, , "Slot")',
    },
    gives: {
      Round: [Math.sqrt((4 * 0.18 * 0.022) / Math.PI), 1e-9],
      Needs: [0.8 * 39.6 * 0.0132 * 0.0055, 1e-9],
      Wide: 'good',
    },
    from: 'the circle of the same area; 0.8·fb·Vd',
  },
  {
    job: 'know how long a party may last at twenty watts',
    cells: {
      Loud: '=LEVEL.AT_SEAT("84.7 dB", "2.8 m", "3 dB", "3 dB")+LEVEL.POWER_OF(20)',
      Hours: '=HEARING.TIME(Loud)',
      Evening: '=HEARING.VERDICT(Loud, "4 h")',
    },
    gives: { Loud: [loud, 0.001], Hours: [8 * 3600 * 2 ** ((85 - loud) / 3), 1], Evening: 'fail' },
    from: 'three decibels a doubling of the way, eight hours at 85 dBA halved for every three decibels',
  },
  {
    job: 'see what a stuffed box gains, in Q and in the frequency ten decibels down',
    cells: {
      Woofer: woofer,
      Bare: '=CLOSED.BOX(Woofer, "12.1 L")',
      Full: '=CLOSED.BOX(Woofer, "12.1 L", 0, 1.2)',
      Calmer: '=BOX.QTC(Bare)-BOX.QTC(Full)',
      Deeper: '=BOX.CUTOFF(Bare, "10 dB")-BOX.CUTOFF(Full, "10 dB")',
    },
    gives: { Calmer: [q(1) - q(1.2), 1e-6], Deeper: [f10(1) - f10(1.2), 0.01] },
    from: 'a box that seems a fifth larger, its response solved for a tenth of the power',
  },
  {
    job: 'notch a cone resonance with a part that is named by where it acts',
    cells: {
      Trap: '=NETWORK.NOTCH("22 Ω", "0.22 mH", 1/((2*PI()*5200 Hz)^2*0.22 mH))',
      Loss: '=CURVE.AT(NETWORK.RESPONSE(Trap, LOAD.RESISTOR("8 Ω")), "5200 Hz")',
    },
    gives: { Loss: [decibels(8 / 30), 0.005] },
    from: 'at its resonance the notch is its resistor ahead of the load',
  },
  {
    job: 'bring two printed levels to one basis, and pad what is too loud',
    cells: {
      System: '=LEVEL.FROM_WATT("86 dB", "4 Ω")-4.5 dB',
      Pad: '=LEVEL.FROM_WATT("91 dB", "8 Ω")-System',
      Ahead: '=PAD.SERIES(Pad, "6.1 Ω")',
      Across: '=PAD.SHUNT(Pad, "6.1 Ω")',
    },
    gives: { Pad: [pad, 1e-6], Ahead: [6.1 * (1 - left), 1e-6], Across: [(6.1 * left) / (1 - left), 1e-6] },
    from: '2.83² over the ohms in decibels; a divider that leaves 6.1 Ω as they were',
  },
  {
    job: 'know whether standing ears still hear the hand-over',
    cells: {
      High: '=SPACING.EARS_HIGH("139 mm", "1808 Hz", "2.8 m", "3 dB")',
      Low: '=SPACING.EARS_LOW("139 mm", "1808 Hz", "2.8 m", "3 dB")',
      Standing: '=CHECK.WITHIN(1.65 m-0.95 m, Low, High, , "Standing ears")',
      Ladder: '=CHECK.WITHIN(2.2 m-0.95 m, Low, High, , "Ears on a ladder")',
    },
    gives: { High: [ears, 1e-6], Standing: 'good', Ladder: 'fail' },
    from: 'two sources in step whose detour takes three decibels',
  },
  {
    job: 'see what a meter that reads one hertz high does to the mass and the motor',
    cells: {
      Right: '=MEASURE.MASS("38 Hz", "29.51 Hz", "10 g")',
      Wrong: '=MEASURE.MASS("38 Hz", "30.51 Hz", "10 g")',
      Heavier: '=Wrong/Right-1',
      Bl: '=SQRT(2*PI()*38 Hz*Right*5.8 Ω/0.42)',
    },
    gives: {
      Right: [mass(38, 29.51), 1e-9],
      Heavier: [mass(38, 30.51) / mass(38, 29.51) - 1, 1e-9],
      Bl: [Math.sqrt((2 * Math.PI * 38 * mass(38, 29.51) * 5.8) / 0.42), 1e-6],
    },
    from: 'a mass on a spring with ten grams added',
  },
  {
    job: 'say whether the coil, warm after an hour of music, still lets the box be called tight',
    cells: {
      Woofer: woofer,
      Rise: '=DRIVER.HEATING("20 W", 2.1)',
      Warm: '=BOX.QTC(CLOSED.BOX(DRIVER.HOT(Woofer, Rise), "12.1 L"))',
      Tight: '=CHECK.AT_MOST(Warm, 0.8, 1, "Q of the warm box")',
    },
    gives: {
      Rise: [(2 * 42) / (1 + Math.sqrt(1 + 4 * 0.00393 * 42)), 1e-6],
      Warm: [
        (1 / (1 / 4.8 + 1 / (0.42 * (1 + (0.00393 * 2 * 42) / (1 + Math.sqrt(1 + 4 * 0.00393 * 42)))))) *
          Math.sqrt(1 + 28.52 / 12.1),
        1e-6,
      ],
      Tight: 'caution',
    },
    from: 'the quadratic of a coil that takes fewer watts as it warms, and Qes in step with Re',
  },
]);

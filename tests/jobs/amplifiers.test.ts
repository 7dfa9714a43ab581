import { lowOhmWoofer, woofer } from './drivers.ts';
import { testJobs } from './job.ts';

/** Ohms of the woofer in 15 L at a frequency: Re, the coil and the motional branch, as complex numbers. */
function ohmsAt(frequency: number): number {
  const fc = 38 * Math.sqrt(1 + 28.52 / 15);
  const stretch = fc / 38;
  const [qms, qes] = [4.8 * stretch, 0.42 * stretch];
  const g = frequency / fc;
  // Motional: (Re/Qes)·jg/(1 − g² + jg/Qms).
  const [dRe, dIm] = [1 - g * g, g / qms];
  const scale = ((5.8 / qes) * g) / (dRe ** 2 + dIm ** 2);
  return Math.hypot(5.8 + scale * dIm, scale * dRe + 2 * Math.PI * frequency * 0.00055);
}

const amplifier = { Woofer: woofer, Box: '=CLOSED.BOX(Woofer, "15 L")', Z: '=BOX.IMPEDANCE(Box)' };

testJobs([
  {
    job: 'see every legal wiring of several drivers, with level and lowest ohms',
    cells: {
      ...amplifier,
      Two: '=LOAD.WIRINGS(Z, DRIVER.LEVEL(Woofer), 2, "100 Hz", "2 kHz")',
      Rows: '=TABLE.ROWS(Two)',
      Parallel: '=LOAD.LOWEST(LOAD.PARALLEL(Z, Z), "100 Hz", "2 kHz")',
      Series: '=LOAD.LOWEST(LOAD.SERIES(Z, Z), "100 Hz", "2 kHz")',
      Four: '=LOAD.LOWEST(LOAD.WIRED("1+2 | 3+4", Z, Z, Z, Z), "100 Hz", "2 kHz")',
      Level: '=DRIVER.LEVEL(DRIVER.GROUP(Woofer, 2, 1))',
      InSeries: '=DRIVER.LEVEL(DRIVER.GROUP(Woofer, 1, 2))',
      Bad: '=LOAD.VERDICT(LOAD.PARALLEL(Z, Z), "4 Ω", "100 Hz", "2 kHz")',
      Fours: lowOhmWoofer,
      Good: '=LOAD.VERDICT(LOAD.SERIES(DRIVER.IMPEDANCE(Fours), DRIVER.IMPEDANCE(Fours)), "4 Ω", "100 Hz", "2 kHz")',
    },
    gives: {
      Rows: [2, 0],
      Parallel: [ohmsAt(410) / 2, 0.01],
      Series: [ohmsAt(410) * 2, 0.02],
      Four: [ohmsAt(410), 0.02],
      Level: [95.2, 0.1],
      InSeries: [89.2, 0.1],
      Bad: /caution.*4\d\d/,
      Good: 'good',
    },
    from: 'Re, coil and motional branch as complex numbers; two in parallel take twice the current and make 6 dB more',
  },
  {
    job: 'mix drivers of 4 and 8 ohms, and see who gets the power',
    cells: {
      Eight: woofer,
      Four: lowOhmWoofer,
      Share: '=CURVE.AT(LOAD.SHARE("1 | 2", 2, LOAD.RESISTOR("8 Ω"), LOAD.RESISTOR("4 Ω")), "100 Hz")',
      InSeries: '=CURVE.AT(LOAD.SHARE("1+2", 2, LOAD.RESISTOR("8 Ω"), LOAD.RESISTOR("4 Ω")), "100 Hz")',
      Voltage: '=CURVE.AT(LOAD.VOLTAGE("1+2", 2, LOAD.RESISTOR("8 Ω"), LOAD.RESISTOR("4 Ω")), "100 Hz")',
      Real: '=LOAD.LOWEST(LOAD.PARALLEL(DRIVER.IMPEDANCE(Eight), DRIVER.IMPEDANCE(Four)), "100 Hz", "1 kHz")',
    },
    gives: { Share: [2 / 3, 1e-9], InSeries: [1 / 3, 1e-9], Voltage: [-20 * Math.log10(3), 1e-9], Real: [2.05, 0.05] },
    from: 'across the same volts power goes with 1/R, with the same current as R; 5.8 and 3.1 Ω in parallel are 2.02 Ω',
  },
  {
    job: 'know whether the amplifier is happy: lowest ohms, phase, and where',
    cells: {
      ...amplifier,
      Lowest: '=LOAD.LOWEST(Z, "100 Hz", "2 kHz")',
      At: '=LOAD.LOWEST_AT(Z, "100 Hz", "2 kHz")',
      Rating: '=LOAD.NOMINAL(Z, "100 Hz", "2 kHz")',
      Least: '=LOAD.PERMITTED("8 Ω")',
      Verdict: '=LOAD.VERDICT(Z, "8 Ω")',
    },
    gives: {
      Lowest: [ohmsAt(410), 0.02],
      At: [410, 25],
      Least: [6.4, 1e-9],
      Rating: [ohmsAt(410) / 0.8, 0.03],
      Verdict: 'caution',
    },
    from: 'complex numbers; IEC 60268-5 lets the ohms fall to 80 % of the rating, 6.4 Ω of 8, and these are 73 %',
  },
  {
    job: 'know how many watts a seat needs, as a band',
    cells: {
      Level: '84.7 dB',
      Distance: '2.8 m',
      Near: '=LEVEL.WATTS(Level, Distance, "3 dB", "3 dB", "100 dB")',
      Far: '=LEVEL.WATTS(Level, Distance, "6 dB", "3 dB", "100 dB")',
      Headroom: '=LEVEL.HEADROOM("100 W", Near)',
      Clip: '=LEVEL.CLIP_VOLTS("100 W", "8 Ω")',
      Ledger:
        '=TABLE.ROWS(LEVEL.LEDGER("84.7 dB", "2.83 V", "8 Ω", "0 dB", "0 dB", Distance, "3 dB", "3 dB", "100 dB", "100 W"))',
      Ears: '=HEARING.VERDICT("100 dB", "1 h")',
    },
    gives: {
      Near: [(2.83 ** 2 / 8) * 10 ** ((100 - 84.7 - 3 + 3 * Math.log2(2.8)) / 10), 0.01],
      Far: [(2.83 ** 2 / 8) * 10 ** ((100 - 84.7 - 3 + 6 * Math.log2(2.8)) / 10), 0.01],
      Clip: [Math.sqrt(100 * 8), 1e-9],
      Headroom: [10 * Math.log10(100 / 47.5), 0.1],
      Ears: /fail|caution/,
    },
    from: '3 or 6 dB for each doubling of the distance and 2.83 V into 8 Ω, by hand: 47 and 133 W; NIOSH lets 15 minutes at 100 dB',
  },
  {
    job: 'know the watts in every resistor of a filter',
    cells: {
      Filter: '=NETWORK.PAD("2.7 Ω", "6.8 Ω")',
      Load: '=LOAD.RESISTOR("6.1 Ω")',
      Series: '=PAD.HEAT("10 V", "2.7 Ω", "6.8 Ω", "6.1 Ω", "series")',
      Shunt: '=PAD.HEAT("10 V", "2.7 Ω", "6.8 Ω", "6.1 Ω", "shunt")',
      Driver: '=PAD.HEAT("10 V", "2.7 Ω", "6.8 Ω", "6.1 Ω", "driver")',
      Hot: '=TABLE.ROWS(NETWORK.HEAT(Filter, Load, "10 V"))',
      Sum: '=Series+Shunt+Driver',
    },
    gives: {
      Series: [(10 / (2.7 + (6.8 * 6.1) / 12.9)) ** 2 * 2.7, 1e-6],
      Sum: [100 / (2.7 + (6.8 * 6.1) / 12.9), 1e-6],
      Hot: [3, 0],
    },
    from: 'Ohm, and all of it is what the amplifier gives; a line each for both resistors and the driver',
  },
]);

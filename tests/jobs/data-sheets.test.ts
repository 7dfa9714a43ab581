import { testJobs } from './job.ts';
import { woofer } from './drivers.ts';

const c = 343.2;

/** A datasheet in cells D1 to E7. */
const sheet = (rows: readonly (readonly [label: string, value: string])[]): Record<string, string> =>
  Object.fromEntries(
    rows.flatMap(([label, value], row) => [
      [`D${String(row + 1)}`, label],
      [`E${String(row + 1)}`, value],
    ]),
  );

testJobs([
  {
    job: 'enter a datasheet in the units it is printed in, and have the rest filled in',
    cells: {
      ...sheet([
        ['Fs', '38 Hz'],
        ['Qms', '4.8'],
        ['Qes', '0.42'],
        ['Sd', '0.0132 m2'],
        ['Mms', '15.2 g'],
        ['Re', '5.8 ohm'],
        ['Xmax', '5.5 mm'],
      ]),
      Woofer: '=DRIVER(D1:D7, E1:E7)',
      Area: '=Woofer.sd',
      Spring: '=Woofer.cms',
      Air: '=Woofer.vas',
    },
    gives: {
      Area: [0.0132, 1e-12],
      Spring: [1 / ((2 * Math.PI * 38) ** 2 * 0.0152), 1e-8],
      Air: [(1.2041 * c ** 2 * 0.0132 ** 2) / ((2 * Math.PI * 38) ** 2 * 0.0152), 3e-5],
    },
    from: 'a spring of 1/(ω²·m), and Vas of ρc²·Sd² times that, by hand',
  },
  {
    job: 'be asked at once about a value with a slipped unit',
    cells: {
      ...sheet([
        ['Fs', '38 Hz'],
        ['Sd', '132 m2'],
      ]),
      Woofer: '=DRIVER(D1:D2, E1:E2)',
    },
    gives: { Woofer: /did you mean/ },
    from: 'no cone has 132 m²',
  },
  {
    job: 'find the value that is wrong in an over-determined sheet',
    cells: {
      ...sheet([
        ['Fs', '38 Hz'],
        ['Qms', '4.8'],
        ['Qes', '0.42'],
        ['Qts', '0.386'],
        ['Vas', '42 L'],
        ['Sd', '132 cm2'],
        ['Mms', '15.2 g'],
        ['Cms', '1.154 mm/N'],
        ['Re', '5.8 ohm'],
        ['Bl', '7.08 T m'],
      ]),
      Culprit: '=DRIVER.CULPRIT(DRIVER(D1:D10, E1:E10))',
    },
    gives: { Culprit: /Vas/ },
    from: 'all but Vas agree with one another; the others make it 28.5 L',
  },
  {
    job: 'put levels on one basis',
    cells: {
      Printed: '88 dB',
      Ohms: '4 Ω',
      Level: '=LEVEL.FROM_WATT(Printed, Ohms)',
      Other: '=LEVEL.TO_WATT(Level, Ohms)',
    },
    gives: { Level: [88 + 10 * Math.log10(2.83 ** 2 / 4), 0.01], Other: [88, 1e-9] },
    from: '2.83 V into 4 Ω are 2 W, 3 dB more than 1 W',
  },
  {
    job: 'see how far a printed level lies above what the parameters make',
    cells: {
      ...sheet([
        ['Fs', '38 Hz'],
        ['Qms', '4.8'],
        ['Qes', '0.42'],
        ['Vas', '28.52 L'],
        ['Re', '5.8 ohm'],
        ['Level', '92 dB'],
        ['Level basis', 'at 2.83 V'],
      ]),
      Gap: '=DRIVER.LEVEL_GAP(DRIVER(D1:D7, E1:E7))',
      Worth: '=CHECK.AT_MOST(Gap, "1.5 dB", "3 dB", "Printed level above the derived one")',
    },
    gives: { Gap: [92 - 89.2, 0.05], Worth: 'caution' },
    from: 'η₀ = 4π²·Fs³·Vas/(c³·Qes) is 0.36 %, 87.8 dB for 1 W and 89.2 dB for 2.83 V into 5.8 Ω, by hand',
  },
  {
    job: 'test a claim of small, loud and deep, and learn what to give up',
    cells: {
      Level: '92 dB',
      Re: '5.8 Ω',
      Litres: '20 L',
      Bass: '30 Hz',
      Claim: '=CLAIM.CHECK(Level, Re, Litres, Bass)',
      Constant: '=CLAIM.CONSTANT(Level, Re, Litres, Bass)',
      Smallest: '=CLAIM.VOLUME(Level, Re, Bass)',
      Lowest: '=CLAIM.CUTOFF(Level, Re, Litres)',
      Loudest: '=CLAIM.LEVEL(Re, Litres, Bass)',
    },
    gives: {
      Claim: 'fail',
      Constant: [1.29e-5, 0.01e-5],
      Smallest: [0.065, 0.001],
      Lowest: [44.4, 0.2],
      Loudest: [86.9, 0.1],
    },
    from: 'η of 0.7 % over 30³·0.02 is 1.3e-5, 3.3 times the 3.9e-6 of a lossless vented box: 3.3 times the litres, ∛3.3 the F3 or 5.1 dB less',
  },
  {
    job: 'see whether a woofer wants a closed or a vented box, with the ratio as a hint only',
    cells: {
      Woofer: woofer,
      Closed: '=CLOSED.BOX(Woofer, CLOSED.VOLUME_FOR(Woofer, 0.7071))',
      Vented: '=VENTED.ALIGNED(Woofer, "QB3")',
      ClosedBass: '=BOX.CUTOFF(Closed)',
      VentedBass: '=BOX.CUTOFF(Vented)',
      Drawn: '=CURVE.DIFFERENCE(BOX.RESPONSE(Vented), BOX.RESPONSE(Closed))',
      Gain: '=CURVE.AT(Drawn, VentedBass)',
      Hint: '=RULE.BOX_BY_RATIO(Woofer.fs, Woofer.qes)',
    },
    gives: {
      ClosedBass: [69.6, 0.1],
      VentedBass: [41.2, 0.3],
      Gain: [10 * Math.log10(1 + (69.6 / 41.2) ** 4) - 3.01, 0.1],
      Hint: 'either',
    },
    from: 'the flat closed box falls as a second-order Butterworth filter from 69.6 Hz; where the vented one is 3 dB down it is 9.6 dB down; Fs/Qes is 90, between 50 and 100',
  },
]);

import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { airDensity, soundSpeed } from '../../../functions/air.ts';
import { solveImpedance } from '../../../functions/enclosure/impedance-curve.ts';
import { solveLumped, type LumpedSolution } from '../../../functions/enclosure/lumped.ts';
import { modelOf } from '../../../functions/enclosure/circuit-of.ts';
import type { Box } from '../../../functions/values/box.ts';
import { Disagreement } from '../../witnesses/disagreement.ts';
import { box, driver } from './call.ts';
import { netlist, over, plus, simulate, times, type Acoustics, type Complex, type Elements } from './netlist.ts';

// Every enclosure built a second time from mass, compliance and resistance, and solved by a circuit simulator from 10 Hz
// to 20 kHz: agreement within 0.01 dB and 0.1°.
const elements: Elements = {
  re: 6.1,
  le: 0.0007,
  le2: 0.0009,
  re2: 4.5,
  bl: 9.4,
  mms: 0.024,
  cms: 0.00085,
  rms: 1.9,
  sd: 0.0215,
};
const unit = driver({ ...elements });
const series = 0.3;
const compliance = (volume: number): number => volume / (airDensity * soundSpeed ** 2);

/** Acoustic elements of a volume whose losses are given as Qs at a frequency, with a port tuned to it if `port`. */
function acoustics(volume: number, at: number, q: { leak?: number; absorption?: number; port?: number }): Acoustics {
  const angular = 2 * Math.PI * at;
  const c = compliance(volume);
  return {
    compliance: c,
    ...(q.leak === undefined ? {} : { leak: q.leak / (angular * c) }),
    ...(q.absorption === undefined ? {} : { absorption: 1 / (angular * c * q.absorption) }),
    ...(q.port === undefined
      ? {}
      : { opening: { mass: 1 / (angular ** 2 * c), resistance: 1 / (angular * c * q.port) } }),
  };
}

const onAir = (volume: number): number =>
  Math.sqrt(1 / elements.cms + elements.sd ** 2 / compliance(volume)) / Math.sqrt(elements.mms) / (2 * Math.PI);

const radiator = { area: 0.033, mass: 0.11, compliance: 0.0007, resistance: 1.6 };
const stiffness = 1 / radiator.compliance + radiator.area ** 2 / compliance(0.03);
const radiatorTuning = Math.sqrt(stiffness / radiator.mass) / (2 * Math.PI);

const common = { driver: unit, seriesResistance: series };
const listed: readonly (readonly [string, Box, Acoustics, Acoustics?])[] = [
  ['closed box', box('CLOSED.BOX', { ...common, volume: 0.02 }), acoustics(0.02, 1, {})],
  [
    'closed box with filling, absorption and a leak',
    box('CLOSED.BOX', { ...common, volume: 0.02, fill: 1.2, leakageQ: 9, absorptionQ: 15 }),
    acoustics(0.024, onAir(0.024), { leak: 9, absorption: 15 }),
  ],
  [
    'vented box with a leak',
    box('VENTED.BOX', { ...common, volume: 0.035, tuning: 36 }),
    acoustics(0.035, 36, { leak: 7, port: Infinity }),
  ],
  [
    'vented box with all three losses',
    box('VENTED.BOX', { ...common, volume: 0.035, tuning: 36, leakageQ: 12, absorptionQ: 60, portQ: 40 }),
    acoustics(0.035, 36, { leak: 12, absorption: 60, port: 40 }),
  ],
  [
    'passive radiator',
    box('RADIATOR.BOX', { ...common, ...radiator, volume: 0.03, leakageQ: 10, absorptionQ: 80 }),
    {
      ...acoustics(0.03, radiatorTuning, { leak: 10, absorption: 80 }),
      opening: {
        mass: radiator.mass / radiator.area ** 2,
        resistance: radiator.resistance / radiator.area ** 2,
        compliance: radiator.compliance * radiator.area ** 2,
      },
    },
  ],
  [
    'band-pass box',
    box('BANDPASS.BOX', { ...common, rear: 0.02, front: 0.014, tuning: 62, leakageQ: 11, absorptionQ: 50, portQ: 35 }),
    acoustics(0.02, onAir(0.02), { absorption: 50 }),
    acoustics(0.014, 62, { leak: 11, port: 35 }),
  ],
  ['infinite baffle', box('BAFFLE.BOX', common), acoustics(1e9, 1, {})],
];

const cases = listed.map(([name, made, rear, front]) => ({ name, made, rear, front }));

const decibels = ({ real, img }: Complex): number => 20 * Math.log10(Math.hypot(real, img));
const degrees = ({ real, img }: Complex): number => (Math.atan2(img, real) * 180) / Math.PI;

/** Holds one against the other: within 0.01 dB and 0.1°. */
function agree(ours: Complex, theirs: Complex, what: string, found: Disagreement): void {
  const apart = over(ours, theirs);
  found.note(decibels(apart), degrees(apart));
  expect(Math.abs(decibels(apart)), `${what}, dB`).toBeLessThan(0.01);
  expect(Math.abs(degrees(apart)), `${what}, degrees`).toBeLessThan(0.1);
}

describe.each(cases)('$name in the simulator', ({ name, made, rear, front }) => {
  const disagreement = new Disagreement(name);
  afterAll(() => disagreement.keep());
  let found: Map<string, Complex[]>;
  let at: Float64Array;
  let solution: LumpedSolution;
  beforeAll(async () => {
    found = await simulate(netlist(elements, series, rear, front), 'dec 24 10 20000');
    at = Float64Array.from(found.get('frequency')!, ({ real }) => real);
    solution = solveLumped(modelOf(made), at, true);
  });
  const of = (name: string, index: number): Complex => found.get(name)![index]!;
  const total = elements.re + series;

  test('input impedance', () => {
    expect(at.length).toBeGreaterThan(75);
    const { y, phase } = solveImpedance(modelOf(made), at);
    at.forEach((f, index) => {
      const ours = { real: y[index]! * Math.cos(phase[index]!), img: y[index]! * Math.sin(phase[index]!) };
      agree(ours, over(of('v(t)', index), of('i(vi)', index)), `${String(f)} Hz`, disagreement);
    });
  });

  test('travel of the cone', () => {
    const perVolt = (elements.bl * elements.cms) / total;
    at.forEach((f, index) => {
      const speed = { real: 0, img: 2 * Math.PI * f * perVolt };
      const ours = times(speed, { real: solution.travelRe[index]!, img: solution.travelIm[index]! });
      agree(ours, of('i(vv)', index), `${String(f)} Hz`, disagreement);
    });
  });

  test('volume velocity into the room, as pressure', () => {
    const bare = (elements.sd * elements.bl) / (elements.mms * total);
    at.forEach((f, index) => {
      // All of the box that is open to the room; in a band-pass that is port and leak of the front.
      const flow =
        front === undefined
          ? times(of('i(vcb)', index), { real: -1, img: 0 })
          : plus(of('i(vof)', index), of('i(vlf)', index));
      const pressure = over(times(flow, { real: 0, img: 2 * Math.PI * f }), { real: bare, img: 0 });
      agree(
        { real: solution.pressureRe[index]!, img: solution.pressureIm[index]! },
        pressure,
        `${String(f)} Hz`,
        disagreement,
      );
    });
  });

  test.runIf((front ?? rear).opening !== undefined)('volume velocity through port or radiator', () => {
    const perVolt = (elements.sd * elements.bl * elements.cms) / total;
    at.forEach((f, index) => {
      const speed = { real: 0, img: 2 * Math.PI * f * perVolt };
      const ours = times(speed, { real: solution.portRe[index]!, img: solution.portIm[index]! });
      const sign = front === undefined ? -1 : 1;
      const theirs = times(of(front === undefined ? 'i(vob)' : 'i(vof)', index), { real: sign, img: 0 });
      agree(ours, theirs, `${String(f)} Hz`, disagreement);
    });
  });
});

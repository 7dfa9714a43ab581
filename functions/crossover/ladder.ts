import { zeros } from '../numeric/blocks.ts';
import { complexOf, curveOf, inverseOf, type ComplexCurve } from '../values/complex-curve.ts';
import type { Curve } from '../values/curve.ts';
import { frequencies } from '../values/grid.ts';
import type { Leg, Network } from '../values/network.ts';

/** A ladder on its load. */
export interface LadderSolution {
  /** Volts at the driver over volts at the amplifier. */
  readonly transfer: ComplexCurve;
  /** Siemens at the amplifier's end. */
  readonly admittance: ComplexCurve;
}

/** In parallel or in series with ideal parts, so that their resonances stay finite: siemens or ohms. */
const trace = 1e-15;

interface Angular {
  /** 2πf. */
  readonly angular: Float64Array;
  readonly perAngular: Float64Array;
}

const angulars = new WeakMap<Float64Array, Angular>();

/** Angular frequencies and one over them, remembered with the frequencies. */
function angularOf(at: Float64Array): Angular {
  const known = angulars.get(at);
  if (known !== undefined) return known;
  const angular = at.map((frequency) => 2 * Math.PI * frequency);
  const made = { angular, perAngular: angular.map((each) => 1 / each) };
  angulars.set(at, made);
  return made;
}

/** Legs from the driver back to the amplifier. What a leg adds, the impedance of one in series or the admittance of one
 *  across, is steady + j(ω·rising − falling/ω) or one over that, and besides the admittance of a lossy coil in a tank. */
interface Steps {
  readonly isSeries: readonly boolean[];
  readonly isInverse: readonly boolean[];
  /** Steady, rising and falling, then henries and ohms of the lossy coil or noughts: five numbers to a leg. */
  readonly numbers: Float64Array;
}

const NUMBERS = 5;

/** Whether a leg is one ideal part: it is a chain as well as a tank, and never needs to be turned over. */
const isSingle = ({ resistance, inductance = 0, coilResistance = 0, capacitance }: Leg): boolean =>
  [resistance, capacitance].filter((part) => part !== undefined).length + (inductance === 0 ? 0 : 1) === 1 &&
  (inductance === 0 || coilResistance === 0);

function stepsOf(legs: readonly Leg[]): Steps {
  const backwards = legs.toReversed();
  const numbers = new Float64Array(NUMBERS * legs.length);
  const isInverse = backwards.map((leg, place) => {
    const { resistance, inductance = 0, coilResistance = 0, capacitance } = leg;
    const direct = leg.place === 'series' ? 'chain' : 'tank';
    const form = isSingle(leg) ? direct : leg.form;
    const loss = inductance === 0 ? 0 : coilResistance;
    const at = NUMBERS * place;
    if (form === 'chain') {
      numbers[at] = trace + (resistance ?? 0) + loss;
      numbers[at + 1] = inductance;
      numbers[at + 2] = capacitance === undefined ? 0 : 1 / capacitance;
    } else {
      numbers[at] = trace + (resistance === undefined ? 0 : 1 / (trace + resistance));
      numbers[at + 1] = capacitance ?? 0;
      if (loss === 0) numbers[at + 2] = inductance === 0 ? 0 : 1 / inductance;
      else numbers.set([inductance, loss], at + 3);
    }
    return form !== direct;
  });
  return { isSeries: backwards.map(({ place }) => place === 'series'), isInverse, numbers };
}

/**
 * Solves a ladder on a complex load at any frequencies, from the driver back to the amplifier: with 1 V at the driver,
 * each series leg adds its impedance times the current to the voltage, each shunt leg its admittance times the voltage to
 * the current. One pass, linear in points and legs.
 */
export function solveLadderAt(legs: readonly Leg[], load: ComplexCurve, at: Float64Array): LadderSolution {
  const [transferRe, transferIm, admittanceRe, admittanceIm] = zeros(4, at.length);
  const { angular, perAngular } = angularOf(at);
  const { isSeries, isInverse, numbers } = stepsOf(legs);
  const { re: loadRe, im: loadIm } = load;
  const count = isSeries.length;
  const last = at.length - 1;
  // Two points side by side, which keeps the processor busy while it waits for the leg before.
  for (let one = 0; one <= last; one += 2) {
    const two = Math.min(one + 1, last);
    const omega1 = angular[one]!;
    const omega2 = angular[two]!;
    const perOmega1 = perAngular[one]!;
    const perOmega2 = perAngular[two]!;
    let re1 = loadRe[one]!;
    let im1 = loadIm[one]!;
    let re2 = loadRe[two]!;
    let im2 = loadIm[two]!;
    let inverse1 = 1 / (re1 * re1 + im1 * im1);
    let inverse2 = 1 / (re2 * re2 + im2 * im2);
    let vr1 = 1;
    let vi1 = 0;
    let cr1 = re1 * inverse1;
    let ci1 = -im1 * inverse1;
    let vr2 = 1;
    let vi2 = 0;
    let cr2 = re2 * inverse2;
    let ci2 = -im2 * inverse2;
    for (let leg = 0, place = 0; leg < count; leg += 1, place += NUMBERS) {
      const steady = numbers[place]!;
      const rising = numbers[place + 1]!;
      const falling = numbers[place + 2]!;
      const ohms = numbers[place + 4]!;
      re1 = steady;
      re2 = steady;
      im1 = omega1 * rising - perOmega1 * falling;
      im2 = omega2 * rising - perOmega2 * falling;
      if (ohms !== 0) {
        const x1 = omega1 * numbers[place + 3]!;
        const x2 = omega2 * numbers[place + 3]!;
        inverse1 = 1 / (ohms * ohms + x1 * x1);
        inverse2 = 1 / (ohms * ohms + x2 * x2);
        re1 += ohms * inverse1;
        im1 -= x1 * inverse1;
        re2 += ohms * inverse2;
        im2 -= x2 * inverse2;
      }
      if (isInverse[leg]!) {
        inverse1 = 1 / (re1 * re1 + im1 * im1);
        inverse2 = 1 / (re2 * re2 + im2 * im2);
        re1 *= inverse1;
        im1 *= -inverse1;
        re2 *= inverse2;
        im2 *= -inverse2;
      }
      if (isSeries[leg]!) {
        vr1 += re1 * cr1 - im1 * ci1;
        vi1 += re1 * ci1 + im1 * cr1;
        vr2 += re2 * cr2 - im2 * ci2;
        vi2 += re2 * ci2 + im2 * cr2;
      } else {
        cr1 += re1 * vr1 - im1 * vi1;
        ci1 += re1 * vi1 + im1 * vr1;
        cr2 += re2 * vr2 - im2 * vi2;
        ci2 += re2 * vi2 + im2 * vr2;
      }
    }
    inverse1 = 1 / (vr1 * vr1 + vi1 * vi1);
    inverse2 = 1 / (vr2 * vr2 + vi2 * vi2);
    re1 = vr1 * inverse1;
    im1 = -vi1 * inverse1;
    re2 = vr2 * inverse2;
    im2 = -vi2 * inverse2;
    transferRe[one] = re1;
    transferIm[one] = im1;
    admittanceRe[one] = cr1 * re1 - ci1 * im1;
    admittanceIm[one] = cr1 * im1 + ci1 * re1;
    transferRe[two] = re2;
    transferIm[two] = im2;
    admittanceRe[two] = cr2 * re2 - ci2 * im2;
    admittanceIm[two] = cr2 * im2 + ci2 * re2;
  }
  return {
    transfer: { re: transferRe, im: transferIm },
    admittance: { re: admittanceRe, im: admittanceIm },
  };
}

interface Solved {
  readonly load: Curve;
  readonly solution: LadderSolution;
}

const solved = new WeakMap<Network, Solved>();

/** A network on the impedance of its driver over the grid; the last load of each network is remembered. */
export function solveLadder(network: Network, load: Curve): LadderSolution {
  const known = solved.get(network);
  if (known?.load === load) return known.solution;
  const solution = solveLadderAt(network.legs, complexOf(load), frequencies);
  solved.set(network, { load, solution });
  return solution;
}

/** Volts at the driver over volts at the amplifier, complex, over the grid. */
export const transferOf = (network: Network, load: Curve): ComplexCurve => solveLadder(network, load).transfer;

/** The impedance of network and driver together, with phase, where the load's curve holds. */
export function inputImpedance(network: Network, load: Curve): Curve {
  const { from, to } = load;
  return curveOf(
    { title: 'Impedance with filter', quantity: 'resistance', from, to },
    inverseOf(solveLadder(network, load).admittance),
  );
}

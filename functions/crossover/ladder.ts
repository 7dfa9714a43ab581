import { zeros } from '../numeric/blocks.ts';
import { complexOf, curveOf, type ComplexCurve } from '../values/complex-curve.ts';
import type { Curve } from '../values/curve.ts';
import { frequencies } from '../values/grid.ts';
import type { Leg, Network } from '../values/network.ts';

/** A ladder on its load. */
export interface LadderSolution {
  /** Volts at the driver over volts at the amplifier. */
  readonly transfer: ComplexCurve;
  /** Ohms at the amplifier's end. */
  readonly input: ComplexCurve;
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

/** An impedance or admittance steady + j(ω·rising − falling/ω), with the admittance of a coil that has resistance beside
 *  it, if there is one. */
interface Immittance {
  readonly steady: number;
  readonly rising: number;
  readonly falling: number;
  readonly coil?: { readonly inductance: number; readonly resistance: number };
}

/** The impedance of a chain, or the admittance of a tank. */
function immittanceOf({ form, resistance, inductance = 0, coilResistance = 0, capacitance }: Leg): Immittance {
  const perCapacitance = capacitance === undefined ? 0 : 1 / capacitance;
  const loss = inductance === 0 ? 0 : coilResistance;
  if (form === 'chain')
    return { steady: trace + (resistance ?? 0) + loss, rising: inductance, falling: perCapacitance };
  const steady = trace + (resistance === undefined ? 0 : 1 / resistance);
  const rising = capacitance ?? 0;
  return loss === 0
    ? { steady, rising, falling: inductance === 0 ? 0 : 1 / inductance }
    : { steady, rising, falling: 0, coil: { inductance, resistance: loss } };
}

/**
 * Adds a leg to voltages and currents: a series leg its impedance times the current to the voltage, a shunt leg its
 * admittance times the voltage to the current. `to` is what grows, `by` what flows through or stands across the leg.
 */
function addLeg(leg: Leg, { angular, perAngular }: Angular, to: ComplexCurve, by: ComplexCurve): void {
  const { steady, rising, falling, coil } = immittanceOf(leg);
  const isInverse = (leg.place === 'series') !== (leg.form === 'chain');
  const { re: toRe, im: toIm } = to;
  const { re: byRe, im: byIm } = by;
  const count = toRe.length;
  for (let index = 0; index < count; index += 1) {
    let re = steady;
    let im = rising * angular[index]! - falling * perAngular[index]!;
    if (coil !== undefined) {
      const reactance = angular[index]! * coil.inductance;
      const inverse = 1 / (coil.resistance * coil.resistance + reactance * reactance);
      re += coil.resistance * inverse;
      im -= reactance * inverse;
    }
    if (isInverse) {
      const inverse = 1 / (re * re + im * im);
      re *= inverse;
      im *= -inverse;
    }
    const real = byRe[index]!;
    const imaginary = byIm[index]!;
    toRe[index] = toRe[index]! + re * real - im * imaginary;
    toIm[index] = toIm[index]! + re * imaginary + im * real;
  }
}

/**
 * Solves a ladder on a complex load at any frequencies, from the driver back to the amplifier: with 1 V at the driver,
 * each series leg adds its voltage, each shunt leg its current. One pass, linear in points and legs.
 */
export function solveLadderAt(legs: readonly Leg[], load: ComplexCurve, at: Float64Array): LadderSolution {
  const count = at.length;
  const [vRe, vIm] = zeros(2, count);
  const [iRe, iIm] = zeros(2, count);
  vRe.fill(1);
  for (let index = 0; index < count; index += 1) {
    const re = load.re[index]!;
    const im = load.im[index]!;
    const size = 1 / (re * re + im * im);
    iRe[index] = re * size;
    iIm[index] = -im * size;
  }
  const voltage = { re: vRe, im: vIm };
  const current = { re: iRe, im: iIm };
  const angular = angularOf(at);
  for (const leg of legs.toReversed()) {
    if (leg.place === 'series') addLeg(leg, angular, voltage, current);
    else addLeg(leg, angular, current, voltage);
  }
  // Turned in place: the voltage into the transfer, the current into the impedance.
  for (let index = 0; index < count; index += 1) {
    const a = vRe[index]!;
    const b = vIm[index]!;
    const c = iRe[index]!;
    const d = iIm[index]!;
    const square = 1 / (c * c + d * d);
    iRe[index] = (a * c + b * d) * square;
    iIm[index] = (b * c - a * d) * square;
    const inverse = 1 / (a * a + b * b);
    vRe[index] = a * inverse;
    vIm[index] = -b * inverse;
  }
  return { transfer: voltage, input: current };
}

const solved = new WeakMap<Network, WeakMap<Curve, LadderSolution>>();

/** A network on the impedance of its driver over the grid, solved once per pair of them. */
export function solveLadder(network: Network, load: Curve): LadderSolution {
  const known = solved.get(network) ?? new WeakMap<Curve, LadderSolution>();
  solved.set(network, known);
  const solution = known.get(load) ?? solveLadderAt(network.legs, complexOf(load), frequencies);
  known.set(load, solution);
  return solution;
}

/** Volts at the driver over volts at the amplifier, complex, over the grid. */
export const transferOf = (network: Network, load: Curve): ComplexCurve => solveLadder(network, load).transfer;

/** The impedance of network and driver together, with phase, where the load's curve holds. */
export function inputImpedance(network: Network, load: Curve): Curve {
  const { from, to } = load;
  return curveOf(
    { title: 'Impedance with filter', quantity: 'resistance', from, to },
    solveLadder(network, load).input,
  );
}

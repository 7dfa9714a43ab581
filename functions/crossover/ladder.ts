import type { Curve } from '../values/curve.ts';
import { frequencies } from '../values/grid.ts';
import type { Leg, Network } from '../values/network.ts';

/** Complex values, one per frequency of the grid. */
export interface ComplexCurve {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/** A ladder on its load. */
export interface LadderSolution {
  /** Volts at the driver over volts at the amplifier. */
  readonly transfer: ComplexCurve;
  /** Ohms at the amplifier's end. */
  readonly input: ComplexCurve;
}

/** In parallel or in series with ideal parts, so that their resonances stay finite: siemens or ohms. */
const trace = 1e-15;

const loads = new WeakMap<Curve, ComplexCurve>();

/** An impedance curve by its real and imaginary part, remembered with the curve. Without a phase it is a resistance. */
export function complexOf(curve: Curve): ComplexCurve {
  const known = loads.get(curve);
  if (known !== undefined) return known;
  const { y, phase } = curve;
  const re = new Float64Array(y.length);
  const im = new Float64Array(y.length);
  for (let index = 0; index < y.length; index += 1) {
    const angle = phase?.[index] ?? 0;
    re[index] = y[index]! * Math.cos(angle);
    im[index] = y[index]! * Math.sin(angle);
  }
  const made = { re, im };
  loads.set(curve, made);
  return made;
}

/**
 * Adds a leg to voltages and currents: a series leg its impedance times the current to the voltage, a shunt leg its
 * admittance times the voltage to the current. `to` is what grows, `by` what flows through or stands across the leg.
 */
function addLeg(leg: Leg, at: Float64Array, to: ComplexCurve, by: ComplexCurve): void {
  const { resistance, inductance = 0, coilResistance = 0, capacitance } = leg;
  const { re: toRe, im: toIm } = to;
  const { re: byRe, im: byIm } = by;
  const isChain = leg.form === 'chain';
  const isInverse = (leg.place === 'series') !== isChain;
  const coilLoss = inductance === 0 ? 0 : coilResistance;
  const steady = trace + (isChain ? (resistance ?? 0) + coilLoss : resistance === undefined ? 0 : 1 / resistance);
  const elastance = capacitance === undefined ? 0 : 1 / capacitance;
  const count = at.length;
  for (let index = 0; index < count; index += 1) {
    const angular = 2 * Math.PI * at[index]!;
    const reactance = angular * inductance;
    let re = steady;
    let im = 0;
    if (isChain) {
      im = elastance === 0 ? reactance : reactance - elastance / angular;
    } else {
      if (inductance !== 0) {
        const inverse = 1 / (coilLoss * coilLoss + reactance * reactance);
        re += coilLoss * inverse;
        im = -reactance * inverse;
      }
      if (capacitance !== undefined) im += angular * capacitance;
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
  const vRe = new Float64Array(count).fill(1);
  const vIm = new Float64Array(count);
  const iRe = new Float64Array(count);
  const iIm = new Float64Array(count);
  for (let index = 0; index < count; index += 1) {
    const re = load.re[index]!;
    const im = load.im[index]!;
    const size = 1 / (re * re + im * im);
    iRe[index] = re * size;
    iIm[index] = -im * size;
  }
  const voltage = { re: vRe, im: vIm };
  const current = { re: iRe, im: iIm };
  for (const leg of legs.toReversed()) {
    if (leg.place === 'series') addLeg(leg, at, voltage, current);
    else addLeg(leg, at, current, voltage);
  }
  const input = { re: new Float64Array(count), im: new Float64Array(count) };
  for (let index = 0; index < count; index += 1) {
    const a = vRe[index]!;
    const b = vIm[index]!;
    const c = iRe[index]!;
    const d = iIm[index]!;
    const square = 1 / (c * c + d * d);
    input.re[index] = (a * c + b * d) * square;
    input.im[index] = (b * c - a * d) * square;
    const inverse = 1 / (a * a + b * b);
    vRe[index] = a * inverse;
    vIm[index] = -b * inverse;
  }
  return { transfer: { re: vRe, im: vIm }, input };
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
  const { re, im } = solveLadder(network, load).input;
  return {
    kind: 'curve',
    title: 'Impedance with filter',
    quantity: 'resistance',
    y: re.map((real, index) => Math.sqrt(real * real + im[index]! * im[index]!)),
    phase: re.map((real, index) => Math.atan2(im[index]!, real)),
    from: load.from,
    to: load.to,
  };
}

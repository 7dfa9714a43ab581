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

/** Immittance of a leg in ohms (chain) or siemens (tank) at an angular frequency, into `out` as real and imaginary part. */
function ownImmittance(leg: Leg, angular: number, out: Float64Array): void {
  const { form, resistance, inductance, coilResistance = 0, capacitance } = leg;
  let re = trace;
  let im = 0;
  if (form === 'chain') {
    if (resistance !== undefined) re += resistance;
    if (inductance !== undefined) {
      re += coilResistance;
      im += angular * inductance;
    }
    if (capacitance !== undefined) im -= 1 / (angular * capacitance);
  } else {
    if (resistance !== undefined) re += 1 / resistance;
    if (inductance !== undefined) {
      const reactance = angular * inductance;
      const size = coilResistance * coilResistance + reactance * reactance;
      re += coilResistance / size;
      im -= reactance / size;
    }
    if (capacitance !== undefined) im += angular * capacitance;
  }
  out[0] = re;
  out[1] = im;
}

/** Impedance of a series leg, admittance of a shunt leg. */
export function immittanceOf(leg: Leg, angular: number, out: Float64Array): void {
  ownImmittance(leg, angular, out);
  if ((leg.place === 'series') === (leg.form === 'chain')) return;
  const re = out[0]!;
  const im = out[1]!;
  const size = re * re + im * im;
  out[0] = re / size;
  out[1] = -im / size;
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
    const size = re * re + im * im;
    iRe[index] = re / size;
    iIm[index] = -im / size;
  }
  const part = new Float64Array(2);
  for (let place = legs.length - 1; place >= 0; place -= 1) {
    const leg = legs[place]!;
    const [toRe, toIm, ofRe, ofIm] = leg.place === 'series' ? [vRe, vIm, iRe, iIm] : [iRe, iIm, vRe, vIm];
    for (let index = 0; index < count; index += 1) {
      immittanceOf(leg, 2 * Math.PI * at[index]!, part);
      const re = part[0]!;
      const im = part[1]!;
      toRe[index] = toRe[index]! + re * ofRe[index]! - im * ofIm[index]!;
      toIm[index] = toIm[index]! + re * ofIm[index]! + im * ofRe[index]!;
    }
  }
  const input = { re: new Float64Array(count), im: new Float64Array(count) };
  for (let index = 0; index < count; index += 1) {
    const [a, b, c, d] = [vRe[index]!, vIm[index]!, iRe[index]!, iIm[index]!];
    const current = c * c + d * d;
    input.re[index] = (a * c + b * d) / current;
    input.im[index] = (b * c - a * d) / current;
    const voltage = a * a + b * b;
    vRe[index] = a / voltage;
    vIm[index] = -b / voltage;
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
    y: re.map((real, index) => Math.hypot(real, im[index]!)),
    phase: re.map((real, index) => Math.atan2(im[index]!, real)),
    from: load.from,
    to: load.to,
  };
}

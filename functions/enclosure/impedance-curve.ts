import { solveLumped, type LumpedModel, type LumpedSolution } from './lumped.ts';

/** Impedance at the driver's terminals with coil inductance, from a solution of the circuit where there is one. */
export function solveImpedance(
  model: LumpedModel,
  at: Float64Array,
  solution: LumpedSolution = solveLumped(model, at),
): { readonly y: Float64Array; readonly phase: Float64Array } {
  const { fs, qes, re, coil } = model;
  const y = new Float64Array(at.length);
  const phase = new Float64Array(at.length);
  for (let index = 0; index < at.length; index += 1) {
    const f = at[index]!;
    const mRe = solution.mechanicalRe[index]!;
    const mIm = solution.mechanicalIm[index]!;
    const motional = ((re / qes) * (f / fs)) / (mRe * mRe + mIm * mIm);
    const real = re + motional * mIm;
    const imaginary = 2 * Math.PI * f * coil + motional * mRe;
    y[index] = Math.hypot(real, imaginary);
    phase[index] = Math.atan2(imaginary, real);
  }
  return { y, phase };
}

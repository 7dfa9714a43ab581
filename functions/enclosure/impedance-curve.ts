import { zeros } from '../numeric/blocks.ts';
import { intoPolar } from '../numeric/polar.ts';
import type { ComplexCurve } from '../values/complex-curve.ts';
import { solveLoad, type AcousticLoad } from './acoustic-load.ts';
import type { LumpedModel } from './lumped-model.ts';

/** Impedance at the driver's terminals with coil inductance, from its acoustic load where that is solved already, in the
 *  arrays given. */
export function impedanceValues(
  model: LumpedModel,
  at: Float64Array,
  load: Pick<AcousticLoad, 'mechanicalRe' | 'mechanicalIm'> = solveLoad(model, at),
  [real, imaginary]: readonly [Float64Array, Float64Array] = zeros(2, at.length),
): ComplexCurve {
  const { fs, qes, re, coil, lossyCoil } = model;
  const { mechanicalRe, mechanicalIm } = load;
  const perFs = re / (qes * fs);
  const reactive = 2 * Math.PI * coil;
  const { inductance = 0, across = 1 } = lossyCoil ?? {};
  const perAcross = (2 * Math.PI * inductance) / across;
  for (let index = 0; index < at.length; index += 1) {
    const f = at[index]!;
    const mRe = mechanicalRe[index]!;
    const mIm = mechanicalIm[index]!;
    const motional = (perFs * f) / (mRe * mRe + mIm * mIm);
    real[index] = re + motional * mIm;
    imaginary[index] = reactive * f + motional * mRe;
    if (inductance !== 0) {
      const x = perAcross * f;
      const part = (across * x) / (1 + x * x);
      real[index] = real[index]! + part * x;
      imaginary[index] = imaginary[index]! + part;
    }
  }
  return { re: real, im: imaginary };
}

/** The same by magnitude and phase. */
export function solveImpedance(...given: Parameters<typeof impedanceValues>): {
  readonly y: Float64Array;
  readonly phase: Float64Array;
} {
  const { re: y, im: phase } = impedanceValues(...given);
  intoPolar(y, phase, 'size');
  return { y, phase };
}

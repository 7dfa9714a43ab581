import { zeros } from '../numeric/blocks.ts';
import { angleAt } from '../numeric/polar.ts';
import { solveLoad, type AcousticLoad } from './acoustic-load.ts';
import type { LumpedModel } from './lumped-model.ts';

/** Impedance at the driver's terminals with coil inductance, from its acoustic load where that is solved already. */
export function solveImpedance(
  model: LumpedModel,
  at: Float64Array,
  load: Pick<AcousticLoad, 'mechanicalRe' | 'mechanicalIm'> = solveLoad(model, at),
): { readonly y: Float64Array; readonly phase: Float64Array } {
  const { fs, qes, re, coil, lossyCoil } = model;
  const [y, phase] = zeros(2, at.length);
  const perFs = re / (qes * fs);
  for (let index = 0; index < at.length; index += 1) {
    const f = at[index]!;
    const mRe = load.mechanicalRe[index]!;
    const mIm = load.mechanicalIm[index]!;
    const motional = (perFs * f) / (mRe * mRe + mIm * mIm);
    let real = re + motional * mIm;
    let imaginary = 2 * Math.PI * f * coil + motional * mRe;
    if (lossyCoil !== undefined) {
      const x = (2 * Math.PI * f * lossyCoil.inductance) / lossyCoil.across;
      const part = (lossyCoil.across * x) / (1 + x * x);
      real += part * x;
      imaginary += part;
    }
    y[index] = Math.sqrt(real * real + imaginary * imaginary);
    phase[index] = angleAt(real, imaginary);
  }
  return { y, phase };
}

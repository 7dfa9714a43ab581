/**
 * Far pressure of a point source on a rigid sphere over that of the same source in an endless wall, towards angles from the
 * axis through the source, for time factor e^(+jωt) and with the source as reference of phase. `ka` is the circumference
 * of the sphere over the wavelength. Spherical-harmonic series; its Hankel functions grow with the order, so the
 * recurrence upwards is stable. Good to about 1e-12 for ka from 1e-3 to 1000.
 */
export function sphereField(
  ka: number,
  cosines: readonly number[],
): { readonly re: Float64Array; readonly im: Float64Array } {
  const count = cosines.length;
  const re = new Float64Array(count);
  const im = new Float64Array(count);
  const legendre = new Float64Array(count).fill(1);
  const legendreBefore = new Float64Array(count);
  const sine = Math.sin(ka);
  const cosine = Math.cos(ka);
  let hRe = sine / ka;
  let hIm = cosine / ka;
  let nextRe = sine / ka ** 2 - cosine / ka;
  let nextIm = cosine / ka ** 2 + sine / ka;
  const terms = Math.ceil(ka + 5 * Math.cbrt(ka) + 12);
  for (let order = 0; order <= terms; order += 1) {
    // h′ₙ = n·hₙ/z − hₙ₊₁, and the term is (2n+1)·jⁿ/h′ₙ.
    const slopeRe = (order / ka) * hRe - nextRe;
    const slopeIm = (order / ka) * hIm - nextIm;
    const size = (2 * order + 1) / (slopeRe * slopeRe + slopeIm * slopeIm);
    let termRe = slopeRe * size;
    let termIm = -slopeIm * size;
    if (order % 4 === 1) [termRe, termIm] = [-termIm, termRe];
    else if (order % 4 === 2) [termRe, termIm] = [-termRe, -termIm];
    else if (order % 4 === 3) [termRe, termIm] = [termIm, -termRe];
    for (let index = 0; index < count; index += 1) {
      const here = legendre[index]!;
      re[index]! += termRe * here;
      im[index]! += termIm * here;
      legendre[index] = ((2 * order + 1) * cosines[index]! * here - order * legendreBefore[index]!) / (order + 1);
      legendreBefore[index] = here;
    }
    const factor = (2 * order + 3) / ka;
    [hRe, hIm, nextRe, nextIm] = [nextRe, nextIm, factor * nextRe - hRe, factor * nextIm - hIm];
  }
  // Times −j/z², halved for the wall, and turned back from the centre of the sphere to the source.
  for (let index = 0; index < count; index += 1) {
    const turnRe = Math.cos(ka * cosines[index]!) / (2 * ka ** 2);
    const turnIm = -Math.sin(ka * cosines[index]!) / (2 * ka ** 2);
    const partRe = im[index]!;
    const partIm = -re[index]!;
    re[index] = partRe * turnRe - partIm * turnIm;
    im[index] = partRe * turnIm + partIm * turnRe;
  }
  return { re, im };
}

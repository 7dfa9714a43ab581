import type { Box } from '../values/box.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';
import { solveLumped } from './lumped.ts';
import { resonanceOf } from './box-driver.ts';
import { modelOf } from './circuit-of.ts';

/** The lowest and highest frequency at which something in a box resonates, and the Q of the cone in it. */
export function resonancesOf(box: Box): { readonly low: number; readonly high: number; readonly q: number } {
  const { fs, qms, qes, re, series, ratio, frontRatio = 0 } = modelOf(box);
  const stiffness = Math.sqrt(1 + ratio + frontRatio);
  const all = [fs * stiffness, resonanceOf(box), box.radiator?.fp, box.highPass?.frequency].filter(
    (each) => each !== undefined,
  );
  // The lower of the two humps of a tuned box lies below both fs and the tuning.
  const humps = box.style === 'vented' || box.style === 'radiator' ? [(fs * resonanceOf(box)) / Math.max(...all)] : [];
  return {
    low: Math.min(...all, ...humps),
    high: Math.max(...all),
    q: stiffness / (1 / qms + re / (qes * (re + series))),
  };
}

const mostLines = 60_000;

/**
 * Response to a step of voltage at times in seconds, over the step of the moving mass alone; the coil inductance is left
 * out. By Fourier series over a period long enough for all to die away. What makes the step itself, s/(s + a), is taken
 * out first and put back as e^(−at), so that the series converges with the third power of frequency.
 */
export function stepResponse(box: Box, times: Float64Array): Float64Array | Problem {
  const { low, high, q } = resonancesOf(box);
  const period = Math.max(48, 12 * q) / low + (times.at(-1) ?? 0);
  const count = Math.ceil(80 * high * period);
  if (count > mostLines) {
    return new Problem(
      say`The resonances of this box lie too far apart, or ring too long, for a step response: check fs, the tuning and the high-pass.`,
      'box',
    );
  }
  const lines = Float64Array.from({ length: count }, (_, index) => (index + 1) / period);
  const model = modelOf(box);
  const { pressureRe, pressureIm } = solveLumped(model, lines);
  const flat = box.style === 'bandpass' ? 0 : 1;
  const far = Float64Array.of(1e4 * high);
  // G tends to 1 − a/s.
  const decay = flat === 0 ? 1 : 2 * Math.PI * far[0]! * solveLumped(model, far).pressureIm[0]!;
  const partRe = new Float64Array(count);
  const partIm = new Float64Array(count);
  for (let index = 0; index < count; index += 1) {
    const w = 2 * Math.PI * lines[index]!;
    const size = w * w + decay * decay;
    const re = pressureRe[index]! - (flat * w * w) / size;
    const im = pressureIm[index]! - (flat * w * decay) / size;
    partRe[index] = im / w;
    partIm[index] = -re / w;
  }
  return times.map((time) => {
    const turn = (2 * Math.PI * time) / period;
    const stepRe = Math.cos(turn);
    const stepIm = Math.sin(turn);
    let re = 1;
    let im = 0;
    let sum = 0;
    for (let index = 0; index < count; index += 1) {
      const next = re * stepRe - im * stepIm;
      im = re * stepIm + im * stepRe;
      re = next;
      sum += partRe[index]! * re - partIm[index]! * im;
    }
    return flat * Math.exp(-decay * time) + (2 * sum - flat / decay) / period;
  });
}

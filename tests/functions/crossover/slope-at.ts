import { slopeOver } from '../../../functions/crossover/slope-curve.ts';

/** Level and continuous phase of a slope at one frequency over the hand-over. */
export function slopeAt(name: string, pass: string, ratio: number): { readonly level: number; readonly phase: number } {
  const { y, phase } = slopeOver(name, pass, Float64Array.of(ratio));
  return { level: y[0]!, phase: phase[0]! };
}

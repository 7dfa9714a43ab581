import { soundSpeed } from '../air.ts';

/** End corrections of both ends together, in diameters. */
export const endCorrections = { 'flanged and free': 0.732, 'both flanged': 0.85, 'both free': 0.614 } as const;

/** Diameter of a round opening of an area. */
export const diameterOf = (area: number): number => Math.sqrt((4 * area) / Math.PI);

/** End corrections of a slot: a round end of its area, the inner one mirrored in each wall that it lies along. */
export const slotEnds = (area: number, walls: number): number => {
  const radius = Math.sqrt(area / Math.PI);
  return 0.85 * radius + 0.613 * radius * Math.sqrt(2 ** Math.round(walls));
};

/** Tuning of a volume by an effective length of a total area. */
export const helmholtz = (area: number, volume: number, effective: number): number =>
  (soundSpeed / (2 * Math.PI)) * Math.sqrt(area / (volume * effective));

/** Length with end corrections that tunes a volume with a total area. */
export const effectiveLength = (area: number, volume: number, tuning: number): number =>
  (soundSpeed ** 2 * area) / ((2 * Math.PI * tuning) ** 2 * volume);

/**
 * Length of straight port that a flare of a quarter circle stands for: its air is thinner by the square of its width, and
 * its mouth is a flanged end of a larger radius. Both in terms of the throat; the quarter circle itself included.
 */
export function flareLength(throat: number, flare: number): number {
  const steps = 64;
  let sum = 0;
  for (let step = 0; step < steps; step += 1) {
    const x = (step + 0.5) / steps;
    const radius = throat + flare * (1 - Math.sqrt(1 - x * x));
    sum += (throat / radius) ** 2 / steps;
  }
  const mouth = throat + flare;
  return flare * sum + 0.85 * mouth * (throat / mouth) ** 2;
}

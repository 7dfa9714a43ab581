import type { Curve } from '../values/curve.ts';
import { frequencies } from '../values/grid.ts';
import { sectionsOf, type Section } from './slope.ts';

interface Polar {
  /** Level over the pass band, dB. */
  readonly level: number;
  readonly phase: number;
}

function sectionAt({ at, q }: Section, u: number): Polar {
  const x = u / at;
  const re = q === undefined ? 1 : 1 - x ** 2;
  const im = q === undefined ? x : x / q;
  return { level: -10 * Math.log10(re ** 2 + im ** 2), phase: -Math.atan2(im, re) };
}

/** Level and continuous phase of a slope at a frequency over the hand-over. The high-pass mirrors the low-pass. */
export function slopeAt(name: string, pass: string, ratio: number): Polar {
  const high = pass === 'high';
  const parts = sectionsOf(name).map((section) => sectionAt(section, high ? 1 / ratio : ratio));
  const level = parts.reduce((sum, each) => sum + each.level, 0);
  const phase = parts.reduce((sum, each) => sum + each.phase, 0);
  return { level: Math.max(-300, level), phase: high ? -phase : phase };
}

/** A slope over the grid, 0 dB in its pass band. */
export function slopeCurve(name: string, pass: string, frequency: number): Curve {
  const points = [...frequencies].map((each) => slopeAt(name, pass, each / frequency));
  return {
    kind: 'curve',
    title: `${name} ${pass}-pass`,
    quantity: 'level',
    y: Float64Array.from(points, ({ level }) => level),
    phase: Float64Array.from(points, ({ phase }) => phase),
    from: frequencies[0]!,
    to: frequencies.at(-1)!,
  };
}

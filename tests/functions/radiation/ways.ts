import { slopeCurve } from '../../../functions/crossover/slope-curve.ts';
import type { Curve } from '../../../functions/values/curve.ts';
import { frequencies } from '../../../functions/values/grid.ts';
import type { Way } from '../../../functions/values/way.ts';

const whole = { from: frequencies[0]!, to: frequencies.at(-1)! } as const;

const steady = (title: string, quantity: 'level' | 'resistance', value: number): Curve => ({
  kind: 'curve',
  title,
  quantity,
  y: new Float64Array(frequencies.length).fill(value),
  phase: new Float64Array(frequencies.length),
  ...whole,
});

/** A driver of 90 dB at every frequency on a wire, where nothing else is said. */
export const way = (given: Partial<Way> = {}): Way => ({
  kind: 'way',
  name: 'Way',
  pressure: steady('Level', 'level', 90),
  impedance: steady('Impedance', 'resistance', 8),
  network: { kind: 'network', name: 'Wire', legs: [] },
  sd: 0,
  position: { x: 0, y: 0, z: 0 },
  polarity: 1,
  gain: 0,
  delay: 0,
  basis: 'model',
  ...given,
});

/** Two ways that add up flat on the axis. */
export const twoWays = (handover: number, low: Partial<Way>, high: Partial<Way>): readonly Way[] => [
  way({ active: slopeCurve('LR4', 'low', handover), ...low }),
  way({ active: slopeCurve('LR4', 'high', handover), ...high }),
];

import { define } from '../define.ts';
import { soundSpeed } from '../air.ts';
import { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';
import type { Verdict } from '../values/verdict.ts';
import { usual } from '../usual.ts';
import { width } from './edge.ts';

/** A driver on a rectangular panel, metres from its left and lower edge. */
export interface Place {
  readonly width: number;
  readonly height: number;
  readonly x: number;
  readonly y: number;
}

export const panel = {
  width,
  height: { ...usual.length, summary: 'height of the front panel', typical: [0.1, 2] },
  x: { ...usual.length, summary: 'middle of the driver from the left edge' },
  y: { ...usual.length, summary: 'middle of the driver from the lower edge' },
} as const;

export const distancesToEdges = (place: Place): Record<'left' | 'right' | 'below' | 'above', number> => ({
  left: place.x,
  right: place.width - place.x,
  below: place.y,
  above: place.height - place.y,
});

/** Refuses a driver that does not stand on its panel. */
export function offPanel(place: Place): Problem | undefined {
  for (const [parameter, at, size] of [
    ['x', place.x, place.width],
    ['y', place.y, place.height],
  ] as const)
    if (at >= size)
      return new Problem(
        say`The driver at ${measured(at, 'length')} is not on the panel of ${measured(size, 'length')}; place it inside.`,
        parameter,
      );
  return undefined;
}

export const edgePlace = define({
  name: 'EDGE.PLACE_VERDICT',
  summary: 'Whether a driver stands equally far from three or more edges, so that they act at one frequency.',
  parameters: {
    ...panel,
    alike: {
      quantity: 'ratio',
      min: 0,
      max: 1,
      default: 0.1,
      summary: 'distances this near to one another count as equal',
    },
  },
  returns: { record: 'verdict', summary: 'good, or caution with the frequency at which the edges add up' },
  source: { source: 'practice', at: 'unequal distances to the edges' },
  example: {
    formula: '=EDGE.PLACE_VERDICT("220 mm", "380 mm", "110 mm", "270 mm")',
    gives: { status: 'caution', word: 'Edges add up' },
  },
  remarks: 'EDGE.DIFFRACTION shows how much it matters; a wide driver cares less than a dome.',
  compute(given): Verdict | Problem {
    const off = offPanel(given);
    if (off) return off;
    const sorted = Object.values(distancesToEdges(given)).toSorted((one, other) => one - other);
    const equal = (from: number): boolean => sorted[from + 2]! <= sorted[from]! * (1 + given.alike + 1e-9);
    const from = [0, 1].find(equal);
    if (from === undefined)
      return {
        kind: 'verdict',
        status: 'good',
        word: 'Good',
        reason: say`The nearest three edges are ${measured(sorted[0]!, 'length')}, ${measured(sorted[1]!, 'length')} and ${measured(sorted[2]!, 'length')} away: their ripples fall on different frequencies.`,
      };
    const mean = (sorted[from]! + sorted[from + 1]! + sorted[from + 2]!) / 3;
    return {
      kind: 'verdict',
      status: 'caution',
      word: 'Edges add up',
      reason: say`Three edges are about ${measured(mean, 'length')} away and add up at ${measured(soundSpeed / (2 * mean), 'frequency')}. Move the driver so that the distances differ.`,
    };
  },
});

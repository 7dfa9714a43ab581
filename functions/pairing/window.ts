import { define } from '../define.ts';
import { usual } from '../usual.ts';
import { Problem } from '../values/problem.ts';
import type { Limit, Window } from '../values/window.ts';
import { readLimits } from './read-limits.ts';

const window = { record: 'window', summary: 'window of a pair' } as const;
const own = { source: 'own', at: 'highest floor and lowest ceiling' } as const;
const exampleWindow = 'PAIR.WINDOW("resonance", 1700 Hz, 1275 Hz, "narrowing", 1923 Hz, 2631 Hz)';
const most = (limits: readonly Limit[], value: (limit: Limit) => number): Limit =>
  limits.reduce((one, other) => (value(other) > value(one) ? other : one));

/** The floor and the ceiling that bind when every rule is stretched. */
export const stretchedEnds = (pair: Pick<Window, 'floors' | 'ceilings'>): { low: Limit; high: Limit } => ({
  low: most(pair.floors, (limit) => limit.stretched),
  high: most(pair.ceilings, (limit) => -limit.stretched),
});

/** The band above every floor and below every ceiling. */
export function windowOf(floors: readonly Limit[], ceilings: readonly Limit[]): Window {
  const low = most(floors, (limit) => limit.at);
  const high = most(ceilings, (limit) => -limit.at);
  const stretched = stretchedEnds({ floors, ceilings });
  return {
    kind: 'window',
    floors,
    ceilings,
    low,
    high,
    octaves: Math.log2(high.at) - Math.log2(low.at),
    stretchedOctaves: Math.log2(stretched.high.stretched) - Math.log2(stretched.low.stretched),
  };
}

export const pairWindow = define({
  name: 'PAIR.WINDOW',
  summary: 'The window in which two drivers can be handed over, from the limits of both.',
  parameters: {
    floorNames: { table: true, summary: 'names of the floors, as in "resonance"' },
    floors: { table: true, of: 'frequency', summary: 'floors: frequencies that the hand-over must not go below' },
    stretchedFloors: { table: true, of: 'frequency', summary: 'the same floors with their rules stretched' },
    ceilingNames: { table: true, summary: 'names of the ceilings, as in "narrowing"' },
    ceilings: { table: true, of: 'frequency', summary: 'ceilings: frequencies that the hand-over must not go above' },
    stretchedCeilings: { table: true, of: 'frequency', summary: 'the same ceilings with their rules stretched' },
  },
  returns: { record: 'window', summary: 'the window and the limits that set it' },
  source: own,
  example: { formula: `=${exampleWindow}`, gives: { octaves: 0.178 } },
  remarks:
    'Rows without a limit are left out; a limit without a stretched one does not stretch. The window is negative when the drivers do not meet.',
  compute(given) {
    const floors = readLimits(
      { names: given.floorNames, limits: given.floors, stretched: given.stretchedFloors },
      { side: 'floor', limits: 'floors', stretched: 'stretchedFloors' },
    );
    if (floors instanceof Problem) return floors;
    const ceilings = readLimits(
      { names: given.ceilingNames, limits: given.ceilings, stretched: given.stretchedCeilings },
      { side: 'ceiling', limits: 'ceilings', stretched: 'stretchedCeilings' },
    );
    if (ceilings instanceof Problem) return ceilings;
    return windowOf(floors, ceilings);
  },
});

export const pairLow = define({
  name: 'PAIR.LOW',
  summary: 'The lower end of a window.',
  parameters: { window },
  returns: { quantity: 'frequency', summary: 'highest floor' },
  source: own,
  example: { formula: `=PAIR.LOW(${exampleWindow})`, gives: 1700 },
  compute: (given) => given.window.low.at,
});

export const pairHigh = define({
  name: 'PAIR.HIGH',
  summary: 'The upper end of a window.',
  parameters: { window },
  returns: { quantity: 'frequency', summary: 'lowest ceiling' },
  source: own,
  example: { formula: `=PAIR.HIGH(${exampleWindow})`, gives: 1923 },
  compute: (given) => given.window.high.at,
});

export const pairCentre = define({
  name: 'PAIR.CENTRE',
  summary: 'The middle of a window, as far in octaves from one end as from the other.',
  parameters: { window },
  returns: { quantity: 'frequency', summary: 'geometric mean of both ends' },
  source: { source: 'own', at: 'geometric mean' },
  example: { formula: `=PAIR.CENTRE(${exampleWindow})`, gives: 1808 },
  remarks: 'For a negative window it is the place where both limits are broken by the same number of octaves.',
  compute: (given) => Math.sqrt(given.window.low.at) * Math.sqrt(given.window.high.at),
});

export const pairOctaves = define({
  name: 'PAIR.OCTAVES',
  summary: 'The width of a window in octaves, negative when the drivers do not meet.',
  parameters: { window },
  returns: { quantity: 'octaves', summary: 'width of the window' },
  source: { source: 'own', at: 'log2 of the upper end over the lower' },
  example: { formula: `=PAIR.OCTAVES(${exampleWindow})`, gives: 0.178 },
  compute: (given) => given.window.octaves,
});

const frequency = { ...usual.frequency, summary: 'hand-over' } as const;
const floor = { ...usual.frequency, summary: 'frequency that the hand-over must not go below' } as const;
const ceiling = { ...usual.frequency, summary: 'frequency that the hand-over must not go above' } as const;
const octaves = { source: 'own', at: 'log2 of the ratio of frequencies' } as const;

export const overlapBelow = define({
  name: 'OVERLAP.BELOW',
  summary: 'The octaves between a floor and the hand-over.',
  parameters: { frequency, floor },
  returns: { quantity: 'octaves', summary: 'octaves to spare, negative when below the floor' },
  source: octaves,
  example: { formula: '=OVERLAP.BELOW("1700 Hz", "850 Hz")', gives: 1 },
  compute: (given) => Math.log2(given.frequency / given.floor),
});

export const overlapAbove = define({
  name: 'OVERLAP.ABOVE',
  summary: 'The octaves between the hand-over and a ceiling.',
  parameters: { frequency, ceiling },
  returns: { quantity: 'octaves', summary: 'octaves to spare, negative when above the ceiling' },
  source: octaves,
  example: { formula: '=OVERLAP.ABOVE("1300 Hz", "2600 Hz")', gives: 1 },
  compute: (given) => Math.log2(given.ceiling / given.frequency),
});

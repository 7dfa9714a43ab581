/** Measuring directions: every 10° on a horizontal and a vertical circle round the loudspeaker. */
export const stepOfAngles = Math.PI / 18;

/** Steps from the axis to the side; what is behind mirrors it. */
export const quarter = 9;

/** On which circle and towards which side a direction lies. */
export type Side = 'right' | 'left' | 'up' | 'down';

/** How much a direction counts in each average of squared pressure; each average sums to 1. */
export interface Share {
  readonly window: number;
  readonly early: number;
  readonly power: number;
}

/** Area of the sphere that a direction stands for, from 0° to 90° (ANSI/CTA-2034-A, appendix C); 180° − θ counts as θ. */
const zones = [
  0.000604486, 0.004730189, 0.008955027, 0.012387354, 0.014989611, 0.016868154, 0.018165962, 0.019006744, 0.019477787,
  0.019629373,
] as const;

const range = (from: number, to: number): readonly number[] =>
  Array.from({ length: to - from + 1 }, (_, index) => from + index);

type Directions = Readonly<Record<Side, readonly number[]>>;

/** The axis and the point behind lie on both circles; they are counted once, as `right`. In steps of 10°. */
const group = (given: Partial<Directions>): Directions => ({ right: [], left: [], up: [], down: [], ...given });

const listening = group({ right: [0, 1, 2, 3], left: [1, 2, 3], up: [1], down: [1] });

/** Floor, ceiling, front wall, side walls, rear wall. */
const reflections = [
  group({ down: [2, 3, 4] }),
  group({ up: [4, 5, 6] }),
  group({ right: [0, 1, 2, 3], left: [1, 2, 3] }),
  group({ right: range(4, 8), left: range(4, 8) }),
  group({ right: range(9, 18), left: range(9, 17) }),
] as const;

const sizeOf = (of: Directions): number => Object.values(of).reduce((sum, each) => sum + each.length, 0);
const countIn = (of: Directions, side: Side, step: number): number => (of[side].includes(step) ? 1 / sizeOf(of) : 0);

const isCounted = (side: Side, step: number): boolean => side === 'right' || (step !== 0 && step !== 18);
const zoneOf = (side: Side, step: number): number => (isCounted(side, step) ? zones[Math.min(step, 18 - step)]! : 0);

const sides = ['right', 'left', 'up', 'down'] as const satisfies readonly Side[];
const wholeSphere = sides.reduce((sum, side) => range(0, 18).reduce((part, step) => part + zoneOf(side, step), sum), 0);

const sharesOf = (side: Side): readonly Share[] =>
  range(0, 18).map((step) => ({
    window: countIn(listening, side, step),
    early: reflections.reduce((sum, each) => sum + countIn(each, side, step) / reflections.length, 0),
    power: zoneOf(side, step) / wholeSphere,
  }));

/**
 * The share of each direction in the listening window (nine directions), in the early reflections (mean of the means of
 * floor, ceiling, front, side and rear wall) and in the sound power (70 directions by the area each stands for), by side
 * and by angle in steps of 10° from 0° to 180°.
 */
export const shares: Readonly<Record<Side, readonly Share[]>> = {
  right: sharesOf('right'),
  left: sharesOf('left'),
  up: sharesOf('up'),
  down: sharesOf('down'),
};

/** Shares of listening window, early reflections and sound power in the estimated in-room response. */
export const inRoom = { window: 0.12, early: 0.44, power: 0.44 } as const;

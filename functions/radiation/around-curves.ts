import { bandOfWay } from '../crossover/way-response.ts';
import { demoHigh, demoTweeter } from '../crossover/parameters.ts';
import { define } from '../define.ts';
import { usual } from '../usual.ts';
import type { Curve } from '../values/curve.ts';
import type { Band } from '../values/interpolate.ts';
import { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';
import type { Way } from '../values/way.ts';
import { sumAround, type Around } from './around.ts';
import { fieldTowards } from './cabinet-field.ts';

interface Loudspeaker {
  readonly panelWidth: number | undefined;
  readonly ways: readonly Way[];
}

interface Known extends Loudspeaker {
  readonly around: Around;
}

const known = new WeakMap<Way, Known>();

/** The averages of a loudspeaker; the last ones of each first way are kept, since several cells ask for the same. */
function aroundOf({ panelWidth, ways }: Loudspeaker): Around {
  const [first] = ways;
  const last = known.get(first!);
  const same = last?.panelWidth === panelWidth && last?.ways.length === ways.length;
  if (last && same && last.ways.every((way, index) => way === ways[index])) return last.around;
  const around = sumAround(ways, panelWidth);
  known.set(first!, { panelWidth, ways: [...ways], around });
  return around;
}

/** The band in which every way holds, or why there is none. */
function bandOfAll(ways: readonly Way[]): Band | Problem {
  if (ways.length === 0) return new Problem(say`There is no way; give the ways of the loudspeaker.`, 'ways');
  const bands = ways.map(bandOfWay);
  const from = Math.max(...bands.map((band) => band.from));
  const to = Math.min(...bands.map((band) => band.to));
  if (from < to) return { from, to };
  return new Problem(
    say`The ways hold in bands that do not meet: one begins at ${measured(from, 'frequency')}, another ends at ${measured(to, 'frequency')}.`,
    'ways',
  );
}

function levelOf(given: Loudspeaker, title: string, read: (around: Around) => Float64Array): Curve | Problem {
  const band = bandOfAll(given.ways);
  if (band instanceof Problem) return band;
  return { kind: 'curve', title, quantity: 'level', y: read(aroundOf(given)), ...band };
}

const less = (one: Float64Array, other: Float64Array): Float64Array => one.map((value, index) => value - other[index]!);

const panelWidth = {
  ...usual.length,
  min: 0.02,
  max: 3,
  optional: true,
  summary: 'width of the front panel; left out for drivers in an endless wall',
  typical: [0.1, 1],
} as const;
const ways = { record: 'way', many: true, summary: 'ways of the loudspeaker, with their places on the panel' } as const;
const standard = (at: string) => ({ source: 'cta2034', at }) as const;
const model =
  'From piston models: each way with its filter, place and the pattern of a flat piston, the cabinet as a hard sphere whose step lies where that of the panel does. No break-up, no edge ripple. A measured way is taken as measured in its cabinet. Far away, free of walls.';

const demo = `WAY.OF(${demoTweeter}, ${demoHigh})`;

export const aroundAxis = define({
  name: 'AROUND.AXIS',
  summary: 'The level of a loudspeaker at 1 m on its axis, the step of the cabinet included.',
  parameters: { panelWidth, ways },
  returns: { record: 'curve', of: 'level', summary: 'level in dB with phase' },
  source: { source: 'morse1948', at: 'radiation from a point source on the surface of a sphere' },
  example: { formula: `=CURVE.AT(AROUND.AXIS(, ${demo}), "10 kHz")`, gives: 90.2 },
  remarks: model,
  compute: (given) => towards(given, 'horizontal', 0, 'On the axis'),
});

export const aroundAt = define({
  name: 'AROUND.AT',
  summary: 'The level of a loudspeaker at 1 m at an angle, beside or above its axis.',
  parameters: {
    plane: { choice: ['horizontal', 'vertical'], summary: 'circle that the angle is counted on' },
    angle: {
      quantity: 'angle',
      min: -Math.PI,
      max: Math.PI,
      summary: 'to the right or upwards, negative to the other side',
    },
    panelWidth,
    ways,
  },
  returns: { record: 'curve', of: 'level', summary: 'level in dB with phase' },
  source: { source: 'morse1948', at: 'radiation from a point source on the surface of a sphere' },
  example: { formula: `=CURVE.AT(AROUND.AT("horizontal", "45°", , ${demo}), "10 kHz")`, gives: 85.8 },
  remarks: model,
  compute(given) {
    const { plane, angle, panelWidth: panel } = given;
    if (panel === undefined && Math.abs(angle) > Math.PI / 2 + 1e-9)
      return new Problem(
        say`${measured(angle, 'angle')} lies behind the endless wall; give a panel width, or an angle up to ${measured(Math.PI / 2, 'angle')}.`,
        'angle',
      );
    return towards(given, plane, angle, `At an angle, ${plane}`);
  },
});

function towards(given: Loudspeaker, plane: 'horizontal' | 'vertical', angle: number, title: string): Curve | Problem {
  const band = bandOfAll(given.ways);
  if (band instanceof Problem) return band;
  const { re, im } = fieldTowards(given.ways, given.panelWidth, plane, angle);
  return {
    kind: 'curve',
    title,
    quantity: 'level',
    y: re.map((real, index) => Math.max(-300, 20 * Math.log10(Math.hypot(real, im[index]!)))),
    phase: re.map((real, index) => Math.atan2(im[index]!, real)),
    ...band,
  };
}

export const aroundWindow = define({
  name: 'AROUND.WINDOW',
  summary: 'The listening window: the mean level of nine directions near the axis.',
  parameters: { panelWidth, ways },
  returns: { record: 'curve', of: 'level', summary: 'level in dB' },
  source: standard('listening window: axis, ±10° vertical, ±10°, ±20° and ±30° horizontal'),
  example: { formula: `=CURVE.AT(AROUND.WINDOW("220 mm", ${demo}), "10 kHz")`, gives: 89.4 },
  remarks: `What several seats hear directly. ${model}`,
  compute: (given) => levelOf(given, 'Listening window', ({ window }) => window),
});

export const aroundEarly = define({
  name: 'AROUND.EARLY',
  summary: 'The early reflections: the mean level towards floor, ceiling, front, side and rear walls.',
  parameters: { panelWidth, ways },
  returns: { record: 'curve', of: 'level', summary: 'level in dB' },
  source: standard('early reflections: mean of the means of floor, ceiling, front, side and rear wall'),
  example: { formula: `=CURVE.AT(AROUND.EARLY("220 mm", ${demo}), "10 kHz")`, gives: 86.1 },
  remarks: `Each of the five groups counts alike; the rear wall is the mean of 19 directions from ±90° to 180°. ${model}`,
  compute: (given) => levelOf(given, 'Early reflections', ({ early }) => early),
});

export const aroundPower = define({
  name: 'AROUND.POWER',
  summary: 'The sound power: the mean level of 70 directions all round, each by the area it stands for.',
  parameters: { panelWidth, ways },
  returns: { record: 'curve', of: 'level', summary: 'level in dB of the mean over the sphere' },
  source: standard('sound power, weights of appendix C'),
  example: { formula: `=CURVE.AT(AROUND.POWER("220 mm", ${demo}), "10 kHz")`, gives: 82.2 },
  remarks: `The weights of the standard give directions near the axis up to a quarter more than their area, so a narrow beam reads up to 1 dB high. ${model}`,
  compute: (given) => levelOf(given, 'Sound power', ({ power }) => power),
});

export const aroundRoom = define({
  name: 'AROUND.ROOM',
  summary:
    'The estimated in-room response of a loudspeaker, from its listening window, early reflections and sound power.',
  parameters: { panelWidth, ways },
  returns: { record: 'curve', of: 'level', summary: 'level in dB' },
  source: standard('estimated in-room response: 12 % listening window, 44 % early reflections, 44 % sound power'),
  example: { formula: `=CURVE.AT(AROUND.ROOM("220 mm", ${demo}), "10 kHz")`, gives: 85.5 },
  remarks: `Shows as a dip what an uneven off-axis response does, also where the axis is even. It falls towards high frequencies by nature. Below 300 Hz the room itself rules. ${model}`,
  compute: (given) => levelOf(given, 'Estimated in-room response', ({ room }) => room),
});

export const aroundIndex = define({
  name: 'AROUND.INDEX',
  summary: 'The directivity index of a loudspeaker: its listening window over its sound power.',
  parameters: { panelWidth, ways },
  returns: { record: 'curve', of: 'level', summary: 'directivity index in dB' },
  source: standard('sound power directivity index'),
  example: { formula: `=CURVE.AT(AROUND.INDEX("220 mm", ${demo}), "10 kHz")`, gives: 7.2 },
  remarks: `Should rise smoothly; a hump at a hand-over is a mismatch of the drivers. ${model}`,
  compute: (given) => levelOf(given, 'Directivity index', ({ window, power }) => less(window, power)),
});

export const aroundEarlyIndex = define({
  name: 'AROUND.EARLY_INDEX',
  summary: 'The listening window of a loudspeaker over its early reflections.',
  parameters: { panelWidth, ways },
  returns: { record: 'curve', of: 'level', summary: 'directivity index of the early reflections in dB' },
  source: standard('early reflections directivity index'),
  example: { formula: `=CURVE.AT(AROUND.EARLY_INDEX("220 mm", ${demo}), "10 kHz")`, gives: 3.3 },
  remarks: `Should rise smoothly. ${model}`,
  compute: (given) =>
    levelOf(given, 'Directivity index of early reflections', ({ window, early }) => less(window, early)),
});

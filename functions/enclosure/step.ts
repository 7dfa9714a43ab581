import { define } from '../define.ts';
import type { Box } from '../values/box.ts';
import { Problem } from '../values/problem.ts';
import type { TableRecord } from '../values/table.ts';
import { box, demoClosed } from './parameters.ts';
import { resonancesOf, stepResponse } from './step-response.ts';

const points = 200;
const evenly = (duration: number, count: number): Float64Array =>
  Float64Array.from({ length: count + 1 }, (_, index) => (duration * index) / count);

export const boxStep = define({
  name: 'BOX.STEP',
  summary: 'Response of a box to a step of voltage, as a table over time.',
  parameters: {
    box,
    duration: {
      quantity: 'time',
      min: 1e-5,
      max: 10,
      optional: true,
      typical: [0.005, 0.5],
      summary: 'how long; four periods of the lowest resonance when left out',
    },
  },
  returns: { record: 'table', summary: 'time and response, the step itself being 1' },
  source: { source: 'own', at: 'Fourier series of the response function over frequency' },
  example: { formula: `=BOX.STEP(${demoClosed}, "50 ms")`, gives: { title: 'Step response', rows: 201 } },
  remarks: 'A box never holds a step: it falls back through zero and settles there.',
  compute: (given): TableRecord | Problem => {
    const times = evenly(given.duration ?? 4 / resonancesOf(given.box).low, points);
    const values = stepResponse(given.box, times);
    if (values instanceof Problem) return values;
    return {
      kind: 'table',
      title: 'Step response',
      columns: [
        { name: 'Time', quantity: 'time' },
        { name: 'Response', quantity: 'ratio' },
      ],
      rows: [...times].map((time, index) => [time, values[index]!]),
    };
  },
});

interface Settling {
  readonly times: Float64Array;
  readonly values: Float64Array;
}

const settled = new WeakMap<Box, Settling | Problem>();

/** The step response for as long as it can matter, once per box. */
function settling(of: Box): Settling | Problem {
  const known = settled.get(of);
  if (known !== undefined) return known;
  const { low, q } = resonancesOf(of);
  const times = evenly(Math.max(8, 3 * q) / low, 4 * points);
  const values = stepResponse(of, times);
  const found = values instanceof Problem ? values : { times, values };
  settled.set(of, found);
  return found;
}

export const boxOvershoot = define({
  name: 'BOX.OVERSHOOT',
  summary: 'How far the step response of a box swings through zero, over its highest value.',
  parameters: { box },
  returns: { quantity: 'ratio', summary: 'deepest swing to the other side' },
  source: { source: 'small1972closed', at: 'transient response by Qtc' },
  example: { formula: `=BOX.OVERSHOOT(${demoClosed})`, gives: 0.208 },
  compute: (given) => {
    const found = settling(given.box);
    if (found instanceof Problem) return found;
    return Math.max(0, -Math.min(...found.values)) / Math.max(...found.values);
  },
});

export const boxRinging = define({
  name: 'BOX.RINGING',
  summary: 'How long the step response of a box stays outside a share of the step.',
  parameters: {
    box,
    share: {
      quantity: 'ratio',
      min: 0.001,
      max: 0.9,
      default: 0.05,
      typical: [0.01, 0.2],
      summary: 'share of the highest value within which it has settled',
    },
  },
  returns: { quantity: 'time', summary: 'time until it has settled' },
  source: { source: 'own', at: 'last time that the step response leaves the band' },
  example: { formula: `=BOX.RINGING(${demoClosed})`, gives: 0.0099 },
  compute: (given) => {
    const found = settling(given.box);
    if (found instanceof Problem) return found;
    const { times, values } = found;
    const limit = given.share * Math.max(...values);
    const last = values.findLastIndex((each) => Math.abs(each) > limit);
    if (last < 0) return 0;
    const [before, after] = [Math.abs(values[last]!), Math.abs(values[last + 1] ?? 0)];
    const share = before === after ? 0 : (before - limit) / (before - after);
    return times[last]! + Math.min(Math.max(share, 0), 1) * (times[1]! - times[0]!);
  },
});

import { define } from '../define.ts';
import { soundSpeed } from '../air.ts';
import { pistonFactor } from '../numeric/bessel.ts';
import { usual } from '../usual.ts';
import type { Curve } from '../values/curve.ts';
import { frequencies, placeOf } from '../values/grid.ts';
import { crossingsIn, extremeIn } from '../values/interpolate.ts';
import { Problem } from '../values/problem.ts';
import { measured, say } from '../values/say.ts';
import { distancesToEdges, offPanel, panel, type Place } from './panel.ts';
import { sizeOf } from './piston.ts';

const azimuths = 720;
const turns = 48;

/** From a place to the start of the rounding, all round. */
function pathsTo(place: Place, radius: number): Float64Array {
  const { left, right, below, above } = distancesToEdges(place);
  return Float64Array.from({ length: azimuths }, (_, index) => {
    const azimuth = ((index + 0.5) / azimuths) * 2 * Math.PI;
    const across = Math.cos(azimuth);
    const up = Math.sin(azimuth);
    const toSide = (across > 0 ? right - radius : left - radius) / Math.abs(across);
    const toEnd = (up > 0 ? above - radius : below - radius) / Math.abs(up);
    return Math.min(toSide, toEnd);
  });
}

/** Points of the grid within an octave. */
const anOctave = placeOf(2 * frequencies[0]!);

/**
 * Mean of e^(−jk·path) at every frequency of the grid: what the edges send back together, over what reaches them. An
 * octave up doubles every angle, which takes no sine of its own.
 */
export function edgeSums(paths: Float64Array): { readonly re: Float64Array; readonly im: Float64Array } {
  const re = new Float64Array(frequencies.length);
  const im = new Float64Array(frequencies.length);
  const first = frequencies.subarray(0, anOctave).map((frequency) => (2 * Math.PI * frequency) / soundSpeed);
  for (const path of paths) {
    for (let start = 0; start < anOctave; start += 1) {
      let cosine = Math.cos(first[start]! * path);
      let sine = Math.sin(first[start]! * path);
      for (let index = start; index < re.length; index += anOctave) {
        re[index] = re[index]! + cosine / paths.length;
        im[index] = im[index]! - sine / paths.length;
        const double = 2 * sine * cosine;
        cosine = 1 - 2 * sine * sine;
        sine = double;
      }
    }
  }
  return { re, im };
}

/** The way along a rounding and back down to its depth, for equal parts of its quarter turn. */
const roundings = (radius: number): Float64Array =>
  Float64Array.from({ length: radius === 0 ? 1 : turns }, (_, index) => {
    const turn = radius === 0 ? 0 : ((index + 0.5) / turns) * (Math.PI / 2);
    return radius * (turn + 1 - Math.cos(turn));
  });

interface Panel extends Place {
  readonly sd: number;
  readonly radius: number;
}

function diffraction(given: Panel): Curve {
  const edge = edgeSums(pathsTo(given, given.radius));
  const turn = edgeSums(roundings(given.radius));
  const y = new Float64Array(frequencies.length);
  const phase = new Float64Array(frequencies.length);
  for (const [index, frequency] of frequencies.entries()) {
    const [edgeRe, edgeIm, turnRe, turnIm] = [edge.re[index]!, edge.im[index]!, turn.re[index]!, turn.im[index]!];
    const along = given.sd === 0 ? 1 : pistonFactor(sizeOf(given.sd, frequency));
    const re = 1 - 0.5 * along * (edgeRe * turnRe - edgeIm * turnIm);
    const im = -0.5 * along * (edgeRe * turnIm + edgeIm * turnRe);
    y[index] = 20 * Math.log10(Math.hypot(re, im));
    phase[index] = Math.atan2(im, re);
  }
  return {
    kind: 'curve',
    title: 'Edge diffraction',
    quantity: 'level',
    y,
    phase,
    from: frequencies[0]!,
    to: frequencies.at(-1)!,
  };
}

/** Refuses a driver that is not on the flat of its panel. */
function misplaced(given: Panel): Problem | undefined {
  const off = offPanel(given);
  if (off) return off;
  const nearest = Math.min(...Object.values(distancesToEdges(given)));
  if (given.radius < nearest) return undefined;
  return new Problem(
    say`The rounding of ${measured(given.radius, 'length')} reaches under the middle of the driver, ${measured(nearest, 'length')} from the nearest edge; give a smaller radius or move the driver.`,
    'radius',
  );
}

const radius = {
  quantity: 'length',
  min: 0,
  max: 1,
  default: 0,
  summary: 'radius of the rounded edges',
  typical: [0, 0.075],
} as const;
const parameters = {
  ...panel,
  sd: { ...usual.area, min: 0, default: 0, summary: 'radiating area; a point when left out' },
  radius,
} as const;
const source = {
  source: 'own',
  at: 'first-order edge sources all round the panel, 1 − ½·mean of e^(−jk·path); a rounding spreads the turn along its arc',
} as const;
const examplePlace = '"220 mm", "380 mm", "110 mm", "240 mm"';

export const edgeDiffraction = define({
  name: 'EDGE.DIFFRACTION',
  summary: 'What the edges of a rectangular front panel do to the level on the axis, step and ripple.',
  parameters,
  returns: { record: 'curve', of: 'level', summary: 'level in dB: 0 as in a wide wall, −6 low down' },
  source,
  example: { formula: `=CURVE.AT(EDGE.DIFFRACTION(${examplePlace}), "1 kHz")`, gives: 2.49 },
  remarks:
    'Far away on the axis, first order only: each edge sends back what reaches it once. An estimate that shows where ripple comes from and what moving the driver does, not a measurement. A wide cone lights the edges less. Use it in place of EDGE.STEP, not with it.',
  compute: (given) => misplaced(given) ?? diffraction(given),
});

export const edgeRipple = define({
  name: 'EDGE.RIPPLE',
  summary: 'How far the level on the axis swings above the edge step.',
  parameters: {
    ...parameters,
    to: { ...usual.frequency, default: 20000, summary: 'highest frequency looked at' },
  },
  returns: { quantity: 'level', summary: 'highest less lowest level above the place where the step first is passed' },
  source,
  example: { formula: `=EDGE.RIPPLE(${examplePlace})`, gives: 5.3 },
  remarks: 'Compare places of the driver with it: the middle of a panel is the worst, uneven distances even out.',
  compute(given) {
    const wrong = misplaced(given);
    if (wrong) return wrong;
    const curve = diffraction(given);
    const [start] = crossingsIn(curve, { from: curve.from, to: curve.to }, 0, 'upwards');
    if (start === undefined || start >= given.to)
      return new Problem(
        say`Up to ${measured(given.to, 'frequency')} the step is not passed yet; look higher up.`,
        'to',
      );
    const band = { from: start, to: Math.min(given.to, curve.to) };
    return extremeIn(curve, band, 1).value - extremeIn(curve, band, -1).value;
  },
});

export const edgeRadius = define({
  name: 'EDGE.RADIUS_FREQUENCY',
  summary: 'The frequency above which rounding the edges with a radius begins to help.',
  parameters: { radius: { ...usual.length, summary: 'radius of the rounded edges', typical: [0.003, 0.075] } },
  returns: { quantity: 'frequency', summary: 'frequency where the radius is an eighth of a wavelength' },
  source: { source: 'practice', at: 'radius of an eighth of a wavelength, c/(8r)' },
  example: { formula: '=EDGE.RADIUS_FREQUENCY("19 mm")', gives: 2258 },
  remarks: 'A router bit of 6 mm begins above 7 kHz: it feels good and is hardly heard.',
  compute: (given) => soundSpeed / (8 * given.radius),
});

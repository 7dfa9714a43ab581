import { soundSpeed } from '../air.ts';
import type { Direction } from '../crossover/direction.ts';
import { pistonFactor } from '../numeric/bessel.ts';
import type { ComplexCurve } from '../values/complex-curve.ts';
import { frequencies, placeOf } from '../values/grid.ts';
import { distancesToEdges, type Place } from './panel.ts';
import { sizeOf } from './piston.ts';

export interface Panel extends Place {
  readonly sd: number;
  readonly radius: number;
}

const azimuths = 720;
const turns = 48;

/** A piece of edge: how much farther the way by it is than the straight one, metres, and its share in what comes back. */
interface Piece {
  readonly path: number;
  readonly share: number;
}

/** Points of the grid within an octave. */
const anOctave = placeOf(2 * frequencies[0]!);

/**
 * Sum of share·e^(−jk·path) at every frequency of the grid: what edges send out together. An octave up doubles every
 * angle, which takes no sine of its own.
 */
export function edgeSums(pieces: readonly Piece[]): ComplexCurve {
  const re = new Float64Array(frequencies.length);
  const im = new Float64Array(frequencies.length);
  const first = frequencies.subarray(0, anOctave).map((frequency) => (2 * Math.PI * frequency) / soundSpeed);
  for (const { path, share } of pieces) {
    for (let start = 0; start < anOctave; start += 1) {
      let cosine = Math.cos(first[start]! * path);
      let sine = Math.sin(first[start]! * path);
      for (let index = start; index < re.length; index += anOctave) {
        re[index] = re[index]! + cosine * share;
        im[index] = im[index]! - sine * share;
        const double = 2 * sine * cosine;
        cosine = 1 - 2 * sine * sine;
        sine = double;
      }
    }
  }
  return { re, im };
}

/** One side of a panel: the pieces of its edge, and how far it leans towards the listener. */
interface Side {
  readonly pieces: Piece[];
  /** Cosine between the listener and the outward normal of the side. */
  readonly outwards: number;
}

/** Cosines between the listener and the right, the top and the front. */
interface Towards {
  readonly right: number;
  readonly up: number;
  readonly ahead: number;
}

/**
 * The boundary wave of Maggi and Rubinowicz for a source on the panel and a listener far away: a piece of edge seen from the
 * source within dφ sends cos α/(1 − s)·dφ/4π of e^(−jkρ(1 − s)), where ρ is its distance, s the cosine between it and the
 * listener, and α the angle off the axis. On the axis that is the mean of e^(−jkρ), halved.
 */
function sidesOf(panel: Panel, { right, up, ahead }: Towards): readonly Side[] {
  const { left: toLeft, right: toRight, below, above } = distancesToEdges(panel);
  const side = (outwards: number): Side => ({ pieces: [], outwards });
  const sides = { left: side(-right), right: side(right), below: side(-up), above: side(up) };
  for (let index = 0; index < azimuths; index += 1) {
    const azimuth = ((index + 0.5) / azimuths) * 2 * Math.PI;
    const across = Math.cos(azimuth);
    const upwards = Math.sin(azimuth);
    const toSide = ((across > 0 ? toRight : toLeft) - panel.radius) / Math.abs(across);
    const toEnd = ((upwards > 0 ? above : below) - panel.radius) / Math.abs(upwards);
    const other = 1 - (right * across + up * upwards);
    const hit = toSide < toEnd ? (across > 0 ? 'right' : 'left') : upwards > 0 ? 'above' : 'below';
    sides[hit].pieces.push({ path: Math.min(toSide, toEnd) * other, share: ahead / other / azimuths });
  }
  return Object.values(sides);
}

/** The way along a rounding, less how far it leads towards the listener, for equal parts of its quarter turn. */
const roundingOf = (radius: number, outwards: number, ahead: number): readonly Piece[] =>
  Array.from({ length: turns }, (_, index) => {
    const turn = ((index + 0.5) / turns) * (Math.PI / 2);
    const path = radius * (turn - outwards * Math.sin(turn) + ahead * (1 - Math.cos(turn)));
    return { path, share: 1 / turns };
  });

/** What all edges together send towards a listener, over twice what reaches them. */
function edgesTowards(panel: Panel, towards: Towards): ComplexCurve {
  const re = new Float64Array(frequencies.length);
  const im = new Float64Array(frequencies.length);
  let shares = 0;
  for (const { pieces, outwards } of sidesOf(panel, towards)) {
    for (const { share } of pieces) shares += share;
    const edge = edgeSums(pieces);
    const turn = panel.radius === 0 ? undefined : edgeSums(roundingOf(panel.radius, outwards, towards.ahead));
    for (let index = 0; index < re.length; index += 1) {
      const [edgeRe, edgeIm] = [edge.re[index]!, edge.im[index]!];
      const [turnRe, turnIm] = turn === undefined ? [1, 0] : [turn.re[index]!, turn.im[index]!];
      re[index] = re[index]! + edgeRe * turnRe - edgeIm * turnIm;
      im[index] = im[index]! + edgeRe * turnIm + edgeIm * turnRe;
    }
  }
  // Along the panel all shares gather in one azimuth and fall between the pieces; there the way by the edge is no longer.
  for (let index = 0; index < re.length; index += 1) re[index] = re[index]! + 1 - shares;
  return { re, im };
}

/** Pressure of a driver on a panel far away in a direction in front, over that on the axis of a wide wall. */
export function panelField(panel: Panel, { horizontal, vertical }: Direction): ComplexCurve {
  const towards = {
    right: Math.sin(horizontal) * Math.cos(vertical),
    up: Math.sin(vertical),
    ahead: Math.cos(horizontal) * Math.cos(vertical),
  };
  const sine = Math.hypot(towards.right, towards.up);
  const { re, im } = edgesTowards(panel, towards);
  for (const [index, frequency] of frequencies.entries()) {
    const size = panel.sd === 0 ? 0 : sizeOf(panel.sd, frequency);
    const along = -0.5 * pistonFactor(size);
    re[index] = pistonFactor(size * sine) + along * re[index]!;
    im[index] = along * im[index]!;
  }
  return { re, im };
}

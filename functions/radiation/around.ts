import { soundSpeed } from '../air.ts';
import { wayField } from '../crossover/way-response.ts';
import { pistonFactor } from '../numeric/bessel.ts';
import { frequencies } from '../values/grid.ts';
import type { Way } from '../values/way.ts';
import { inRoom, quarter, shares, stepOfAngles } from './angles.ts';
import { cabinetOf, isWithoutStep, type Cabinet } from './cabinet-field.ts';
import { sizeOf } from './piston.ts';
import { remembering } from '../remembering.ts';

const count = frequencies.length;

/** The pattern of a piston towards 0°, 10° … 90°. */
const pistonOf = remembering((sd: number): readonly Float64Array[] =>
  Array.from({ length: quarter + 1 }, (_, step) =>
    frequencies.map((frequency) => pistonFactor(sizeOf(sd, frequency) * Math.sin(step * stepOfAngles))),
  ),
);

/** Mean levels round a loudspeaker in dB at 1 m for 2.83 V. */
export interface Around {
  readonly axis: Float64Array;
  readonly window: Float64Array;
  readonly early: Float64Array;
  readonly power: Float64Array;
  readonly room: Float64Array;
}

/** A way ready for summing: its pressure on its axis in the cabinet, and its pattern. */
interface Source {
  readonly re: Float64Array;
  readonly im: Float64Array;
  readonly pattern: readonly Float64Array[];
  readonly way: Way;
}

function sourceOf(way: Way, { axis }: Cabinet): Source {
  const { re, im } = wayField(way);
  const pattern = pistonOf(way.sd);
  if (!isWithoutStep(way)) return { re, im, pattern, way };
  return {
    re: re.map((real, index) => real * axis.re[index]! - im[index]! * axis.im[index]!),
    im: re.map((real, index) => real * axis.im[index]! + im[index]! * axis.re[index]!),
    pattern,
    way,
  };
}

/**
 * Sums the ways towards all measuring directions, with pattern, place, network and cabinet, and takes the averages of
 * squared pressure. Linear in ways, directions and frequencies. Without a panel width the drivers sit in an endless wall.
 */
export function sumAround(ways: readonly Way[], panelWidth: number | undefined): Around {
  const cabinet = cabinetOf(panelWidth);
  const sources = ways.map((way) => sourceOf(way, cabinet));
  const axis = new Float64Array(count);
  const window = new Float64Array(count);
  const early = new Float64Array(count);
  const power = new Float64Array(count);
  /** Real and imaginary part towards right, left, up, down in front, then the same behind. */
  const sum = new Float64Array(16);
  for (let step = 0; step <= quarter; step += 1) {
    const sine = Math.sin(step * stepOfAngles);
    const cosine = Math.cos(step * stepOfAngles);
    const behind = 2 * quarter - step;
    const front = [shares.right[step]!, shares.left[step]!, shares.up[step]!, shares.down[step]!];
    const back = [shares.right[behind]!, shares.left[behind]!, shares.up[behind]!, shares.down[behind]!];
    for (let index = 0; index < count; index += 1) {
      const waveNumber = (2 * Math.PI * frequencies[index]!) / soundSpeed;
      sum.fill(0);
      for (const { re, im, pattern, way } of sources) {
        const size = pattern[step]![index]!;
        const real = re[index]! * size;
        const imaginary = im[index]! * size;
        const { x, y, z } = way.position;
        const depth = z === 0 ? 0 : waveNumber * z * cosine;
        const depthCos = depth === 0 ? 1 : Math.cos(depth);
        const depthSin = depth === 0 ? 0 : Math.sin(depth);
        for (let circle = 0; circle < 2; circle += 1) {
          const turn = waveNumber * sine * (circle === 0 ? x : y);
          const turnCos = turn === 0 ? 1 : Math.cos(turn);
          const turnSin = turn === 0 ? 0 : Math.sin(turn);
          for (let place = 0; place < 2; place += 1) {
            // In front the depth delays, behind it comes first.
            const sineOfDepth = place === 0 ? -depthSin : depthSin;
            const aRe = real * depthCos - imaginary * sineOfDepth;
            const aIm = real * sineOfDepth + imaginary * depthCos;
            const at = 8 * place + 4 * circle;
            sum[at]! += aRe * turnCos - aIm * turnSin;
            sum[at + 1]! += aRe * turnSin + aIm * turnCos;
            sum[at + 2]! += aRe * turnCos + aIm * turnSin;
            sum[at + 3]! += aIm * turnCos - aRe * turnSin;
          }
        }
      }
      if (step === 0) axis[index] = sum[0]! ** 2 + sum[1]! ** 2;
      const toFront = cabinet.power[step]![index]!;
      const toBack = step === quarter ? 0 : cabinet.power[behind]![index]!;
      for (let side = 0; side < 4; side += 1) {
        const ahead = toFront * (sum[2 * side]! ** 2 + sum[2 * side + 1]! ** 2);
        const after = toBack * (sum[8 + 2 * side]! ** 2 + sum[9 + 2 * side]! ** 2);
        const shareAhead = front[side]!;
        const shareAfter = back[side]!;
        window[index]! += shareAhead.window * ahead;
        early[index]! += shareAhead.early * ahead + shareAfter.early * after;
        power[index]! += shareAhead.power * ahead + shareAfter.power * after;
      }
    }
  }
  const room = window.map(
    (value, index) => inRoom.window * value + inRoom.early * early[index]! + inRoom.power * power[index]!,
  );
  const decibels = (squares: Float64Array): Float64Array =>
    squares.map((square) => Math.max(-300, 10 * Math.log10(square)));
  return {
    axis: decibels(axis),
    window: decibels(window),
    early: decibels(early),
    power: decibels(power),
    room: decibels(room),
  };
}

import { zeros } from '../numeric/blocks.ts';
import { solveChamber, type Chamber, type LoadArrays } from './chamber.ts';
import type { LumpedModel } from './lumped-model.ts';

/** What the cone works against and what becomes of the air it moves, over a list of frequencies. Complex ratios. */
export interface AcousticLoad {
  /** Mechanical side S² + S/Qms + 1 + αF with the air on both sides of the cone. */
  readonly mechanicalRe: Float64Array;
  readonly mechanicalIm: Float64Array;
  /** Volume that reaches the room over that of the cone; absent where it is 1 throughout. */
  readonly outRe?: Float64Array;
  readonly outIm?: Float64Array;
  /** Volume through port or radiators over that of the cone; absent without one. */
  readonly flowRe?: Float64Array;
  readonly flowIm?: Float64Array;
}

/** A cone in front of plain air springs. */
function plain({ fs, qms }: LumpedModel, ratio: number, at: Float64Array, arrays: LoadArrays): void {
  const { mechanicalRe, mechanicalIm } = arrays;
  const stiffness = 1 + ratio;
  const perFs = 1 / fs;
  const perQms = 1 / qms;
  for (let index = 0; index < at.length; index += 1) {
    const s = at[index]! * perFs;
    mechanicalRe[index] = stiffness - s * s;
    mechanicalIm[index] = s * perQms;
  }
}

function behind(model: LumpedModel): Chamber | undefined {
  const { style, fs, ratio = 0, lossFrequency = fs, radiator } = model;
  const { leakageQ = Infinity, absorptionQ = Infinity, portQ = Infinity } = model;
  switch (style) {
    case 'free':
      return undefined;
    case 'closed':
      return leakageQ === Infinity && absorptionQ === Infinity ? undefined : { lossFrequency, leakageQ, absorptionQ };
    case 'vented':
      return { lossFrequency, leakageQ, absorptionQ, opening: { kind: 'port', portQ } };
    case 'radiator':
      return {
        lossFrequency,
        leakageQ,
        absorptionQ,
        ...(radiator === undefined ? {} : { opening: { kind: 'radiator', ...radiator } }),
      };
    case 'bandpass':
      return absorptionQ === Infinity
        ? undefined
        : { lossFrequency: fs * Math.sqrt(1 + ratio), leakageQ: Infinity, absorptionQ };
  }
}

/** Room for a load over so many frequencies. */
export function roomFor(count: number): LoadArrays {
  const [mechanicalRe, mechanicalIm, airRe, airIm, flowRe, flowIm] = zeros(6, count);
  return { mechanicalRe, mechanicalIm, airRe, airIm, flowRe, flowIm };
}

/** The load of a box on its driver, in the arrays given. The volume of a leak reaches the room as that of the cone and
 *  the port does. */
export function solveLoad(model: LumpedModel, at: Float64Array, arrays = roomFor(at.length)): AcousticLoad {
  const { fs, lossFrequency = fs, ratio = 0, frontRatio = 0, leakageQ = Infinity, portQ = Infinity } = model;
  const { mechanicalRe, mechanicalIm, airRe, airIm, flowRe, flowIm } = arrays;
  const rear = behind(model);
  plain(model, rear === undefined ? ratio : 0, at, arrays);
  if (rear !== undefined) solveChamber(rear, at, ratio, arrays);
  if (model.style !== 'bandpass') {
    if (rear === undefined) return { mechanicalRe, mechanicalIm };
    const opened = rear.opening === undefined ? {} : { flowRe, flowIm };
    return { mechanicalRe, mechanicalIm, outRe: airRe, outIm: airIm, ...opened };
  }
  const opening = { kind: 'port', portQ } as const;
  solveChamber({ lossFrequency, leakageQ, absorptionQ: Infinity, opening }, at, frontRatio, arrays);
  // What the cone does not compress before it, it drives out of the port and the leak.
  for (let index = 0; index < at.length; index += 1) {
    airRe[index] = 1 - airRe[index]!;
    airIm[index] = -airIm[index]!;
  }
  return { mechanicalRe, mechanicalIm, outRe: airRe, outIm: airIm, flowRe, flowIm };
}

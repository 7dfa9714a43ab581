import { zeros } from '../numeric/blocks.ts';
import { solveChamber, type Chamber } from './chamber.ts';
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

/** A cone in front of plain air springs: all of its volume reaches the room. */
function plain({ fs, qms, ratio = 0 }: LumpedModel, at: Float64Array): AcousticLoad {
  const [mechanicalRe, mechanicalIm] = zeros(2, at.length);
  const stiffness = 1 + ratio;
  const perFs = 1 / fs;
  const perQms = 1 / qms;
  for (let index = 0; index < at.length; index += 1) {
    const s = at[index]! * perFs;
    mechanicalRe[index] = stiffness - s * s;
    mechanicalIm[index] = s * perQms;
  }
  return { mechanicalRe, mechanicalIm };
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

/** The load of a box on its driver. The volume of a leak reaches the room as that of the cone and the port does. */
export function solveLoad(model: LumpedModel, at: Float64Array): AcousticLoad {
  const { fs, lossFrequency = fs, ratio = 0, frontRatio = 0, leakageQ = Infinity, portQ = Infinity } = model;
  const rear = behind(model);
  const load = plain(rear === undefined ? model : { ...model, ratio: 0 }, at);
  const back = rear === undefined ? undefined : solveChamber(rear, at, ratio, load);
  if (model.style !== 'bandpass') {
    if (back === undefined) return load;
    const opened = rear?.opening === undefined ? {} : { flowRe: back.flowRe, flowIm: back.flowIm };
    return { ...load, outRe: back.airRe, outIm: back.airIm, ...opened };
  }
  const opening = { kind: 'port', portQ } as const;
  const front = solveChamber({ lossFrequency, leakageQ, absorptionQ: Infinity, opening }, at, frontRatio, load);
  // What the cone does not compress before it, it drives out of the port and the leak.
  const { airRe, airIm, flowRe, flowIm } = front;
  return { ...load, outRe: airRe.map((re) => 1 - re), outIm: airIm.map((im) => -im), flowRe, flowIm };
}

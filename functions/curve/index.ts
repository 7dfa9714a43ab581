import type { AnyFunction } from '../define.ts';
import { curveAdd, curveDifference, curveLimit, curveShift, curveSum } from './combine.ts';
import {
  curveAt,
  curveCrosses,
  curveFall,
  curveLowest,
  curveLowestAt,
  curvePeak,
  curvePeakAt,
  curveRipple,
} from './read.ts';
import { curveDivide, curveJoin, curveMean, curvePhase, curveScale, curveSmooth, curveTable } from './shape.ts';
import { curveColumn, curveRead } from './tables.ts';

export const curveFunctions: readonly AnyFunction[] = [
  curveRead,
  curveColumn,
  curveAt,
  curvePhase,
  curveMean,
  curveFall,
  curvePeak,
  curvePeakAt,
  curveLowest,
  curveLowestAt,
  curveRipple,
  curveCrosses,
  curveSum,
  curveAdd,
  curveDifference,
  curveShift,
  curveLimit,
  curveSmooth,
  curveDivide,
  curveScale,
  curveJoin,
  curveTable,
];

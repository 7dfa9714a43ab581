import type { AnyFunction } from '../define.ts';
import { loadHandover, loadLowest, loadLowestAt, loadParallel, loadSeries } from './load.ts';
import { padImpedance, padInput, padLoss, padSeries, padShunt, padSingle } from './pad.ts';
import { standardAbove, standardBelow, standardNearest } from './standard.ts';

export const electricalFunctions: readonly AnyFunction[] = [
  loadLowest,
  loadLowestAt,
  loadParallel,
  loadSeries,
  loadHandover,
  padSeries,
  padShunt,
  padLoss,
  padInput,
  padSingle,
  padImpedance,
  standardNearest,
  standardBelow,
  standardAbove,
];

import type { AnyFunction } from '../define.ts';
import { pairHandoverVerdict, pairVerdict } from './verdict.ts';
import { overlapAbove, overlapBelow, pairCentre, pairHigh, pairLow, pairOctaves, pairWindow } from './window.ts';

export const pairingFunctions: readonly AnyFunction[] = [
  pairWindow,
  pairLow,
  pairHigh,
  pairCentre,
  pairOctaves,
  pairVerdict,
  pairHandoverVerdict,
  overlapBelow,
  overlapAbove,
];

import type { AnyFunction } from '../define.ts';
import { checkAtLeast, checkAtMost, checkNote, checkWithin } from './bounds.ts';
import { checkCount, checkWorst } from './together.ts';

export const checkFunctions: readonly AnyFunction[] = [
  checkAtLeast,
  checkAtMost,
  checkWithin,
  checkNote,
  checkWorst,
  checkCount,
];

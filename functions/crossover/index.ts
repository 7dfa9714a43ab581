import type { AnyFunction } from '../define.ts';
import { filterSlope } from './filter-slope.ts';

export const crossoverFunctions: readonly AnyFunction[] = [filterSlope];

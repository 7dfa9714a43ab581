import type { AnyFunction } from './define.ts';
import { driverFunctions } from './driver/index.ts';
import { enclosureFunctions } from './enclosure/index.ts';

/** Every sheet function, in the order of the function guide. */
export const catalogue: readonly AnyFunction[] = [...driverFunctions, ...enclosureFunctions];

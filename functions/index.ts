import type { AnyFunction } from './define.ts';

/** Every sheet function, in the order of the function guide. */
export const catalogue: readonly AnyFunction[] = [];

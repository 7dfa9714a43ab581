const COARSE = matchMedia('(pointer: coarse)');

/** Whether the main pointer is a finger, which needs more room. */
export const isPointerCoarse = (): boolean => COARSE.matches;

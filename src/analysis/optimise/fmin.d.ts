/** What is used of a library that carries no types. */
declare module 'fmin/src/nelderMead.js' {
  /** The downhill simplex of Nelder and Mead (1965), from a start and a place `zeroDelta` away from it along each axis whose start
   *  is zero, until its corners differ by less than `minErrorDelta` in place and value.
   *  @returns The lowest place met, the start included. */
  export function nelderMead(
    of: (place: readonly number[]) => number,
    start: number[],
    options?: {
      readonly maxIterations?: number;
      readonly zeroDelta?: number;
      readonly minErrorDelta?: number;
      /** By how much all corners draw in where nothing else leads down; from 1 on it ends there. */
      readonly sigma?: number;
    },
  ): { readonly x: readonly number[]; readonly fx: number };
}

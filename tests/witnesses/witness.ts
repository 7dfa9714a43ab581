/** A number from outside this project that a formula must come to. */
export interface Witness {
  /** A whole formula; the function that it vouches for is the first called in it. */
  readonly formula: string;
  /** SI value as printed or computed outside. */
  readonly gives: number;
  /** Largest difference; half a unit of the last digit of `gives` when left out. */
  readonly within?: { readonly relative?: number; readonly absolute?: number };
  /** Published source and place in it, or the means of an independent computation. */
  readonly source: string;
  /** `read`: the text was seen; `memory`: from memory; `computed`: by a general library or by hand; `practice`: common
   *  practice, no source. */
  readonly confirmed: 'read' | 'memory' | 'computed' | 'practice';
}

export const functionIn = (formula: string): string => /[A-Z][A-Z0-9_]*\.[A-Z0-9_.]+/.exec(formula)?.[0] ?? '';

/** Half a unit of the last digit that a number is written with. */
export const halfDigit = (value: number): number => 0.5 * 10 ** -(String(value).split('.')[1]?.length ?? 0) * 1.0001;

export function allowed({ gives, within }: Witness): number {
  return within === undefined
    ? halfDigit(gives)
    : Math.max(Math.abs(gives) * (within.relative ?? 0), within.absolute ?? 0);
}

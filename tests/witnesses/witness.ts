/** A number or word from outside this project that a formula must come to. */
export interface Witness {
  readonly formula: string;
  /** Cells that the formula reads: address and what is typed there. */
  readonly cells?: Readonly<Record<string, string>>;
  /** The field that is held, where the formula gives a driver, a box, a verdict or another such thing; `number 2` for the
   *  second number that a verdict tells. */
  readonly field?: string;
  /** The functions that it vouches for; the first called in the formula when left out. */
  readonly vouches?: readonly string[];
  /** SI value as printed or computed outside, or the word. */
  readonly gives: number | string;
  /** Largest difference; half a unit of the last digit of `gives` when left out. */
  readonly within?: { readonly relative?: number; readonly absolute?: number };
  /** Published source and place in it, or the means of an independent computation. */
  readonly source: string;
  /** `read`: the text was seen; `memory`: from memory; `computed`: by a general library or by hand; `practice`: common
   *  practice, no source. */
  readonly confirmed: 'read' | 'memory' | 'computed' | 'practice';
  /** Why we do not come to it: the number stays visible, and its test fails as expected. */
  readonly disagrees?: string;
}

/** For a number that is as it stands, not a rounded one. */
export const exactly = { relative: 1e-9 } as const;

const functionIn = (formula: string): string => /[A-Z][A-Z0-9_]*(\.[A-Z0-9_]+)?(?=\()/.exec(formula)?.[0] ?? '';

/** The functions that a witness vouches for. */
export const vouchedBy = ({ vouches, formula }: Witness): readonly string[] => vouches ?? [functionIn(formula)];

/** Half a unit of the last digit that a number is written with. */
export const halfDigit = (value: number): number => 0.5 * 10 ** -(String(value).split('.')[1]?.length ?? 0) * 1.0001;

/** How far an answer is from its witness, as a share of what is allowed: up to 1 agrees. */
export function shareOf(witness: Witness, got: number | string): number {
  const { gives } = witness;
  if (typeof gives === 'string' || typeof got === 'string') return got === gives ? 0 : Infinity;
  return Math.abs(got - gives) / allowed(witness);
}

/** The largest difference that a witness allows; none for a word. */
function allowed({ gives, within }: Witness): number {
  if (typeof gives === 'string') return 0;
  return within === undefined
    ? halfDigit(gives)
    : Math.max(Math.abs(gives) * (within.relative ?? 0), within.absolute ?? 0);
}

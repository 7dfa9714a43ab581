/** Two formulas that must come to the same number by different ways: a limit, a round trip, a balance. */
export interface Identity {
  readonly formula: string;
  readonly equals: string;
  /** Cells that both formulas read: address and what is typed there. */
  readonly cells?: Readonly<Record<string, string>>;
  readonly vouches: readonly string[];
  /** Largest difference, relative. */
  readonly within: number;
  readonly because: string;
}

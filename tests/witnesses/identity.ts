/** How an identity vouches, other than by a number from outside: a limit where the answer is known beforehand; there and
 *  back again; a law of scale; a balance of parts and whole; the same mirrored or in another order; the value at which a
 *  verdict turns; the same by another way, through other functions or by plain arithmetic in the formula. */
export type Nature = 'limit' | 'round trip' | 'scale law' | 'balance' | 'symmetry' | 'turning point' | 'another way';

/** Two formulas that must come to the same number by different ways. */
export interface Identity {
  readonly nature: Nature;
  readonly formula: string;
  readonly equals: string;
  /** Cells that both formulas read: address and what is typed there. */
  readonly cells?: Readonly<Record<string, string>>;
  readonly vouches: readonly string[];
  /** Largest difference, relative. */
  readonly within: number;
  readonly because: string;
}

type More = Partial<Pick<Identity, 'within' | 'cells'>>;

/** An identity in one line: functions parted by blanks, formulas without their equals sign. */
export const same = (
  nature: Nature,
  vouches: string,
  formula: string,
  equals: string,
  because: string,
  more: More = {},
): Identity => ({
  nature,
  vouches: vouches.split(' '),
  formula: `=${formula}`,
  equals: `=${equals}`,
  because,
  within: 1e-9,
  ...more,
});

/** A verdict that has a status on one side of a value, and not on the other. */
export const turns = (
  vouches: string,
  within: string,
  beyond: string,
  because: string,
  status = 'good',
  more: More = {},
): Identity =>
  same(
    'turning point',
    vouches,
    `CHECK.COUNT("${status}", ${within})-CHECK.COUNT("${status}", ${beyond})`,
    '1',
    because,
    more,
  );

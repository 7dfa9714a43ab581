import { Refused } from '../../engine/arguments.ts';
import type { Given, Held } from './datum.ts';
import { isTable } from './datum.ts';

/** Thrown by a compiled sheet that meets what only the engine knows how to take; whoever runs it asks the engine then. */
export class OnlyEngine extends Error {}

/** Sums smaller than this share of their first number are taken as zero, and numbers this close as equal: so does the engine. */
const EPSILON = 1e-13;

const NO_NUMBER = 'The result is no number: a root of something negative, or a number too large to hold.';
const DIVIDED_BY_ZERO = 'Something is divided by zero: look at the cell below the division sign, it is zero or empty.';

export const finite = (value: number): number | Refused => (Number.isFinite(value) ? value : new Refused(NO_NUMBER));

/** One value where one is wanted. */
export function single(value: Given): Held {
  if (value === undefined || isTable(value)) throw new OnlyEngine();
  return value;
}

/** A number where one is wanted; an empty cell is 0 and a truth 0 or 1. Texts are left to the engine. */
export function numberIn(value: Given): number | Refused {
  const held = single(value);
  if (typeof held === 'number' || held instanceof Refused) return held;
  if (held === null) return 0;
  if (typeof held === 'boolean') return Number(held);
  throw new OnlyEngine();
}

export function truthIn(value: Given): boolean | Refused {
  const held = single(value);
  if (typeof held === 'boolean' || held instanceof Refused) return held;
  if (typeof held === 'number') return held !== 0;
  throw new OnlyEngine();
}

type Arithmetic = (left: number, right: number) => number | Refused;

export const sum = (left: number, right: number): number => {
  const total = left + right;
  return Math.abs(total) < EPSILON * Math.abs(left) ? 0 : total;
};

const arithmetic: Readonly<Record<string, Arithmetic>> = {
  '+': sum,
  '-': (left, right) => sum(left, -right),
  '*': (left, right) => left * right,
  '/': (left, right) => (right === 0 ? new Refused(DIVIDED_BY_ZERO) : left / right),
  '^': (left, right) => left ** right,
};

/** How an operator of a formula is worked out; nothing for one that is left to the engine. */
export function operation(operator: string): ((left: Given, right: Given) => Held) | undefined {
  const calculate = arithmetic[operator];
  if (calculate) {
    return (a, b) => {
      const left = numberIn(a);
      if (left instanceof Refused) return left;
      const right = numberIn(b);
      if (right instanceof Refused) return right;
      const result = calculate(left, right);
      return result instanceof Refused ? result : finite(result);
    };
  }
  if (operator === '&') return join;
  const decide = comparisons[operator];
  return decide && ((a, b) => compared(single(a), single(b), operator, decide));
}

const comparisons: Readonly<Record<string, (order: number) => boolean>> = {
  '=': (order) => order === 0,
  '<>': (order) => order !== 0,
  '<': (order) => order < 0,
  '<=': (order) => order <= 0,
  '>': (order) => order > 0,
  '>=': (order) => order >= 0,
};

function compared(left: Held, right: Held, operator: string, decide: (order: number) => boolean): boolean | Refused {
  if (left instanceof Refused) return left;
  if (right instanceof Refused) return right;
  const a = left ?? blankLike(right);
  const b = right ?? blankLike(left);
  if (typeof a === 'number' && typeof b === 'number') return decide(orderOf(a, b));
  if (typeof a === 'boolean' && typeof b === 'boolean') return decide(Number(a) - Number(b));
  const isEquality = operator === '=' || operator === '<>';
  if (!isEquality || !isPlainText(a) || !isPlainText(b)) throw new OnlyEngine();
  return decide(a.toLowerCase() === b.toLowerCase() ? 0 : 1);
}

/** The order of letters, and which are alike, is the engine's own; only plain ones are sure to be the same here. */
const isPlainText = (value: Held): value is string => typeof value === 'string' && /^[ -~]*$/.test(value);

const blankLike = (other: Held): Held => (typeof other === 'string' ? '' : typeof other === 'boolean' ? false : 0);

function orderOf(left: number, right: number): number {
  const more = 1 + EPSILON;
  if (right >= 0 && left * more >= right && left <= right * more) return 0;
  if (right <= 0 && left * more <= right && left >= right * more) return 0;
  return left > right ? 1 : -1;
}

function join(a: Given, b: Given): string | Refused {
  const left = textIn(single(a));
  if (left instanceof Refused) return left;
  const right = textIn(single(b));
  return right instanceof Refused ? right : left + right;
}

function textIn(value: Held): string | Refused {
  if (typeof value === 'string' || value instanceof Refused) return value;
  if (value === null) return '';
  if (typeof value === 'number') return String(value);
  throw new OnlyEngine();
}

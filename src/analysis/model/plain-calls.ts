import { Refused } from '../../engine/arguments.ts';
import { isTable, type Given, type Held } from './datum.ts';
import { finite, numberIn, OnlyEngine, single, sum, truthIn } from './operators.ts';

/** A part of a formula, compiled. */
export type Run = () => Given;
type Maker = (parts: readonly Run[]) => Run | undefined;

const many =
  (least: number, most: number, make: (parts: readonly Run[]) => Run): Maker =>
  (parts) =>
    parts.length >= least && parts.length <= most ? make(parts) : undefined;

/** Numbers in, a number out. */
const numeric = (count: number, calculate: (...given: readonly number[]) => number): Maker =>
  many(count, count, (parts) => () => {
    const given: number[] = [];
    for (const part of parts) {
      const value = numberIn(part());
      if (value instanceof Refused) return value;
      given.push(value);
    }
    return finite(calculate(...given));
  });

const one = (calculate: (given: number) => number): Maker => numeric(1, calculate);
const two = (calculate: (a: number, b: number) => number): Maker => numeric(2, calculate);

/** All numbers of the arguments; in ranges whatever else stands there is passed over. */
function numbersOf(parts: readonly Run[]): number[] | Refused {
  const numbers: number[] = [];
  for (const part of parts) {
    const value = part();
    if (isTable(value)) {
      for (const cell of value.flat()) if (typeof cell === 'number') numbers.push(cell);
      continue;
    }
    const held = single(value);
    if (held instanceof Refused) return held;
    // What becomes of empty cells, texts and truths depends on how they are written.
    if (typeof held !== 'number') throw new OnlyEngine();
    numbers.push(held);
  }
  return numbers;
}

const folded = (fold: (numbers: readonly number[]) => number): Maker =>
  many(1, Infinity, (parts) => () => {
    const numbers = numbersOf(parts);
    if (numbers instanceof Refused) return numbers;
    return numbers.length === 0 ? leftToEngine() : finite(fold(numbers));
  });

function leftToEngine(): never {
  throw new OnlyEngine();
}

const total = (numbers: readonly number[]): number => numbers.reduce(sum, 0);

const truths = (start: boolean): Maker =>
  many(1, Infinity, (parts) => () => {
    let result = start;
    for (const part of parts) {
      const truth = truthIn(part());
      if (truth instanceof Refused) return truth;
      result = start ? result && truth : result || truth;
    }
    return result;
  });

const rounded = (round: (size: number) => number): Maker =>
  many(1, 2, (parts) => {
    const [number, places] = parts;
    return () => {
      const value = numberIn(number?.());
      const digits = places ? numberIn(places()) : 0;
      if (value instanceof Refused) return value;
      if (digits instanceof Refused) return digits;
      const scale = 10 ** digits;
      return finite(value < 0 ? -round(-value * scale) / scale : round(value * scale) / scale);
    };
  });

const asTested = (test: (held: Held) => boolean): Maker =>
  many(
    1,
    1,
    ([part]) =>
      () =>
        test(single(part?.())),
  );

/** The functions of the engine that compiled sheets can do themselves; all others are left to it. */
export const plainCalls: Readonly<Record<string, Maker>> = {
  PI: (parts) => (parts.length === 0 ? () => Math.PI : undefined),
  TRUE: (parts) => (parts.length === 0 ? () => true : undefined),
  FALSE: (parts) => (parts.length === 0 ? () => false : undefined),
  ABS: one(Math.abs),
  SQRT: one(Math.sqrt),
  EXP: one(Math.exp),
  LN: one(Math.log),
  LOG10: one(Math.log10),
  SIN: one(Math.sin),
  COS: one(Math.cos),
  TAN: one(Math.tan),
  ASIN: one(Math.asin),
  ACOS: one(Math.acos),
  ATAN: one(Math.atan),
  POWER: two((base, exponent) => base ** exponent),
  INT: one((value) => (value < 0 ? -Math.floor(-value) : Math.floor(value))),
  ROUND: rounded(Math.round),
  ROUNDUP: rounded(Math.ceil),
  ROUNDDOWN: rounded(Math.floor),
  MIN: folded((numbers) => numbers.reduce((least, value) => Math.min(least, value))),
  MAX: folded((numbers) => numbers.reduce((most, value) => Math.max(most, value))),
  SUM: folded(total),
  AVERAGE: folded((numbers) => total(numbers) / numbers.length),
  PRODUCT: folded((numbers) => numbers.reduce((product, value) => product * value, 1)),
  AND: truths(true),
  OR: truths(false),
  NOT: many(1, 1, ([part]) => () => {
    const truth = truthIn(part?.());
    return truth instanceof Refused ? truth : !truth;
  }),
  IF: many(2, 3, ([test, yes, no]) => () => {
    const truth = truthIn(test?.());
    if (truth instanceof Refused) return truth;
    if (truth) return single(yes?.());
    return no ? single(no()) : false;
  }),
  IFERROR: many(2, 2, ([tried, instead]) => () => {
    const value = single(tried?.());
    return value instanceof Refused ? single(instead?.()) : value;
  }),
  ISNUMBER: asTested((held) => typeof held === 'number'),
  ISERROR: asTested((held) => held instanceof Refused),
};

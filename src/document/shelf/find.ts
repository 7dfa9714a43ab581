import { parameterOf, driverParameters, type NumberField } from '../../../functions/driver/parameters.ts';
import { quantities, type QuantityName } from '../../../functions/quantities.ts';
import type { Driver } from '../../../functions/values/driver.ts';
import { defaultUnit } from '../../units/defaults.ts';
import { sameDimension } from '../../units/dimension.ts';
import { parseQuantity } from '../../units/parse.ts';
import { unitAhead } from '../../units/table.ts';
import type { Refusal } from '../command.ts';
import { meaningOf, type DriverEntry } from './entry.ts';

/** What a search asks: words of the name or source, and limits of numbers, all of them. */
export interface Query {
  readonly words: readonly string[];
  readonly limits: readonly Limit[];
}

/** A number between two ends, SI; an end that is not asked for is infinite. */
interface Limit {
  readonly field: NumberField;
  readonly from: number;
  readonly to: number;
  /** The ends themselves count. */
  readonly closed: boolean;
}

const SIGN = /\s*(<=|>=|≤|≥|<|>|=)\s*/;
const NUMBER = /^[+\-−]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE][+-]?\d+)?/;
const UNTIL = /^\s*(?:to\b|–|\.\.|-)\s*(?=[\d.,])/;

/** Reads `Fs < 900`, `Sd > 100 cm2, price <= 60`, `W-165 Qts = 0.3 to 0.5`. A number without a unit is in the unit that the shelf
 *  shows. Refuses what it does not understand, with the place and an example. */
export function readQuery(text: string): Query | Refusal {
  const words: string[] = [];
  const limits: Limit[] = [];
  let rest = text.trim();
  for (let sign = SIGN.exec(rest); sign; sign = SIGN.exec(rest)) {
    const before = wordsOf(rest.slice(0, sign.index));
    const field = fieldAtEnd(before);
    if (!field) {
      const named = before.at(-1);
      return {
        refused: named
          ? `“${named}” is no number of a driver: ${known()} can be searched, as in Fs < 900.`
          : `Before “${sign[1] ?? ''}” the name of a number is wanted, as in Fs < 900.`,
      };
    }
    words.push(...before.slice(0, before.length - field.length));
    const read = limitOf(field.name, sign[1] ?? '=', rest.slice(sign.index + sign[0].length));
    if ('refused' in read) return read;
    limits.push(read.limit);
    rest = read.rest.replace(/^[\s,;]+/, '').replace(/^and\b\s*/i, '');
  }
  return { words: [...words, ...wordsOf(rest)].map((word) => word.toLowerCase()), limits };
}

const known = (): string => driverParameters.map(({ symbol }) => symbol).join(', ');

/** Words part at spaces and commas; quotes keep some together. */
const wordsOf = (text: string): string[] =>
  [...text.matchAll(/"([^"]+)"|([^\s,;"]+)/g)].map(([, quoted, plain]) => quoted ?? plain ?? '');

/** The fewest last words that name a number of a driver. */
function fieldAtEnd(words: readonly string[]): { readonly name: NumberField; readonly length: number } | undefined {
  for (let length = 1; length <= Math.min(4, words.length); length++) {
    const meaning = meaningOf(words.slice(-length).join(' '));
    if (meaning !== undefined && meaning !== 'name' && meaning !== 'basis') return { name: meaning, length };
  }
  return undefined;
}

interface NumberRead {
  readonly number: string;
  readonly unit: string;
  readonly rest: string;
}

function numberAt(text: string): NumberRead | undefined {
  const number = NUMBER.exec(text)?.[0];
  if (number === undefined) return undefined;
  const after = text.slice(number.length);
  const gap = /^\s*/.exec(after)?.[0] ?? '';
  const unit = unitAhead(after.slice(gap.length)) ?? '';
  return { number, unit, rest: unit === '' ? after : after.slice(gap.length + unit.length) };
}

interface LimitRead {
  readonly limit: Limit;
  readonly rest: string;
}

/** One number, or two with “to” between them, behind the sign of comparison. */
function limitOf(field: NumberField, sign: string, text: string): LimitRead | Refusal {
  const { symbol, quantity } = parameterOf(field);
  const first = numberAt(text);
  const example = `${symbol} ${sign} 5 ${defaultUnit(quantity, 'metric')}`.trim();
  if (!first) return { refused: `Behind “${symbol} ${sign}” a number is wanted, as in ${example}.` };
  const until = sign === '=' ? UNTIL.exec(first.rest)?.[0] : undefined;
  const last = until === undefined ? undefined : numberAt(first.rest.slice(until.length));
  const unit = last?.unit || first.unit;
  const ends = [{ ...first, unit: first.unit || unit }, ...(last ? [{ ...last, unit }] : [])].map((each) =>
    valueOf(each, quantity),
  );
  const wrong = ends.find((end) => end === undefined || 'wrong' in end);
  if (wrong) return { refused: `${symbol} is ${quantities[quantity].noun}, but ${wrong.wrong}: write ${example}.` };
  const [low, high] = ends as readonly { readonly value: number; readonly half: number }[];
  const rest = (last ?? first).rest;
  if (!low) return { refused: `Behind “${symbol} ${sign}” a number is wanted, as in ${example}.` };
  if (high) {
    const [from, to] = low.value <= high.value ? [low.value, high.value] : [high.value, low.value];
    return { limit: { field, from, to, closed: true }, rest };
  }
  const closed = sign.length > 1 || sign === '≤' || sign === '≥' || sign === '=';
  if (sign === '=') return { limit: { field, from: low.value - low.half, to: low.value + low.half, closed }, rest };
  const below = sign.startsWith('<') || sign === '≤';
  return {
    limit: { field, from: below ? -Infinity : low.value, to: below ? low.value : Infinity, closed },
    rest,
  };
}

/** SI, with half a unit of the last digit: what prints as 0.386 is meant by Qts = 0.386. */
function valueOf(
  { number, unit }: NumberRead,
  quantity: QuantityName,
): { value: number; half: number } | { wrong: string } {
  const read = parseQuantity(
    `${number} ${unit === '' && quantity !== 'ratio' ? defaultUnit(quantity, 'metric') : unit}`,
  );
  if (!read) return { wrong: `${number} ${unit} is no number with a unit` };
  if (read.unit !== '' && !sameDimension(quantities[read.quantity].dimension, quantities[quantity].dimension)) {
    return { wrong: `${unit} is the unit of ${quantities[read.quantity].noun}` };
  }
  const decimals = /[.,](\d*)/.exec(number)?.[1]?.length ?? 0;
  const plain = Number(number.replace(',', '.').replace('−', '-'));
  return { value: read.value, half: Math.abs((read.value / (plain || 1)) * 0.5 * 10 ** -decimals) * (1 + 1e-9) };
}

/** An entry beside what it computes to; nothing where it makes no driver. */
export interface Shelved {
  readonly entry: DriverEntry;
  readonly driver: Driver | undefined;
}

/** Whether the words stand in the name or the source of a driver and its numbers lie within the limits; a driver that lacks
 *  a number is not found by it. */
export function matches({ entry, driver }: Shelved, { words, limits }: Query): boolean {
  const text = `${entry.name} ${entry.source}`.toLowerCase();
  return words.every((word) => text.includes(word)) && limits.every((limit) => isWithin(driver?.[limit.field], limit));
}

const isWithin = (value: number | undefined, { from, to, closed }: Limit): boolean =>
  value !== undefined && (closed ? value >= from && value <= to : value > from && value < to);

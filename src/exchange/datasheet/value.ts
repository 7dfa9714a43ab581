import { parameterOf, type DriverParameter, type NumberField } from '../../../functions/driver/parameters.ts';
import { quantities, type QuantityName } from '../../../functions/quantities.ts';
import type { Choice, Question } from '../../document/shelf/reading.ts';
import { sameDimension } from '../../units/dimension.ts';
import { parseQuantity } from '../../units/parse.ts';
import { MONEY } from '../../units/signs.ts';
import { unitNamed, units, type Unit } from '../../units/table.ts';
import { numberAtStart } from './number.ts';
import { unitAtStart } from './units.ts';

/** A printed value as it would be typed into a cell, or what it leaves open, or why it is none. */
export type ValueRead =
  | { readonly text: string; readonly remark?: string }
  | { readonly question: Question; readonly remark?: string }
  | { readonly why: string };

export interface Around {
  /** The unit that the label or the table gives. */
  readonly unit: Unit | undefined;
  /** All words of the row: they say whether a travel is peak-to-peak. */
  readonly words: string;
  readonly decimalCommas: boolean;
}

const MONEY_FIRST = new RegExp(`^(${MONEY})\\s*`);
const LEAD = /^\s*(?:ca\.?|approx\.?|about|typ(?:ical)?\.?|nom(?:inal)?\.?|[~≈])?\s*([<>≤≥])?\s*(±|\+\/?-)?\s*/i;
const BOTH_WAYS = /\bp ?[-–]? ?p\b|peak ?[- ]? ?to ?[- ]? ?peak|\bpk ?[-–] ?pk\b|\bptp\b/i;
const ONE_WAY = /one[- ]?way|each way|each direction|\bpeak\b|±|\+\/?-/i;
const RANGE = /^\s*(?:-|–|—|\.{2,3}|\bto\b|\/)\s*(?=[\d.,])/i;
const TOLERANCE = /^\s*[([]?\s*(?:±|\+\/?-)\s*[\d.,]+\s*(?:%|[\p{L}Ω²³/·]*)\s*[)\]]?/iu;

/** Reads the value of a row for the number that its label names. */
export function readValue(text: string, field: NumberField, around: Around): ValueRead {
  const parameter = parameterOf(field);
  const { quantity } = parameter;
  const [lead, limit] = LEAD.exec(text) ?? [''];
  const coils = /^\s*(\d)\s*[x×]\s*(?=\d)/i.exec(text);
  if (coils && quantity === 'resistance') return twoCoils(Number(coils[1]), text.slice(coils[0].length), around);
  const [before, sign] = (quantity === 'price' && MONEY_FIRST.exec(text.slice(lead.length))) || [''];
  const money = quantity === 'price' ? unitNamed(sign ?? '¤') : undefined;
  const first = numberAtStart(text.slice(lead.length + before.length), around.decimalCommas);
  if (!first) return { why: `“${text.trim()}” holds no number` };
  const behind = quantity === 'ratio' ? undefined : unitAtStart(first.rest);
  const rest = behind ? behind.rest : first.rest;
  const tolerance = TOLERANCE.exec(rest)?.[0] ?? '';
  const tail = rest.slice(tolerance.length);
  const range = RANGE.exec(tail)?.[0];
  const second = range === undefined ? undefined : numberAtStart(tail.slice(range.length), around.decimalCommas);
  const unit = behind?.unit ?? (second && unitAtStart(second.rest)?.unit) ?? around.unit ?? money;
  if (unit && !fits(unit, quantity)) {
    return {
      why: `${quantities[quantity].noun} is wanted, but ${unit.symbol} is the unit of ${quantities[unit.quantity].noun}`,
    };
  }
  const remarks = [
    ...(limit ? [`printed as a limit (${limit})`] : []),
    ...(tolerance.trim() === '' ? [] : [`tolerance ${tolerance.trim()} left out`]),
  ];
  const isPeakToPeak = field === 'xmax' && BOTH_WAYS.test(`${around.words} ${tail}`);
  if (field === 'xmax' && !isPeakToPeak && unit?.quantity !== 'travel' && !ONE_WAY.test(around.words)) {
    remarks.push('read as one-way');
  }
  const left = leftOver(second ? '' : tail, quantity, around.decimalCommas);
  if (left !== '') remarks.push(`“${left}” left out`);
  const numbers = second
    ? [...first.readings, ...middle(first.readings, second.readings, range ?? ''), ...second.readings]
    : first.readings;
  const possible = unit || quantity === 'ratio' ? [unit] : unitsOf(quantity, parameter, numbers[0] ?? '');
  const choices = numbers.flatMap((number) =>
    possible.map((each) => withUnit(number, each, isPeakToPeak)).filter((each) => parseQuantity(each) !== undefined),
  );
  const remark = remarks.length > 0 ? { remark: remarks.join('; ') } : {};
  const [only, ...more] = new Set(choices);
  if (only === undefined) return { why: `“${text.trim()}” is no number that can be kept` };
  const isOpen = more.length > 0 || (!unit && quantities[quantity].si !== '');
  if (!isOpen) {
    const other = otherValue(tail, only, quantity, around.decimalCommas);
    return other
      ? { question: asked('Two values stand here that differ. Which holds?', [only, other], parameter), ...remark }
      : { text: only, ...remark };
  }
  const words = second
    ? 'A range, or several values. Which one holds?'
    : unit || quantity === 'ratio'
      ? 'The mark may part thousands or decimals. Which is meant?'
      : 'No unit is printed. Which is meant?';
  return { question: asked(words, [only, ...more], parameter), ...remark };
}

const fits = (unit: Unit, quantity: QuantityName): boolean =>
  sameDimension(quantities[unit.quantity].dimension, quantities[quantity].dimension);

const withUnit = (number: string, unit: Unit | undefined, isPeakToPeak: boolean): string => {
  if (!unit) return number;
  if (!isPeakToPeak || unit.quantity === 'travel') return `${number} ${unit.symbol}`;
  return unit.symbol === 'mm' ? `${number} mm p-p` : `${round(Number(number) / 2)} ${unit.symbol}`;
};

const round = (value: number): string => String(Number(value.toPrecision(12)));

/** The middle of a range; of two values that a stroke parts there is none. */
const middle = ([low = '']: readonly string[], [high = '']: readonly string[], sign: string): string[] =>
  sign.includes('/') || Number(low) >= Number(high) ? [] : [round((Number(low) + Number(high)) / 2)];

const isPlausible = (text: string, { plausible }: DriverParameter): boolean => {
  const value = parseQuantity(text)?.value;
  return value !== undefined && (plausible === undefined || (value >= plausible[0] && value <= plausible[1]));
};

/** Plausible choices first; one of them suggested where it is the only one. */
function asked(words: string, texts: readonly string[], parameter: DriverParameter): Question {
  const good = texts.filter((text) => isPlausible(text, parameter));
  const rest = texts.filter((text) => !good.includes(text));
  const choices: Choice[] = [...good, ...rest].map((text) => ({ text }));
  const [only, ...more] = good;
  return { words, choices, ...(only !== undefined && more.length === 0 && { suggested: only }) };
}

/** Units in which a bare number may be meant: those that give a plausible value, or all usual ones where none does. */
function unitsOf(quantity: QuantityName, parameter: DriverParameter, number: string): readonly Unit[] {
  const all = units.filter((unit) => fits(unit, quantity) && unit.symbol !== 'mm p-p' && !unit.offset);
  const good = all.filter(({ symbol }) => isPlausible(`${number} ${symbol}`, parameter));
  return good.length > 0 ? good : all;
}

/** A value in brackets or behind a sign that says the same in another unit, where it does not. */
function otherValue(tail: string, taken: string, quantity: QuantityName, commas: boolean): string | undefined {
  const start = /^\s*[([/=,]\s*/.exec(tail)?.[0];
  const number = start === undefined ? undefined : numberAtStart(tail.slice(start.length), commas);
  const unit = number && unitAtStart(number.rest)?.unit;
  if (!number || !unit || !fits(unit, quantity)) return undefined;
  const other = `${number.readings[0] ?? ''} ${unit.symbol}`;
  const [a, b] = [parseQuantity(taken)?.value, parseQuantity(other)?.value];
  return a !== undefined && b !== undefined && Math.abs(a / b - 1) > 0.02 ? other : undefined;
}

/** Words behind a value that say nothing that was taken from them. */
function leftOver(tail: string, quantity: QuantityName, commas: boolean): string {
  const start = /^\s*[([/=,]\s*/.exec(tail)?.[0];
  const number = start === undefined ? undefined : numberAtStart(tail.slice(start.length), commas);
  const unit = number && unitAtStart(number.rest)?.unit;
  const left = tail
    .replace(BOTH_WAYS, '')
    .replace(ONE_WAY, '')
    .replaceAll(/^[\s()[\]/,;.-]+|[\s()[\]/,;.-]+$/g, '');
  return (unit && fits(unit, quantity)) || !/[\p{L}\d]{2}/u.test(left) ? '' : left;
}

/** Several coils of the same ohms: what counts is how they are wired. */
function twoCoils(count: number, text: string, around: Around): ValueRead {
  const number = numberAtStart(text, around.decimalCommas);
  const ohms = Number(number?.readings[0]);
  const unit = (number && unitAtStart(number.rest)?.unit) ?? around.unit;
  if (!number || !(ohms > 0) || count < 2 || (unit && !fits(unit, 'resistance'))) {
    return { why: `“${text.trim()}” holds no ohms` };
  }
  const symbol = unit?.symbol ?? 'Ω';
  const choices = [
    { text: `${round(ohms / count)} ${symbol}`, words: 'wired in parallel' },
    { text: `${round(ohms * count)} ${symbol}`, words: 'wired in series' },
    { text: `${number.readings[0] ?? ''} ${symbol}`, words: 'one coil used' },
  ];
  return { question: { words: `${count} coils. How are they wired?`, choices } };
}

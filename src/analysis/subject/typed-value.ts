import { seriesNames, standardAround } from '../../../functions/electrical/preferred.ts';
import { quantities, type QuantityName } from '../../../functions/quantities.ts';
import { sameDimension } from '../../units/dimension.ts';
import { parseQuantity } from '../../units/parse.ts';
import { unitNamed } from '../../units/table.ts';
import { QuestionError } from './place-error.ts';
import { settingText } from './setting-text.ts';
import type { Input, Setting } from './types.ts';

/** What a value is typed for. */
export interface TypedFor {
  readonly label: string;
  readonly quantity?: QuantityName;
  readonly unit: string;
}

/** A typed quantity, SI; a number alone is in the unit of its cell.
 *  @throws A {@link QuestionError} where it is none, or one of another kind. */
export function typedValue(text: string, { label, quantity, unit }: TypedFor): number {
  const example = `as in 12${unit === '' ? '' : ` ${unit}`}`;
  if (text.trim() === '') throw new QuestionError(`Type a value for ${label}, ${example}.`);
  const read = parseQuantity(text);
  if (!read) throw new QuestionError(`${label}: “${text}” is no quantity; type a number, ${example}.`);
  if (read.unit === '') {
    const known = unitNamed(unit);
    return known ? read.value * known.si + (known.offset ?? 0) : read.value;
  }
  if (quantity && !sameDimension(quantities[read.quantity].dimension, quantities[quantity].dimension))
    throw new QuestionError(
      `${label}: ${read.unit} is the unit of ${quantities[read.quantity].noun}, but ${quantities[quantity].noun} is wanted, ${example}.`,
    );
  return read.value;
}

const EVEN = /^(.+?)\s*(?:\.\.|\bto\b)\s*(.+?)\s*(?:\/|\bin\b)\s*(\d+)$/;
/** A comma between digits is a decimal one. */
const BETWEEN = /(?<!\d),|,(?!\d)|;/;
/** So many values one list has at most. */
const MOST = 10_000;
const DIGITS = 6;

/** Several values of an input: `8 L, 10 L` or `LR2, LR4` as they stand, `5 L to 20 L in 4` or `5 L..20 L/4` evenly spaced, and
 *  `E12` for the values of that shop series within the plausible range.
 *  @throws A {@link QuestionError} in words for the reader. */
export function typedValues(text: string, input: Input): readonly Setting[] {
  const { label, choices, present } = input;
  const series = seriesNames.find((name) => name === text.trim().toUpperCase());
  if (series) return shopValues(input, series);
  const [, from, to, count] = EVEN.exec(text.trim()) ?? [];
  if (from !== undefined && to !== undefined) {
    const steps = Number(count);
    if (steps < 2 || steps > MOST)
      throw new QuestionError(`${label}: from 2 to ${MOST} values are wanted, but “${text}” asks for ${steps}.`);
    const [low, high] = [typedValue(from, input), typedValue(to, input)];
    return Array.from({ length: steps }, (_, index) => rounded(input, low + ((high - low) * index) / (steps - 1)));
  }
  const parts = text.split(BETWEEN).map((part) => part.trim());
  if (typeof present === 'number') return parts.map((part) => typedValue(part, input));
  const strange = parts.find((part) => choices && !choices.includes(part));
  if (strange === undefined) return parts;
  throw new QuestionError(`${label} takes ${(choices ?? []).join(', ')}, but not “${strange}”.`);
}

/** With so many digits as one would type. */
const rounded = (input: Input, value: number): number =>
  parseQuantity(settingText(input, value, DIGITS))?.value ?? value;

/** Standard values that one can buy, within the plausible range of a part. */
function shopValues({ label, present, range: [from, to] }: Input, series: (typeof seriesNames)[number]) {
  if (typeof present !== 'number' || present <= 0)
    throw new QuestionError(`${label}: only a value above 0 has neighbours in ${series}.`);
  const decades = Math.max(1, Math.ceil(Math.log10(to / Math.max(from, present / 100))));
  return standardAround(present, series, decades).filter((each) => each >= from && each <= to);
}

import type {
  AnyFunction,
  CellDatum,
  NumberParameter,
  Parameter,
  Table,
  TableParameter,
} from '../../functions/define.ts';
import { labelOf } from '../../functions/driver/labels.ts';
import { quantities, type QuantityName } from '../../functions/quantities.ts';
import type { CellRecord } from '../../functions/values/record.ts';
import { defaultUnit } from '../units/defaults.ts';
import { sameDimension } from '../units/dimension.ts';
import { parseQuantity, valueAs } from '../units/parse.ts';
import { show } from '../units/show.ts';

/** An argument as the engine evaluated it: one value, or the rows of a range. */
export type Evaluated = CellDatum | Table;

/** Why an argument cannot be taken: a whole sentence. */
export class Refused {
  readonly message: string;

  constructor(message: string) {
    this.message = message;
  }
}

/** How an argument is named in messages: its parameter, and the cell that it came from. */
export interface Named {
  readonly definition: AnyFunction;
  readonly name: string;
  readonly parameter: Parameter;
  /** The address of the cell, where the argument is one cell. */
  readonly cell: string | undefined;
  readonly quantity: QuantityName;
  /** The arguments before it, as read. */
  readonly before?: Readonly<Record<string, unknown>>;
}

const isTable = (value: Evaluated): value is Table => Array.isArray(value);

/** Reads one argument by its declaration. `undefined` where it is left out. */
export function readArgument(value: Evaluated | undefined, named: Named): unknown {
  const { parameter } = named;
  if (value === undefined || value === null) return absent(named, value === null);
  if ('table' in parameter) return readTable(isTable(value) ? value : [[value]], parameter, named);
  if (isTable(value)) {
    const single = value.length === 1 && value[0]?.length === 1 ? value[0][0] : undefined;
    if (single === undefined)
      return new Refused(`${where(named)} wants one cell, not a range: refer to a single cell.`);
    return readArgument(single, named);
  }
  if ('quantity' in parameter) return readNumber(value, named, parameter);
  if ('record' in parameter) return readRecord(value, named, parameter.record);
  if ('choice' in parameter) return readChoice(value, named, parameter.choice);
  if ('text' in parameter)
    return isRecord(value) ? new Refused(`${where(named)} wants a text, not a ${value.kind}.`) : String(value);
  return readTruth(value, named);
}

/** Every cell of a range, and every further argument, for a parameter that takes many. Empty cells are passed over, and
 *  so are cells in a range that hold no record where records are wanted: headings may stand between them. */
export function readMany(values: readonly Evaluated[], named: Named): readonly unknown[] | Refused {
  const items: unknown[] = [];
  const wantsRecord = 'record' in named.parameter;
  for (const value of values) {
    const cells: readonly CellDatum[] = isTable(value) ? value.flat() : [value];
    for (const cell of cells) {
      if (cell === null || (isTable(value) && wantsRecord && !isRecord(cell))) continue;
      const read = readArgument(cell, named);
      if (read instanceof Refused) return read;
      items.push(read);
    }
  }
  return items;
}

export const isRecord = (value: unknown): value is CellRecord =>
  typeof value === 'object' && value !== null && 'kind' in value;

function absent(named: Named, isBlank: boolean): unknown {
  const { parameter } = named;
  if ('default' in parameter && parameter.default !== undefined) return parameter.default;
  if (parameter.optional) return undefined;
  const subject = isBlank && named.cell ? `${named.cell} is empty` : 'the argument is missing';
  return new Refused(`${where(named)}: ${subject}; type ${wanted(named)} there.`);
}

function readNumber(value: CellDatum, named: Named, parameter: NumberParameter): number | Refused {
  if (typeof value === 'number') return withinLimits(value, named, parameter);
  const held = named.cell ?? 'the argument';
  if (typeof value !== 'string')
    return new Refused(`${where(named)} wants ${wanted(named)}, but ${held} holds ${heldIn(value)}.`);
  const read = parseQuantity(value);
  if (!read) {
    return new Refused(
      `${where(named)} wants ${wanted(named)}, but ${held} holds the text “${value}”. Type ${sample(named)}.`,
    );
  }
  const target = quantities[named.quantity].dimension;
  if (!sameDimension(quantities[read.quantity].dimension, target) && read.unit !== '') {
    return new Refused(
      `${where(named)} wants ${wanted(named)}, but “${value}” is ${quantities[read.quantity].noun}. Type ${sample(named)}.`,
    );
  }
  return withinLimits(valueAs(read, named.quantity), named, parameter);
}

/** The rows of a range. A text that is a quantity as it belongs there is read as one: it may come from a formula or from elsewhere. */
function readTable(rows: Table, { of, columns, labels }: TableParameter, { name, before }: Named): Table {
  if (!rows.some((row) => row.some((cell) => typeof cell === 'string'))) return rows;
  const names = labels === undefined || labels === name ? undefined : (before?.[labels] as Table | undefined)?.flat();
  const wanted = (row: number, column: number): QuantityName | null | undefined => {
    if (labels === undefined) return of ?? columns?.[column];
    const width = rows[row]?.length ?? 0;
    const label = names ? names[row * width + column] : column === 1 ? rows[row]?.[0] : undefined;
    const meant = typeof label === 'string' ? labelOf(label) : undefined;
    return typeof meant === 'object' ? meant.quantity : undefined;
  };
  return rows.map((cells, row) => cells.map((cell, column) => quantityIn(cell, wanted(row, column))));
}

function quantityIn(cell: CellDatum, wanted: QuantityName | null | undefined): CellDatum {
  const read = typeof cell === 'string' && wanted ? parseQuantity(cell) : undefined;
  if (!read || !wanted) return cell;
  const isFit = read.unit === '' || sameDimension(quantities[read.quantity].dimension, quantities[wanted].dimension);
  return isFit ? valueAs(read, wanted) : cell;
}

function withinLimits(value: number, named: Named, parameter: NumberParameter): number | Refused {
  const { above, below, min, max } = parameter;
  const shown = (limit: number): string => inWords(limit, named.quantity);
  const limit =
    above !== undefined && !(value > above)
      ? `above ${shown(above)}`
      : min !== undefined && !(value >= min)
        ? `at least ${shown(min)}`
        : below !== undefined && !(value < below)
          ? `below ${shown(below)}`
          : max !== undefined && !(value <= max)
            ? `at most ${shown(max)}`
            : undefined;
  if (limit === undefined) return parameter.whole ? wholeNumber(value, named) : value;
  const subject = named.cell ? `${named.cell} is ${shown(value)}` : `it is ${shown(value)}`;
  const hint = asRise(value, named);
  const remedy = `Type a value that is ${limit}.${hint === undefined ? '' : ` ${hint}`}`;
  return new Refused(`${where(named)} must be ${limit}, but ${subject}. ${remedy}`);
}

/** 0 °C in kelvins. */
const celsiusZero = 273.15;

/** What to type where a temperature has come to a rise by one: `100 °C` in a cell is 373 K. */
const asRise = (value: number, { quantity }: Named): string | undefined =>
  quantity === 'warming' && value > celsiusZero
    ? `Is it a temperature? A rise is typed in kelvin: ${inWords(value - celsiusZero, quantity)}.`
    : undefined;

/** A calculation that should give a whole number may miss it by this much. */
const rounding = 1e-9;

function wholeNumber(value: number, named: Named): number | Refused {
  const nearest = Math.round(value);
  if (Math.abs(value - nearest) <= rounding * Math.abs(nearest)) return nearest;
  const shown = (number: number): string => inWords(number, named.quantity);
  const remedy = `Type ${shown(Math.floor(value))} or ${shown(Math.ceil(value))}.`;
  return new Refused(`${where(named)} must be a whole number, but ${named.cell ?? 'it'} is ${shown(value)}. ${remedy}`);
}

/** A number outside what is plausible: a question, not a refusal. */
export function doubtOf(value: unknown, named: Named): string | undefined {
  const { parameter } = named;
  if (!('quantity' in parameter) || !parameter.typical || typeof value !== 'number') return undefined;
  const [low, high] = parameter.typical;
  if (value >= low && value <= high) return undefined;
  const shown = (number: number): string => inWords(number, named.quantity);
  return `${where(named)} is usually ${shown(low)} to ${shown(high)}; ${named.cell ?? 'here it'} is ${shown(value)}. ${asRise(value, named) ?? 'Is the unit right?'}`;
}

function readRecord(value: CellDatum, named: Named, kind: string): CellRecord | Refused {
  if (isRecord(value) && (kind === 'any' || value.kind === kind)) return value;
  const held = named.cell ?? 'the argument';
  return new Refused(`${where(named)}: a ${kind} is wanted, but ${held} holds ${heldIn(value)}.`);
}

function readChoice(value: CellDatum, named: Named, words: readonly string[]): string | Refused {
  const given = isRecord(value) ? undefined : String(value);
  const word = words.find((each) => each.toLowerCase() === given?.trim().toLowerCase());
  if (word !== undefined) return word;
  const held = given === undefined ? heldIn(value) : `“${given}”`;
  return new Refused(`${where(named)}: ${named.cell ?? 'the argument'} is ${held}; choose one of ${words.join(', ')}.`);
}

/** What stands in a cell where something else is wanted, in words. */
function heldIn(value: CellDatum): string {
  if (isRecord(value)) return `a ${value.kind}`;
  if (typeof value === 'number') return 'a number';
  return typeof value === 'boolean' ? 'a truth' : `“${value ?? ''}”`;
}

const readTruth = (value: CellDatum, named: Named): boolean | Refused =>
  typeof value === 'boolean' || typeof value === 'number'
    ? Boolean(value)
    : new Refused(`${where(named)} wants TRUE or FALSE.`);

/** `CLOSED.QTC, volume (Net volume of the box)`. */
const where = ({ definition, name, parameter }: Named): string => `${definition.name}, ${name} (${parameter.summary})`;

const wanted = ({ parameter, quantity }: Named): string =>
  'quantity' in parameter
    ? quantities[quantity].noun
    : 'record' in parameter
      ? `a ${parameter.record}`
      : 'choice' in parameter
        ? `one of ${parameter.choice.join(', ')}`
        : 'table' in parameter
          ? 'a range of cells'
          : 'a text';

const sample = ({ quantity }: Named): string =>
  `a number with its unit, such as 12 ${defaultUnit(quantity, 'metric')}`.trim();

function inWords(value: number, quantity: QuantityName): string {
  const { number, unit } = show(value, { quantity, system: 'metric' });
  return unit === '' ? number : `${number} ${unit}`;
}

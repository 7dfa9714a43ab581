import type { QuantityName } from '../../../functions/quantities.ts';
import type { TableRecord } from '../../../functions/values/table.ts';
import type { Axis } from '../../components/drawing/data.ts';
import { addressesIn, readRectangle, type Rectangle } from '../../document/area.ts';
import { shownText } from '../../document/show-cell.ts';
import type { ShownCell } from '../../document/shown.ts';
import type { Series, Sheet } from '../../document/types.ts';
import type { Workbook } from '../../document/workbook.ts';
import type { CellState } from '../../engine/types.ts';
import { show } from '../../units/show.ts';

/** A number of a column, with what it measures and the unit in which its cell shows it. */
interface Value {
  readonly value: number;
  readonly quantity: QuantityName;
  readonly symbol: string;
}

/** A column that a series refers to, row by row. */
interface Columns {
  readonly values: readonly (Value | undefined)[];
  readonly across: readonly (Value | undefined)[];
  readonly names: readonly string[];
}

/** Reads what the series of a plot refer to: cells by address, range or name, or the columns of a table. */
export class CellReader {
  readonly #workbook: Workbook;
  readonly #sheet: Sheet;
  readonly #isBefore: boolean;

  /** Reads what is now, or what was at the baseline. */
  constructor(workbook: Workbook, sheet: Sheet, when: 'now' | 'before' = 'now') {
    this.#workbook = workbook;
    this.#sheet = sheet;
    this.#isBefore = when === 'before';
  }

  #state(cell: string): CellState | undefined {
    const place = { sheet: this.#sheet.id, cell };
    return this.#isBefore ? this.#workbook.baselineState(place) : this.#workbook.state(place.sheet, cell);
  }

  #shown(cell: string): ShownCell | undefined {
    const place = { sheet: this.#sheet.id, cell };
    return this.#isBefore ? this.#workbook.baselineShown(place) : this.#workbook.shown(place.sheet, cell);
  }

  columns({ cell, column, across, names }: Series): Columns {
    const table = this.table(cell);
    if (table)
      return {
        values: this.#numbers(table, column),
        across: across === undefined ? [] : this.#numbers(table, across),
        names: wordsOf(table, names),
      };
    const rows = this.rows(cell);
    return {
      values: rows.flat().map((each) => this.value(each)),
      across:
        across === undefined
          ? []
          : this.rows(across)
              .flat()
              .map((each) => this.value(each)),
      names: names === undefined ? [] : this.#names(names, rows.length === 1 && rows.flat().length > 1),
    };
  }

  /** A name for each row of cells; where the values stand in one row, for each cell of it. */
  #names(reference: string, isAlong: boolean): string[] {
    const rows = this.rows(reference);
    return isAlong && rows.length === 1
      ? rows.flat().map((each) => this.words([each]))
      : rows.map((row) => this.words(row));
  }

  /** The addresses of a range, row by row. */
  rows(reference: string): string[][] {
    const area = readRectangle(this.#sheet.names.get(reference) ?? reference);
    if (!area) return [];
    const row = (top: number): Rectangle => ({ ...area, top, bottom: top });
    return Array.from({ length: area.bottom - area.top + 1 }, (_, index) => [...addressesIn(row(area.top + index))]);
  }

  /** What cells say, in one text. */
  words(addresses: readonly string[]): string {
    const shown = addresses.map((each) => this.#shown(each));
    return shown
      .map((each) => (each ? shownText(each) : ''))
      .filter(Boolean)
      .join(' + ');
  }

  table(reference: string): TableRecord | undefined {
    const value = this.#state(this.#sheet.names.get(reference) ?? reference)?.value;
    return value?.kind === 'record' && value.record.kind === 'table' ? value.record : undefined;
  }

  value(reference: string): Value | undefined {
    const address = this.#sheet.names.get(reference) ?? reference;
    const state = this.#state(address);
    if (state?.value.kind !== 'number') return undefined;
    const shown = this.#shown(address);
    const quantity = (state.type.kind === 'number' && state.type.quantity) || 'ratio';
    return { value: state.value.value, quantity, symbol: shown?.kind === 'number' ? shown.unit : '' };
  }

  #numbers(table: TableRecord, name: string | undefined): (Value | undefined)[] {
    const place = table.columns.findIndex((each) => each.name === name);
    const quantity = table.columns[place]?.quantity ?? 'text';
    if (quantity === 'text') return [];
    const numbers = table.rows.map((row) => row[place]).map((each) => (typeof each === 'number' ? each : undefined));
    const symbol = symbolFor(quantity, numbers, this.#workbook);
    return numbers.map((value) => (value === undefined ? undefined : { value, quantity, symbol }));
  }
}

const wordsOf = (table: TableRecord, name: string | undefined): string[] => {
  const place = table.columns.findIndex((each) => each.name === name);
  return table.rows.map((row) => String(row[place] ?? ''));
};

const symbolFor = (quantity: QuantityName, values: readonly (number | undefined)[], { document }: Workbook): string =>
  show(Math.max(...values.map((each) => Math.abs(each ?? 0)), 0), { quantity, system: document.system }).unit;

/** The axis of values: that of the largest, so that all others are shown in its unit. */
export function axisOf(values: readonly (Value | undefined)[]): Axis {
  let largest: Value | undefined;
  for (const each of values) if (each && Math.abs(each.value) >= Math.abs(largest?.value ?? 0)) largest = each;
  return { quantity: largest?.quantity ?? 'ratio', symbol: largest?.symbol ?? '' };
}

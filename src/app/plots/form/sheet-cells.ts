import { quantities, type QuantityName } from '../../../../functions/quantities.ts';
import type { CellRecord } from '../../../../functions/values/record.ts';
import type { TableRecord } from '../../../../functions/values/table.ts';
import {
  addressesIn,
  filledIn,
  formatRectangle,
  readRectangle,
  sizeOf,
  type Rectangle,
} from '../../../document/area.ts';
import { nameOf } from '../../../document/labels.ts';
import { isRefusal, type Refusal } from '../../../document/command.ts';
import { sameWord } from '../../../document/sheets.ts';
import type { Sheet } from '../../../document/types.ts';
import type { Workbook } from '../../../document/workbook.ts';

/** What a cell holds, as far as a plot can draw it. A `problem` may have a result later. */
export interface Held {
  readonly kind: 'curve' | 'window' | 'table' | 'number' | 'text' | 'problem' | 'nothing' | 'other';
  /** As in a sentence: “B4 holds a curve”; of a problem what it says. */
  readonly words: string;
  /** Of a curve or a number. */
  readonly quantity?: QuantityName;
  readonly table?: TableRecord;
}

/** Cells that a plot names: as it names them, and where they are. */
export interface Found {
  readonly reference: string;
  readonly area: Rectangle;
}

/** The largest area that is looked at cell by cell; of a larger one, what is filled. */
const LARGE = 20_000;

/** The cells of a sheet as one who composes a plot sees them. */
export class SheetCells {
  readonly sheet: Sheet;
  readonly #workbook: Workbook;

  constructor(workbook: Workbook, sheet: Sheet) {
    this.#workbook = workbook;
    this.sheet = sheet;
  }

  /** The cells that a typed text means, or why it means none. */
  find(typed: string): Found | Refusal {
    const text = typed.trim().replace(/^=/, '').replaceAll('$', '');
    if (text === '') return { refused: 'Name a cell, by its address such as B12 or by its name.' };
    if (text.includes('!'))
      return {
        refused: `A plot draws cells of its own sheet: write =${text} into a cell here, and name that cell.`,
      };
    const named = [...this.sheet.names].find(([name]) => sameWord(name, text));
    const area = readRectangle(named?.[1] ?? text);
    if (!area)
      return {
        refused: `There is no cell and no name “${text}” on this sheet${/\s/.test(text) ? '; a name holds no space' : ''}. Write an address such as B12 or B4:B9, or a name.`,
      };
    const { rows, columns, name } = this.sheet;
    if (area.bottom >= rows || area.right >= columns.length)
      return {
        refused: `${formatRectangle(area)} lies outside the ${rows} rows and ${columns.length} columns of “${name}”.`,
      };
    return { reference: named?.[0] ?? formatRectangle(area), area };
  }

  /** The one cell that a typed text means. */
  findOne(typed: string): Found | Refusal {
    const found = this.find(typed);
    if (isRefusal(found) || sizeOf(found.area) === 1) return found;
    return { refused: `${typed.trim()} are ${sizeOf(found.area)} cells; name one.` };
  }

  held(address: string): Held {
    const { value, type } = this.#workbook.state(this.sheet.id, address) ?? {};
    switch (value?.kind) {
      case 'number': {
        const quantity = (type?.kind === 'number' && type.quantity) || 'ratio';
        return { kind: 'number', words: quantities[quantity].noun, quantity };
      }
      case 'text':
        return { kind: 'text', words: 'a text' };
      case 'truth':
        return { kind: 'other', words: value.truth ? 'TRUE' : 'FALSE' };
      case 'problem':
        return { kind: 'problem', words: value.message };
      case 'record':
        return heldRecord(value.record);
      default:
        return { kind: 'nothing', words: 'nothing' };
    }
  }

  /** The cells of an area that hold something, row by row. */
  filled(area: Rectangle): string[] {
    const addresses = sizeOf(area) > LARGE ? filledIn(this.sheet.cells, area) : [...addressesIn(area)];
    return addresses.filter((each) => this.held(each).kind !== 'nothing');
  }

  /** How a plot names an area: by its name where it has one, which says more. */
  referenceTo = (area: Rectangle): string => nameOf(this.sheet, formatRectangle(area)) ?? formatRectangle(area);

  /** What stands in a cell as words; nothing where it holds anything else. */
  words(address: string): string {
    const value = this.#workbook.state(this.sheet.id, address)?.value;
    return value?.kind === 'text' ? value.text.trim() : '';
  }

  number(address: string): number | undefined {
    const value = this.#workbook.state(this.sheet.id, address)?.value;
    return value?.kind === 'number' ? value.value : undefined;
  }

  get whole(): Rectangle {
    return { top: 0, left: 0, bottom: this.sheet.rows - 1, right: this.sheet.columns.length - 1 };
  }
}

function heldRecord(record: CellRecord): Held {
  switch (record.kind) {
    case 'curve':
      return { kind: 'curve', words: `a curve of ${noun(record.quantity)}`, quantity: record.quantity };
    case 'table':
      return { kind: 'table', words: 'a table', table: record };
    case 'window':
      return { kind: 'window', words: 'a shared window' };
    default:
      return { kind: 'other', words: `a ${record.kind}` };
  }
}

/** A quantity without its article: `one-way travel`. */
export const noun = (quantity: QuantityName): string => quantities[quantity].noun.replace(/^an? /, '');

import type { GridModel } from '../components/grid/model.ts';
import { formatAddress } from '../formula/address.ts';
import type { Cell, Sheet } from '../document/types.ts';
import type { ShownCell } from '../document/shown.ts';
import type { Workbook } from '../document/workbook.ts';

const EMPTY: ShownCell = { kind: 'empty' };

/** Shows one sheet of a workbook to the grid; before the engine has answered, the texts remembered from last time. */
export class SheetModel implements GridModel {
  readonly sheet: Sheet;
  readonly workbook: Workbook;
  readonly #remembered: ReadonlyMap<string, string>;

  constructor(workbook: Workbook, sheet: Sheet, remembered: ReadonlyMap<string, string>) {
    this.workbook = workbook;
    this.sheet = sheet;
    this.#remembered = remembered;
  }

  get rows(): number {
    return this.sheet.rows;
  }

  get columns(): Sheet['columns'] {
    return this.sheet.columns;
  }

  cell(row: number, column: number): Cell | undefined {
    return this.sheet.cells.get(formatAddress({ row, column }));
  }

  shown(row: number, column: number): ShownCell {
    const address = formatAddress({ row, column });
    const shown = this.workbook.shown(this.sheet.id, address);
    if (shown) return shown;
    const text = this.#remembered.get(address) ?? this.sheet.cells.get(address)?.text;
    return text === undefined ? EMPTY : { kind: 'waiting', text };
  }
}

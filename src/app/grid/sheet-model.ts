import type { GridModel } from '../../components/grid/model.ts';
import type { Consequence } from '../../document/consequences.ts';
import { shownText } from '../../document/show-cell.ts';
import type { ShownCell } from '../../document/shown.ts';
import type { Cell, Sheet } from '../../document/types.ts';
import { countVerdicts, type Counts } from '../../document/verdicts.ts';
import type { Workbook } from '../../document/workbook.ts';
import type { CellState } from '../../engine/types.ts';
import { formatAddress } from '../../formula/address.ts';

const EMPTY: ShownCell = { kind: 'empty' };
/** Far more than are ever in view. */
const MOST_ROWS = 1000;
/** Names of cells by row and column: those in view are asked for several times in each frame, by one model after another. */
const addresses = new Map<number, string[]>();

/** The row that was asked for last: cells are drawn row by row. */
let latest = { row: -1, held: [] as string[] };

function addressOf(row: number, column: number): string {
  if (latest.row !== row) latest = { row, held: addressesIn(row) };
  return (latest.held[column] ??= formatAddress({ row, column }));
}

function addressesIn(row: number): string[] {
  const known = addresses.get(row);
  if (known) return known;
  // Rows that were scrolled past are not kept for ever.
  if (addresses.size >= MOST_ROWS) addresses.clear();
  const held: string[] = [];
  addresses.set(row, held);
  return held;
}

/** Shows one sheet of a workbook to the grid; before the engine has answered, the texts remembered from last time, else
 *  those that are typed there. A formula is no result, and its cell waits empty. */
export class SheetModel implements GridModel {
  readonly sheet: Sheet;
  readonly workbook: Workbook;
  readonly #remembered: ReadonlyMap<string, string>;
  #list: readonly Consequence[] | undefined;
  #before = new Map<string, string>();

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
    return this.sheet.cells.get(addressOf(row, column));
  }

  shown(row: number, column: number): ShownCell {
    const address = addressOf(row, column);
    const shown = this.workbook.shown(this.sheet.id, address);
    if (shown) return shown;
    const text = this.#remembered.get(address) ?? this.sheet.cells.get(address)?.text;
    if (text === undefined) return EMPTY;
    return { kind: 'waiting', text: text.startsWith('=') ? '' : text };
  }

  before(row: number, column: number): string | undefined {
    const { workbook } = this;
    const list = workbook.document.baseline ? workbook.distance : workbook.consequences;
    if (list !== this.#list) {
      this.#list = list;
      const own = list.filter((each) => each.place.sheet === this.sheet.id && isWorthSaying(each));
      this.#before = new Map(own.map((each) => [each.place.cell, shownText(each.before)]));
    }
    return this.#before.get(addressOf(row, column));
  }

  finding(row: number, column: number): 'error' | 'doubt' | undefined {
    const findings = this.workbook.state(this.sheet.id, addressOf(row, column))?.findings;
    if (!findings || findings.length === 0) return undefined;
    return findings.some(({ level }) => level === 'error') ? 'error' : 'doubt';
  }

  /** The verdicts from a heading to the next one. */
  tally(heading: number): Counts {
    const states: (CellState | undefined)[] = [];
    for (let row = heading + 1; row < this.rows && this.cell(row, 0)?.look !== 'section'; row++) {
      for (let column = 1; column < this.columns.length; column++)
        states.push(this.workbook.state(this.sheet.id, addressOf(row, column)));
    }
    return countVerdicts(states);
  }
}

/** Numbers and texts that moved, and verdicts that flipped; a curve or a record has no short "before". */
const isWorthSaying = ({ after, flip }: Consequence): boolean =>
  flip !== undefined || after.kind === 'number' || after.kind === 'text';

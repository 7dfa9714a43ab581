import { labelOf as meaningOf } from '../../../functions/driver/labels.ts';
import type { CellState } from '../../engine/types.ts';
import { columnLetters, formatAddress, parseAddress } from '../../formula/address.ts';
import { referencesIn } from '../../formula/references-in.ts';
import { shownText } from '../show-cell.ts';
import type { Cell, Sheet } from '../types.ts';
import { verdictIn } from '../verdicts.ts';
import type { Workbook } from '../workbook.ts';
import { sectionsOf, type SheetSection } from './origins.ts';

/** What of a workbook a review needs. */
export type Reviewed = Pick<Workbook, 'state' | 'shown' | 'scope' | 'document' | 'functions'>;

/** What a cell is for the reader of a review. `limit` is what the verdict of its row is held against. */
export type Role = 'input' | 'result' | 'verdict' | 'limit' | 'curve' | 'remark' | 'problem';

/** A cell with all that a review tells of it. */
export interface ReviewedCell {
  readonly role: Role;
  readonly address: string;
  /** Counted from 0. */
  readonly index: number;
  /** The title of its column. */
  readonly column: string;
  readonly cell: Cell;
  readonly state: CellState | undefined;
  /** As shown, a level with its basis. */
  readonly text: string;
  /** A level of a driver for which no basis is given. */
  readonly lacksBasis: boolean;
}

/** A row that holds something beside its label. */
export interface ReviewedRow {
  readonly section: string;
  /** It stands in the data of a driver. */
  readonly isOfDriver: boolean;
  readonly label: string;
  readonly cells: readonly ReviewedCell[];
}

const NO_SECTION: SheetSection = { title: '', first: 0, last: 0, isDriver: false };

/** The rows of a sheet in reading order, and the notes that stand between them. */
export function readRows(workbook: Reviewed, sheet: Sheet): { rows: ReviewedRow[]; notes: string[] } {
  const byRow = new Map<number, { address: string; column: number; cell: Cell }[]>();
  for (const [address, cell] of sheet.cells) {
    const at = parseAddress(address);
    // A row of sub-headings may have nothing to say over its own labels.
    if (!at || (cell.text === '' && cell.look !== 'label')) continue;
    byRow.set(at.row, [...(byRow.get(at.row) ?? []), { address, column: at.column, cell }]);
  }
  const rows: ReviewedRow[] = [];
  const notes: string[] = [];
  const sections = sectionsOf(sheet);
  let heads = new Map<number, string>();
  let under: SheetSection | undefined;
  for (const [row, cells] of [...byRow].toSorted(([a], [b]) => a - b)) {
    const ordered = cells.toSorted((a, b) => a.column - b.column);
    const words = ({ address, cell }: { readonly address: string; readonly cell: Cell }): string => {
      const shown = cell.text.startsWith('=') ? workbook.shown(sheet.id, address) : undefined;
      return shown ? shownText(shown) : cell.text;
    };
    notes.push(
      ...ordered
        .filter(({ cell }) => cell.look === 'note')
        .map(words)
        .filter(Boolean),
    );
    const section = sections.findLast(({ first }) => first <= row) ?? NO_SECTION;
    // A row of sub-headings has words over the columns, which are no inputs.
    const isLabelled = ordered[0]?.column === 0;
    const isHead = isLabelled ? ordered[0]?.cell.look === 'label' : ordered.every(({ cell }) => cell.look === 'label');
    // One that only names what stands below it leaves the heads of the columns as they are.
    const headsColumns = isHead && ordered.some(({ cell, column }) => column > 0 && cell.text !== '');
    if (section !== under || headsColumns) heads = new Map();
    under = section;
    if (isHead) for (const each of ordered) if (each.column > 0) heads.set(each.column, words(each));
    const label = ordered[0]?.column === 0 ? words(ordered[0]).trim() : '';
    // Drivers side by side are told apart by their names.
    if (section.isDriver && meaningOf(label) === 'name')
      for (const each of ordered)
        if (!heads.has(each.column) && !sheet.columns[each.column]?.title) heads.set(each.column, words(each));
    const verdicts = ordered.filter(({ address }) => verdictIn(workbook.state(sheet.id, address)));
    const read = ordered
      .filter(({ cell, column }) => column > 0 && cell.look === undefined && !(isHead && !cell.text.startsWith('=')))
      .map(({ address, column, cell }) => {
        const state = workbook.state(sheet.id, address);
        const { basis, lacksBasis } = basisOf(sheet, section, column, label, cell.text);
        const shown = workbook.shown(sheet.id, address);
        const text = [shown ? shownText(shown) : cell.text, basis].filter(Boolean).join(' ');
        const judge = verdicts.find((each) => each.column < column);
        const isLimit = judge !== undefined && refersTo(workbook, sheet, judge.cell.text, address);
        const title = heads.get(column) ?? sheet.columns[column]?.title ?? columnLetters(column);
        return {
          role: roleOf(cell, state, { isLimit, isUnderHead: heads.has(column) }),
          address,
          index: column,
          column: title,
          cell,
          state,
          text,
          lacksBasis,
        };
      })
      // A formula that shows nothing where there is nothing to show says nothing here either.
      .filter(({ role, text }) => role !== undefined && text !== '') as ReviewedCell[];
    const isToldWithLevel =
      meaningOf(label) === 'basis' && rowsOf(section).some((each) => isLevel(textAt(sheet, each, 0)));
    if (read.length > 0 && !isToldWithLevel) {
      rows.push({ section: section.title, isOfDriver: section.isDriver, label, cells: read });
    }
  }
  return { rows, notes };
}

/** A text that a formula gives is a remark; under the head of a table it belongs to what is tabled. */
function roleOf(
  cell: Cell,
  state: CellState | undefined,
  { isLimit, isUnderHead }: { readonly isLimit: boolean; readonly isUnderHead: boolean },
): Role | undefined {
  const value = state?.value;
  if (value?.kind === 'problem') return 'problem';
  if (!cell.text.startsWith('=')) return isLimit ? 'limit' : 'input';
  if (value?.kind === 'text') return isUnderHead ? 'result' : 'remark';
  if (value?.kind !== 'record') return 'result';
  return value.record.kind === 'verdict' ? 'verdict' : value.record.kind === 'curve' ? 'curve' : 'result';
}

const refersTo = (workbook: Reviewed, sheet: Sheet, formula: string, address: string): boolean =>
  referencesIn(formula, workbook.scope(sheet.id)).some((each) => each.sheet === sheet.id && each.cells === address);

/** A level printed for a driver means nothing without its basis, which stands in a row of the same section. */
function basisOf(sheet: Sheet, section: SheetSection, column: number, label: string, typed: string): Basis {
  if (!section.isDriver || !isLevel(label) || typed.startsWith('=')) return { basis: '', lacksBasis: false };
  const row = rowsOf(section).find((each) => meaningOf(textAt(sheet, each, 0)) === 'basis');
  const basis = row === undefined ? '' : textAt(sheet, row, column);
  return { basis, lacksBasis: basis === '' };
}

interface Basis {
  readonly basis: string;
  readonly lacksBasis: boolean;
}

function isLevel(label: string): boolean {
  const meaning = meaningOf(label);
  return typeof meaning === 'object' && meaning.field === 'level';
}

const rowsOf = ({ first, last }: SheetSection): number[] =>
  Array.from({ length: last - first + 1 }, (_, index) => first + index);

function textAt(sheet: Sheet, row: number, column: number): string {
  const text = sheet.cells.get(formatAddress({ row, column }))?.text ?? '';
  return text.startsWith('=') ? '' : text.trim();
}

import type { CellState, Place } from '../engine/types.ts';
import { formatAddress, parseAddress } from '../formula/address.ts';
import type { Before, Moment } from './comparison.ts';
import { listConsequences, type Consequence } from './consequences.ts';
import { showCell, shownText } from './show-cell.ts';
import type { OctavoDocument, Sheet } from './types.ts';
import type { Workbook } from './workbook.ts';

/** Only what differs between two sheets, or between a sheet and its baseline. `before` is the first of the two. */
export interface Differences {
  /** Verdicts that judge otherwise, those that are worse in the second before those that are better. */
  readonly flips: readonly Consequence[];
  /** Typed texts. */
  readonly inputs: readonly Consequence[];
  readonly results: readonly Consequence[];
  /** What stands only in the one or the other: the second shows nothing, or the first. */
  readonly alone: readonly Consequence[];
}

type Compared = Pick<Workbook, 'document' | 'state'>;

/** A sheet as it is now beside what it was at the baseline. */
export const sinceBaseline = (workbook: Pick<Workbook, 'distance'>, sheet: string): Differences =>
  grouped(workbook.distance.filter(({ place }) => place.sheet === sheet));

/** Two sheets of a document. Cells are the same by name, else by heading, label and column: rows may have moved. */
export function betweenSheets(workbook: Compared, first: Sheet, second: Sheet): Differences {
  const { document } = workbook;
  const here = keyed(first);
  const there = keyed(second);
  const momentAt = (sheet: Sheet, cell: string): Moment => ({
    state: workbook.state(sheet.id, cell),
    cell: sheet.cells.get(cell),
  });
  const earlier = [...there].flatMap(([key, cell]): Before[] => {
    const partner = here.get(key);
    if (partner === undefined) return [];
    return [{ place: { sheet: second.id, cell }, moment: momentAt(first, partner) }];
  });
  const now = (place: Place): Moment => momentAt(second, place.cell);
  const isTyped = ({ place, moment }: Before): boolean =>
    !(second.cells.get(place.cell)?.text ?? '').startsWith('=') && !(moment.cell?.text ?? '').startsWith('=');
  const differing = grouped(listConsequences(document, earlier, now, isTyped));
  const alone = [
    ...only(document, first, here, there, workbook, 'before'),
    ...only(document, second, there, here, workbook, 'after'),
  ];
  return { ...differing, alone };
}

/** Numbers that are shown alike differ by less than a reader was shown. */
const isSeen = ({ before, after }: Consequence): boolean =>
  after.kind === 'curve' || before.kind !== after.kind || shownText(before) !== shownText(after);

function grouped(list: readonly Consequence[]): Differences {
  const isAlone = ({ before, after }: Consequence): boolean => before.kind === 'empty' || after.kind === 'empty';
  const rest = list.filter((each) => !each.flip && isSeen(each));
  return {
    flips: list.filter(({ flip }) => flip),
    inputs: rest.filter((each) => each.isCause && !isAlone(each)),
    results: rest.filter((each) => !each.isCause && !isAlone(each)),
    alone: rest.filter(isAlone),
  };
}

/** The cells of one sheet that have no partner in the other. */
function only(
  document: OctavoDocument,
  sheet: Sheet,
  own: ReadonlyMap<string, string>,
  other: ReadonlyMap<string, string>,
  workbook: Compared,
  side: 'before' | 'after',
): readonly Consequence[] {
  const nothing: Moment = { state: undefined, cell: undefined };
  const alone = [...own].filter(([key]) => !other.has(key)).map(([, cell]) => ({ sheet: sheet.id, cell }));
  const at = ({ cell }: Place): Moment => ({ state: workbook.state(sheet.id, cell), cell: sheet.cells.get(cell) });
  const list = listConsequences(
    document,
    alone.map((place) => ({ place, moment: side === 'before' ? at(place) : nothing })),
    (place) => (side === 'before' ? nothing : at(place)),
    () => false,
  );
  return list.filter(({ place }) =>
    isWorthShowing(workbook.state(place.sheet, place.cell), document, sheet, place.cell),
  );
}

const isWorthShowing = (state: CellState | undefined, document: OctavoDocument, sheet: Sheet, cell: string): boolean =>
  state !== undefined && showCell(state, sheet.cells.get(cell), document).kind !== 'empty';

/** The cells beside the labels, by what a reader would call them. */
function keyed(sheet: Sheet): ReadonlyMap<string, string> {
  const named = new Map([...sheet.names].map(([name, cells]) => [cells, name.toLowerCase()]));
  const headings = [...sheet.cells]
    .filter(([, { look }]) => look === 'section')
    .map(([address, { text }]) => ({ row: parseAddress(address)?.row ?? 0, text }))
    .toSorted((a, b) => a.row - b.row);
  const keys = new Map<string, string>();
  const ordered = [...sheet.cells]
    .map(([address, cell]) => ({ address, cell, at: parseAddress(address) ?? { row: 0, column: 0 } }))
    .toSorted((a, b) => a.at.row - b.at.row || a.at.column - b.at.column);
  for (const { address, cell, at } of ordered) {
    if (cell.text === '' || cell.look !== undefined || at.column === 0) continue;
    const name = named.get(address);
    const label = sheet.cells.get(formatAddress({ row: at.row, column: 0 }))?.text ?? '';
    const heading = headings.findLast(({ row }) => row <= at.row)?.text ?? '';
    const title = sheet.columns[at.column]?.title ?? '';
    const stem = name ?? [heading, label === '' ? at.row : label, title === '' ? at.column : title].join('\n');
    // Rows of one label count from the first.
    let key = stem;
    for (let copy = 2; keys.has(key); copy++) key = `${stem}\n${copy}`;
    keys.set(key, address);
  }
  return keys;
}

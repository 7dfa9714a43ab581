import { nameOf } from '../document/labels.ts';
import type { Sheet } from '../document/types.ts';
import type { Workbook } from '../document/workbook.ts';

/** What is wrong or doubtful in a cell, and what the cell is called. */
export interface Complaint {
  readonly sheet: string;
  readonly cell: string;
  readonly isProblem: boolean;
  readonly called: string;
  readonly message: string;
}

const keyOf = ({ sheet, cell, isProblem, message }: Complaint): string => [sheet, cell, isProblem, message].join('!');

/** What is wrong or doubtful in a document, and was not before. A cell that only passes on what is wrong elsewhere has a
 *  problem of its own, for it has no result. */
export function newComplaints(workbook: Workbook, before: ReadonlySet<string>): readonly Complaint[] {
  return complaintsIn(workbook).filter((each) => !before.has(keyOf(each)));
}

/** All of them at present, to be told from later ones. */
export const presentComplaints = (workbook: Workbook): ReadonlySet<string> =>
  new Set(complaintsIn(workbook).map(keyOf));

function complaintsIn(workbook: Workbook): Complaint[] {
  const [first] = workbook.document.sheets;
  return workbook.document.sheets.flatMap((sheet) =>
    [...sheet.cells.keys()].flatMap((cell): Complaint[] => {
      const { value, findings = [] } = workbook.state(sheet.id, cell) ?? {};
      const place = { sheet: sheet.id, cell, called: called(sheet, cell, sheet === first) };
      const doubts = findings.filter(({ level }) => level === 'doubt');
      return [
        ...doubts.map(({ message }) => ({ ...place, isProblem: false, message })),
        ...(value?.kind === 'problem' ? [{ ...place, isProblem: true, message: value.message }] : []),
      ];
    }),
  );
}

const called = (sheet: Sheet, cell: string, isFirst: boolean): string =>
  nameOf(sheet, cell) ?? (isFirst ? cell : `'${sheet.name.replaceAll("'", "''")}'!${cell}`);

import type { Status } from '../../../functions/values/verdict.ts';
import { columnLetters } from '../../formula/address.ts';
import { speak } from '../../units/show.ts';
import { labelOf } from '../labels.ts';
import type { Origin, Sheet } from '../types.ts';
import { verdictIn } from '../verdicts.ts';
import { groundsOf } from './assumptions.ts';
import { doubtsOf } from './doubts.ts';
import { originOf } from './origins.ts';
import { readRows, type Reviewed, type ReviewedCell, type ReviewedRow, type Role } from './rows.ts';
import type { Review, ReviewCell, ReviewOrigin, ReviewSection, ReviewVerdict } from './types.ts';

const order: readonly Status[] = ['fail', 'caution', 'good'];

/** Gathers the review of a sheet from the document and from what the engine made of it; nothing is read off the screen. */
export function reviewOf(workbook: Reviewed, sheet: Sheet, made: Date): Review {
  const { rows, notes } = readRows(workbook, sheet);
  const verdicts = toldApart(rows).flatMap((row) => verdictsOf(workbook, sheet, row));
  const count = (status: Status): number => verdicts.filter((each) => each.status === status).length;
  const unstated = rows
    .filter(({ isOfDriver }) => isOfDriver)
    .flatMap(({ cells }) => cells)
    .filter(({ role, cell, state }) => role === 'input' && state?.value.kind === 'number' && !cell.origin).length;
  const { assumptions, rules, sources } = groundsOf(workbook, sheet);
  const assumed = rows.flatMap(({ isOfDriver, cells }) =>
    cells.flatMap(({ role, cell, address, text }) =>
      (role === 'input' || role === 'limit') && originOf(cell, isOfDriver) === 'assumed'
        ? [`${labelOf(sheet, address)}: ${text}`]
        : [],
    ),
  );
  return {
    title: workbook.document.title,
    sheet: sheet.name,
    summary: sheet.summary,
    made: made.toISOString(),
    counts: { good: count('good'), caution: count('caution'), fail: count('fail') },
    verdicts: order.flatMap((status) => verdicts.filter((each) => each.status === status)),
    doubts: [...doubtsOf(workbook, sheet, rows), ...(unstated > 0 ? [unstatedWords(unstated)] : [])],
    plots: sheet.plots,
    inputs: sectionsOf(rows, 'input'),
    results: sectionsOf(rows, 'result'),
    origins: originsOf(sheet, rows),
    assumptions: [...assumed, ...assumptions],
    rules,
    notes: [...remarksOf(rows), ...notes],
    sources,
  };
}

const unstatedWords = (count: number): string =>
  count === 1
    ? 'One number of a driver does not say whether it was measured or comes from a datasheet.'
    : `${count} numbers of drivers do not say whether they were measured or come from a datasheet.`;

/** Rows of one name with verdicts, as limits in two sections, say their section too: of `Low window: bass and mid` the head. */
function toldApart(rows: readonly ReviewedRow[]): readonly ReviewedRow[] {
  const judged = rows.filter(({ cells }) => cells.some(({ role }) => role === 'verdict'));
  return judged.map((row) => {
    const isAlone = row.label === '' || judged.filter(({ label }) => label === row.label).length === 1;
    return isAlone ? row : { ...row, label: `${row.section.split(':')[0] ?? ''}, ${row.label}` };
  });
}

function verdictsOf(workbook: Reviewed, sheet: Sheet, { label, cells }: ReviewedRow): ReviewVerdict[] {
  const { system } = workbook.document;
  const limits = cells
    .filter(({ role }) => role === 'limit')
    .map((cell) => (isUnheaded(cell, cell.column) ? cell.text : `${cell.column} ${cell.text}`));
  const judged = cells.filter(({ role }) => role === 'verdict');
  return judged.flatMap(({ state, address, column }) => {
    const verdict = verdictIn(state);
    if (!verdict) return [];
    const { status, word, reason, note } = verdict;
    return [
      {
        label: label === '' ? labelOf(sheet, address) : [label, ...(judged.length > 1 ? [column] : [])].join(', '),
        status,
        word,
        reason: speak(reason, system),
        note: note ? speak(note, system) : '',
        limits,
      },
    ];
  });
}

/** Whether a column has no head but its letter. */
const isUnheaded = ({ index }: ReviewedCell, column: string): boolean => column === columnLetters(index);

/** The cells of one role, as tables with a column for each column of the sheet that holds any of them. */
function sectionsOf(rows: readonly ReviewedRow[], role: Role): ReviewSection[] {
  const titles = [...new Set(rows.map(({ section }) => section))];
  return titles.flatMap((title) => {
    const held = rows
      .filter(({ section }) => section === title)
      .map((row) => ({ ...row, cells: row.cells.filter((each) => each.role === role) }))
      .filter(({ cells }) => cells.length > 0);
    if (held.length === 0) return [];
    const ordered = held.flatMap(({ cells }) => cells).toSorted((a, b) => a.index - b.index);
    const columns = [...new Set(ordered.map(({ column }) => column))];
    const cellIn = ({ cells, isOfDriver }: ReviewedRow, column: string): ReviewCell => {
      const found = cells.find((each) => each.column === column);
      const origin = found && role === 'input' ? originOf(found.cell, isOfDriver) : undefined;
      return { text: found?.text ?? '', ...(origin && { origin }) };
    };
    return [
      {
        title,
        // A letter tells a reader of paper nothing.
        columns: columns.map((column) => (ordered.some((each) => isUnheaded(each, column)) ? '' : column)),
        rows: held.map((row) => ({ label: row.label, cells: columns.map((column) => cellIn(row, column)) })),
      },
    ];
  });
}

const origins: readonly (Origin | 'unstated')[] = [
  'measured',
  'datasheet',
  'invented',
  'assumed',
  'chosen',
  'unstated',
];

/** Numbers only: a name or a chosen word comes from nowhere. A row whose numbers all come from one place is told once. */
function originsOf(sheet: Sheet, rows: readonly ReviewedRow[]): ReviewOrigin[] {
  const told = new Map<Origin | 'unstated', string[]>();
  let limits = 0;
  for (const { isOfDriver, label, cells } of rows) {
    const numbers = cells.filter(({ role, state }) => role === 'input' && state?.value.kind === 'number');
    limits += cells.filter(({ role, cell }) => role === 'limit' && !cell.origin).length;
    const places = new Set(numbers.map(({ cell }) => originOf(cell, isOfDriver) ?? 'unstated'));
    for (const place of places) {
      const own = numbers.filter(({ cell }) => (originOf(cell, isOfDriver) ?? 'unstated') === place);
      const words = places.size === 1 && label !== '' ? [label] : own.map(({ address }) => labelOf(sheet, address));
      told.set(place, [...(told.get(place) ?? []), ...words]);
    }
  }
  if (limits > 0)
    told.set('chosen', [...(told.get('chosen') ?? []), limits === 1 ? 'the limit' : `the ${limits} limits`]);
  return origins.flatMap((origin) => {
    const inputs = told.get(origin);
    return inputs ? [{ origin, inputs }] : [];
  });
}

const remarksOf = (rows: readonly ReviewedRow[]): string[] =>
  rows.flatMap(({ label, cells }) =>
    cells.filter(({ role }) => role === 'remark').map(({ text }) => (label === '' ? text : `${label}: ${text}`)),
  );

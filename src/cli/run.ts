import type { AnyFunction } from '../../functions/define.ts';
import { addressesIn, rectangleOf } from '../document/area.ts';
import { isRefusal } from '../document/command.ts';
import { newDocument } from '../document/create.ts';
import { showCell, shownText } from '../document/show-cell.ts';
import type { DriverEntry } from '../document/shelf/entry.ts';
import type { OctavoDocument } from '../document/types.ts';
import { Workbook } from '../document/workbook.ts';
import type { SheetEngine } from '../engine/types.ts';
import { nearest } from '../formula/nearest.ts';
import { brokenIn } from '../formula/broken.ts';
import { referencesIn } from '../formula/references-in.ts';
import { treeOf } from '../formula/tree.ts';
import { decodeDocument } from '../exchange/decode.ts';
import { readFile } from '../exchange/file.ts';
import { decodeShelf, readShelf } from '../exchange/shelf-file.ts';
import { QuestionError } from '../analysis/subject/place-error.ts';
import { ask } from './ask.ts';
import { questionUsage, readAsking, type Asking } from './ask-arguments.ts';
import { readArguments, usage, type Request } from './arguments.ts';
import { newComplaints, presentComplaints, type Complaint } from './complaints.ts';
import { describeCell } from './describe-cell.ts';
import { describeFunctions, listFunctions } from './describe-functions.ts';
import { findCells, type Found } from './find-cell.ts';
import { describeDrivers, findDrivers, listDrivers } from './shelf.ts';

/** All that the command line touches outside itself. */
export interface Surroundings {
  out(text: string): void;
  error(text: string): void;
  /** The text of a file; nothing where there is none. */
  read(path: string): Promise<string | undefined>;
  newEngine(): SheetEngine;
  readonly catalogue: readonly AnyFunction[];
  /** The texts of the templates by the name that a reader gives. */
  readonly templates: ReadonlyMap<string, unknown>;
  /** The shelf of invented drivers. */
  readonly drivers?: unknown;
}

/** The questions that look at a shelf. */
const shelfAsked: ReadonlySet<string> = new Set(['cheapest', 'shortlist']);

/** Runs the command line. Gives the exit status: 0, or 1 after a message in `error`. */
export async function run(given: readonly string[], around: Surroundings): Promise<number> {
  const asking = readAsking(given);
  if (asking) return report('wrong' in asking ? asking.wrong : await answerQuestion(asking, around), around);
  const request = readArguments(given);
  return report('wrong' in request ? request.wrong : await answer(request, around), around);
}

function report(wrong: string | undefined, around: Surroundings): number {
  if (wrong === undefined) return 0;
  around.error(wrong);
  return 1;
}

/** Gives what went wrong, for the reader; nothing where all went well. */
function answer(request: Request, around: Surroundings): Promise<string | undefined> | string | undefined {
  switch (request.kind) {
    case 'help':
      around.out(`${usage}\n\n${questionUsage}`);
      return undefined;
    case 'functions':
      around.out(request.json ? json(describeFunctions(around.catalogue)) : listFunctions(around.catalogue));
      return undefined;
    case 'formula':
      return calculate(request, around);
    case 'document':
      return work(request, around);
    case 'shelf':
      return search(request, around);
  }
}

async function search(
  { file, find, json: asJson }: Extract<Request, { kind: 'shelf' }>,
  around: Surroundings,
): Promise<string | undefined> {
  const entries = await shelfOf(file, around);
  if (isRefusal(entries)) return entries.refused;
  const found = findDrivers(entries, find);
  if (isRefusal(found)) return found.refused;
  around.out(asJson ? json(describeDrivers(found)) : listDrivers(found));
  if (!asJson && found.length === 0) around.error('No driver on the shelf is like that.');
  return undefined;
}

/** The drivers of a file, or the invented ones where none is named. */
async function shelfOf(
  file: string | undefined,
  around: Surroundings,
): Promise<readonly DriverEntry[] | { refused: string }> {
  const text = file === undefined ? undefined : await around.read(file);
  if (file !== undefined && text === undefined) return { refused: `There is no file "${file}".` };
  const entries = text === undefined ? decodeShelf(around.drivers) : readShelf(text);
  return isRefusal(entries) ? { refused: `${file ?? 'The invented drivers'}: ${entries.refused}` } : entries;
}

async function answerQuestion(asking: Asking, around: Surroundings): Promise<string | undefined> {
  const opened = await open(asking.file, around);
  if (isRefusal(opened)) return opened.refused;
  const file = asking.flags.get('shelf')?.at(-1);
  const shelf = shelfAsked.has(asking.word) ? await shelfOf(file, around) : [];
  if (isRefusal(shelf)) return shelf.refused;
  try {
    around.out(json(await ask(opened, asking, shelf)));
    return undefined;
  } catch (error) {
    if (error instanceof QuestionError) return error.message;
    throw error;
  }
}

async function calculate(
  { formula, json: asJson }: Extract<Request, { kind: 'formula' }>,
  around: Surroundings,
): Promise<string | undefined> {
  const document = newDocument('Command line');
  return withWorkbook(document, around, async (workbook) => {
    const sheet = document.sheets[0]?.id ?? '';
    const [cell] = brokenIn(formula, treeOf(formula)) ? [] : referencesIn(formula, workbook.scope(sheet));
    if (cell)
      return `${formula.slice(cell.from, cell.to)} is a cell, but a formula alone stands in no sheet: write a value in its place, or ask a sheet: calc FILE --set 'B4=…' --get NAME.`;
    const state = await workbook.evaluate(sheet, formula);
    const shown = showCell(state, { text: formula }, document);
    if (asJson) around.out(json(describeCell(state, shown, document.system)));
    const wrong = state.value.kind === 'problem' ? state.value.message : undefined;
    if (wrong === undefined && !asJson) around.out(shownText(shown));
    for (const { level, message } of state.findings) if (level === 'doubt') around.error(`Doubtful: ${message}`);
    return wrong;
  });
}

async function work(
  request: Extract<Request, { kind: 'document' }>,
  around: Surroundings,
): Promise<string | undefined> {
  const opened = await open(request.file, around);
  if (isRefusal(opened)) return opened.refused;
  return withWorkbook(opened, around, async (workbook) => {
    const before = presentComplaints(workbook);
    for (const { cell, text } of request.set) {
      const wrong = await set(workbook, cell, text);
      if (wrong !== undefined) return wrong;
    }
    const complaints = newComplaints(workbook, before);
    for (const { called, isProblem, message } of complaints)
      if (!isProblem) around.error(`Doubtful, ${called}: ${message}`);
    const asked = request.get.length > 0 ? request.get : allNames(opened);
    if (asked.length === 0) return 'No cell of this document has a name: ask for one with --get B4.';
    const found = asked.map((written) => ({ written, found: findCells(opened, written) }));
    for (const { found: each } of found) if ('wrong' in each) return each.wrong;
    const lines = found.flatMap(({ written, found: each }) => ('wrong' in each ? [] : [{ written, found: each }]));
    around.out(request.json ? json(described(workbook, lines)) : listed(workbook, lines));
    const failed = complaints.find((each) => each.isProblem && lines.some(({ found }) => isIn(each, found)));
    const lost = complaints.filter(({ isProblem }) => isProblem);
    if (!failed && lost[0])
      around.error(`Without a result now, ${lost.length} in all; ${lost[0].called}: ${lost[0].message}`);
    return failed && `${failed.called} has no result any more: ${failed.message}`;
  });
}

const isIn = ({ sheet, cell }: Complaint, found: Found | { readonly wrong: string }): boolean =>
  !('wrong' in found) && found.sheet.id === sheet && [...addressesIn(rectangleOf(found.cells))].includes(cell);

async function open(file: string, { read, templates }: Surroundings): Promise<OctavoDocument | { refused: string }> {
  const text = await read(file);
  if (text !== undefined) {
    const document = readFile(text);
    return isRefusal(document) ? { refused: `${file}: ${document.refused}` } : document;
  }
  const template = templates.get(file.replace(/\.json$/, ''));
  if (template !== undefined) return decodeDocument(template);
  if (/^[\w.]+\(/.test(file))
    return { refused: `There is no file "${file}". A formula begins with an equals sign: calc '=${file}'` };
  const known = [...templates.keys()];
  const near = nearest(file, known);
  const advice = near === undefined ? `templates are ${known.join(', ')}.` : `is ${near} meant?`;
  return { refused: `There is no file "${file}", and no template of that name; ${advice}` };
}

async function set(workbook: Workbook, written: string, text: string): Promise<string | undefined> {
  const found = findCells(workbook.document, written);
  if ('wrong' in found) return found.wrong;
  const { sheet, cells } = found;
  if (cells.includes(':')) return `"${written}" is the range ${cells}; --set writes one cell.`;
  const refusal = await workbook.do({ kind: 'write', sheet: sheet.id, texts: new Map([[cells, text]]) });
  if (refusal) return refusal.refused;
  const { value } = workbook.state(sheet.id, cells) ?? {};
  return value?.kind === 'problem' ? `${written}: ${value.message}` : undefined;
}

/** Names of the first sheet as they are, of the others with their sheet. */
const allNames = ({ sheets }: OctavoDocument): string[] =>
  sheets.flatMap(({ name: sheet, names }, index) =>
    [...names.keys()].map((name) => (index === 0 ? name : `'${sheet.replaceAll("'", "''")}'!${name}`)),
  );

interface Line {
  readonly written: string;
  readonly found: Found;
}

const described = (workbook: Workbook, lines: readonly Line[]): unknown =>
  Object.fromEntries(
    lines.map(({ written, found: { sheet, cells } }) => {
      const describe = (cell: string): unknown =>
        describeCell(
          workbook.state(sheet.id, cell),
          workbook.shown(sheet.id, cell) ?? { kind: 'empty' },
          workbook.document.system,
        );
      if (!cells.includes(':')) return [written, describe(cells)];
      const each = [...addressesIn(rectangleOf(cells))].map((cell) => [cell, describe(cell)] as const);
      return [written, { kind: 'range', cells: Object.fromEntries(each) }];
    }),
  );

const listed = (workbook: Workbook, lines: readonly Line[]): string =>
  lines
    .flatMap(({ written, found: { sheet, cells } }) => {
      if (!cells.includes(':')) return [`${written}: ${workbook.asText(sheet.id, cells)}`];
      return [...addressesIn(rectangleOf(cells))].map(
        (cell) => `${written} ${cell}: ${workbook.asText(sheet.id, cell)}`,
      );
    })
    .join('\n');

async function withWorkbook(
  document: OctavoDocument,
  { newEngine }: Surroundings,
  task: (workbook: Workbook) => Promise<string | undefined>,
): Promise<string | undefined> {
  const workbook = new Workbook(newEngine(), document);
  try {
    await workbook.ready;
    return await task(workbook);
  } finally {
    workbook.dispose();
  }
}

/** JSON knows no infinite numbers; they are written as words. */
const json = (value: unknown): string =>
  JSON.stringify(
    value,
    (_, each: unknown) => (typeof each === 'number' && !Number.isFinite(each) ? String(each) : each),
    2,
  );

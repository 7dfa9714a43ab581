import { columnLetters, parseAddress } from '../formula/address.ts';
import { LONGEST_UNIT, unitAhead } from '../units/table.ts';

/** One corner of a reference; `$` keeps a row or a column fixed when the formula is copied. */
export interface Corner {
  readonly row: number;
  readonly column: number;
  readonly fixedRow: boolean;
  readonly fixedColumn: boolean;
}

/** A reference as it is written: cells or a name, of the formula's own sheet where none is written before it. */
export type Written =
  | { readonly kind: 'cells'; readonly sheet?: string; readonly first: Corner; readonly last?: Corner }
  | { readonly kind: 'name'; readonly sheet?: string; readonly name: string };

/** What becomes of a reference: another one, or nothing where its cells are gone. */
export type Following = (written: Written) => Written | undefined;

const space = '[ \\t\\n\\r\\u00a0\\u2009\\u202f]*';
const letter = '[a-zA-Z_\\u00aa-\\u2008\\u2030-\\u2211\\u2213-\\uffff]';
const word = `(?:\\$|${letter})(?:${letter}|[0-9.$])*`;

const TEXT = /"(?:[^"]|"")*"?/y;
const ERROR = /#[A-Z/0]+[!?]?/y;
const NUMBER = /(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?/y;
const GAP = new RegExp(space, 'y');
const UNKNOWN_UNIT = new RegExp(`${space}[^\\s\\d.()+*^&=<>,;:!"'#%/-][^\\s()+*^&=<>,;:!"'#/-]*`, 'y');
const REFERENCE = new RegExp(
  `(?:('(?:[^']|'')*'|${word})${space}!${space})?(${word})(?:${space}:${space}(${word}))?`,
  'y',
);
const CALL = new RegExp(`${space}\\(`, 'y');

/** Puts other references in the place of those in a formula, and leaves every other character as it was typed. It looks
 *  at words only, so a formula that is not finished, or not right, keeps up with its sheet too. */
export function mapReferences(formula: string, follow: Following): string {
  let mapped = '';
  let at = 0;
  while (at < formula.length) {
    const [taken, written] = nextPiece(formula, at, follow);
    mapped += written;
    at += taken;
  }
  return mapped;
}

/** How many characters the next piece of the formula has, and what stands in its place. */
function nextPiece(formula: string, at: number, follow: Following): [taken: number, written: string] {
  const same = (text: string): [number, string] => [text.length, text];
  const text = match(TEXT, formula, at) ?? match(ERROR, formula, at);
  if (text) return same(text[0]);
  const number = match(NUMBER, formula, at);
  if (number) return same(number[0] + unitAt(formula, at + number[0].length));
  const found = match(REFERENCE, formula, at);
  if (!found) return same(formula[at] ?? '');
  const [whole, sheet, first = '', last] = found;
  if (last !== undefined && !(parseAddress(first) && parseAddress(last))) {
    // A colon that makes no range: the first word stands alone.
    const alone = whole.slice(0, whole.indexOf(first, sheet?.length ?? 0) + first.length);
    return [alone.length, followed(alone, sheet, first, undefined, follow)];
  }
  if (match(CALL, formula, at + whole.length)) return same(whole);
  return [whole.length, followed(whole, sheet, first, last, follow)];
}

function followed(
  whole: string,
  sheet: string | undefined,
  first: string,
  last: string | undefined,
  follow: Following,
) {
  const [head = '', ...fields] = first.split('.');
  const field = fields.length === 0 ? '' : `.${fields.join('.')}`;
  const before = readReference(sheet, head, last);
  if (!before) return whole;
  const after = follow(before);
  if (after === before) return whole;
  return after ? formatReference(after) + field : '#REF!';
}

function readReference(sheet: string | undefined, first: string, last: string | undefined): Written | undefined {
  const on =
    sheet === undefined ? {} : { sheet: sheet.startsWith("'") ? sheet.slice(1, -1).replaceAll("''", "'") : sheet };
  const corner = cornerOf(first);
  if (corner) {
    const other = last === undefined ? undefined : cornerOf(last);
    return { kind: 'cells', ...on, first: corner, ...(other && { last: other }) };
  }
  return /^(true|false)$/i.test(first) || first.includes('$') ? undefined : { kind: 'name', ...on, name: first };
}

function cornerOf(address: string): Corner | undefined {
  const at = parseAddress(address);
  return at && { ...at, fixedColumn: address.startsWith('$'), fixedRow: address.lastIndexOf('$') > 0 };
}

export function formatReference(written: Written): string {
  const sheet = written.sheet === undefined ? '' : `${formatSheet(written.sheet)}!`;
  if (written.kind === 'name') return sheet + written.name;
  return sheet + formatCorner(written.first) + (written.last ? `:${formatCorner(written.last)}` : '');
}

const formatCorner = ({ row, column, fixedRow, fixedColumn }: Corner): string =>
  `${fixedColumn ? '$' : ''}${columnLetters(column)}${fixedRow ? '$' : ''}${row + 1}`;

/** A sheet's name as a formula writes it: quoted unless it is one plain word. */
export const formatSheet = (name: string): string =>
  /^[\p{L}_][\p{L}\p{N}_]*$/u.test(name) && !parseAddress(name) ? name : `'${name.replaceAll("'", "''")}'`;

/** The unit behind a number, with the space between: `ft3` in `0.2 ft3` is no cell. A word that is no unit is none either. */
function unitAt(formula: string, at: number): string {
  const gap = match(GAP, formula, at)?.[0] ?? '';
  const unit = unitAhead(formula.slice(at + gap.length, at + gap.length + LONGEST_UNIT + 1));
  if (unit !== undefined) return gap + unit;
  return match(UNKNOWN_UNIT, formula, at)?.[0] ?? '';
}

function match(pattern: RegExp, text: string, at: number): RegExpExecArray | null {
  pattern.lastIndex = at;
  return pattern.exec(text);
}

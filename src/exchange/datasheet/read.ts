import { parameterOf } from '../../../functions/driver/parameters.ts';
import { bases, type RowMeaning } from '../../document/shelf/entry.ts';
import type { Reading, ReadRow, UnreadText } from '../../document/shelf/reading.ts';
import { parseQuantity } from '../../units/parse.ts';
import { AT_FREQUENCY, basisIn, CONDITIONS, readLabel } from './labels.ts';
import { hasNumber, isKnown, pairsIn, pairsInCells, plainLine, tableLine, type Pair, type TableLine } from './lines.ts';
import { hasDecimalCommas } from './number.ts';
import { unitSpelt } from './units.ts';
import { readValue } from './value.ts';

/** More is no datasheet. */
const MOST_LINES = 3000;
const LONGEST_LINE = 600;

/** A pair with the unit that a table gives it. */
type Given = Pair & { readonly unit?: string };

/** Reads a pasted datasheet: one reading for each driver in it, never none. Nothing is guessed: what the text leaves open is a
 *  question, what is not understood is listed. */
export function readDatasheet(text: string): readonly Reading[] {
  const lines = text.split(/\r\n?|\n|\u2028|\f|\v/);
  const decimalCommas = hasDecimalCommas(text);
  const unread: UnreadText[] = [];
  const pairs: Given[] = [];
  const table: TableLine[] = [];
  let open: Pair | undefined;
  for (const [index, written] of lines.slice(0, MOST_LINES).entries()) {
    const line = index + 1;
    if (written.length > LONGEST_LINE) {
      unread.push({ line, text: `${written.slice(0, 80)}…`, why: `a line of ${written.length} characters is no row` });
      continue;
    }
    // Tabs are the cells of a table: they outlive the tidying.
    const plain = written.split('\t').map(plainLine).join('\t').trim();
    if (!/[\p{L}\p{N}]/u.test(plain)) continue;
    const stands = written.trim().replaceAll('\t', ' ');
    if (open && hasNumber(plain)) {
      pairs.push({ ...open, value: plain, found: `${open.found} ${plain}` });
      open = undefined;
      continue;
    }
    if (open) unread.push({ line: open.line, text: open.found, why: 'no number stands behind it' });
    open = undefined;
    const gapped = written.includes('\t') ? plain : keepGaps(written);
    const several = pairsInCells(gapped, line);
    if (several) {
      pairs.push(...several);
      continue;
    }
    const row = tableLine(gapped, line);
    if (row && (row.cells.size > 0 || row.label === '')) {
      table.push({ ...row, found: stands });
      continue;
    }
    const found = pairsIn(plain.replaceAll('\t', ' '), line);
    if (found.length === 0 && isKnown(plain)) open = { line, found: plain, label: plain, value: '' };
    else if (found.length === 0) unread.push({ line, text: stands, why: 'no label with a number' });
    else if (found.length === 1) pairs.push(...found.map((pair) => ({ ...pair, found: stands })));
    else pairs.push(...found);
  }
  if (lines.length > MOST_LINES) {
    unread.push({ line: MOST_LINES + 1, text: '…', why: `only the first ${MOST_LINES} lines are read` });
  }
  if (open) unread.push({ line: open.line, text: open.found, why: 'no number stands behind it' });
  const columns = driverColumns(table, unread);
  const [first = [], ...others] = columns.map((column) => column);
  const readings = [[...first, ...pairs].sort((a, b) => a.line - b.line), ...others].map((each, index) =>
    readDriver(each, index === 0 ? unread : [], decimalCommas),
  );
  const [reading, ...more] = readings;
  const silent = linesNotTold(lines.slice(0, MOST_LINES), readings);
  if (!reading || silent.length === 0) return readings;
  return [{ ...reading, unread: [...reading.unread, ...silent].sort((a, b) => a.line - b.line) }, ...more];
}

/** Lines of which nothing was taken and nothing said, as a stray row of a table: no line is passed over in silence. */
function linesNotTold(lines: readonly string[], readings: readonly Reading[]): readonly UnreadText[] {
  const told = new Set(readings.flatMap(({ rows, unread }) => [...rows, ...unread].map(({ line }) => line)));
  const words = readings
    .flatMap(({ name, rows }) => [name, ...rows.map(({ found }) => found)])
    .filter((each) => each !== '');
  return lines.flatMap((written, index) => {
    const text = written.trim().replaceAll('\t', ' ');
    const isBlank = !/[\p{L}\p{N}]/u.test(plainLine(text));
    if (isBlank || told.has(index + 1) || words.some((each) => each.includes(text) || text.includes(each))) return [];
    return [{ line: index + 1, text, why: 'not understood' }];
  });
}

/** The tidied line with its wide gaps. */
const keepGaps = (written: string): string =>
  written
    .trim()
    .split(/(\s{2,})/)
    .map((part) => (part.trim() === '' ? part : plainLine(part)))
    .join('');

/** A table as pairs, driver by driver. A column is a driver's where most rows have a number in it. */
function driverColumns(table: readonly TableLine[], unread: UnreadText[]): Given[][] {
  const known = table.filter(({ label }) => isKnown(label) && readLabel(label).meaning !== 'name');
  const counts = new Map<number, number>();
  for (const { cells } of known) {
    for (const [column, cell] of cells) if (hasNumber(cell)) counts.set(column, (counts.get(column) ?? 0) + 1);
  }
  const most = Math.max(0, ...counts.values());
  let columns = [...counts].filter(([, count]) => count * 2 > most).map(([column]) => column);
  columns = columns.sort((a, b) => a - b);
  const head = table.find(
    ({ label, cells }) =>
      !known.some((each) => each.label === label) &&
      [...cells.values()].every((cell) => !hasNumber(cell) || columns.length > 1),
  );
  const typical = columns.find((column) => /^(?:typ|nom)/i.test(head?.cells.get(column) ?? ''));
  if (typical !== undefined) columns = [typical];
  const shown = columns.length === 0 ? [1] : columns;
  return shown.map((column, index) =>
    table.flatMap((row): Given[] => {
      const value = row.cells.get(column);
      const isName = row === head || readLabel(row.label).meaning === 'name';
      if (columns.length < 2 && row === head && readLabel(row.label).meaning !== 'name') {
        // What heads a table of one driver names its columns, or is no part of it.
        if (index === 0) unread.push({ line: row.line, text: row.found, why: 'no label with a number' });
        return [];
      }
      if (value !== undefined) return [{ ...row, label: isName ? 'Name' : row.label, value, found: row.found }];
      if (index === 0 && row !== head && ![...row.cells.keys()].some((each) => shown.includes(each))) {
        unread.push({ line: row.line, text: row.found, why: 'no value of a driver stands in this row' });
      }
      return [];
    }),
  );
}

function readDriver(pairs: readonly Given[], others: readonly UnreadText[], decimalCommas: boolean): Reading {
  const rows: ReadRow[] = [];
  const unread = [...others];
  let name = '';
  for (const pair of pairs) {
    const label = readLabel(pair.label);
    const { line, found, value } = pair;
    const refuse = (why: string): void => void unread.push({ line, text: found, why });
    if (label.meaning === undefined) refuse(label.why ?? 'this label is not known');
    else if (/^(?:[-–—?*]+|n\/?a|n\.a\.|tbd|none)?$/i.test(value)) refuse('no value is given');
    else if (label.meaning === 'name') {
      if (name === '') name = value;
      else if (name !== value) refuse(`a second name; ${name} stands above`);
    } else if (label.meaning === 'basis') {
      const basis = basisIn(value);
      if (basis)
        add(
          rows,
          { ...rowFor('basis', pair), text: basis.basis, ...(basis.remark && { remark: basis.remark }) },
          refuse,
        );
      else refuse('this basis of a level is not known: 2.83 V, 1 W or 1 W in Re');
    } else {
      const isLevel = label.meaning === 'level';
      const bare = (isLevel ? value.replaceAll(CONDITIONS, ' ') : value).replaceAll(AT_FREQUENCY, ' ').trim();
      const unit = label.unit ?? unitSpelt(pair.unit ?? '');
      const read = readValue(bare, label.meaning, { unit, words: found, decimalCommas });
      if ('why' in read) {
        refuse(read.why);
        continue;
      }
      add(rows, { ...rowFor(label.meaning, pair), text: '', ...read }, refuse);
      const basis = isLevel ? basisIn(`${found} ${pair.label} ${value}`) : undefined;
      if (basis)
        add(
          rows,
          { ...rowFor('basis', pair), text: basis.basis, ...(basis.remark && { remark: basis.remark }) },
          refuse,
        );
    }
  }
  const level = rows.find(({ meaning }) => meaning === 'level');
  if (level && !rows.some(({ meaning }) => meaning === 'basis'))
    rows.splice(rows.indexOf(level) + 1, 0, basisAsked(level));
  unread.sort((a, b) => a.line - b.line);
  const [first] = unread;
  const heads = name === '' && first && first.text.length <= 40 && rows.every(({ line }) => line > first.line);
  return {
    name: name.replaceAll(/\s+/g, ' ').trim(),
    ...(heads && { heading: first.text.replaceAll(/\s+/g, ' ') }),
    rows,
    unread,
  };
}

const basisAsked = ({ line, found }: ReadRow): ReadRow => ({
  meaning: 'basis',
  label: 'Level basis',
  text: '',
  line,
  found,
  question: {
    words: 'The level is printed without its basis. Which is meant?',
    choices: bases.map((text) => ({ text })),
  },
});

const rowFor = (meaning: Exclude<RowMeaning, undefined | 'name'>, { line, found }: Given) => ({
  meaning,
  label: meaning === 'basis' ? 'Level basis' : parameterOf(meaning).symbol,
  line,
  found,
});

/** A second value of the same number: the same said twice, or a question. */
function add(rows: ReadRow[], row: ReadRow, refuse: (why: string) => void): void {
  const index = rows.findIndex(({ meaning }) => meaning === row.meaning);
  const held = rows[index];
  if (!held) {
    rows.push(row);
    return;
  }
  const choicesOf = ({ text, question }: ReadRow) => question?.choices ?? [{ text }];
  if (!held.question && !row.question && isSame(held.text, row.text)) return refuse('says again what stands above');
  const choices = [...choicesOf(held), ...choicesOf(row)];
  const apart = choices.filter(({ text }, at) => choices.findIndex((each) => each.text === text) === at);
  rows[index] = {
    ...held,
    text: '',
    question: { words: `${row.label} stands here more than once. Which holds?`, choices: apart },
  };
}

function isSame(a: string, b: string): boolean {
  if (a === b) return true;
  const [one, other] = [parseQuantity(a)?.value, parseQuantity(b)?.value];
  if (one === undefined || other === undefined) return false;
  // Decibels are compared as they are: two per cent of 90 dB is nearly two decibels.
  return Math.abs(one - other) <= (a.endsWith('dB') ? 0.05 : 0.02 * Math.abs(other));
}

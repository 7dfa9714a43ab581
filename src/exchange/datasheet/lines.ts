import { AT_FREQUENCY, CONDITIONS, readLabel } from './labels.ts';
import { unitSpelt } from './units.ts';

/** A label and what stands behind it, on one line. */
export interface Pair {
  readonly line: number;
  /** As it stood there. */
  readonly found: string;
  readonly label: string;
  readonly value: string;
}

/** A line of a table: its label, the unit that a cell of its own gives, and its other cells by column. */
export interface TableLine {
  readonly line: number;
  readonly found: string;
  readonly label: string;
  readonly unit: string;
  readonly cells: ReadonlyMap<number, string>;
}

/** A line without widthless marks, with signs in one form each; the powers of ten stay readable. */
export const plainLine = (line: string): string =>
  line
    .replaceAll(/[\u200B\u2060\uFEFF]/g, '')
    .replaceAll(/10([⁺⁻]?[⁰¹²³⁴⁵⁶⁷⁸⁹]+)/g, (_, power: string) => `10^${power.normalize('NFKC').replace('\u2212', '-')}`)
    .replaceAll(/[″”“]/g, '"')
    .replaceAll('…', '...')
    .normalize('NFKC')
    .replaceAll('\u2212', '-')
    .replaceAll(/[\u00A0\u2007\u2009\u202F]/g, ' ')
    .replaceAll(/^[\s>*•·-]+(?=\p{L})/gu, '')
    .trim();

export const hasNumber = (text: string): boolean => /^[\s±~≈<>≤≥+(€$£-]*(?:ca\.? |approx\.? )?[.,]?\d/i.test(text);
export const isKnown = (label: string): boolean => readLabel(label).meaning !== undefined;

const SYMBOL =
  /(?<![\p{L}\p{N}-])(?:fs|qms|qes|qts|vas|re|le|sd|mms|cms|rms|bl|xmax|pe|spl)(?![\p{L}\p{N}])\s*(?:[([][^()[\]]{0,20}[)\]])?\s*[:=]?\s*[±~]?\.?\d/giu;

/** The pairs of a line of running text; several where it holds several. */
export function pairsIn(line: string, at: number): Pair[] {
  const pieces = line.split(/\s*[;•]\s*|,\s+(?=\p{L})/u).filter((each) => each !== '');
  const read = pieces.map((piece) => splitPair(piece, at));
  const isList = pieces.length > 1 && read.every((pair) => pair && isKnown(pair.label));
  return (isList ? pieces : [line]).flatMap((piece) => bySymbols(piece).flatMap((each) => splitPair(each, at) ?? []));
}

/** Parts a line before every symbol with a number behind it, from the second one on. */
function bySymbols(piece: string): string[] {
  const starts = [...piece.matchAll(SYMBOL)].map(({ index }) => index);
  if (starts.length < 2) return [piece];
  const cuts = [0, ...starts.slice(1), piece.length];
  return cuts.slice(1).map((end, index) => piece.slice(cuts[index], end));
}

function splitPair(piece: string, line: number): Pair | undefined {
  const found = piece.trim();
  const pair = (label: string, value: string): Pair => ({ line, found, label: label.trim(), value: value.trim() });
  const [, named, behind] = /^([^:=]{1,60}?)\s*(?:[:=]|\.{3,}|->|→)[\s:=.]*(.+)$/.exec(found) ?? [];
  if (named !== undefined && behind !== undefined && /\p{L}/u.test(named)) return pair(named, behind);
  const [, word, name] = /^(name|driver|model)\s+(\S.*)$/i.exec(found) ?? [];
  if (word !== undefined && name !== undefined && !/^(?:volume|weight|displace)/i.test(name)) return pair(word, name);
  const [, without, none] = /^(\S\D*?)\s+(n\/?a|n\.a\.|tbd|none|[-–—]+)$/i.exec(found) ?? [];
  if (without !== undefined && none !== undefined && isKnown(without)) return pair(without, none);
  // What a measurement was made with holds numbers too, and is not the number.
  const bare = found.replaceAll(AT_FREQUENCY, ' ').replaceAll(CONDITIONS, ' ');
  const start = firstNumber(bare);
  return start === undefined || start === 0 ? undefined : pair(bare.slice(0, start), bare.slice(start));
}

/** Where the first number outside brackets begins that no letter stands before, its sign included. */
function firstNumber(text: string): number | undefined {
  let depth = 0;
  for (let at = 0; at < text.length; at++) {
    const sign = text[at] ?? '';
    if ('([{'.includes(sign)) depth += 1;
    if (')]}'.includes(sign)) depth = Math.max(0, depth - 1);
    const isApart = at === 0 || /[\s)\]}\t,]/.test(text[at - 1] ?? '');
    if (depth === 0 && isApart && /^[±~≈<>≤≥€$£+-]*\s?[.,]?\d/.test(text.slice(at, at + 8))) return at;
  }
  return undefined;
}

/** The pairs of a line whose cells are such, each a label with its number: `Qts 0.43   Qms 5.2`; nothing for another line. */
export function pairsInCells(line: string, at: number): Pair[] | undefined {
  const [cells] = cellsOf(line);
  return cells.filter((cell) => isPair(cell, at)).length > 1 ? cells.flatMap((cell) => pairsIn(cell, at)) : undefined;
}

/** A line that is parted into cells by tabs, bars, semicolons or wide gaps; nothing for running text. */
export function tableLine(line: string, at: number): TableLine | undefined {
  const [cells, isExact] = cellsOf(line);
  if (cells.length < 2 || cells.filter((cell) => isPair(cell, at)).length > 1) return undefined;
  const found = line.trim();
  const first = cells.findIndex((cell, index) => index > 0 && hasNumber(cell));
  const isUnit = (cell: string): boolean => unitSpelt(cell.replaceAll(/^[([]|[)\]]$/g, '')) !== undefined;
  const labels = cells.slice(0, first < 0 ? 1 : first).filter((cell) => cell !== '');
  const unit = cells.slice(1).find((cell) => isUnit(cell)) ?? '';
  const values = cells.flatMap((cell, index): [number, string][] =>
    index === 0 || cell === '' || isUnit(cell) || (first >= 0 && index < first) || /^±?\s*[\d.,]+\s*%$/.test(cell)
      ? []
      : [[isExact || first < 0 ? index : index - first + 1, cell]],
  );
  const label = labels.filter((cell) => !isUnit(cell) || cell === labels[0]).join(' ');
  return { line: at, found, label, unit: unit.replaceAll(/[()[\]]/g, ''), cells: new Map(values) };
}

const isPair = (cell: string, at: number): boolean => {
  const pair = splitPair(cell, at);
  return pair !== undefined && hasNumber(pair.value) && isKnown(pair.label);
};

function cellsOf(line: string): [cells: string[], isExact: boolean] {
  const trimmed = line.replaceAll(/^\s*\||\|\s*$/g, '');
  for (const mark of ['\t', '|', ';']) {
    if (trimmed.includes(mark)) return [trimmed.split(mark).map((cell) => cell.trim().replaceAll(/^"|"$/g, '')), true];
  }
  return [trimmed.trim().split(/\s{2,}/), false];
}

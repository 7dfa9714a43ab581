import type { CellDatum, Table } from '../define.ts';
import { Problem } from '../values/problem.ts';
import { say } from '../values/say.ts';

/** One line of a measured table: frequency, value and what else stands in the line. */
export type Line = readonly number[];

const comment = /^\s*(?:[#*;!%"'/\\]|--)/;
const numberWord = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eEdD][+-]?\d+)?$/;

/** The numbers of a line of text; `undefined` for a comment, a heading or an empty line. A comma is a decimal mark where
 *  another sign separates, and a separator elsewhere. */
export function readLine(line: string): Line | undefined {
  if (comment.test(line)) return undefined;
  const bare = line.replace(/\s(?:#|\/\/|;\s*[A-Za-z]).*$/, '').trim();
  if (bare === '') return undefined;
  const isSeparated = /[\t;|]|\S\s+[+-]?[\d.]/.test(bare);
  const commas = (bare.match(/,/g) ?? []).length;
  const spaced = /,\s/.test(bare);
  // `20,5; 80,1` and `20,5 80,1` have decimal commas; `20, 80.1` and `20.5,80.1` do not.
  const isDecimal = commas > 0 && isSeparated && !spaced && !/\d\.\d/.test(bare);
  const text = isDecimal ? bare.replaceAll(',', '.') : bare.replaceAll(',', ' ');
  const words = text.split(/[\s;|]+/).filter((word) => word !== '');
  const numbers: number[] = [];
  for (const word of words) {
    const stripped = word.replace(/(?:Hz|dB|°|deg|Ω|ohm|ohms)$/i, '');
    if (stripped === '' && numbers.length > 0) continue;
    if (!numberWord.test(stripped)) break;
    numbers.push(Number(stripped.replace(/[dD]/, 'e')));
  }
  return numbers.length > 0 && numbers.every(Number.isFinite) ? numbers : undefined;
}

/** How phases stand in cells of their own: as plain numbers of degrees, or with their unit, as in `45°`. */
const phaseCells = ['degrees', 'angles'] as const;
export type PhaseCells = (typeof phaseCells)[number];

/** The parameter that says so. */
export const phase = {
  choice: phaseCells,
  default: 'degrees',
  summary: 'how phases stand in cells of their own: plain degrees, or angles with their unit',
} as const;

const inDegrees = ([frequency = 0, value = 0, ...rest]: Line): Line => {
  const [radians, ...more] = rest;
  return radians === undefined ? [frequency, value] : [frequency, value, (radians * 180) / Math.PI, ...more];
};

const isBlank = (cell: CellDatum): boolean => cell === null || cell === '';

/** Lines of a range: numbers stand as they are, texts are read line by line, so that a whole file may stand in one cell. */
function linesOf(table: Table, typed: PhaseCells): readonly Line[] {
  return table.flatMap((row) => {
    const cells = row.filter((cell) => !isBlank(cell));
    if (cells.length === 0) return [];
    if (cells.every((cell) => typeof cell === 'number')) return [typed === 'angles' ? inDegrees(cells) : cells];
    const text = cells.map((cell) => (typeof cell === 'object' ? '' : String(cell)));
    const joined = cells.length === 1 ? text[0]! : text.join('\t');
    return joined.split(/\r\n|\r|\n/).flatMap((line) => {
      const read = readLine(line);
      return read ? [read] : [];
    });
  });
}

/** A measured table in order of frequency. Phases, where every line has one, are in degrees. */
export interface Measured {
  readonly frequency: readonly number[];
  readonly value: readonly number[];
  readonly degrees?: readonly number[];
}

/** Reads plain columns of frequency, value and, if there is one, phase in degrees. */
export function readMeasured(table: Table, parameter: string, typed: PhaseCells = 'degrees'): Measured | Problem {
  const lines = linesOf(table, typed).filter((line) => line.length >= 2);
  if (lines.length < 2)
    return new Problem(
      say`There are no two lines with a frequency and a value; give columns of frequency, value and, if known, phase.`,
      parameter,
    );
  const sorted = [...lines].sort((one, other) => one[0]! - other[0]!);
  const first = sorted[0]![0]!;
  if (!(first > 1e-6) || sorted.at(-1)![0]! > 1e9 || sorted.some((line) => !(Math.abs(line[1]!) <= 1e15)))
    return new Problem(
      say`Every line needs a frequency above 0 Hz and a number; correct those that do not.`,
      parameter,
    );
  // A sweep may visit a frequency twice: the later line stands.
  const kept = sorted.filter((line, index) => line[0] !== sorted[index + 1]?.[0]);
  if (kept.length < 2) return new Problem(say`All lines have the same frequency; give a sweep.`, parameter);
  const measured = { frequency: kept.map((line) => line[0]!), value: kept.map((line) => line[1]!) };
  const isWhole = kept.every((line) => line.length >= 3 && Math.abs(line[2]!) <= 1e6);
  return isWhole ? { ...measured, degrees: kept.map((line) => line[2]!) } : measured;
}

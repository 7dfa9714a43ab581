import type { CellRecord } from '../../functions/values/record.ts';
import type { CellType, Finding } from '../formula/types.ts';
import { speak } from '../units/show.ts';
import type { Entry } from './cell-index.ts';
import type { Spot } from './spots.ts';
import type { CellState, CellValue, Place } from './types.ts';

export const EMPTY: CellType = { kind: 'empty' };
export const NO_FINDINGS: readonly Finding[] = [];
const NO_WORDS: readonly string[] = [];

export const problem = (message: string): CellValue & { kind: 'problem' } => ({ kind: 'problem', message });

export const emptyAt = (place: Place): CellState => ({
  ...place,
  value: { kind: 'empty' },
  type: EMPTY,
  findings: NO_FINDINGS,
});

/** Written out: it is done for thousands of cells at a time. */
export function withNumber({ sheet, cell, type, findings, unit }: CellState, value: number): CellState {
  const held = { kind: 'number', value } as const;
  return unit === undefined
    ? { sheet, cell, value: held, type, findings }
    : { sheet, cell, value: held, type, findings, unit };
}

/** Whether there is nothing to tell of a cell. */
export const isNothing = ({ value, type, findings }: CellState): boolean =>
  value.kind === 'empty' && type.kind === 'empty' && findings.length === 0;

/** What is wrong or doubtful in a cell: in its formula, in its arguments, in the record that it holds. */
export function findingsOf(entry: Entry | undefined, spot: Spot, value: CellValue): readonly Finding[] {
  const compiled = entry?.compiled?.findings ?? NO_FINDINGS;
  if (spot.doubts.length === 0 && value.kind !== 'record') return compiled;
  return withDoubts(compiled, [...spot.doubts, ...ownDoubts(value)], entry?.text ?? '');
}

/** What a record itself questions. */
export const ownDoubts = (value: CellValue): readonly string[] =>
  value.kind === 'record' && value.record.kind === 'driver'
    ? value.record.doubts.map((doubt) => speak(doubt, 'metric'))
    : NO_WORDS;

export function withDoubts(findings: readonly Finding[], doubts: readonly string[], text: string): readonly Finding[] {
  if (doubts.length === 0) return findings;
  return [...findings, ...doubts.map((message) => ({ level: 'doubt' as const, message, from: 0, to: text.length }))];
}

/** What a record is called where there is only room for words. */
export const titleOf = (record: CellRecord): string =>
  'name' in record ? record.name : 'title' in record ? record.title : record.kind;

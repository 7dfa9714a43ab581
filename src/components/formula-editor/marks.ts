import { compile } from '../../formula/compile.ts';
import type { Finding, Scope } from '../../formula/types.ts';
import type { Outline } from '../grid/model.ts';
import { referenceColours, type ColouredReference } from './reference-colours.ts';

/** What is to be seen in the letters of a formula. */
export interface Marks {
  readonly references: readonly ColouredReference[];
  readonly findings: readonly Finding[];
}

export const NO_MARKS: Marks = { references: [], findings: [] };

/** @param caret - Where something is being written: that is not wrong yet. */
export function marksOf(text: string, scope: Scope, caret: number | undefined): Marks {
  if (!text.startsWith('=') || text.length === 1) return NO_MARKS;
  const findings = compile(text, scope).findings.filter(
    ({ from, to }) => caret === undefined || caret < from || caret > to,
  );
  return { references: referenceColours(text, scope), findings };
}

/** The cells of a sheet that a formula refers to, as they are outlined there. */
export const outlinesOf = ({ references }: Marks, on: string | undefined): Outline[] =>
  references.filter(({ sheet }) => sheet === on).map(({ cells, colour }) => ({ cells, colour }));

import { keyOf } from '../engine/cell-index.ts';
import type { Place } from '../engine/types.ts';
import { influential } from './influence.ts';
import { bestMatches } from './match.ts';
import type { Unread } from './read-types.ts';
import type { SheetModel } from './sheet-model.ts';
import type { Input, Result } from './subject-types.ts';

/** The input that a phrase names among those behind some results; where several could be meant, the only one that has an effect. */
export async function readInput(
  model: SheetModel,
  phrase: string,
  results: readonly Result[],
  given: readonly Place[] = [],
): Promise<Input | Unread> {
  const behind = model.graph.ancestors(results.map(keyOf));
  const able = model.subject.inputs.filter(({ sheet, cell }) => behind.has(keyOf({ sheet, cell })));
  const isFree = ({ sheet, cell }: Input): boolean => !given.some((each) => each.sheet === sheet && each.cell === cell);
  const matching = bestMatches(phrase, able.filter(isFree));
  const working = matching.length > 1 ? await influential(model, matching, results) : matching;
  if (working.length === 1 && working[0]) return working[0];
  return matching.length > 0 ? ambiguous(phrase, working.length > 0 ? working : matching) : none(phrase, able, 'input');
}

/** The one cell that a phrase names. */
export function oneOf<T extends Input | Result>(phrase: string, cells: readonly T[], kind: string): T | Unread {
  const matching = bestMatches(phrase, cells);
  const [first, second] = matching;
  if (first && !second) return first;
  return first ? ambiguous(phrase, matching) : none(phrase, cells, kind);
}

const ambiguous = (phrase: string, cells: readonly (Input | Result)[]): Unread => ({
  wrong: `“${phrase.trim()}” could be any of several cells: name one of them.`,
  suggestions: cells.map(({ name, label }) => name ?? label),
});

const none = (phrase: string, cells: readonly (Input | Result)[], kind: string): Unread => ({
  wrong: `No ${kind} that fits is called “${phrase.trim()}”: use a name or a label of the sheet.`,
  suggestions: cells.slice(0, 12).map(({ name, label }) => name ?? label),
});

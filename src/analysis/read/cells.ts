import { quantities } from '../../../functions/quantities.ts';
import { keyOf } from '../../engine/cell-index.ts';
import type { Place } from '../../engine/types.ts';
import { sameDimension } from '../../units/dimension.ts';
import type { ParsedQuantity } from '../../units/parse.ts';
import { influential } from './influence.ts';
import { bestMatches } from './match.ts';
import type { Unread } from './types.ts';
import type { DocumentModel } from '../model/document-model.ts';
import type { Input, Result } from '../subject/types.ts';

/** The input that a phrase names among those behind some results; where several could be meant, the only one that has an effect. */
export async function readInput(
  model: DocumentModel,
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

/** Whether a cell can hold a quantity that was typed. */
export const isSame = (own: Result['quantity'], { quantity }: ParsedQuantity): boolean =>
  own !== undefined && sameDimension(quantities[own].dimension, quantities[quantity].dimension);

/** The inputs that are numbers. */
export const movable = ({ subject }: DocumentModel): readonly Input[] =>
  subject.inputs.filter(({ present }) => typeof present === 'number');

/** `box`, `cabinet`: the volume that has a plausible range of its own. */
export function sizeIn(model: DocumentModel, phrase: string): Input | undefined {
  if (!/^(?:an? |the )?(?:box|cabinet|enclosure)$/i.test(phrase.trim())) return undefined;
  const volumes = movable(model).filter(({ quantity, isRangeGiven }) => quantity === 'volume' && isRangeGiven);
  const read = oneOf('box volume', volumes, 'input');
  return 'wrong' in read ? (volumes.length === 1 ? volumes[0] : undefined) : read;
}

import type { OctavoDocument } from '../../document/types.ts';
import type { Place } from '../../engine/types.ts';

/** Why a question about a cell cannot be answered, in words for the reader. */
export class QuestionError extends Error {}

export function placeError({ sheets }: OctavoDocument, { sheet, cell }: Place, why: string): QuestionError {
  const name = sheets.find(({ id }) => id === sheet)?.name;
  return new QuestionError(`${name === undefined || sheets.length === 1 ? '' : `${name}!`}${cell} is ${why}.`);
}

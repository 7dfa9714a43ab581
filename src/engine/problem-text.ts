import type { Place } from './types.ts';

/** An engine error as we get it: its kind, and a message where one was given. */
export interface EngineError {
  readonly type: string;
  readonly message: string;
  /** `id!B4` of the cell in which it arose. */
  readonly address?: string | undefined;
}

const sentences: Readonly<Record<string, string>> = {
  DIV_BY_ZERO: 'Something is divided by zero: look at the cell below the division sign, it is zero or empty.',
  NAME: 'A word in the formula is neither a name nor a function here.',
  VALUE:
    'A value in the formula is not of the kind that is wanted: look for a text or an empty cell where a number should be.',
  NUM: 'The result is no number: a root of something negative, or a number too large to hold.',
  NA: 'What is looked for was not found, or an argument is missing.',
  REF: 'The formula refers to a cell that is no longer there: put another reference in its place.',
  SPILL: 'The column of results has no room: clear the cells below.',
  LIC: 'The calculation engine refuses its licence key. That is a mistake of the program.',
};

/** What the engine says itself, in words that a reader can act on. */
const better: readonly (readonly [RegExp, string])[] = [
  [/NaN or infinite/i, 'NUM'],
  [/Wrong number of arguments/i, 'NA'],
  [/Cell range not allowed/i, 'VALUE'],
];

/** A whole sentence for an error of the engine. Messages of our own pass through. */
export function problemText({ type, message }: EngineError): string {
  const kind = better.find(([pattern]) => pattern.test(message))?.[1];
  if (kind) return sentences[kind] ?? message;
  const isOwn = type === 'VALUE' && message.includes(' ') && /[.?!]$/.test(message);
  return isOwn ? message : (sentences[type] ?? `The formula has no result (${type}).`);
}

export function originOf({ address }: EngineError): Place | undefined {
  const match = address === undefined ? null : /^'?(.+?)'?!([A-Z]+\d+)$/.exec(address);
  return match ? { sheet: match[1] ?? '', cell: match[2] ?? '' } : undefined;
}

/** `B4 → C5 → B4`. Cells of other sheets say so. */
export const loopText = (places: readonly Place[], own: string, nameOf: (sheet: string) => string): string =>
  `The formula depends on itself: ${places
    .map(({ sheet, cell }) => (sheet === own ? cell : `${nameOf(sheet)}!${cell}`))
    .join(' → ')}. Break the loop by typing a number into one of these cells.`;

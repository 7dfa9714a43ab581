import type { Place } from './types.ts';

/** An engine error as we get it: its kind, and a message where one was given. */
export interface EngineError {
  readonly type: string;
  readonly message: string;
  /** `id!B4` of the cell in which it arose. */
  readonly address?: string | undefined;
}

/** Opens every message of our own; the engine has none that begins so. */
const OWN = '\uE002';

/** A message of our own, to travel through the engine. */
export const ownMessage = (message: string): string => OWN + message;

/** What no typed text may hold, for it means something in here. */
export const withoutMarks = (text: string): string => text.replaceAll(/[\uE000-\uE002]/g, '');

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
  [/NaN or infinite/i, sentences['NUM'] ?? ''],
  [/Wrong number of arguments/i, 'A function has too few or too many arguments: the guide says which it takes.'],
  [/Cell range not allowed/i, 'A range stands where one value is wanted: refer to a single cell.'],
  [
    /^Index|^Selector/,
    'A position in the formula lies outside its range or list: give one between 1 and the number of entries.',
  ],
  [/^Value too (small|large)/, 'An argument lies outside what the function allows: the guide says what it takes.'],
];

/** A whole sentence for an error of the engine. Messages of our own pass through. */
export function problemText({ type, message }: EngineError): string {
  if (message.startsWith(OWN)) return message.slice(OWN.length);
  const sentence = better.find(([pattern]) => pattern.test(message))?.[1];
  return sentence ?? sentences[type] ?? `The formula has no result (${type}).`;
}

export function originOf({ address }: EngineError): Place | undefined {
  const match = address === undefined ? null : /^'?(.+?)'?!([A-Z]+\d+)$/.exec(address);
  return match ? { sheet: match[1] ?? '', cell: match[2] ?? '' } : undefined;
}

/** So many cells of a loop are named; a longer one is known by its beginning. */
const MOST_NAMED = 12;

/** `B4 → C5 → B4`. Cells of other sheets say so. */
export function loopText(
  loop: readonly Place[],
  own: string,
  isElsewhere: boolean,
  nameOf: (sheet: string) => string,
): string {
  const all = loop.map(({ sheet, cell }) => (sheet === own ? cell : `${nameOf(sheet)}!${cell}`));
  const last = all.at(-1) ?? '';
  const named = all.length > MOST_NAMED ? [...all.slice(0, MOST_NAMED - 1), '…', last] : all;
  const subject = isElsewhere ? 'A cell that this formula needs depends on itself' : 'The formula depends on itself';
  return `${subject}: ${named.join(' → ')}. Break the loop by typing a number into one of these cells.`;
}

/** Whether an error arose in a cell itself. */
export function isAt(error: EngineError, { sheet, cell }: Place): boolean {
  const at = originOf(error);
  return at === undefined || (at.sheet === sheet && at.cell === cell);
}

/** What a cell says that the engine could not calculate. */
export const failedText = (failure: unknown): string =>
  `The calculation engine failed here (${String(failure)}). Undo the edit, or write the formula in another way.`;

import type { Refusal } from '../../document/command.ts';
import { sameWord } from '../../document/sheets.ts';

/** The words that an input can take, read from `closed, vented`; none from an empty text. Semicolons part them where there are some. */
export function choicesIn(text: string): readonly string[] | Refusal {
  const words = text
    .split(text.includes(';') ? ';' : ',')
    .map((word) => word.trim())
    .filter((word) => word !== '');
  const [first] = words;
  if (words.length === 1)
    return { refused: `“${first}” alone is no choice: write at least two words with a comma between them.` };
  const twice = words.find((word, index) => words.some((other, at) => at < index && sameWord(other, word)));
  return twice === undefined ? words : { refused: `“${twice}” is there twice: each word stands once.` };
}

/** The same, to be read again by {@link choicesIn}. */
export const choicesText = (choices: readonly string[]): string =>
  choices.join(choices.some((word) => word.includes(',')) ? '; ' : ', ');

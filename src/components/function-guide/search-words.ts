import type { FunctionDescription } from '../../../functions/define.ts';
import type { Functions } from '../../formula/types.ts';

/** Finds functions by words of their names, summaries and parameters. */
export class SearchWords {
  readonly #entries: readonly { readonly description: FunctionDescription; readonly text: string }[];

  constructor(functions: Functions) {
    this.#entries = [...functions.values()].map((description) => {
      const { name, words, parameters } = description;
      const summaries = [words, ...Object.values(parameters)].map((each) => each?.summary ?? '');
      return { description, text: [name, ...summaries].join(' ').toLowerCase() };
    });
  }

  /** Those that hold every word, in reading order; all of them where no word is given. */
  find(search: string): readonly FunctionDescription[] {
    const words = search.toLowerCase().split(/\s+/).filter(Boolean);
    return this.#entries
      .filter(({ text }) => words.every((word) => text.includes(word)))
      .map(({ description }) => description);
  }
}

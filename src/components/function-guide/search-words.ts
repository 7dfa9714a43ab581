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

  /** Those that hold every word, first those that begin with it, else in reading order; all where no word is given. */
  find(search: string): readonly FunctionDescription[] {
    const words = search.toLowerCase().split(/\s+/).filter(Boolean);
    const found = this.#entries.filter(({ text }) => words.every((word) => text.includes(word)));
    const begins = ({ text }: { readonly text: string }): boolean => text.startsWith(words[0] ?? '');
    return [...found.filter(begins), ...found.filter((entry) => !begins(entry))].map(({ description }) => description);
  }
}

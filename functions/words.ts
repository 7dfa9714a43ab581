import type { AnyFunction, FunctionWords } from './define.ts';
import { sources } from './sources.ts';

/** What stands in place of words that are not there yet. */
export const unfetched = 'Cannot be fetched just now and is asked for again';

/** What is said of each function, by its name. */
export const wordsByName = (definitions: readonly AnyFunction[]): ReadonlyMap<string, FunctionWords> =>
  new Map(definitions.map((each) => [each.name, wordsOf(each)]));

const wordsOf = ({ summary, returns, source, example, remarks }: AnyFunction): FunctionWords => ({
  summary,
  gives: returns.summary,
  source: { ...source, title: sources[source.source].title },
  example: example.formula,
  ...(remarks !== undefined && { remarks }),
});

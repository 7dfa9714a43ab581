import type { AnyFunction, FunctionWords } from '../../functions/define.ts';
import { wordsByName } from '../../functions/words.ts';

/** What is said of functions, from their declarations. In a built page it lies beside the script (`words-beside.ts`). */
export const wordsOf = async (definitions: readonly AnyFunction[]): Promise<ReadonlyMap<string, FunctionWords>> =>
  wordsByName(definitions);

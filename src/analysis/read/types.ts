import type { CheapestQuestion } from '../cheapest/types.ts';
import type { OptimiseQuestion } from '../optimise/types.ts';
import type { SeekQuestion } from '../seek/types.ts';
import type { SetInput } from '../subject/types.ts';

/** Why a question in words could not be read, and what could be said instead. */
export interface Unread {
  readonly wrong: string;
  readonly suggestions: readonly string[];
}

/** A question in words, read; or why it could not be; `given` are inputs set to something else first, in the document of the question
 *  too where there is one. Of the cheapest change only what was said: what may be changed is asked. */
export type ReadQuestion =
  | { readonly kind: 'seek'; readonly question: SeekQuestion }
  | { readonly kind: 'best'; readonly question: OptimiseQuestion; readonly given: readonly SetInput[] }
  | ({ readonly kind: 'cheapest'; readonly given: readonly SetInput[] } & Pick<CheapestQuestion, 'cost' | 'orCaution'>)
  | Unread;

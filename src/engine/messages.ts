import type { CellState, Changes, SheetEngine } from './types.ts';

/** The methods that can be asked across the worker's border. */
export type Asked = Exclude<keyof SheetEngine, 'dispose'>;

/** One question, numbered so that its answer finds back. */
export interface Question {
  readonly number: number;
  readonly method: Asked;
  readonly given: readonly unknown[];
}

export interface Reply {
  readonly number: number;
  readonly result?: unknown;
  /** Why there is no result. */
  readonly failure?: string;
  /** The first of very many cells; the rest and the result follow. */
  readonly cells?: readonly CellState[];
}

/** So many cells cross to the page in one piece, or it could do nothing else while it unpacks them. */
const MOST_CELLS = 10_000;

/** A reply in pieces that are not too large, the last of them with the result. */
export function* inPieces(reply: Reply): Generator<Reply> {
  const { number, result } = reply;
  if (!isChanges(result)) {
    yield reply;
    return;
  }
  let from = 0;
  for (; result.cells.length - from > MOST_CELLS; from += MOST_CELLS)
    yield { number, cells: result.cells.slice(from, from + MOST_CELLS) };
  yield { number, result: { ...result, cells: result.cells.slice(from) } };
}

/** The result of a reply with the cells that came before it. */
export const joined = (before: readonly CellState[], result: unknown): unknown =>
  before.length > 0 && isChanges(result) ? { ...result, cells: [...before, ...result.cells] } : result;

const isChanges = (result: unknown): result is Changes =>
  typeof result === 'object' && result !== null && 'cells' in result && 'timing' in result;

import type { SheetEngine } from './types.ts';

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
}

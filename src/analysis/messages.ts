import type { Progress } from './subject/types.ts';
import type { Analyst } from './types.ts';

/** The questions that can be asked across the worker's border. */
export type Asked = Exclude<keyof Analyst, 'dispose'>;

/** To the worker: a question, or that one is given up. */
export type ToWorker =
  | { readonly kind: 'ask'; readonly number: number; readonly method: Asked; readonly given: readonly unknown[] }
  | { readonly kind: 'stop'; readonly number: number };

/** From the worker: that it stands and can be told to stop, or something of a question. */
export type FromWorker =
  | { readonly kind: 'ready' }
  | { readonly kind: 'progress'; readonly number: number; readonly progress: Progress }
  | { readonly kind: 'first'; readonly number: number; readonly rows: unknown }
  | { readonly kind: 'answer'; readonly number: number; readonly result: unknown }
  | { readonly kind: 'failure'; readonly number: number; readonly message: string; readonly isStopped: boolean };

import type { Origin } from './types.ts';

/** The words for where a number comes from, in the order in which they are offered. */
export const originWords: Readonly<Record<Origin, string>> = {
  measured: 'measured',
  datasheet: 'from a datasheet',
  invented: 'invented',
  assumed: 'assumed',
  chosen: 'chosen by the builder',
};

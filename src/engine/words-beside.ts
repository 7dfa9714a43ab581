import type { FunctionWords } from '../../functions/define.ts';

/** Milliseconds until a file that was not to be had is asked for again. */
const PAUSE = 5000;
/** Where the build has put the file; the build writes this in front. */
declare const address: string;

let wanted: Promise<ReadonlyMap<string, FunctionWords>> | undefined;

/** What is said of functions, from the file into which the build puts it; fetched once, when it is first asked for. */
export const wordsOf = (): Promise<ReadonlyMap<string, FunctionWords>> => (wanted ??= untilFetched());

async function untilFetched(): Promise<ReadonlyMap<string, FunctionWords>> {
  for (;;) {
    const answer = await fetch(address).catch(() => undefined);
    if (answer?.ok) return new Map(Object.entries((await answer.json()) as Record<string, FunctionWords>));
    await new Promise((passed) => setTimeout(passed, PAUSE));
  }
}

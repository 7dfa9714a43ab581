/** What is said of a function that every sheet of numbers knows. */
export interface Usual {
  /** Its arguments in order; those in square brackets may be left out, … says as many as wanted. */
  readonly takes: string;
  readonly says: string;
  readonly example: string;
}

let wanted: Promise<void> | undefined;
let known: Readonly<Record<string, Usual>> = {};

export const usualOf = (name: string): Usual | undefined => known[name];

/** Fetches what is said of the usual functions; again where that failed. No calculation needs it. */
export const learnUsual = (): Promise<void> => (wanted ??= fetched());

async function fetched(): Promise<void> {
  const answer = await fetch(new URL('../../formula/usual.json', import.meta.url)).catch(() => undefined);
  if (answer?.ok) known = (await answer.json()) as Readonly<Record<string, Usual>>;
  else wanted = undefined;
}

import type { Refusal } from '../document/command.ts';

/** The version of the file format that this program writes. */
export const VERSION = 1;

type Content = Readonly<Record<string, unknown>>;

/** Turns the content of one version into that of the next. May assume that the content was valid in its version. */
export type Migration = (content: Content) => Content;

/** The first leads from version 1 to 2, and so on without gaps. */
const migrations: readonly Migration[] = [];

/** Brings the content of a file to the present version, step by step. */
export function migrate(
  value: unknown,
  steps: readonly Migration[] = migrations,
): { readonly content: Content } | Refusal {
  const newest = steps.length + 1;
  if (typeof value !== 'object' || value === null || Array.isArray(value) || !Object.hasOwn(value, 'octavo')) {
    return { refused: 'This is no Octavo document: it does not begin with {"octavo": 1, …}.' };
  }
  const content = value as Content;
  const version = content['octavo'];
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return { refused: `This document has the version ${JSON.stringify(version)}; a whole number from 1 is wanted.` };
  }
  if (version > newest) {
    return {
      refused:
        `This document was written by a newer Octavo (file version ${version}; this one reads up to ${newest}). ` +
        'Get the newest Octavo (in the browser, reload the page), then open it again.',
    };
  }
  return { content: steps.slice(version - 1).reduce((held, step) => step(held), content) };
}

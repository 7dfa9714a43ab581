import { apply } from '../../../src/document/apply.ts';
import { isRefusal, type Command } from '../../../src/document/command.ts';
import type { OctavoDocument } from '../../../src/document/types.ts';
import { sampleDocument } from '../samples.ts';

export function done(command: Command, document = sampleDocument()): OctavoDocument {
  const outcome = apply(document, command);
  if (isRefusal(outcome)) throw new Error(outcome.refused);
  return outcome.document;
}

export function refused(command: Command, document = sampleDocument()): string {
  const outcome = apply(document, command);
  return isRefusal(outcome) ? outcome.refused : 'not refused';
}

export const texts = (document: OctavoDocument, sheet = 'one'): Record<string, string> => {
  const cells = document.sheets.find(({ id }) => id === sheet)?.cells ?? new Map<string, { text: string }>();
  return Object.fromEntries([...cells].map(([address, { text }]) => [address, text]));
};
export const namesOf = (document: OctavoDocument, sheet = 'one'): Record<string, string> =>
  Object.fromEntries(document.sheets.find(({ id }) => id === sheet)?.names ?? []);
export const plotOf = (document: OctavoDocument, sheet = 'one') =>
  document.sheets.find(({ id }) => id === sheet)?.plots[0];
export const cellOf = (document: OctavoDocument, address: string) => document.sheets[0]?.cells.get(address);

import type { Refusal } from '../document/command.ts';
import { withFreshIds } from '../document/create.ts';
import type { OctavoDocument } from '../document/types.ts';
import { decodeDocument } from './decode.ts';
import { encodeDocument } from './encode.ts';

/** The text of a file, two spaces an indent, for people and for programs that compare lines. */
export const writeFile = (document: OctavoDocument): string =>
  `${JSON.stringify(encodeDocument(document), undefined, 2)}\n`;

/** Opens the text of a file as a new document with ids of its own, so that it never replaces one that is stored. */
export function readFile(text: string): OctavoDocument | Refusal {
  const value = parsed(text);
  if (value instanceof SyntaxError) return unreadable(value);
  const document = decodeDocument(value);
  return 'refused' in document ? document : withFreshIds(document);
}

/** The text under which a document is kept on the device: ids and all, for it is to take the place of the one it came from. */
export const writeKept = (document: OctavoDocument): string => JSON.stringify(encodeDocument(document, { ids: true }));

/** Reads what {@link writeKept} gave. Earlier versions kept what the text says, not the text. */
export function readKept(content: unknown): OctavoDocument | Refusal {
  const value = typeof content === 'string' ? parsed(content) : content;
  return value instanceof SyntaxError ? unreadable(value) : decodeDocument(value);
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch (error) {
    if (error instanceof SyntaxError) return error;
    throw error;
  }
}

const unreadable = ({ message }: SyntaxError): Refusal => ({
  refused: `This is no Octavo document: the text is not readable JSON (${message}).`,
});

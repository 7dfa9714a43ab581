import { templates } from '../../templates/index.ts';
import { isRefusal } from '../../src/document/command.ts';
import type { OctavoDocument } from '../../src/document/types.ts';
import { decodeDocument } from '../../src/exchange/decode.ts';

/** A starter sheet as the document that its file holds. */
export function starterDocument(id: string): OctavoDocument {
  const document = decodeDocument(templates.find((each) => each.id === id)?.content);
  if (isRefusal(document)) throw new Error(`${id}: ${document.refused}`);
  return document;
}

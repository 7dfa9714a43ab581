import { templates } from '../../templates/index.ts';
import { isRefusal } from '../document/command.ts';
import type { OctavoDocument } from '../document/types.ts';
import { decodeDocument } from '../exchange/decode.ts';
import type { RailEntry } from './sheet-rail.ts';

/** The starter sheets, as the rail lists them. */
export const templateList: readonly RailEntry[] = templates.map(({ id, content }) => ({ id, title: content.title }));

/** A starter sheet as a document. Starter sheets are checked by a test, so one that cannot be read is a mistake of ours. */
export function openTemplate(id: string): OctavoDocument {
  const template = templates.find((each) => each.id === id) ?? templates[0];
  const document = decodeDocument(template?.content);
  if (isRefusal(document)) throw new Error(document.refused);
  return document;
}

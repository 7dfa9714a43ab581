import { templates } from '../../templates/index.ts';
import type { GalleryEntry } from '../components/gallery/data.ts';
import { isRefusal } from '../document/command.ts';
import { markInvented } from '../document/review/origins.ts';
import type { OctavoDocument } from '../document/types.ts';
import { decodeDocument } from '../exchange/decode.ts';

/** A starter sheet as a document. Starter sheets are checked by a test, so one that cannot be read is a mistake of ours. */
export function openTemplate(id: string): OctavoDocument {
  const template = templates.find((each) => each.id === id) ?? templates[0];
  const document = decodeDocument(template?.content);
  if (isRefusal(document)) throw new Error(document.refused);
  return markInvented(document);
}

/** The starter sheets as documents, by id, each read when it is first asked for. */
const documents = new Map<string, OctavoDocument>();

export function templateDocuments(): ReadonlyMap<string, OctavoDocument> {
  for (const { id } of templates) if (!documents.has(id)) documents.set(id, openTemplate(id));
  return documents;
}

/** The starter sheets as the gallery lists them; found by every section, label and note in them. */
export function galleryEntries(): readonly GalleryEntry[] {
  return templates.map(({ id, group }) => {
    const document = templateDocuments().get(id);
    const cells = document?.sheets.flatMap((sheet) => [...sheet.cells.values()]) ?? [];
    return {
      id,
      group,
      title: document?.title ?? id,
      summary: document?.sheets[0]?.summary ?? '',
      words: cells.flatMap(({ text }) => (/^[=\d]/u.test(text) ? [] : [text])).join(' '),
    };
  });
}

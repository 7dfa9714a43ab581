import { templateList } from '../../../templates/list.ts';
import type { GalleryEntry } from '../../components/gallery/data.ts';
import type { OctavoDocument } from '../../document/types.ts';

/** The starter sheets as the gallery lists them; found by every section, label and note in them. */
export function galleryEntries(documents: ReadonlyMap<string, OctavoDocument>): readonly GalleryEntry[] {
  return templateList.map(({ id, group }) => {
    const document = documents.get(id);
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

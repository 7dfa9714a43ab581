import { templateList } from '../../templates/list.ts';
import { isRefusal } from '../document/command.ts';
import { markInvented } from '../document/review/origins.ts';
import type { OctavoDocument } from '../document/types.ts';
import { decodeDocument } from '../exchange/decode.ts';

/** The starter sheets that were wanted, by id. */
const wanted = new Map<string, Promise<OctavoDocument>>();

/** A starter sheet as a document. They lie beside the script as data, so that a page fetches those that it opens.
 *  @throws Where its file is not to be had, with a sentence for the reader. */
export function openTemplate(id: string): Promise<OctavoDocument> {
  const known = wanted.get(id) ?? read(id);
  wanted.set(id, known);
  // What was not to be had now may be later.
  known.catch(() => wanted.delete(id));
  return known;
}

/** All of them, in the order of the list. */
export async function templateDocuments(): Promise<ReadonlyMap<string, OctavoDocument>> {
  const all = await Promise.all(templateList.map(async ({ id }) => [id, await openTemplate(id)] as const));
  return new Map(all);
}

async function read(id: string): Promise<OctavoDocument> {
  const answer = await fetch(new URL(`../../templates/${id}.json`, import.meta.url)).catch(() => undefined);
  if (!answer?.ok)
    throw new Error('This starter sheet cannot be fetched just now. Is the program that serves Octavo running?');
  const document = decodeDocument(await answer.json());
  // Starter sheets are checked by a test, so one that cannot be read is a mistake of ours.
  if (isRefusal(document)) throw new Error(document.refused);
  return markInvented(document);
}

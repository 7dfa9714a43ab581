import { withFreshIds } from '../document/create.ts';
import type { OctavoDocument } from '../document/types.ts';
import { atOnce } from './at-once.ts';
import type { Codec, SheetStorage } from './types.ts';

/** What a page kept at once, under its key in the local storage. */
interface Left {
  readonly over: number;
  readonly page: number;
  readonly content: string;
}

/** A document that waits to be saved over a revision. */
export interface Waiting {
  readonly document: OctavoDocument;
  readonly revision: number;
}

/** Saves what pages kept when they went and had no time to save; where the document was saved by another meanwhile, as a
 *  document of its own. What cannot be read or saved stays where it is; gives what still waits to be saved, by ids. */
export async function saveLeft(
  storage: SheetStorage,
  codec: Codec,
  keys: readonly string[],
): Promise<ReadonlyMap<string, Waiting>> {
  const waiting = new Map<string, Waiting>();
  for (const key of keys) {
    const left = readLeft(atOnce.read(key));
    const document = left && codec.decode(left.content);
    if (!left || !document || 'refused' in document) continue;
    try {
      await saveOne(storage, codec, left, document);
      atOnce.drop(key);
    } catch {
      waiting.set(document.id, { document, revision: left.over });
    }
  }
  return waiting;
}

async function saveOne(
  storage: SheetStorage,
  codec: Codec,
  { over, page, content }: Left,
  document: OctavoDocument,
): Promise<void> {
  const outcome = await storage.save(document, over);
  if (!('conflict' in outcome)) return;
  const stored = await storage.open(document.id);
  // The page had the time after all.
  if (stored && 'document' in stored && codec.encode(stored.document) === content) return;
  // It was saving as it went, and that save did end.
  const isOwn = outcome.conflict.page === page && outcome.conflict.revision === over + 1;
  if (isOwn && !('conflict' in (await storage.save(document, over + 1)))) return;
  await storage.save(withFreshIds({ ...document, title: `${document.title} (not saved)` }), 0);
}

function readLeft(text: string | null): Left | undefined {
  try {
    return JSON.parse(text ?? '') as Left;
  } catch {
    return undefined;
  }
}

import { withFreshIds } from '../document/create.ts';
import type { OctavoDocument } from '../document/types.ts';
import type { Codec, SheetStorage } from './types.ts';

/** What a page kept when it went, under its key in the local storage. */
interface Left {
  readonly over: number;
  readonly content: unknown;
  /** What was being saved over that revision meanwhile. */
  readonly saving?: unknown;
}

/** Saves what pages kept when they went and had no time to save; where the document was saved by another meanwhile, as a
 *  document of its own. What cannot be read stays where it is. */
export async function saveLeft(storage: SheetStorage, codec: Codec, keys: readonly string[]): Promise<void> {
  for (const key of keys) {
    const left = readLeft(localStorage.getItem(key));
    const document = left && codec.decode(left.content);
    if (!left || !document || 'refused' in document) continue;
    await saveOne(storage, codec, left, document);
    localStorage.removeItem(key);
  }
}

async function saveOne(
  storage: SheetStorage,
  codec: Codec,
  { over, content, saving }: Left,
  document: OctavoDocument,
): Promise<void> {
  if (!('conflict' in (await storage.save(document, over)))) return;
  const stored = await storage.open(document.id);
  const kept = stored && 'document' in stored ? JSON.stringify(codec.encode(stored.document)) : '';
  // The page had the time after all.
  if (kept === JSON.stringify(content)) return;
  const isOwn = saving !== undefined && kept === JSON.stringify(saving);
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

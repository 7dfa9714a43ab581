import type { SheetImage } from '../../components/gallery/data.ts';
import type { OctavoDocument } from '../../document/types.ts';
import { Workbook } from '../../document/workbook.ts';
import { createWorkerEngine } from '../../engine/client.ts';
import { sheetImageOf } from './sheet-image-of.ts';

/** Kept as long as the page: starter sheets do not change while it is open. */
const known = new Map<string, SheetImage>();

/** Pictures of starter sheets, one after the other, computed by an engine of their own so that the open sheet never waits for
 *  them. The engine is gone when all are drawn, or when stopped. */
export async function drawTemplates(
  documents: ReadonlyMap<string, OctavoDocument>,
  drawn: (images: ReadonlyMap<string, SheetImage>) => void,
  stopped: AbortSignal,
): Promise<void> {
  const missing = [...documents].filter(([id]) => !known.has(id));
  drawn(new Map(known));
  if (missing.length === 0) return;
  const engine = createWorkerEngine();
  stopped.addEventListener('abort', () => engine.dispose(), { once: true });
  for (const [id, document] of missing) {
    if (stopped.aborted) return;
    const image = await imageOf(new Workbook(engine, document)).catch(() => undefined);
    if (!image || stopped.aborted) continue;
    known.set(id, image);
    drawn(new Map(known));
  }
  engine.dispose();
}

async function imageOf(workbook: Workbook): Promise<SheetImage | undefined> {
  await workbook.ready;
  const [sheet] = workbook.document.sheets;
  return sheet && sheetImageOf(workbook, sheet);
}

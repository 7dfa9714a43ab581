import drivers from '../../../templates/drivers.json' with { type: 'json' };
import { isRefusal } from '../../document/command.ts';
import type { DriverEntry } from '../../document/shelf/entry.ts';
import { decodeEntry, decodeShelf, encodeEntry } from '../../exchange/shelf-file.ts';
import { ShelfStorage } from '../../storage/shelf-storage.ts';

/** The invented drivers, the same for everyone; only one's own are stored. */
export const inventedDrivers = (): readonly DriverEntry[] => {
  const entries = decodeShelf(drivers);
  if (isRefusal(entries)) throw new Error(entries.refused);
  return entries;
};

let storage: ShelfStorage | undefined;

/** One's own drivers, as the browser keeps them. */
export const ownShelf = (): ShelfStorage =>
  (storage ??= new ShelfStorage({ encode: encodeEntry, decode: decodeEntry }));

/** One's own drivers and then the invented ones; only these where the browser keeps none. */
export async function wholeShelf(): Promise<readonly DriverEntry[]> {
  const kept = await ownShelf()
    .list()
    .catch(() => undefined);
  return [...(kept?.entries ?? []), ...inventedDrivers()];
}

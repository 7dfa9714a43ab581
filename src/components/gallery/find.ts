import type { GalleryEntry } from './data.ts';

/** The entries that hold every word of the search, those first whose title holds one; all where nothing is asked. */
export function foundEntries(entries: readonly GalleryEntry[], search: string): readonly GalleryEntry[] {
  const words = search.toLowerCase().split(/\s+/u).filter(Boolean);
  const textOf = ({ title, summary, group, words: more }: GalleryEntry): string =>
    [title, summary, group, more].join(' ').toLowerCase();
  const isTitled = ({ title }: GalleryEntry): boolean => words.some((word) => title.toLowerCase().includes(word));
  const found = entries.filter((entry) => words.every((word) => textOf(entry).includes(word)));
  return words.length === 0 ? found : found.toSorted((a, b) => Number(isTitled(b)) - Number(isTitled(a)));
}

/** Entries of one group together, groups in the order in which they first come. */
export function groupedEntries(
  entries: readonly GalleryEntry[],
): readonly (readonly [group: string, entries: readonly GalleryEntry[]])[] {
  const groups = new Map<string, GalleryEntry[]>();
  for (const entry of entries) {
    const group = groups.get(entry.group);
    if (group) group.push(entry);
    else groups.set(entry.group, [entry]);
  }
  return [...groups];
}

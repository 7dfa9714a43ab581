import { newId } from '../create.ts';
import { sameWord } from '../sheets.ts';
import type { DriverEntry, DriverTable } from './entry.ts';

/** Two shelves as one, and what a reader must know of it. */
export interface Merged {
  readonly entries: readonly DriverEntry[];
  /** Entries of the result that are new or changed against the first shelf. */
  readonly changed: readonly DriverEntry[];
  readonly told: readonly string[];
}

/** Brings a second shelf into a first one and loses nothing of either: equal drivers once, sources and tables of equal numbers
 *  joined, a driver of the same name with other numbers beside the first under a name of its own. */
export function mergeShelves(mine: readonly DriverEntry[], theirs: readonly DriverEntry[]): Merged {
  const entries = [...mine];
  const changed = new Map<string, DriverEntry>();
  const told: string[] = [];
  let added = 0;
  for (const their of theirs) {
    const twin = entries.findIndex((each) => isNamedAfter(each.name, their.name) && sameRows(each, their));
    const held = entries[twin];
    if (held) {
      const joined = join(held, their);
      if (joined === held) continue;
      entries[twin] = joined;
      changed.set(joined.id, joined);
      told.push(`${held.name}: its source and tables from both shelves are kept.`);
      continue;
    }
    const fresh = {
      ...their,
      id: entries.some(({ id }) => id === their.id) ? newId() : their.id,
      name: freeName(entries, their.name),
    };
    entries.push(fresh);
    changed.set(fresh.id, fresh);
    added += 1;
    if (fresh.name !== their.name) {
      told.push(`${their.name} is on both shelves with different numbers: both are kept, the second as ${fresh.name}.`);
    }
  }
  const same = theirs.length - changed.size;
  const count = `${added} added${same > 0 ? `, ${same} already here` : ''}.`;
  return { entries, changed: [...changed.values()], told: [count, ...told] };
}

/** `W-1` or what {@link freeName} made of it, `W-1 (2)`. */
const isNamedAfter = (name: string, original: string): boolean =>
  sameWord(name, original) || sameWord(name.replace(/ \(\d+\)$/, ''), original);

/** The name itself, or with the next number that is free. */
export function freeName(entries: readonly DriverEntry[], wish: string): string {
  const isTaken = (name: string): boolean => entries.some((each) => sameWord(each.name, name));
  if (!isTaken(wish)) return wish;
  for (let number = 2; ; number++) if (!isTaken(`${wish} (${number})`)) return `${wish} (${number})`;
}

function sameRows({ rows: a, invented: first }: DriverEntry, { rows: b, invented: second }: DriverEntry): boolean {
  return (
    first === second &&
    a.length === b.length &&
    a.every(({ label, text }, index) => label === b[index]?.label && text === b[index].text)
  );
}

/** The same object where the second adds nothing. */
function join(held: DriverEntry, their: DriverEntry): DriverEntry {
  const source = held.source.includes(their.source) ? held.source : `${held.source}\n${their.source}`.trim();
  const isHeld = ({ title, text }: DriverTable): boolean =>
    held.tables.some((each) => each.title === title && each.text === text);
  const more = their.tables.filter((table) => !isHeld(table));
  return source === held.source && more.length === 0 ? held : { ...held, source, tables: [...held.tables, ...more] };
}

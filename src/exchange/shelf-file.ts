import type { Refusal } from '../document/command.ts';
import { newId } from '../document/create.ts';
import type { DriverEntry } from '../document/shelf/entry.ts';
import { Reader } from './reader.ts';

/** The version of the shelf file that this program writes. */
const VERSION = 1;

/** The drivers of a shelf as the text of a file: plain JSON that says what was typed, one line a row. */
export function writeShelf(entries: readonly DriverEntry[]): string {
  const text = JSON.stringify({ octavoShelf: VERSION, drivers: entries.map(encodeEntry) }, undefined, 2);
  // No text inside the JSON holds a line break, so that only lists of two texts are drawn into one line.
  return `${text.replaceAll(/\[\n\s+("(?:[^"\\]|\\.)*"),\n\s+("(?:[^"\\]|\\.)*")\n\s+\]/g, '[$1, $2]')}\n`;
}

/** Reads what {@link writeShelf} gave; a damaged, foreign or newer file is refused with what is wrong. */
export function readShelf(text: string): readonly DriverEntry[] | Refusal {
  let value: unknown;
  try {
    value = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    return { refused: `This is no driver shelf: the text is not readable JSON (${error.message}).` };
  }
  return decodeShelf(value);
}

export function decodeShelf(value: unknown): readonly DriverEntry[] | Refusal {
  const isShelf = typeof value === 'object' && value !== null && Object.hasOwn(value, 'octavoShelf');
  if (!isShelf) {
    const isSheet = typeof value === 'object' && value !== null && Object.hasOwn(value, 'octavo');
    return {
      refused: isSheet
        ? 'This is a document with sheets, no driver shelf: open it from the menu of the document.'
        : 'This is no driver shelf: it does not begin with {"octavoShelf": 1, …}.',
    };
  }
  const version = (value as { octavoShelf: unknown }).octavoShelf;
  if (typeof version === 'number' && version > VERSION) {
    return {
      refused:
        `This shelf was written by a newer Octavo (file version ${version}; this one reads up to ${VERSION}). ` +
        'Get the newest Octavo (in the browser, reload the page), then read it again.',
    };
  }
  const reader = new Reader(value);
  const fields = reader.fields(['octavoShelf', 'drivers']);
  fields.octavoShelf.whole(1, VERSION);
  const seen = new Set<string>();
  const entries = fields.drivers.list().map((each) => withFreshId(readEntry(each), seen));
  const [first, ...others] = reader.faults;
  if (first === undefined) return entries;
  const more = others.length === 0 ? '' : ` (and ${others.length} more)`;
  return { refused: `This driver shelf is damaged or was changed by hand. ${first}${more}` };
}

const withFreshId = (entry: DriverEntry, seen: Set<string>): DriverEntry => {
  const id = seen.has(entry.id) ? newId() : entry.id;
  seen.add(id);
  return id === entry.id ? entry : { ...entry, id };
};

/** What a file and the storage hold of a driver. */
export const encodeEntry = ({ id, name, rows, source, tables, invented }: DriverEntry): unknown => ({
  id,
  name,
  ...(invented && { invented }),
  rows: rows.map(({ label, text }) => [label, text]),
  ...(source !== '' && { source }),
  ...(tables.length > 0 && { tables }),
});

/** One driver as the storage holds it. */
export function decodeEntry(value: unknown): DriverEntry | Refusal {
  const reader = new Reader(value);
  const entry = readEntry(reader);
  const [first] = reader.faults;
  return first === undefined ? entry : { refused: `A driver on the shelf is damaged. ${first}` };
}

function readEntry(reader: Reader): DriverEntry {
  const { id, name, invented, rows, source, tables } = reader.fields([
    'id',
    'name',
    'invented',
    'rows',
    'source',
    'tables',
  ]);
  if (!invented.isMissing && typeof invented.value !== 'boolean') invented.fault('true or false is wanted.');
  return {
    id: id.isMissing ? newId() : id.text(),
    name: name.text(),
    invented: invented.value === true,
    rows: rows.list().map((each) => {
      const [label, text, ...more] = each.list();
      if (!label || !text || more.length > 0) each.fault('a label and a text are wanted, as ["Fs", "38 Hz"].');
      return { label: label?.text() ?? '', text: text?.text() ?? '' };
    }),
    source: source.isMissing ? '' : source.text(),
    tables: tables.isMissing
      ? []
      : tables.list().map((each) => {
          const { title, text } = each.fields(['title', 'text']);
          return { title: title.text(), text: text.text() };
        }),
  };
}

import { NEW_COLUMN } from './commands/put-cells.ts';
import { nameOfCopy, sameWord } from './sheets.ts';
import type { OctavoDocument, Sheet } from './types.ts';

const NEW_ROWS = 100;
const NEW_COLUMNS = 8;

/** An id that no other document or sheet has. */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(12));
  return Array.from(bytes, (byte) => byte.toString(36).padStart(2, '0')).join('');
}

export const newSheet = (name: string): Sheet => ({
  id: newId(),
  name,
  summary: '',
  rows: NEW_ROWS,
  columns: Array.from({ length: NEW_COLUMNS }, () => NEW_COLUMN),
  cells: new Map(),
  names: new Map(),
  plots: [],
});

export const newDocument = (title: string): OctavoDocument => ({
  id: newId(),
  title,
  sheets: [newSheet('Sheet 1')],
  system: 'metric',
});

/** The same document under ids of its own: what opening a file, a template or a kept copy gives. */
export function withFreshIds(document: OctavoDocument, title = document.title): OctavoDocument {
  const fresh = new Map(document.sheets.map((sheet) => [sheet.id, newId()]));
  const idOf = (id: string): string => fresh.get(id) ?? id;
  return {
    ...document,
    id: newId(),
    title,
    sheets: document.sheets.map((sheet) => ({ ...sheet, id: idOf(sheet.id) })),
    ...(document.baseline && {
      baseline: {
        ...document.baseline,
        cells: new Map([...document.baseline.cells].map(([id, cells]) => [idOf(id), cells])),
      },
    }),
  };
}

/** A name for one more sheet: the wish itself where it is free, else with the next number. */
export const freeSheetName = (document: OctavoDocument, wish: string): string =>
  document.sheets.some((sheet) => sameWord(sheet.name, wish)) ? nameOfCopy(document, wish) : wish;

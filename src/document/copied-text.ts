import type { CellState, Place } from '../engine/types.ts';
import { addressesIn } from './area.ts';
import { recordText } from './record-text.ts';
import { shownText } from './show-cell.ts';
import type { ShownCell } from './shown.ts';
import type { OctavoDocument, UnitSystem } from './types.ts';

/** A cell as one line of text, to be copied out: as shown, a record with all its fields. */
export function copiedText(state: CellState | undefined, shown: ShownCell, system: UnitSystem): string {
  const value = state?.value;
  const isRecord = value?.kind === 'record' && value.record.kind !== 'verdict';
  return isRecord ? recordText(value.record, system) : shownText(shown);
}

/** What is shown in all cells that hold something, by sheet and address. */
export function textsBySheet(
  { sheets }: OctavoDocument,
  places: Iterable<Place>,
  shown: (place: Place) => ShownCell,
): ReadonlyMap<string, ReadonlyMap<string, string>> {
  const texts = new Map(sheets.map(({ id }) => [id, new Map<string, string>()]));
  for (const place of places) {
    const text = shownText(shown(place));
    if (text !== '') texts.get(place.sheet)?.set(place.cell, text);
  }
  return texts;
}

/** All cells in the first rows of every sheet. */
export function* firstPlaces({ sheets }: OctavoDocument, most: number): Generator<Place> {
  for (const { id, rows, columns } of sheets) {
    const area = { top: 0, left: 0, bottom: Math.min(rows, most) - 1, right: columns.length - 1 };
    for (const cell of addressesIn(area)) yield { sheet: id, cell };
  }
}

import type { Place } from '../engine/types.ts';
import type { Before } from './comparison.ts';
import type { EngineLink } from './engine-link.ts';
import { keyOf } from './preview.ts';
import { cellIn } from './sheets.ts';
import type { Cell, OctavoDocument } from './types.ts';

/** A cell with the text that the baseline remembers; its unit and look are those of today. */
export function baselineCell(document: OctavoDocument, place: Place): Cell | undefined {
  const text = document.baseline?.cells.get(place.sheet)?.get(place.cell);
  return text === undefined ? undefined : { ...cellIn(document, place), text };
}

/** All cells that hold something now or held something in the baseline, as they were then. Sheets that came later have no
 *  baseline to be compared with. */
export function* momentsOfBaseline(document: OctavoDocument, link: EngineLink): Generator<Before> {
  const { baseline } = document;
  const states = link.baselineStates(baseline);
  if (!baseline || !states) return;
  const seen = new Set<string>();
  for (const { sheet, cell } of [...states, ...link.states]) {
    const place = { sheet, cell };
    const key = keyOf(place);
    if (seen.has(key) || !baseline.cells.has(sheet)) continue;
    seen.add(key);
    yield { place, moment: { state: states.get(place), cell: baselineCell(document, place) } };
  }
}

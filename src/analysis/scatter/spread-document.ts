import { causeNames } from '../../../functions/spread/causes.ts';
import { freeSheetName, newSheet } from '../../document/create.ts';
import { labelOf } from '../../document/labels.ts';
import { formatSheet } from '../../document/formula-words.ts';
import { sheetOf, withText } from '../../document/sheets.ts';
import type { Cell, OctavoDocument } from '../../document/types.ts';
import type { Place } from '../../engine/types.ts';
import { placeError, QuestionError } from '../subject/place-error.ts';
import type { CauseName, Spread } from './types.ts';

/** A quantity that is drawn anew in each run. */
export interface Drawn extends Place {
  readonly label: string;
  /** One standard deviation: of the logarithm, or in SI. */
  readonly deviation: number;
  readonly shape: 'lognormal' | 'normal';
  /** Its value without spread. */
  readonly centre: number;
}

const causes = ['cms', 'bl', 'mms', 're'] as const satisfies readonly CauseName[];

/** The document with the causes behind its drivers as inputs of a sheet of their own, and all that is drawn. Each driver's four
 *  causes are drawn together, whether they spread or not, so that a seed means the same however they do.
 *  @throws An error in words for the reader where a spread belongs to no driver and to no number. */
export function spreadDocument(
  document: OctavoDocument,
  spreads: readonly Spread[],
  presentOf: (place: Place) => number | undefined,
): { readonly document: OctavoDocument; readonly drawn: readonly Drawn[] } {
  const sheet = newSheet(freeSheetName(document, 'Causes of spread'));
  const cells = new Map<string, Cell>();
  const drawn: Drawn[] = [];
  let spread = document;
  for (const each of spreads) {
    if (each.kind === 'driver') {
      const driver = labelOf(sheetOf(document, each.at.sheet), each.at.cell);
      const factors = causes.map((cause) => {
        const row = drawn.length + 1;
        const label = `${driver}: ${causeNames[cause].charAt(0).toLowerCase()}${causeNames[cause].slice(1)}`;
        cells.set(`A${row}`, { text: label }).set(`B${row}`, { text: '1' });
        drawn.push({
          sheet: sheet.id,
          cell: `B${row}`,
          label,
          deviation: deviationOf(each.causes[cause] ?? 0, label),
          shape: 'lognormal',
          centre: 1,
        });
        return `${formatSheet(sheet.name)}!B${row}`;
      });
      spread = withDriver(spread, each.at, factors);
      continue;
    }
    const centre = presentOf(each.at);
    if (centre === undefined) throw placeError(document, each.at, 'no number that was typed, so it cannot spread');
    const label = labelOf(sheetOf(document, each.at.sheet), each.at.cell);
    const shape = each.kind === 'share' ? 'lognormal' : 'normal';
    drawn.push({ ...each.at, label, deviation: deviationOf(each.deviation, label), shape, centre });
  }
  const isNeeded = cells.size > 0;
  return { document: isNeeded ? { ...spread, sheets: [...spread.sheets, { ...sheet, cells }] } : spread, drawn };
}

function deviationOf(deviation: number, label: string): number {
  if (deviation >= 0 && Number.isFinite(deviation)) return deviation;
  throw new QuestionError(`The spread of ${label} must be a number of at least 0, but is ${deviation}.`);
}

/** Wraps the formula that makes a driver, so that its causes move it. */
function withDriver(document: OctavoDocument, at: Place, factors: readonly string[]): OctavoDocument {
  const cell = sheetOf(document, at.sheet).cells.get(at.cell);
  if (!cell?.text.startsWith('=')) throw placeError(document, at, 'no driver: name the cell whose formula makes one');
  return withText(document, at, `=SPREAD.DRIVER(${cell.text.slice(1)},${factors.join(',')})`);
}

import { summarise } from '../../functions/values/fields.ts';
import { referencesIn, type PlacedReference } from '../formula/references-in.ts';
import { show } from '../units/show.ts';
import type { ShownCell } from './shown.ts';
import type { Workbook } from './workbook.ts';

/** What of a workbook a formula with its values needs. */
type Around = Pick<Workbook, 'scope' | 'shown' | 'state' | 'document'>;

/** A formula with the values in it, as they are shown: `=CLOSED.QTC(0.386, 28.52 L, 12.1 L)`. Ranges stay as they are
 *  written; records stand with their names. Empty for what is no formula, and where there is nothing to put in. */
export function workedFormula(workbook: Around, sheet: string, formula: string): string {
  let worked = '';
  let at = 0;
  for (const reference of referencesIn(formula, workbook.scope(sheet))) {
    const written = formula.slice(reference.from, reference.to);
    worked += formula.slice(at, reference.from) + (valueOf(workbook, reference, written) ?? written);
    at = reference.to;
  }
  worked += formula.slice(at);
  return worked === formula ? '' : worked;
}

function valueOf(workbook: Around, { sheet, cells }: PlacedReference, written: string): string | undefined {
  if (cells.includes(':')) return undefined;
  const shown = workbook.shown(sheet, cells);
  const dot = written.slice(written.lastIndexOf('!') + 1).indexOf('.');
  if (dot < 0) return shown && inFormula(shown);
  const field = written
    .slice(written.lastIndexOf('!') + 1)
    .slice(dot + 1)
    .toLowerCase();
  const value = workbook.state(sheet, cells)?.value;
  const line =
    value?.kind === 'record' ? summarise(value.record).find(({ name }) => name.toLowerCase() === field) : undefined;
  // A name may have a dot in it without meaning a field.
  if (!line) return shown && inFormula(shown);
  if (typeof line.value === 'string' || line.quantity === 'text') return `“${String(line.value)}”`;
  const { quantity, money } = line;
  const { number, unit } = show(line.value, { quantity, system: workbook.document.system, unit: money });
  return `${number} ${unit}`.trim();
}

function inFormula(shown: ShownCell): string | undefined {
  switch (shown.kind) {
    case 'number':
      return `${shown.number} ${shown.unit}`.trim();
    case 'text':
      return `“${shown.text}”`;
    case 'curve':
      return `“${shown.curve.title}”`;
    case 'record':
      return `“${shown.title}”`;
    case 'verdict':
      return `“${shown.word}”`;
    case 'empty':
    case 'waiting':
    case 'problem':
      return undefined;
  }
}

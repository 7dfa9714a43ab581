import type { CellState, Place } from '../engine/types.ts';
import type { CellRecord } from '../../functions/values/record.ts';
import { parseQuantity } from '../units/parse.ts';
import { show, speak } from '../units/show.ts';
import { formatSheet } from './formula-words.ts';
import { labelOf } from './labels.ts';
import { keyFigures, titleOf, under } from './record-text.ts';
import type { ShownCell } from './shown.ts';
import type { Cell, OctavoDocument, UnitSystem } from './types.ts';

/** What of a document matters to how its cells are shown. */
export type Around = Pick<OctavoDocument, 'system' | 'sheets'>;

interface Remembered {
  readonly cell: Cell | undefined;
  readonly system: UnitSystem;
  readonly shown: ShownCell;
}

/** A cell whose state is the same shows the same: most cells in view have not changed since they were last asked for. */
const remembered = new WeakMap<CellState, Remembered>();

/** What a reader sees of a cell. `cell` is what the document holds there, for its unit and its digits. */
export function showCell(state: CellState, cell: Cell | undefined, around: Around): ShownCell {
  // The words of a problem name other cells, whose labels may change.
  if (state.value.kind === 'problem') return showState(state, cell, around);
  const known = remembered.get(state);
  if (known && known.cell === cell && known.system === around.system) return known.shown;
  const shown = showState(state, cell, around);
  remembered.set(state, { cell, system: around.system, shown });
  return shown;
}

function showState(state: CellState, cell: Cell | undefined, around: Around): ShownCell {
  const { value } = state;
  const { system } = around;
  switch (value.kind) {
    case 'empty':
      return { kind: 'empty' };
    case 'number':
      return showNumber(value.value, state, cell, system);
    case 'text':
      return { kind: 'text', text: value.text };
    case 'truth':
      return { kind: 'text', text: value.truth ? 'TRUE' : 'FALSE' };
    case 'record':
      return showRecord(value.record, system);
    case 'problem':
      return { kind: 'problem', message: value.message + originOf(value.origin, state.sheet, around) };
  }
}

/** Names the cell in which a problem arose, where that is another one. */
function originOf(origin: Place | undefined, own: string, { sheets }: Around): string {
  const sheet = sheets.find(({ id }) => id === origin?.sheet);
  if (!origin || !sheet) return '';
  const label = labelOf(sheet, origin.cell);
  const cell = sheet.id === own ? origin.cell : `${formatSheet(sheet.name)}!${origin.cell}`;
  return ` (in ${cell}${label === origin.cell ? '' : `, ${label}`})`;
}

/** A typed quantity keeps its unit and its digits; a formula's result is shown in the unit asked for. */
function showNumber(value: number, state: CellState, cell: Cell | undefined, system: UnitSystem): ShownCell {
  const typed = cell && !cell.text.startsWith('=') ? parseQuantity(cell.text) : undefined;
  const unit = typed?.unit || cell?.unit || state.unit;
  const type = state.type.kind === 'number' ? state.type : undefined;
  const shown = show(value, {
    quantity: type?.quantity,
    ...(type && { dimension: type.dimension }),
    ...(unit && { unit }),
    ...(typed && { digits: typed.digits }),
    system,
  });
  return { kind: 'number', number: shown.number, unit: shown.unit };
}

function showRecord(record: CellRecord, system: UnitSystem): ShownCell {
  switch (record.kind) {
    case 'verdict':
      return {
        kind: 'verdict',
        status: record.status,
        word: record.word,
        reason: speak(record.reason, system),
        note: record.note ? speak(record.note, system) : '',
      };
    case 'curve':
      return { kind: 'curve', curve: record, text: titleOf(record) };
    default:
      return { kind: 'record', title: titleOf(record), text: keyFigures(record, system) };
  }
}

/** The text of a cell as one line, as it is copied out, searched, printed and remembered for the next first paint. */
export function shownText(shown: ShownCell): string {
  switch (shown.kind) {
    case 'empty':
      return '';
    case 'number':
      return shown.unit === '' ? shown.number : `${shown.number} ${shown.unit}`;
    case 'text':
    case 'waiting':
    case 'curve':
      return shown.text;
    case 'verdict':
      return [`${shown.word}: ${shown.reason}`, shown.note].filter((part) => part !== '').join(' ');
    case 'record':
      return under(shown.title, shown.text);
    case 'problem':
      return `Problem: ${shown.message}`;
  }
}

import { quantityOf } from '../../units/dimension.ts';
import { labelOf, nameOf } from '../../document/labels.ts';
import type { Cell, OctavoDocument, Sheet } from '../../document/types.ts';
import type { CellState, Place } from '../../engine/types.ts';
import { readContent } from '../../formula/content.ts';
import type { CellType } from '../../formula/types.ts';
import { parseQuantity } from '../../units/parse.ts';
import type { QuantityName } from '../../../functions/quantities.ts';
import type { Input, Result, Subject } from './types.ts';

export type StateOf = (place: Place) => CellState | undefined;

/** All inputs and results of a document, each under a label of its own: where two cells would be called alike, their
 *  addresses tell them apart. */
export function subjectOf(document: OctavoDocument, stateOf: StateOf): Subject {
  const inputs: Input[] = [];
  const results: Result[] = [];
  for (const sheet of document.sheets) {
    for (const [address, cell] of sheet.cells) {
      const place = { sheet: sheet.id, cell: address };
      const input = inputOf(sheet, place, cell);
      const result = cell.text.startsWith('=') ? resultOf(sheet, place, cell, stateOf(place)) : undefined;
      if (input) inputs.push(input);
      if (result) results.push(result);
    }
  }
  return { inputs: toldApart(inputs, document), results: toldApart(results, document) };
}

function inputOf(sheet: Sheet, place: Place, cell: Cell): Input | undefined {
  if (cell.look !== undefined) return undefined;
  const content = readContent(cell.text);
  const name = nameOf(sheet, place.cell);
  const shared = { ...place, label: labelOf(sheet, place.cell), ...(name !== undefined && { name }) };
  if (content.kind === 'number' || content.kind === 'quantity') {
    const isQuantity = content.kind === 'quantity';
    const given = givenRange(cell, content.value);
    return {
      ...shared,
      quantity: isQuantity ? content.quantity : 'ratio',
      unit: isQuantity ? content.unit : '',
      present: content.value,
      range: given ?? guessedRange(content.value),
      isRangeGiven: given !== undefined,
      ...(cell.choices && { choices: cell.choices }),
    };
  }
  if (!cell.choices) return undefined;
  return {
    ...shared,
    quantity: 'ratio',
    unit: '',
    present: cell.text,
    range: [0, 0],
    isRangeGiven: false,
    choices: cell.choices,
  };
}

/** The plausible ends of an input as its cell says, always so wide that its value lies inside. */
function givenRange({ range }: Cell, value: number): readonly [number, number] | undefined {
  const [low, high] = range?.map((text) => parseQuantity(text)?.value) ?? [];
  return low !== undefined && high !== undefined && low < high
    ? [Math.min(low, value), Math.max(high, value)]
    : undefined;
}

/** A factor of four to both sides. */
function guessedRange(value: number): readonly [number, number] {
  if (value === 0) return [0, 1];
  return value > 0 ? [value / 4, value * 4] : [value * 4, value / 4];
}

function resultOf(sheet: Sheet, place: Place, cell: Cell, state: CellState | undefined): Result {
  const name = nameOf(sheet, place.cell);
  const type = state?.type ?? { kind: 'unknown' };
  const quantity = quantityIn(type);
  const present = state?.value ?? { kind: 'empty' };
  const unit = cell.unit ?? state?.unit;
  return {
    ...place,
    label: labelOf(sheet, place.cell),
    ...(name !== undefined && { name }),
    ...(quantity && { quantity }),
    ...(unit !== undefined && { unit }),
    kind: kindOf(type, present),
    present,
  };
}

function quantityIn(type: CellType): QuantityName | undefined {
  if (type.kind === 'number') return type.quantity ?? quantityOf(type.dimension);
  return type.kind === 'record' ? type.quantity : undefined;
}

function kindOf(type: CellType, present: Result['present']): Result['kind'] {
  const record = present.kind === 'record' ? present.record.kind : type.kind === 'record' ? type.record : undefined;
  if (record === 'curve' || record === 'verdict') return record;
  if (record !== undefined) return 'other';
  return present.kind === 'number' || type.kind === 'number' ? 'number' : 'other';
}

function toldApart<T extends Input | Result>(cells: readonly T[], { sheets }: OctavoDocument): T[] {
  const times = new Map<string, number>();
  for (const { label } of cells) times.set(label, (times.get(label) ?? 0) + 1);
  return cells.map((each) => {
    if (times.get(each.label) === 1 || each.label === each.cell) return each;
    const sheet = sheets.length > 1 ? `${sheets.find(({ id }) => id === each.sheet)?.name ?? ''}!` : '';
    return { ...each, label: `${each.label} (${sheet}${each.cell})` };
  });
}

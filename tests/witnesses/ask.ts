import { fieldOf } from '../../functions/values/fields.ts';
import type { CellRecord } from '../../functions/values/record.ts';
import type { SheetEngine } from '../../src/engine/types.ts';
import type { Witness } from './witness.ts';

/** The field of a record, or `number 2` of a verdict: the second of those that its reason tells. */
function read(record: CellRecord, field: string): number | string | undefined {
  const place = /^number (\d+)$/.exec(field)?.[1];
  if (place === undefined || record.kind !== 'verdict') return fieldOf(record, field);
  const told = record.reason.flatMap((part) => (typeof part === 'string' ? [] : [part.value]));
  return told[Number(place) - 1];
}

/** What the engine gives for a witness on an empty sheet with its cells: a number in SI or a word. */
export async function ask(
  engine: SheetEngine,
  { formula, cells = {}, field }: Pick<Witness, 'formula' | 'cells' | 'field'>,
): Promise<number | string> {
  await engine.load([{ id: 's', name: 'Sheet', cells: new Map(Object.entries(cells)), names: new Map() }]);
  const { value } = await engine.evaluate('s', formula);
  if (value.kind === 'number') return value.value;
  if (value.kind === 'text') return value.text;
  if (value.kind === 'record' && field !== undefined) {
    const held = read(value.record, field);
    if (typeof held === 'number' || typeof held === 'string') return held;
  }
  throw new Error(`${formula}: ${JSON.stringify(value)}`);
}

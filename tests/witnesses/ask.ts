import { fieldOf } from '../../functions/values/fields.ts';
import type { SheetEngine } from '../../src/engine/types.ts';
import type { Witness } from './witness.ts';

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
    const held = fieldOf(value.record, field);
    if (typeof held === 'number' || typeof held === 'string') return held;
  }
  throw new Error(`${formula}: ${JSON.stringify(value)}`);
}

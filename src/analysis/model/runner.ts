import { sameType, typeOfContent } from '../../formula/type-of.ts';
import { readContent } from '../../formula/content.ts';
import type { CellType } from '../../formula/types.ts';
import type { CellValue } from '../../engine/types.ts';
import { cellValueOf, isTable, type Held } from './datum.ts';
import { OnlyEngine } from './operators.ts';
import type { Run } from './plain-calls.ts';
import type { Setting } from '../subject/types.ts';

/** A formula with the place in memory for what it gives. */
export interface Step {
  readonly slot: number;
  readonly run: Run;
}

/** The part of a sheet between some inputs and some results, compiled; its memory is its own. */
export interface Program {
  readonly memory: Held[];
  /** Each after what it depends on. */
  readonly steps: readonly Step[];
  /** Where each input stands, and what it is. */
  readonly inputs: readonly { readonly slot: number; readonly type: CellType }[];
  readonly results: readonly (() => Held)[];
}

/** Runs a compiled part of a sheet; nothing where only the engine can tell. */
export function execute(program: Program, values: readonly Setting[]): CellValue[] | undefined {
  const { memory, steps, inputs, results } = program;
  try {
    for (const [index, { slot, type }] of inputs.entries()) memory[slot] = heldOfSetting(values[index] ?? '', type);
    for (const { slot, run } of steps) {
      const value = run();
      if (value === undefined || isTable(value)) return undefined;
      memory[slot] = value;
    }
    return results.map((read) => cellValueOf(read()));
  } catch (error) {
    if (error instanceof OnlyEngine) return undefined;
    throw error;
  }
}

/** A text is read as if typed; one of another kind than the cell holds may give formulas another meaning. */
function heldOfSetting(setting: Setting, type: CellType): Held {
  if (typeof setting === 'number') return setting;
  const content = readContent(setting);
  if (content.kind === 'formula' || !sameType(typeOfContent(content), type)) throw new OnlyEngine();
  switch (content.kind) {
    case 'number':
    case 'quantity':
      return content.value;
    case 'text':
      return content.text;
    case 'truth':
      return content.truth;
    case 'empty':
      return null;
  }
}

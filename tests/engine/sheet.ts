import type { CellState, CellValue, Changes, SheetContent, SheetEngine, Writing } from '../../src/engine/types.ts';

/** One sheet, called S. */
export const sheetWith = (
  cells: Readonly<Record<string, string>> | ReadonlyMap<string, string>,
  names: Readonly<Record<string, string>> = {},
): SheetContent[] => [
  {
    id: 's',
    name: 'S',
    cells: cells instanceof Map ? cells : new Map(Object.entries(cells)),
    names: new Map(Object.entries(names)),
  },
];

export const typed = (cell: string, text: string): Writing => ({ sheet: 's', cell, text });

/** What an engine has told, as whoever listens holds it: a later state takes the place of an earlier one. */
export class Told {
  readonly states = new Map<string, CellState>();

  take({ cells }: Changes): void {
    for (const state of cells) {
      const key = `${state.sheet}!${state.cell}`;
      if (state.value.kind === 'empty' && state.type.kind === 'empty' && state.findings.length === 0) {
        this.states.delete(key);
      } else this.states.set(key, state);
    }
  }

  state(cell: string): CellState | undefined {
    return this.states.get(`s!${cell}`);
  }

  value(cell: string): CellValue {
    return this.state(cell)?.value ?? { kind: 'empty' };
  }

  number(cell: string): number {
    const value = this.value(cell);
    return value.kind === 'number' ? value.value : Number.NaN;
  }

  message(cell: string): string {
    const value = this.value(cell);
    return value.kind === 'problem' ? value.message : '';
  }
}

export async function told(engine: SheetEngine, sheets: readonly SheetContent[]): Promise<Told> {
  const all = new Told();
  all.take(await engine.load(sheets));
  return all;
}

import { Workbook } from '../../src/document/workbook.ts';
import type { Sheet } from '../../src/document/types.ts';
import { createEngine } from '../../src/engine/direct.ts';
import type { CellState } from '../../src/engine/types.ts';
import { starterDocument } from './starter-document.ts';

/** A starter sheet opened on an engine of its own, spoken to by the names of its first sheet. */
export async function openTemplate(id: string): Promise<OpenTemplate> {
  const workbook = new Workbook(createEngine(), starterDocument(id));
  await workbook.ready;
  const sheet = (): Sheet => {
    const [first] = workbook.document.sheets;
    if (!first) throw new Error(`${id} has no sheet`);
    return first;
  };
  const addressOf = (cell: string): string => sheet().names.get(cell) ?? cell;
  const state = (cell: string): CellState | undefined => workbook.state(sheet().id, addressOf(cell));
  return {
    workbook,
    sheet,
    state,
    number: (cell) => {
      const value = state(cell)?.value;
      return value?.kind === 'number' ? value.value : Number.NaN;
    },
    text: (cell) => workbook.asText(sheet().id, addressOf(cell)),
    write: async (texts) => {
      const written = Object.entries(texts).map(([cell, text]) => [addressOf(cell), text] as const);
      const refusal = await workbook.do({ kind: 'write', sheet: sheet().id, texts: new Map(written) });
      if (refusal) throw new Error(refusal.refused);
    },
    problems: () =>
      [...sheet().cells.keys()].flatMap((cell) => {
        const value = state(cell)?.value;
        return value?.kind === 'problem' ? [`${cell}: ${value.message}`] : [];
      }),
  };
}

export interface OpenTemplate {
  readonly workbook: Workbook;
  sheet(): Sheet;
  /** The state of a cell, by address or name. */
  state(cell: string): CellState | undefined;
  /** The number in a cell in SI; NaN where there is none. */
  number(cell: string): number;
  /** What the cell shows, as text. */
  text(cell: string): string;
  write(texts: Readonly<Record<string, string>>): Promise<void>;
  /** Every cell that holds a problem, with its message. */
  problems(): string[];
}

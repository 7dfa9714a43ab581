import { newSheet } from '../../src/document/create.ts';
import type { OctavoDocument } from '../../src/document/types.ts';
import { Workbook } from '../../src/document/workbook.ts';
import { SlowEngine } from './slow-engine.ts';

export const document = (): OctavoDocument => ({
  id: 'document',
  title: 'Check',
  system: 'metric',
  sheets: [
    {
      ...newSheet('Sheet'),
      id: 's',
      columns: [
        { width: 200, title: 'Quantity' },
        { width: 100, title: 'Woofer', line: 'woofer' },
        { width: 100, title: 'Tweeter', line: 'tweeter' },
        { width: 100, title: 'Together', line: 'system' },
      ],
      cells: new Map(
        Object.entries({
          A4: 'Resonance',
          B4: '38 Hz',
          C4: '850 Hz',
          A5: 'Twice that',
          B5: '=B4*2',
          A6: 'Sum',
          D6: '=B5+C4',
          A7: 'Does it hold?',
          D7: '=CHECK(B5,100)',
          A8: 'Plain',
          B8: '7',
        }).map(([cell, text]) => [cell, { text }]),
      ),
      names: new Map([['Twice', 'B5']]),
    },
  ],
});

export async function started(): Promise<{ engine: SlowEngine; workbook: Workbook }> {
  const engine = new SlowEngine();
  const workbook = new Workbook(engine, document());
  await workbook.ready;
  engine.asked.length = 0;
  return { engine, workbook };
}

export const at = (cell: string) => ({ sheet: 's', cell });
export const write = (cell: string, text: string) =>
  ({ kind: 'write', sheet: 's', texts: new Map([[cell, text]]) }) as const;
export const textOf = (workbook: Workbook, cell: string): string | undefined =>
  workbook.document.sheets[0]?.cells.get(cell)?.text;
export const valueOf = (workbook: Workbook, cell: string): unknown => {
  const value = workbook.state('s', cell)?.value;
  return value?.kind === 'number' ? value.value : value?.kind;
};

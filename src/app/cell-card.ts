import { html, type TemplateResult } from 'lit';
import type { CellRecord } from '../../functions/values/record.ts';
import '../components/record-card/record-card.ts';
import { labelOf } from '../document/labels.ts';
import type { CardState } from '../components/record-card/content.ts';
import type { Workbook } from '../document/workbook.ts';
import { derivationOf } from './derivation.ts';

const emptyCell = (sheet: string, cell: string): CardState => ({
  sheet,
  cell,
  value: { kind: 'empty' },
  type: { kind: 'empty' },
  findings: [],
});

/** The card of a cell with all that is known of it; `full` with every point of its curves. */
export function cellCard(
  workbook: Workbook,
  sheet: string,
  cell: string,
  { full, go }: { readonly full: boolean; readonly go: (place: { sheet: string; cell: string }) => void },
): TemplateResult {
  const { formula, worked, origins } = derivationOf(workbook, sheet, cell);
  const state: CardState = workbook.state(sheet, cell) ?? emptyCell(sheet, cell);
  const at = workbook.document.sheets.find(({ id }) => id === sheet);
  return html`<record-card
    .state=${state}
    label=${at ? labelOf(at, cell) : ''}
    formula=${formula}
    worked=${worked}
    .origins=${origins}
    ?full=${full}
    system=${workbook.document.system}
    .sheetNames=${new Map(workbook.document.sheets.map(({ id, name }) => [id, name]))}
    @copy-text=${(event: CustomEvent<{ text: string }>) => void navigator.clipboard.writeText(event.detail.text)}
    @save-table=${(event: CustomEvent<{ record: CellRecord }>) => {
      event.stopPropagation();
      void import('./plots/csv-files.ts').then(({ recordToCsv }) =>
        recordToCsv(event.detail.record, workbook.document.system),
      );
    }}
    @go=${(event: CustomEvent<{ sheet: string; cell: string }>) => {
      event.stopPropagation();
      go(event.detail);
    }}
  ></record-card>`;
}

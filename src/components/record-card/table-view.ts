import { html, nothing, type TemplateResult } from 'lit';
import { networkTable } from '../../../functions/values/network-table.ts';
import type { CellRecord } from '../../../functions/values/record.ts';
import type { TableRecord } from '../../../functions/values/table.ts';
import type { UnitSystem } from '../../document/types.ts';
import { aligned } from '../aligned.ts';
import { spell } from '../plot/unit.ts';

/** The rows that a record holds, where it holds any. */
export function tableIn(record: CellRecord): TableRecord | undefined {
  if (record.kind === 'table') return record;
  return record.kind === 'network' ? networkTable(record) : undefined;
}

/** Every cell of a table as words, each number with its unit. */
export const rowsOf = (table: TableRecord, system: UnitSystem): readonly (readonly string[])[] =>
  table.rows.map((row) =>
    row.map((value, column) => {
      const quantity = table.columns[column]?.quantity ?? 'text';
      if (value === null) return '';
      return typeof value === 'string' || quantity === 'text' ? String(value) : spell(value, quantity, system);
    }),
  );

/** Tab-separated with a head row, so that it pastes into a table. */
export const tableText = (table: TableRecord, system: UnitSystem): string =>
  [table.columns.map(({ name }) => name), ...rowsOf(table, system)].map((row) => row.join('\t')).join('\n');

/** The table as a reader sees it: numbers to the right, words to the left.
 *  @param act - What can be done with a row, at its end. */
export function tableView(
  table: TableRecord,
  system: UnitSystem,
  act?: (row: number) => TemplateResult,
): TemplateResult {
  const rows = rowsOf(table, system);
  const columns = table.columns.map((_, column) => aligned(rows.map((row) => row[column] ?? '')));
  const isText = (column: number): boolean => table.columns[column]?.quantity === 'text';
  return html`<div class="table" tabindex="0" role="region" aria-label=${table.title}>
    <table>
      <thead>
        <tr>
          ${table.columns.map(({ name }, column) => html`<th scope="col" class=${isText(column) ? '' : 'number'}>${name}</th>`)}
          ${act ? html`<td></td>` : nothing}
        </tr>
      </thead>
      <tbody>
        ${rows.map(
          (_, index) =>
            html`<tr>
              ${columns.map((texts, column) => html`<td class=${isText(column) ? '' : 'number'}>${texts[index]}</td>`)}
              ${act ? html`<td>${act(index)}</td>` : nothing}
            </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}

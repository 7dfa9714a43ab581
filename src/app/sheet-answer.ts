import { css, html, nothing, type TemplateResult } from 'lit';
import '../components/verdict-chip/verdict-chip.ts';
import type { Sheet } from '../document/types.ts';
import type { Workbook } from '../document/workbook.ts';
import { formatAddress } from '../formula/address.ts';
import { unbroken } from '../units/show.ts';
import type { AppHost } from './app-host.ts';

/** Seen where the column of verdicts is not. */
export const answerStyles = css`
  .answer {
    display: none;
    padding: 4px 16px;
    border-radius: 0;
    border-top-color: var(--line);
    justify-content: start;
    text-align: start;
    white-space: normal;
    font-size: 12.5px;
    line-height: 17px;
    color: var(--ink2);
  }
  @media (max-width: 700px), (min-width: 1024px) and (max-width: 1100px) {
    .answer {
      display: flex;
    }
  }
`;

/** What comes later is no answer to begin with. */
const FIRST_ROWS = 20;

/** The answer of a sheet with the first sentence of its reason, leading to its cell: the first verdict under a heading in the
 *  first row. */
export function sheetAnswer(app: AppHost, workbook: Workbook, sheet: Sheet): TemplateResult | typeof nothing {
  const { id, columns, cells } = sheet;
  const isHeading = (row: number): boolean => cells.get(formatAddress({ row, column: 0 }))?.look === 'section';
  if (!isHeading(0)) return nothing;
  for (let row = 1; row < FIRST_ROWS && !isHeading(row); row++) {
    for (const column of columns.keys()) {
      const cell = formatAddress({ row, column });
      const shown = cells.has(cell) ? workbook.shown(id, cell) : undefined;
      if (shown?.kind === 'verdict')
        return html`<button class="answer" @click=${() => app.go({ sheet: id, cell })}>
          <verdict-chip status=${shown.status} word=${shown.word}></verdict-chip>
          <span>${unbroken(/^.*?\.(?= |$)/u.exec(shown.reason)?.[0] ?? shown.reason)}</span>
        </button>`;
    }
  }
  return nothing;
}

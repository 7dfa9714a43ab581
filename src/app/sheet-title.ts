import { html, nothing, type TemplateResult } from 'lit';
import { icon } from '../components/icons.ts';
import type { Sheet } from '../document/types.ts';
import type { Counts } from '../document/verdicts.ts';

/** The name of the sheet over its head, with its verdicts counted, worst first; nothing is counted where there are none. */
export const sheetTitle = (sheet: Sheet, counts: Counts): TemplateResult => html`
  <div class="title">
    <div>
      <h2>${sheet.name}</h2>
      <p>${sheet.summary}</p>
    </div>
    <p class="tally" role="status" aria-label="Verdicts of this sheet">
      ${
        counts.fail + counts.caution + counts.good > 0
          ? (['fail', 'caution', 'good'] as const).map(
              (status) => html`<span class=${status}>${icon(status)}<b>${counts[status]}</b>${status}</span>`,
            )
          : nothing
      }
      ${counts.open ? html`<span class="fail">${icon('fail')}<b>${counts.open}</b>no result</span>` : nothing}
    </p>
  </div>
`;

import { html, type TemplateResult } from 'lit';
import type { ShelfAudit } from '../../document/shelf/audit.ts';
import type { UnitSystem } from '../../document/types.ts';
import { speak } from '../../units/show.ts';
import '../verdict-chip/verdict-chip.ts';

/** What the numbers of a driver say about one another: the likeliest culprit first. */
export const auditView = ({ status, word, reasons }: ShelfAudit, system: UnitSystem): TemplateResult =>
  html`<div class="audit" role="status">
    <verdict-chip .status=${status} word=${word}></verdict-chip>
    <ul>
      ${reasons.map((reason) => html`<li>${speak(reason, system)}</li>`)}
    </ul>
  </div>`;

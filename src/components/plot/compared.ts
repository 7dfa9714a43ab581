import { html, nothing, type TemplateResult } from 'lit';

/** How a plot stands to its baseline, for its heading: the line that the baseline has in it, or that nothing differs. */
export function compared(state: 'none' | 'same' | 'changed', words = 'baseline'): TemplateResult | typeof nothing {
  if (state === 'none') return nothing;
  if (state === 'same') return html`<span class="compared">same as baseline</span>`;
  return html`<span class="compared">
    <svg viewBox="0 0 20 4" aria-hidden="true"><path class="ghost" d="M0 2H20" /></svg>${words}
  </span>`;
}

import { html, nothing, type TemplateResult } from 'lit';
import type { Completion } from './completion.ts';

export const LIST = 'options';
export const optionId = (index: number): string => `option-${String(index)}`;

/** The list below the line. It never takes the focus: the line says which option is at hand. */
export function completionList({ options, at, isOpen }: Completion, take: (index: number) => void): TemplateResult {
  const said = `${String(options.length)} ${options.length === 1 ? 'suggestion' : 'suggestions'}`;
  return html`<p class="said" role="status">${isOpen ? said : nothing}</p>
    ${
      isOpen
        ? html`<ul
            class="popup"
            id=${LIST}
            role="listbox"
            aria-label="Suggestions"
            @mousedown=${(event: Event) => event.preventDefault()}
          >
            ${options.map(
              ({ label, detail }, index) =>
                html`<li
                  role="option"
                  id=${optionId(index)}
                  aria-selected=${index === at ? 'true' : 'false'}
                  @click=${() => take(index)}
                >
                  ${label}${detail ? html`<small>${detail}</small>` : nothing}
                </li>`,
            )}
          </ul>`
        : nothing
    }`;
}

import { html, nothing, type TemplateResult } from 'lit';
import type { FunctionDescription } from '../../../functions/define.ts';
import { callAt } from '../../formula/call-at.ts';
import type { Scope } from '../../formula/types.ts';
import { parameterWords } from '../function-guide/parameter-words.ts';

/** The signature of the call around a position of a formula; nothing outside of all calls. */
export function signatureAt(
  text: string,
  position: number,
  scope: Scope | undefined,
  openGuide: () => void,
): TemplateResult | typeof nothing {
  if (!text.startsWith('=')) return nothing;
  const call = callAt(text, position);
  const definition = scope?.functions.get(call?.name ?? '');
  return call && definition ? signature(definition, call.argument, openGuide) : nothing;
}

/** What a function takes, with the argument at hand: what it means, in what unit and range. */
function signature(definition: FunctionDescription, argument: number, openGuide: () => void): TemplateResult {
  const parameters = Object.entries(definition.parameters);
  const at = Math.min(argument, parameters.length - 1);
  const current = parameters[at]?.[1];
  const names = parameters.map(
    ([name], index) => html`${index > 0 ? ', ' : ''}${index === at ? html`<b>${name}</b>` : name}`,
  );
  return html`<div class="hint">
    <p>
      <code>${definition.name}(${names})</code>
      <button tabindex="-1" @mousedown=${(event: Event) => event.preventDefault()} @click=${openGuide}>
        Guide, F1
      </button>
    </p>
    ${current ? html`<p role="status">${current.summary}: ${parameterWords(current)}</p>` : nothing}
  </div>`;
}

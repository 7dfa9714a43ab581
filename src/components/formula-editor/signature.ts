import { html, nothing, type TemplateResult } from 'lit';
import type { FunctionDescription } from '../../../functions/define.ts';
import { callAt, type CallAt } from '../../formula/call-at.ts';
import type { Scope } from '../../formula/types.ts';
import { parameterWords } from '../function-guide/parameter-words.ts';
import { learnUsual, usualOf } from '../function-guide/usual.ts';

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
  if (call && definition) return signature(definition, call.argument, openGuide);
  void learnUsual();
  const usual = call && usualOf(call.name);
  return usual ? hint(call, usual.takes.split(', '), usual.says, openGuide) : nothing;
}

/** What a function takes, with the argument at hand: what it means, in what unit and range. */
function signature(definition: FunctionDescription, argument: number, openGuide: () => void): TemplateResult {
  const parameters = Object.entries(definition.parameters);
  const at = Math.min(argument, parameters.length - 1);
  const current = parameters[at]?.[1];
  const said = current && `${current.summary}: ${parameterWords(current)}`;
  return hint({ name: definition.name, argument: at }, Object.keys(definition.parameters), said, openGuide);
}

function hint(
  { name: called, argument }: CallAt,
  takes: readonly string[],
  said: string | undefined,
  openGuide: () => void,
): TemplateResult {
  const names = takes.map(
    (name, index) =>
      html`${index > 0 ? ', ' : ''}${index === Math.min(argument, takes.length - 1) ? html`<b>${name}</b>` : name}`,
  );
  return html`<div class="hint">
    <p>
      <code>${called}(${names})</code>
      <button tabindex="-1" @mousedown=${(event: Event) => event.preventDefault()} @click=${openGuide}>
        Guide, F1
      </button>
    </p>
    ${said ? html`<p role="status">${said}</p>` : nothing}
  </div>`;
}

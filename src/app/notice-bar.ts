import { html, nothing, type TemplateResult } from 'lit';
import { icon } from '../components/icons.ts';

/** A sentence across the foot of the sheet, with what can be done about it; `close` is drawn as a cross. An offer is made
 *  without alarm. */
export const noticeBar = (
  text: string,
  answers: Readonly<Record<string, () => void>>,
  isOffer = false,
): TemplateResult =>
  html`<div class="notice" role=${isOffer ? 'status' : 'alert'}>
    ${isOffer ? nothing : icon('caution')}
    <p>${text}</p>
    ${Object.entries(answers).map(([words, act]) =>
      words === 'close'
        ? html`<button aria-label="Close the message" @click=${act}>${icon('close')}</button>`
        : html`<button class="framed" @click=${act}>${words}</button>`,
    )}
  </div>`;

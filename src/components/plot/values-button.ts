import { html, type TemplateResult } from 'lit';

/** Shows and hides the numbers of a plot as a table, for those who cannot see it and those who want them exactly. */
export const valuesButton = (isOpen: boolean, turn: () => void): TemplateResult =>
  html`<button class="values" type="button" aria-expanded=${isOpen ? 'true' : 'false'} @click=${turn}>Values</button>`;

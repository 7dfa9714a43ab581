import { html, nothing, type TemplateResult } from 'lit';
import type { Finding } from '../../formula/types.ts';

export const PROBLEMS = 'problems';

/** In words what is underlined in the line. */
export const problemList = (problems: readonly Finding[]): TemplateResult | typeof nothing =>
  problems.length === 0
    ? nothing
    : html`<div class="problems" id=${PROBLEMS}>
        ${problems.map(({ level, message }) => html`<p class="problem ${level}">${message}</p>`)}
      </div>`;

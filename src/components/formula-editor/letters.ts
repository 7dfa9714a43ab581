import { html, type TemplateResult } from 'lit';
import type { Marks } from './marks.ts';
import { piecesOf } from './pieces.ts';

/** The letters of a formula as they are drawn behind the field: references in their colours, findings underlined. */
export const letters = (value: string, { references, findings }: Marks): (string | TemplateResult)[] =>
  piecesOf(value, [...references, ...findings]).map(({ text, look }) =>
    look === '' ? text : html`<span class=${look}>${text}</span>`,
  );

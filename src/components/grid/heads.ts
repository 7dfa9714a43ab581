import { html, type TemplateResult } from 'lit';
import { columnLetters } from '../../formula/address.ts';
import { HEAD_WIDTH, type Geometry } from './geometry.ts';
import type { GridModel } from './model.ts';

/** The heads of the columns: letter, line style, title, and the grip that makes the column wider. */
export function heads({ columns }: GridModel, geometry: Geometry, active: number): TemplateResult {
  return html`<div
    class="heads"
    role="row"
    aria-rowindex="1"
    .style=${`width:${String(HEAD_WIDTH + geometry.width)}px`}
  >
    <div class="corner" role="columnheader" aria-colindex="1"><span class="hidden">Row</span></div>
    ${columns.map(
      ({ title, line }, column) =>
        html`<div
          class=${column === active ? 'head active' : 'head'}
          role="columnheader"
          aria-colindex=${column + 2}
          data-column=${column}
          .style=${`left:${String(HEAD_WIDTH + geometry.left(column))}px;width:${String(geometry.widthOf(column))}px`}
        >
          <small>${columnLetters(column)}</small>
          ${line && line !== 'other' ? html`<span class="swatch ${line}" aria-hidden="true"></span>` : ''}${title === undefined ? '' : html`<b title=${title}>${title}</b>`}
          <span class="grip" data-grip=${column}></span>
        </div>`,
    )}
  </div>`;
}

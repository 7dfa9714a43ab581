import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Curve } from '../../../functions/values/curve.ts';
import { sparkPath } from './spark-path.ts';

/** A curve as a small picture without axes. */
@customElement('spark-line')
export class SparkLine extends LitElement {
  static override styles = css`
    :host {
      display: block;
    }
    svg {
      width: 100%;
      height: 100%;
      display: block;
    }
    path {
      fill: none;
      stroke: currentColor;
      stroke-width: 1.4;
      vector-effect: non-scaling-stroke;
    }
  `;

  @property({ attribute: false }) curve: Curve | undefined;

  protected override render(): TemplateResult | typeof nothing {
    if (!this.curve) return nothing;
    return html`<svg viewBox="0 0 120 24" preserveAspectRatio="none" role="img" aria-label=${this.curve.title}>
      <path d=${sparkPath(this.curve, 120, 24)} />
    </svg>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'spark-line': SparkLine;
  }
}

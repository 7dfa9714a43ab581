import { svg, type SVGTemplateResult } from 'lit';
import type { Status } from '../../../functions/values/verdict.ts';

const SHAPES: Readonly<Record<Status, SVGTemplateResult>> = {
  good: svg`<circle cx="8" cy="8" r="6.2" /><path d="m5.4 8.2 1.9 1.9 3.4-3.9" />`,
  caution: svg`<path d="M8 2 14.6 13.6H1.4z" /><path d="M8 6.4v3.2M8 11.6v.1" />`,
  fail: svg`<path d="M5.4 1.8h5.2l3.6 3.6v5.2l-3.6 3.6H5.4l-3.6-3.6V5.4z" /><path d="m5.9 5.9 4.2 4.2m0-4.2-4.2 4.2" />`,
};
export const statusIcon = (status: Status): SVGTemplateResult =>
  svg`<svg class="icon ${status}" viewBox="0 0 16 16" aria-hidden="true">${SHAPES[status]}</svg>`;

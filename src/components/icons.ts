import { svg, type SVGTemplateResult } from 'lit';

/** Line drawings on a field of 16 by 16, in the colour of the text around them. The three verdicts differ in outline. */
const drawings = {
  good: svg`<circle cx="8" cy="8" r="6.2" /><path d="m5.4 8.2 1.9 1.9 3.4-3.9" />`,
  caution: svg`<path d="M8 2 14.6 13.6H1.4z" /><path d="M8 6.4v3.2M8 11.6v.1" />`,
  fail: svg`<path d="M5.4 1.8h5.2l3.6 3.6v5.2l-3.6 3.6H5.4l-3.6-3.6V5.4z" /><path d="m5.9 5.9 4.2 4.2m0-4.2-4.2 4.2" />`,
  undo: svg`<path d="M5.5 3 2.5 6l3 3M2.8 6h6.4a3.6 3.6 0 0 1 0 7.2H6" />`,
  redo: svg`<path d="m10.5 3 3 3-3 3M13.2 6H6.8a3.6 3.6 0 0 0 0 7.2H10" />`,
  pin: svg`<path d="M5.5 2h5l-.8 4.4 2.3 2.4H4l2.3-2.4zM8 8.8V14" />`,
  plus: svg`<path d="M8 3v10M3 8h10" />`,
  close: svg`<path d="m4 4 8 8m0-8-8 8" />`,
  chevron: svg`<path d="m4 6 4 4 4-4" />`,
  more: svg`<path d="M3.5 8h.1M8 8h.1M12.5 8h.1" stroke-width="2.4" />`,
  menu: svg`<path d="M2.5 4h11M2.5 8h11M2.5 12h11" />`,
  search: svg`<circle cx="7" cy="7" r="4.4" /><path d="m10.3 10.3 3.4 3.4" />`,
  sun: svg`<circle cx="8" cy="8" r="3" /><path d="M8 1v1.6M8 13.4V15M1 8h1.6M13.4 8H15M3 3l1.2 1.2M11.8 11.8 13 13M13 3l-1.2 1.2M4.2 11.8 3 13" />`,
  moon: svg`<path d="M13 9.6A5.6 5.6 0 0 1 6.4 3a5.6 5.6 0 1 0 6.6 6.6z" />`,
} as const;

export type IconName = keyof typeof drawings;

/** An icon; decorative, so words beside it or a label on its button say what it means. */
export const icon = (name: IconName): SVGTemplateResult => svg`<svg
  class="icon ${name}" viewBox="0 0 16 16" fill="none" stroke="currentColor" stroke-width="1.4"
  stroke-linecap="round" stroke-linejoin="round" aria-hidden="true">${drawings[name]}</svg>`;

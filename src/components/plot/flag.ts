import { svg, type SVGTemplateResult } from 'lit';
import type { Box } from './labels.ts';

export const FLAG_HEIGHT = 17;

/** A flag at the top of a needle, with its words. A path, not a rectangle: a surface known to be opaque makes the browser
 *  arrange the layers of the whole page anew wherever it moves. */
export const flag = (text: string, { x, y, width, height }: Box): SVGTemplateResult => svg`
  <path class="flag" d="M${x} ${y}h${width}v${height}h${-width}z" />
  <text class="flag-text" x=${x + 6} y=${y + 12.5}>${text}</text>
`;

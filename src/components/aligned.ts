import { css, html, type TemplateResult } from 'lit';

/** A number as it is shown, cut before its decimals and behind them. */
const NUMBER = /^([\u2212-]?[\d\u2009]+)(?:\.(\d+))?(\D*)$/u;

/** What {@link aligned} needs: room for digits that are not there. */
export const alignedStyles = css`
  [data-lacking]::after {
    content: attr(data-lacking);
    visibility: hidden;
  }
`;

/** The numbers of a column in one unit, so that their decimals stand below one another; a column in several units, or of words,
 *  as it is. */
export function aligned(texts: readonly string[]): readonly (TemplateResult | string)[] {
  const read = texts.map((text) => NUMBER.exec(text));
  const units = new Set(read.flatMap((each) => (each ? [each[3]] : [])));
  const most = Math.max(0, ...read.map((each) => each?.[2]?.length ?? 0));
  if (most === 0 || units.size > 1) return texts;
  return texts.map((text, index) => {
    const [, whole, decimals, unit] = read[index] ?? [];
    if (whole === undefined || decimals?.length === most) return text;
    const lacking = `${decimals === undefined ? '.' : ''}${'0'.repeat(most - (decimals?.length ?? 0))}`;
    return html`${whole}${decimals === undefined ? '' : `.${decimals}`}<span data-lacking=${lacking}></span>${unit}`;
  });
}

/** A number as a datasheet prints it. */
export interface PrintedNumber {
  /** Ways to read it, with a decimal point, the likelier first; two where a mark may part thousands or decimals. */
  readonly readings: readonly string[];
  readonly rest: string;
}

const DIGITS = /^(?:\d{1,3}(?:[ '’]\d{3})+(?!\d)(?:[.,]\d+)?|\d+(?:[.,]\d+)*|[.,]\d+)/;
const POWER = /^(?:[eE]([+-]?\d{1,3})(?![\d.])| ?[x×·*] ?10\^?([+-]?\d{1,2})(?!\d))/;

/** Whether the decimals of a text stand behind a comma: seen from the numbers in it that can be
 *  nothing else, and only where none has a decimal point. */
export const hasDecimalCommas = (text: string): boolean =>
  /(?<![\d.,])(?:0,\d+|\d+,\d{1,2}|\d+,\d{4,})(?![\d,.])/.test(text) &&
  !/(?<![\d.,])(?:0\.\d+|\d+\.\d{1,2}|\d+\.\d{4,})(?![\d,.])/.test(text);

/** The number with which a text begins, without its sign. */
export function numberAtStart(text: string, decimalCommas: boolean): PrintedNumber | undefined {
  const written = DIGITS.exec(text)?.[0];
  if (written === undefined) return undefined;
  const after = text.slice(written.length);
  const [power = '', typed, printed] = POWER.exec(after) ?? [];
  const exponent = power === '' ? '' : `e${Number(typed ?? printed)}`;
  const readings = pointed(written.replaceAll(/[ '’]/g, ''), decimalCommas);
  return { readings: readings.map((each) => each + exponent), rest: after.slice(power.length) };
}

function pointed(digits: string, decimalCommas: boolean): readonly string[] {
  const marks = digits.replaceAll(/\d/g, '');
  const whole = digits.replaceAll(/[.,]/g, '');
  if (marks === '') return [digits];
  if (marks.length > 1) {
    const last = marks.at(-1) ?? '';
    // The same mark again and again parts thousands; a different last one parts the decimals.
    if ([...marks].every((mark) => mark === last)) return [whole];
    const cut = digits.lastIndexOf(last);
    return [`${digits.slice(0, cut).replaceAll(/[.,]/g, '')}.${digits.slice(cut + 1)}`];
  }
  const decimal = digits.replace(',', '.').replace(/^\./, '0.');
  const isOpen = /^[1-9]\d{0,2}[.,]\d{3}$/.test(digits) && (marks === ',' || decimalCommas);
  if (!isOpen) return [decimal];
  return marks === ',' && decimalCommas ? [decimal, whole] : [whole, decimal];
}

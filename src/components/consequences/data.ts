import type { Consequence } from '../../document/consequences.ts';
import type { ShownCell } from '../../document/shown.ts';

/** Rows that are shown however many there are. */
const SHOWN = 6;

/** Causes, then flips and doubts, then the rest, each in the order given; what goes beyond the first rows, except these, comes
 *  under `smaller`. */
export function ranked(consequences: readonly Consequence[]): {
  readonly first: Consequence[];
  readonly smaller: Consequence[];
} {
  const causes = consequences.filter((one) => one.isCause);
  const rest = consequences.filter((one) => !one.isCause);
  const flips = rest.filter(isTurn);
  const values = rest.filter((one) => !isTurn(one));
  const room = Math.max(SHOWN - causes.length - flips.length, 0);
  // One left over is shown rather than hidden behind a line of the same height.
  const kept = values.length === room + 1 ? room + 1 : room;
  return { first: [...causes, ...flips, ...values.slice(0, kept)], smaller: values.slice(kept) };
}

const isTurn = ({ flip, doubts }: Consequence): boolean => flip !== undefined || doubts.length > 0;

/** A cell in a few words. */
export function wordsOf(shown: ShownCell): string {
  switch (shown.kind) {
    case 'empty':
      return 'empty';
    case 'number':
      return `${shown.number} ${shown.unit}`.trim();
    case 'text':
    case 'waiting':
      return shown.text;
    case 'curve':
      return shown.text || shown.curve.title;
    case 'record':
      return shown.title === '' ? shown.text : shown.title;
    case 'verdict':
      return shown.word;
    case 'problem':
      return 'no result';
  }
}

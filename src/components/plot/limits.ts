import { type Box, costOf, type Obstacles } from './labels.ts';
import { LABEL_HEIGHT, type Measures, type Memory } from './layout.ts';

export interface DrawnLimit {
  readonly text: string;
  /** Height of the line; undefined when it lies off the axis. */
  readonly y: number | undefined;
  readonly hatched: Box | undefined;
  readonly place: Box;
}

/** A limit with its forbidden side and the best of four places for its name; off the axis it is only named at the edge. */
export function layLimit(
  text: string,
  y: number,
  forbidden: 'above' | 'below',
  around: Obstacles,
  measures: Measures,
  memory: Memory,
): DrawnLimit {
  const width = measures.label(text);
  const left = 7;
  const right = around.width - width - 7;
  if (y < 0 || y > around.height) {
    const arrow = y < 0 ? '↑' : '↓';
    const box = { y: y < 0 ? 4 : around.height - LABEL_HEIGHT - 4, width: width + 14, height: LABEL_HEIGHT };
    // Below a flag as the last resort.
    const inward = y < 0 ? 24 : box.y - 24;
    const places: Box[] = [
      { ...box, x: right - 14 },
      { ...box, x: left },
      { ...box, x: right - 14, y: inward },
    ];
    const place = places.reduce((best, one) =>
      costOf(one, undefined, around) < costOf(best, undefined, around) ? one : best,
    );
    const everywhere = y < 0 !== (forbidden === 'above');
    const hatched = everywhere ? { x: 0, y: 0, width: around.width, height: around.height } : undefined;
    return { text: `${text} ${arrow}`, y: undefined, hatched, place };
  }
  const hatched: Box =
    forbidden === 'above'
      ? { x: 0, y: 0, width: around.width, height: y }
      : { x: 0, y, width: around.width, height: around.height - y };
  const over = y - LABEL_HEIGHT - 1;
  const under = y + 2;
  // Words read best off the hatch, unless a curve keeps that side busy.
  const choices = (forbidden === 'above' ? [under, over] : [over, under]).flatMap((top, side) => [
    { box: { x: right, y: top, width, height: LABEL_HEIGHT }, extra: side * 4 },
    { box: { x: left, y: top, width, height: LABEL_HEIGHT }, extra: side * 4 + 0.5 },
  ]);
  // A limit is named inside its hatch even where that is hardly higher than the text.
  const others = { ...around, height: around.height + 3, levels: around.levels.filter((level) => level !== y) };
  const key = `limit ${text.replace(/[\d.,\u2009]+/g, '')}`;
  const before = memory.labels.get(key);
  const cost = ({ box, extra }: { box: Box; extra: number }): number => {
    const stays = before && before.x < around.width / 2 === box.x < around.width / 2 && before.y < y === box.y < y;
    return costOf(box, undefined, others) + extra - (stays ? 6 : 0);
  };
  const place = (
    choices.toSorted((a, b) => cost(a) - cost(b))[0] ?? { box: { x: left, y: under, width, height: LABEL_HEIGHT } }
  ).box;
  memory.labels.set(key, { ...place, y: place.y - y < 0 ? y - 1 : y + 1 });
  return { text, y, hatched, place };
}

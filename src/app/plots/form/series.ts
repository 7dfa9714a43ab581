import { quantities, type QuantityName } from '../../../../functions/quantities.ts';
import { kinds, type PlotDraft, type PlotKind, type SeriesDraft } from '../../../components/plot-form/data.ts';
import { isRefusal } from '../../../document/command.ts';
import { formatAddress } from '../../../formula/address.ts';
import { formatRectangle, sizeOf, type Rectangle } from '../../../document/area.ts';
import { isAlike, type Saying } from './saying.ts';
import { labelFor } from './columns.ts';
import { noun, type Found, type Held, type SheetCells } from './sheet-cells.ts';
import { isDrawing, tableColumns } from './tables.ts';
import type { TableRecord } from '../../../../functions/values/table.ts';

/** A series that can be drawn, with what its values measure and what its places along the bottom do. */
export interface SoundSeries {
  readonly series: SeriesDraft;
  readonly quantity?: QuantityName;
  readonly across?: QuantityName;
}

/** The most rows that can be told apart, and that are drawn without a wait. */
const mostRows: Readonly<Record<PlotKind, number>> = {
  curves: 1,
  window: 1,
  bars: 100,
  points: 1000,
  lines: 1000,
  shapes: 500,
};

const wanted: Readonly<Record<PlotKind, string>> = {
  curves: 'a curve',
  window: 'a shared window',
  bars: 'a number',
  points: 'a number',
  lines: 'a number',
  shapes: 'a number',
};

/** The series of a draft that can be drawn; of the others it is said why not. All measure one thing. */
export function checkSeries(cells: SheetCells, draft: PlotDraft, say: Saying): readonly SoundSeries[] {
  const sound: SoundSeries[] = [];
  for (const [index, typed] of draft.series.entries()) {
    const at = `series.${String(index)}`;
    const found = kinds[draft.kind].area ? cells.find(typed.cell) : cells.findOne(typed.cell);
    if (isRefusal(found)) {
      say.wrong(`${at}.cell`, found.refused);
      continue;
    }
    const label = (kinds[draft.kind].labels && typed.column) || labelFor(cells, found.area);
    say.labels.set(`${at}.label`, label);
    const named = { ...typed, cell: found.reference, label: typed.label.trim() || label };
    if (isTwice(cells, named, sound, draft.kind, at, say)) continue;
    const check = new SeriesCheck(cells, draft.kind, at, say);
    const one = check.series(named, found);
    if (one && isOfOneKind(one, sound, at, found, say)) sound.push(one);
  }
  return sound;
}

function isTwice(
  cells: SheetCells,
  series: SeriesDraft,
  others: readonly SoundSeries[],
  kind: PlotKind,
  at: string,
  say: Saying,
): boolean {
  const { labels, series: word } = kinds[kind];
  const areaOf = (typed: string): string => {
    const found = cells.find(typed);
    return isRefusal(found) ? typed : formatRectangle(found.area);
  };
  const own = areaOf(series.cell);
  const same = others.find(({ series: other }) => areaOf(other.cell) === own && other.column === series.column);
  if (same) say.wrong(`${at}.cell`, `${series.cell} is drawn already: leave this one out, or name other cells.`);
  else if (labels && others.some(({ series: other }) => other.label === series.label))
    say.wrong(`${at}.label`, `“${series.label}” is the name of another ${word.toLowerCase()}; give this one its own.`);
  return same !== undefined;
}

function isOfOneKind(
  { quantity, across }: SoundSeries,
  others: readonly SoundSeries[],
  at: string,
  { reference }: Found,
  say: Saying,
): boolean {
  const differs = (own: QuantityName | undefined, first: QuantityName | undefined): boolean =>
    own !== undefined && first !== undefined && !isAlike(own, first);
  const values = others.find((each) => each.quantity !== undefined)?.quantity;
  const places = others.find((each) => each.across !== undefined)?.across;
  if (quantity && values && differs(quantity, values))
    say.wrong(
      `${at}.cell`,
      `${reference} is of ${noun(quantity)} and the first of ${noun(values)}: one plot measures one thing. Draw it in a plot of its own.`,
    );
  else if (across && places && differs(across, places))
    say.wrong(
      `${at}.across`,
      `This is ${quantities[across].noun}, and that of the first ${quantities[places].noun}: one axis measures one thing.`,
    );
  else return true;
  return false;
}

/** Looks at one series. */
class SeriesCheck {
  readonly #cells: SheetCells;
  readonly #kind: PlotKind;
  readonly #at: string;
  readonly #say: Saying;

  constructor(cells: SheetCells, kind: PlotKind, at: string, say: Saying) {
    this.#cells = cells;
    this.#kind = kind;
    this.#at = at;
    this.#say = say;
  }

  series(series: SeriesDraft, found: Found): SoundSeries | undefined {
    const { kind, words, quantity, table } = this.#cells.held(corner(found.area));
    if (!kinds[this.#kind].area) {
      const plain = { ...series, column: '', across: '', names: '' };
      if (kind === (this.#kind === 'curves' ? 'curve' : 'window'))
        return { series: plain, ...(quantity && { quantity }) };
      return this.#isLater(found, kind, words, 'cell') ? { series: plain } : undefined;
    }
    if (table && sizeOf(found.area) === 1) return this.#ofTable(series, table, found);
    return this.#ofCells({ ...series, column: '' }, found);
  }

  /** Whether what is wanted may come to stand there; otherwise what stands there is wrong. */
  #isLater({ reference, area }: Found, kind: Held['kind'], words: string, field: 'cell' | 'across'): boolean {
    const at = `${this.#at}.${field}`;
    if (kind === 'nothing')
      this.#say.note(at, `${reference} is empty: it is drawn once it holds ${wanted[this.#kind]}.`);
    else if (kind === 'problem') this.#say.note(at, `${reference} has no result now: ${words}`);
    else {
      const holds = sizeOf(area) === 1 ? `holds ${words}` : 'holds no number';
      this.#say.wrong(
        at,
        `${reference} ${holds}; ${wanted[this.#kind]} is wanted. Name another cell, or choose another kind.`,
      );
      return false;
    }
    return true;
  }

  #ofTable(series: SeriesDraft, table: TableRecord, { reference }: Found): SoundSeries | undefined {
    const { numbers, words } = tableColumns(table);
    const quantityOf = (name: string): QuantityName | undefined => {
      const quantity = table.columns.find((each) => each.name === name)?.quantity;
      return quantity === 'text' ? undefined : quantity;
    };
    const names = words.includes(series.names) ? series.names : '';
    if (this.#kind === 'shapes') {
      if (isDrawing(table))
        return { series: { ...series, names: '', column: numbers.includes(series.column) ? series.column : '' } };
      return this.#say.wrong(
        `${this.#at}.cell`,
        `The table in ${reference} lacks one of the columns From left, From below, Along and Across.`,
      );
    }
    const quantity = quantityOf(series.column);
    if (!quantity) return this.#say.wrong(`${this.#at}.column`, 'Choose the column with the values.');
    if (!kinds[this.#kind].across) return { series: { ...series, names }, quantity };
    const across = quantityOf(series.across);
    if (!across) return this.#say.wrong(`${this.#at}.across`, 'Choose the column with the places along the bottom.');
    return { series: { ...series, names }, quantity, across };
  }

  #ofCells(series: SeriesDraft, found: Found): SoundSeries | undefined {
    const { area, reference } = found;
    const most = mostRows[this.#kind];
    const count = this.#kind === 'shapes' ? area.bottom - area.top + 1 : sizeOf(area);
    if (count > most)
      return this.#say.wrong(
        `${this.#at}.cell`,
        `${reference} has ${count} ${this.#kind === 'shapes' ? 'rows' : 'cells'}; at most ${most} are drawn, so that they can be told apart. Name fewer.`,
      );
    const width = area.right - area.left + 1;
    if (this.#kind === 'shapes' && (width < 4 || width > 5))
      return this.#say.wrong(
        `${this.#at}.cell`,
        `${reference} has ${width} ${width === 1 ? 'column' : 'columns'}; a drawing wants a name, from left, from below and width, and a height but for circles.`,
      );
    const quantity = this.#numbersIn(found, 'cell');
    if (quantity === undefined) return undefined;
    const drawn = { series, ...(quantity && this.#kind !== 'shapes' && { quantity }) };
    const across = kinds[this.#kind].across ? this.#across(series, found) : '';
    const names = kinds[this.#kind].names ? this.#names(series, found) : { series: '' };
    if (across === undefined || names === undefined) return undefined;
    if (across === '') return { ...drawn, series: { ...series, names: names.series } };
    return {
      ...drawn,
      series: { ...series, across: across.reference, names: names.series },
      ...(across.quantity && { across: across.quantity }),
    };
  }

  /** What the numbers of cells measure; empty where they hold none yet, nothing where they are wrong. */
  #numbersIn(found: Found, field: 'cell' | 'across'): QuantityName | '' | undefined {
    const filled = this.#cells.filled(found.area);
    const held = filled.map((cell) => ({ cell, ...this.#cells.held(cell) }));
    const [first, ...others] = held.filter(({ kind }) => kind === 'number');
    if (!first?.quantity) {
      const [one] = held;
      const isNone = one === undefined || held.some(({ kind }) => kind === 'problem');
      const told = held.find(({ kind }) => kind === 'problem') ?? one;
      return this.#isLater(found, isNone ? (told?.kind ?? 'nothing') : 'text', told?.words ?? '', field)
        ? ''
        : undefined;
    }
    const { quantity } = first;
    const odd =
      this.#kind === 'shapes' ? undefined : others.find((each) => each.quantity && !isAlike(each.quantity, quantity));
    if (!odd) return quantity;
    return this.#say.wrong(
      `${this.#at}.${field}`,
      `${odd.cell} holds ${odd.words} and ${first.cell} ${first.words}: one axis measures one thing. Name the cells of one.`,
    );
  }

  #across(
    { across }: SeriesDraft,
    { area, reference }: Found,
  ): { readonly reference: string; readonly quantity: QuantityName | '' } | undefined {
    const at = `${this.#at}.across`;
    if (across.trim() === '')
      return this.#say.wrong(at, `Name the cells with the places along the bottom, one for each cell of ${reference}.`);
    const found = this.#cells.find(across);
    if (isRefusal(found)) return this.#say.wrong(at, found.refused);
    const [own, theirs] = [sizeOf(found.area), sizeOf(area)];
    if (own !== theirs)
      return this.#say.wrong(
        at,
        `${found.reference} is ${cellCount(own)}, and ${reference} ${cellCount(theirs)}: one belongs to each.`,
      );
    const quantity = this.#numbersIn(found, 'across');
    return quantity === undefined ? undefined : { reference: found.reference, quantity };
  }

  #names({ names }: SeriesDraft, { area, reference }: Found): { readonly series: string } | undefined {
    if (names.trim() === '') return { series: '' };
    const at = `${this.#at}.names`;
    const found = this.#cells.find(names);
    if (isRefusal(found)) return this.#say.wrong(at, found.refused);
    const isRow = area.top === area.bottom;
    const [own, theirs] = isRow ? [sizeOf(found.area), sizeOf(area)] : [rowsOf(found.area), rowsOf(area)];
    if (own === theirs || (isRow && theirs === 1)) return { series: found.reference };
    return this.#say.wrong(
      at,
      `${found.reference} has ${own} names, and ${reference} ${theirs} values: one belongs to each.`,
    );
  }
}

const corner = ({ top, left }: Rectangle): string => formatAddress({ row: top, column: left });
const rowsOf = ({ top, bottom }: Rectangle): number => bottom - top + 1;
const cellCount = (count: number): string => (count === 1 ? 'one cell' : `${String(count)} cells`);

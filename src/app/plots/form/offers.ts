import type { QuantityName } from '../../../../functions/quantities.ts';
import { kinds, type Offer, type Offers, type PlotDraft, type PlotKind } from '../../../components/plot-form/data.ts';
import { isRefusal } from '../../../document/command.ts';
import { rectangleOf, sizeOf, type Rectangle } from '../../../document/area.ts';
import { formatAddress, parseAddress } from '../../../formula/address.ts';
import { labelFor } from './columns.ts';
import { isAlike } from './saying.ts';
import type { Held, SheetCells } from './sheet-cells.ts';
import { kindsOf } from './suggest.ts';
import { tableColumns } from './tables.ts';

/** More are no help in a list. */
const MOST_OFFERED = 200;
/** Cells of a larger sheet are not all looked at. */
const MOST_SEEN = 20_000;

interface Seen {
  readonly row: number;
  readonly column: number;
  readonly held: Held;
}

/** What a sheet has to offer to plots, looked up once. */
export class SheetOffers {
  readonly #cells: SheetCells;
  readonly #seen: readonly Seen[];
  /** The kinds that the sheet has cells for, the likeliest first. */
  readonly kinds: readonly PlotKind[];

  constructor(cells: SheetCells) {
    this.#cells = cells;
    this.kinds = kindsOf(cells, cells.whole);
    this.#seen = cells
      .filled(cells.whole)
      .slice(0, MOST_SEEN)
      .flatMap((address) => {
        const at = parseAddress(address);
        return at ? [{ ...at, held: cells.held(address) }] : [];
      });
  }

  /** What the fields of a draft offer; `values` is what its series measure, `bottom` what lies along the bottom. */
  for(
    draft: PlotDraft,
    measured: { readonly values: QuantityName | undefined; readonly bottom: QuantityName | undefined },
    labels: ReadonlyMap<string, string>,
  ): Offers {
    const { area, across, names } = kinds[draft.kind];
    const single = draft.kind === 'window' ? 'window' : 'curve';
    const numbers = (quantity: QuantityName | undefined): readonly Offer[] =>
      this.#single(
        ({ kind, quantity: own }) => kind === 'number' && (!quantity || (own !== undefined && isAlike(own, quantity))),
      );
    return {
      kinds: this.#kinds(draft),
      series: area
        ? [...this.#single(({ kind }) => kind === 'table'), ...this.#runs(['number'])]
        : this.#single(({ kind }) => kind === single),
      beside: across || names ? this.#runs(['number', 'text']) : [],
      limits: numbers(measured.values),
      marks: numbers(measured.bottom),
      sizes: numbers('length'),
      columns: draft.series.map(({ cell }) => this.#tableIn(cell)),
      labels,
      horizontal: area ? ['', ''] : ['20 Hz', '20 kHz'],
    };
  }

  /** The kinds that suit the cells of the draft; where it has none yet, those that the sheet has cells for. */
  #kinds(draft: PlotDraft): readonly PlotKind[] {
    const suiting = draft.series.flatMap(({ cell }) => {
      const found = this.#cells.find(cell);
      return isRefusal(found) ? [] : kindsOf(this.#cells, found.area);
    });
    const offered = suiting.length > 0 ? suiting : this.kinds.length > 0 ? this.kinds : order;
    return [...new Set([draft.kind, ...offered])].toSorted((a, b) => order.indexOf(a) - order.indexOf(b));
  }

  #tableIn(typed: string): Offers['columns'][number] {
    const found = this.#cells.findOne(typed);
    if (isRefusal(found)) return undefined;
    const { table } = this.#cells.held(formatAddress({ row: found.area.top, column: found.area.left }));
    return table && tableColumns(table);
  }

  #single(isWanted: (held: Held) => boolean): readonly Offer[] {
    const wanted = this.#seen.filter(({ held }) => isWanted(held)).slice(0, MOST_OFFERED);
    return wanted.map((at) => this.#offer(rectangleOf(formatAddress(at))));
  }

  /** Cells of one kind that stand below one another, and the areas that have a name. */
  #runs(wanted: readonly Held['kind'][]): readonly Offer[] {
    const runs: Rectangle[] = [];
    const places = this.#seen
      .filter(({ held }) => wanted.includes(held.kind))
      .toSorted((a, b) => a.column - b.column || a.row - b.row);
    let kind: Held['kind'] | undefined;
    for (const { row, column, held } of places) {
      const last = runs.at(-1);
      if (last && last.left === column && last.bottom === row - 1 && kind === held.kind)
        runs[runs.length - 1] = { ...last, bottom: row };
      else runs.push({ top: row, left: column, bottom: row, right: column });
      ({ kind } = held);
    }
    return runs
      .filter((run) => sizeOf(run) > 1)
      .slice(0, MOST_OFFERED)
      .map((run) => this.#offer(run));
  }

  #offer(area: Rectangle): Offer {
    const cell = this.#cells.referenceTo(area);
    const words = labelFor(this.#cells, area);
    return { cell, words: words === cell ? '' : words };
  }
}

const order = Object.keys(kinds) as PlotKind[];

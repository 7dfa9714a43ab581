import type { Window } from '../../../functions/values/window.ts';
import type { Curve } from '../../../functions/values/curve.ts';
import type { PlotData } from '../../components/plot/data.ts';
import type { WindowPlotData } from '../../components/plot/window-data.ts';
import type { Plot, Sheet } from '../../document/types.ts';
import type { Workbook } from '../../document/workbook.ts';
import type { CellState } from '../../engine/types.ts';
import { parseQuantity } from '../../units/parse.ts';

/** Looks up what a plot refers to: an address, or a name of the sheet. */
class Lookup {
  readonly #workbook: Workbook;
  readonly #sheet: Sheet;

  constructor(workbook: Workbook, sheet: Sheet) {
    this.#workbook = workbook;
    this.#sheet = sheet;
  }

  #cell(reference: string): string {
    return this.#sheet.names.get(reference) ?? reference;
  }

  now(reference: string): CellState | undefined {
    return this.#workbook.state(this.#sheet.id, this.#cell(reference));
  }

  before(reference: string): CellState | undefined {
    return this.#workbook.baselineState({ sheet: this.#sheet.id, cell: this.#cell(reference) });
  }
}

const numberIn = (state: CellState | undefined): number | undefined =>
  state?.value.kind === 'number' ? state.value.value : undefined;

const curveIn = (state: CellState | undefined): Curve | undefined =>
  state?.value.kind === 'record' && state.value.record.kind === 'curve' ? state.value.record : undefined;

const windowIn = (state: CellState | undefined): Window | undefined =>
  state?.value.kind === 'record' && state.value.record.kind === 'window' ? state.value.record : undefined;

const FULL_BAND = [20, 20_000] as const;

/** The ends of an axis as typed, SI. */
export function ends(typed: readonly [string, string] | undefined): readonly [number, number] | undefined {
  const [from, to] = typed?.map((text) => parseQuantity(text)?.value) ?? [];
  return from === undefined || to === undefined ? undefined : [from, to];
}

function marksOf(plot: Plot, lookup: Lookup): PlotData['marks'] {
  return plot.marks.flatMap(({ cell, label }) => {
    const frequency = numberIn(lookup.now(cell));
    return frequency === undefined ? [] : [{ label, frequency }];
  });
}

/** What a plot of curves draws now, with the baseline behind it; cells without a result are left out. */
export function plotData(workbook: Workbook, sheet: Sheet, plot: Plot): PlotData {
  const lookup = new Lookup(workbook, sheet);
  return {
    title: plot.title,
    series: plot.series.flatMap(({ cell, label, line }) => {
      const curve = curveIn(lookup.now(cell));
      return curve ? [{ label, line, curve, ghost: curveIn(lookup.before(cell)) }] : [];
    }),
    limits: plot.limits.flatMap(({ cell, label, forbidden }) => {
      const value = numberIn(lookup.now(cell));
      return value === undefined ? [] : [{ label, value, forbidden }];
    }),
    marks: marksOf(plot, lookup),
    horizontal: ends(plot.horizontal) ?? FULL_BAND,
    vertical: ends(plot.vertical),
    system: workbook.document.system,
    ...(workbook.document.baseline && { baseline: 'baseline' }),
  };
}

/** What a plot of a shared window draws now. */
export function windowData(workbook: Workbook, sheet: Sheet, plot: Plot): WindowPlotData | undefined {
  if (plot.kind !== 'window') return undefined;
  const lookup = new Lookup(workbook, sheet);
  const cell = plot.series[0]?.cell ?? '';
  const window = windowIn(lookup.now(cell));
  return (
    window && {
      title: plot.title,
      window,
      ghost: windowIn(lookup.before(cell)),
      marks: marksOf(plot, lookup),
      horizontal: ends(plot.horizontal) ?? FULL_BAND,
      system: workbook.document.system,
      ...(workbook.document.baseline && { baseline: 'baseline' }),
    }
  );
}

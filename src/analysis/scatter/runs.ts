import { normalNumbers } from '../../../functions/numeric/random.ts';
import { frequencies } from '../../../functions/values/grid.ts';
import type { Curve } from '../../../functions/values/curve.ts';
import type { CellValue } from '../../engine/types.ts';
import { Breath } from '../breathe.ts';
import type { Cause } from './types.ts';
import type { Runner } from '../model/document-model.ts';
import type { Drawn } from './spread-document.ts';
import { standingOf, standings, type Result, type Watch } from '../subject/types.ts';

/** What runs gave for a result, in the order of the runs, a column for each part of them. */
export interface Runs {
  readonly result: Result;
  readonly columns: readonly RunColumn[];
  readonly causes: readonly Cause[];
}

/** All runs, by result. */
export interface ScatterRuns {
  readonly of: readonly Runs[];
  readonly runs: number;
}

/** What some of the runs gave; runs can be shared out, for each draws the same whoever does it. */
export interface ScatterPart {
  readonly of: readonly Runs[];
  readonly isCompiled: boolean;
}

export type RunColumn =
  | { readonly kind: 'number'; readonly values: Float64Array }
  /** A run after the other, each a value a frequency; NaN in runs without a curve. */
  | { readonly kind: 'curve'; readonly values: Float64Array; readonly from: number; readonly to: number }
  /** The place of each run's verdict in `standings`. */
  | { readonly kind: 'verdict'; readonly values: Uint8Array };

/** The runs from one number up to, not including, another. */
export async function scatterRuns(
  runner: Runner,
  drawn: readonly Drawn[],
  results: readonly Result[],
  seed: number,
  [from, to]: readonly [number, number],
  watch?: Watch,
): Promise<RunColumn[]> {
  const runs = to - from;
  const columns = results.map((result): Writer => writerFor(result, runs));
  const next = normalNumbers(seed);
  const breath = new Breath(watch);
  for (let run = 0; run < to; run++) {
    const settings = drawn.map(({ centre, deviation, shape }) => {
      const deviate = deviation * next();
      return shape === 'normal' ? centre + deviate : centre * Math.exp(deviate);
    });
    if (run < from) continue;
    if (breath.isDue) await breath.take({ done: run - from, of: runs });
    const cells = runner.quick(settings) ?? (await runner.exact(settings));
    for (const [index, column] of columns.entries()) column.write(run - from, cells[index] ?? { kind: 'empty' });
  }
  return columns.map((writer) => writer.column());
}

interface Writer {
  write(run: number, value: CellValue): void;
  column(): RunColumn;
}

function writerFor({ kind }: Result, runs: number): Writer {
  if (kind === 'curve') return new CurveWriter(runs);
  if (kind === 'verdict') {
    const values = new Uint8Array(runs);
    return {
      write: (run, value) => {
        values[run] = standings.indexOf(standingOf(value));
      },
      column: () => ({ kind: 'verdict', values }),
    };
  }
  const values = new Float64Array(runs).fill(Number.NaN);
  return {
    write: (run, value) => {
      if (value.kind === 'number') values[run] = value.value;
    },
    column: () => ({ kind: 'number', values }),
  };
}

class CurveWriter implements Writer {
  readonly #values: Float64Array;
  #from = 0;
  #to = Infinity;

  constructor(runs: number) {
    this.#values = new Float64Array(runs * frequencies.length).fill(Number.NaN);
  }

  write(run: number, value: CellValue): void {
    if (value.kind !== 'record' || value.record.kind !== 'curve') return;
    const curve: Curve = value.record;
    this.#values.set(curve.y, run * frequencies.length);
    this.#from = Math.max(this.#from, curve.from);
    this.#to = Math.min(this.#to, curve.to);
  }

  column(): RunColumn {
    return { kind: 'curve', values: this.#values, from: this.#from, to: this.#to };
  }
}

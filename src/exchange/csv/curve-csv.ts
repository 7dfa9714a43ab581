import { frequencies } from '../../../functions/values/grid.ts';
import type { Curve } from '../../../functions/values/curve.ts';
import type { UnitSystem } from '../../document/types.ts';
import { unitFor } from './unit-of.ts';
import { writeCsv, type CsvField } from './write-csv.ts';

/** Curves over their shared frequencies as a table: a row of names, a row of units, then a row for each frequency at which
 *  any of them holds. Phase, in degrees, stands behind its curve. A curve without a value there leaves its field empty. */
export function curvesCsv(
  curves: readonly { readonly label: string; readonly curve: Curve }[],
  system: UnitSystem,
): string {
  const columns = curves.flatMap(({ label, curve }) => {
    const unit = unitFor(curve.y, curve.quantity, system);
    const held = (index: number, frequency: number, of: (index: number) => number): CsvField => {
      const isIn = frequency >= curve.from && frequency <= curve.to && Number.isFinite(curve.y[index]);
      return isIn ? of(index) : undefined;
    };
    const value = {
      head: label,
      unit: unit.symbol,
      at: (index: number, hertz: number) => held(index, hertz, (each) => unit.of(curve.y[each] ?? Number.NaN)),
    };
    const { phase } = curve;
    if (!phase) return [value];
    const degrees = (each: number): number => ((phase[each] ?? Number.NaN) * 180) / Math.PI;
    return [
      value,
      { head: `${label}, phase`, unit: '°', at: (index: number, hertz: number) => held(index, hertz, degrees) },
    ];
  });
  const points = [...frequencies].flatMap((frequency, index) => {
    const values = columns.map(({ at }) => at(index, frequency));
    return values.some((value) => value !== undefined) ? [[frequency, ...values]] : [];
  });
  return writeCsv([
    ['Frequency', ...columns.map(({ head }) => head)],
    ['Hz', ...columns.map(({ unit }) => unit)],
    ...points,
  ]);
}

import { frequencies } from '../../../functions/values/grid.ts';
import type { Curve } from '../../../functions/values/curve.ts';
import type { UnitSystem } from '../../document/types.ts';
import { formatNumber } from '../../units/show.ts';
import { axisUnit } from '../plot/unit.ts';

/** A point of a curve inside the band in which it holds: hertz, the value in the unit of the head, degrees of phase. */
export type CurvePoint = readonly [frequency: number, value: number, phase?: number];

export interface CurveTable {
  readonly head: readonly string[];
  readonly points: readonly CurvePoint[];
}

const digits = (value: number): number => Number(value.toPrecision(5));

/** Every point of a curve, all values in one unit; with a column of phase where the curve has one. */
export function curveTable(curve: Curve, system: UnitSystem): CurveTable {
  let largest = 0;
  for (const value of curve.y) if (Number.isFinite(value)) largest = Math.max(largest, Math.abs(value));
  const unit = axisUnit(curve.quantity, largest, system);
  const points = [...frequencies].flatMap((frequency, index): CurvePoint[] => {
    const value = curve.y[index] ?? Number.NaN;
    if (!(frequency >= curve.from && frequency <= curve.to && Number.isFinite(value))) return [];
    const phase = curve.phase?.[index];
    const point = [digits(frequency), digits(unit.of(value))] as const;
    return [phase === undefined ? point : [...point, digits((phase * 180) / Math.PI)]];
  });
  return { head: ['Hz', unit.symbol, ...(curve.phase ? ['°'] : [])], points };
}

/** Tab-separated, so that it pastes into a table. */
export const curveText = (curve: Curve, system: UnitSystem): string => {
  const { head, points } = curveTable(curve, system);
  return [curve.title, head.join('\t'), ...points.map((point) => point.join('\t'))].join('\n');
};

/** A number of the table for readers. */
export const pointText = (value: number): string => formatNumber(value, 5);

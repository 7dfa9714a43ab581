import { completeDriver } from '../../../functions/driver/complete-driver.ts';
import type { Curve } from '../../../functions/values/curve.ts';
import type { Driver } from '../../../functions/values/driver.ts';
import type { TableRecord } from '../../../functions/values/table.ts';
import type { Verdict } from '../../../functions/values/verdict.ts';
import { boxImpedance } from '../../../functions/enclosure/box-curves.ts';
import { closedBox } from '../../../functions/enclosure/closed.ts';
import { demoDriver } from '../../references/demo-drivers.ts';

export const plain = { quantity: 'ratio' } as const;
export const band = { from: 20, to: 20000 } as const;
export const amplifier = { ...band, good: 0.8, caution: 0.7 } as const;

export function unit(id: string): Driver {
  const of = demoDriver(id);
  return completeDriver(id, {
    fs: of.fs_hz,
    qms: of.qms,
    qes: of.qes,
    vas: of.vas_l / 1000,
    re: of.re_ohm,
    le: of.le_mh / 1000,
    sd: of.sd_cm2 / 1e4,
    level: of.spl_2v83_db,
  });
}
/** Impedance of a demonstration driver in a closed box of 15 litres. */
export function boxed(id: string): Curve {
  const box = closedBox.compute(
    {
      driver: unit(id),
      volume: 0.015,
      seriesResistance: 0,
      fill: 1,
      leakageQ: undefined,
      absorptionQ: undefined,
    },
    plain,
  );
  return boxImpedance.compute({ box } as never, plain) as Curve;
}
export const rowsOf = (table: unknown): readonly Record<string, number | string>[] => {
  const { columns, rows } = table as TableRecord;
  return rows.map((row) => Object.fromEntries(row.map((value, index) => [columns[index]!.name, value ?? ''])));
};
export const rowOf = (table: unknown, wiring: string): Record<string, number | string> =>
  rowsOf(table).find((row) => row['Wiring'] === wiring)!;
export const spoken = (verdict: unknown): string =>
  (verdict as Verdict).reason.map((part) => (typeof part === 'string' ? part : part.value.toPrecision(3))).join('');

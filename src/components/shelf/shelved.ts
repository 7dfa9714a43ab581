import { Problem } from '../../../functions/values/problem.ts';
import type { Driver } from '../../../functions/values/driver.ts';
import { auditOf, type ShelfAudit } from '../../document/shelf/audit.ts';
import { driverOf } from '../../document/shelf/driver-of.ts';
import type { DriverEntry } from '../../document/shelf/entry.ts';

interface Worked {
  readonly entry: DriverEntry;
  readonly driver: Driver | undefined;
  readonly audit: ShelfAudit;
}

const known = new WeakMap<DriverEntry, Worked>();

/** What an entry computes to, worked out once. */
export function shelved(entry: DriverEntry): Worked {
  const held = known.get(entry);
  if (held) return held;
  const driver = driverOf(entry);
  const worked = { entry, driver: driver instanceof Problem ? undefined : driver, audit: auditOf(entry) };
  known.set(entry, worked);
  return worked;
}

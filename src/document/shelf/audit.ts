import { driverCulprit } from '../../../functions/driver/audit-driver.ts';
import { contradictions } from '../../../functions/driver/audit.ts';
import { givenOf } from '../../../functions/driver/culprit.ts';
import { Problem } from '../../../functions/values/problem.ts';
import type { Sentence } from '../../../functions/values/say.ts';
import type { Status } from '../../../functions/values/verdict.ts';
import { driverOf } from './driver-of.ts';
import type { DriverEntry } from './entry.ts';

/** What the numbers of a driver say about one another. */
export interface ShelfAudit {
  readonly status: Status;
  readonly word: string;
  /** The likeliest culprit first; then what else looks odd. */
  readonly reasons: readonly Sentence[];
}

/** Audits a driver on its way to the shelf: contradictions with the likeliest culprit named, sizes that no driver has, rows
 *  that cannot be read. */
export function auditOf(entry: Pick<DriverEntry, 'name' | 'rows'>): ShelfAudit {
  const driver = driverOf(entry);
  if (driver instanceof Problem) return { status: 'fail', word: 'No driver', reasons: [driver.message] };
  const verdict = driverCulprit.compute({ driver }, { quantity: 'ratio' });
  if (verdict instanceof Problem) {
    return driver.doubts.length > 0
      ? { status: 'caution', word: 'Questions', reasons: [...driver.doubts, verdict.message] }
      : { status: 'caution', word: 'Unchecked', reasons: [verdict.message] };
  }
  if (verdict.status !== 'good') {
    // Each contradiction is told once: by the verdict, which says who is at fault.
    const told = new Set(contradictions(givenOf(driver)).map((each) => JSON.stringify(each)));
    const rest = driver.doubts.filter((each) => !told.has(JSON.stringify(each)));
    return { status: verdict.status, word: verdict.word, reasons: [verdict.reason, ...rest] };
  }
  return driver.doubts.length > 0
    ? { status: 'caution', word: 'Questions', reasons: driver.doubts }
    : { status: 'good', word: verdict.word, reasons: [verdict.reason] };
}

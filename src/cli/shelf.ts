import { driverParameters } from '../../functions/driver/parameters.ts';
import { quantities } from '../../functions/quantities.ts';
import { Problem } from '../../functions/values/problem.ts';
import { isRefusal, type Refusal } from '../document/command.ts';
import { auditOf } from '../document/shelf/audit.ts';
import { driverOf } from '../document/shelf/driver-of.ts';
import type { DriverEntry } from '../document/shelf/entry.ts';
import { matches, readQuery } from '../document/shelf/find.ts';
import { show, speak } from '../units/show.ts';

/** Drivers of a shelf that are like what is searched; all of them where nothing is. */
export function findDrivers(entries: readonly DriverEntry[], search: string): readonly DriverEntry[] | Refusal {
  const query = readQuery(search);
  if (isRefusal(query)) return query;
  return entries.filter((entry) => {
    const driver = driverOf(entry);
    return matches({ entry, driver: driver instanceof Problem ? undefined : driver }, query);
  });
}

/** A line a driver for people: its name, its numbers, its audit. */
export const listDrivers = (entries: readonly DriverEntry[]): string =>
  entries
    .map((entry) => {
      const driver = driverOf(entry);
      const numbers = driverParameters.flatMap(({ field, symbol, quantity }) => {
        const value = driver instanceof Problem ? undefined : driver[field];
        if (value === undefined || !shortly.has(field)) return [];
        const { number, unit } = show(value, { quantity, system: 'metric' });
        return [`${symbol} ${number} ${unit}`.trim()];
      });
      return [entry.name, ...numbers, auditOf(entry).word].join(', ');
    })
    .join('\n');

const shortly: ReadonlySet<string> = new Set(['fs', 'qts', 'vas', 're', 'sd', 'xmax', 'level', 'price']);

/** For programs: what was typed, the numbers in SI with those that follow, and the audit in words. */
export const describeDrivers = (entries: readonly DriverEntry[]): unknown =>
  entries.map((entry) => {
    const driver = driverOf(entry);
    const audit = auditOf(entry);
    return {
      name: entry.name,
      invented: entry.invented,
      source: entry.source,
      rows: entry.rows,
      numbers: Object.fromEntries(
        driverParameters.flatMap(({ field, quantity }) => {
          const value = driver instanceof Problem ? undefined : driver[field];
          return value === undefined ? [] : [[field, { value, unit: quantities[quantity].si }]];
        }),
      ),
      computed: driver instanceof Problem ? [] : driver.derived,
      audit: { status: audit.status, word: audit.word, reasons: audit.reasons.map((each) => speak(each, 'metric')) },
    };
  });

import fc from 'fast-check';
import type { DriverEntry } from '../../../src/document/shelf/entry.ts';
import { decodeShelf } from '../../../src/exchange/shelf-file.ts';
import drivers from '../../../templates/drivers.json' with { type: 'json' };

export const demo = decodeShelf(drivers) as readonly DriverEntry[];
export const named = (name: string): DriverEntry => demo.find((each) => each.name === name)!;
export const entry = (name: string, ...rows: readonly (readonly [string, string])[]): DriverEntry => ({
  id: `id-${name}-${rows.length}`,
  name,
  rows: rows.map(([label, text]) => ({ label, text })),
  source: '',
  tables: [],
  invented: false,
});

const anyEntry = fc.record({
  id: fc.string({ minLength: 1, maxLength: 4 }),
  name: fc.constantFrom('W-1', 'W-2', 'T-1'),
  rows: fc.array(
    fc.record({ label: fc.constantFrom('Fs', 'Qts', 'Own row', '['), text: fc.string({ maxLength: 6 }) }),
    { maxLength: 3 },
  ),
  source: fc.constantFrom('', 'measured', "maker's sheet"),
  tables: fc.array(fc.record({ title: fc.constantFrom('Response', 'Impedance'), text: fc.string({ maxLength: 9 }) }), {
    maxLength: 2,
  }),
  invented: fc.boolean(),
});
export const anyShelf = fc.uniqueArray(anyEntry, { selector: ({ id }) => id, maxLength: 5 });

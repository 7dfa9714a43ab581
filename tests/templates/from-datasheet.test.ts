import { describe, expect, test } from 'vitest';
import { isRefusal } from '../../src/document/command.ts';
import { putDriver } from '../../src/document/shelf/put.ts';
import { namedDrivers } from '../../src/document/take-over/drivers.ts';
import { readDatasheet } from '../../src/exchange/datasheet/read.ts';
import { decodeShelf } from '../../src/exchange/shelf-file.ts';
import drivers from '../../templates/drivers.json' with { type: 'json' };
import { templates } from '../../templates/index.ts';
import { openTemplate } from './open-template.ts';

/** The datasheet of an invented driver as text, a row a line. */
function sheetOf(name: string): string {
  const shelf = decodeShelf(drivers);
  if (isRefusal(shelf)) throw new Error(shelf.refused);
  const entry = shelf.find((each) => each.name === name);
  if (!entry) throw new Error(`There is no driver ${name}.`);
  return [`Name: ${name}`, ...entry.rows.map(({ label, text }) => `${label}: ${text}`)].join('\n');
}

/** Other drivers than those that the starter sheets come with. */
const others: Readonly<Record<string, string>> = { Tweeter: 'T-28 B', OtherTweeter: 'T-25 A', Mid: 'M-115 A' };
const otherFor = (name: string): string => others[name] ?? 'W-220 A';

/** Their drivers are picked out of lists, or out of a menu. */
const picking = new Set(['shortlist-grid', 'first-speaker']);

describe.each(templates.filter(({ id }) => !picking.has(id)))('the starter sheet $id', ({ id }) => {
  test('is filled from pasted datasheets, and computes with them', async () => {
    const opened = await openTemplate(id);
    const blocks = namedDrivers(opened.sheet()).filter(([, { rows }]) => rows.length > 0);
    expect(blocks.length).toBeGreaterThan(0);
    for (const [name, block] of blocks) {
      expect(block.title).toBe(name);
      const driver = otherFor(name);
      const [reading] = readDatasheet(sheetOf(driver));
      expect(reading?.unread ?? []).toEqual([]);
      expect(reading?.rows.filter(({ question }) => question)).toEqual([]);
      const rows = (reading?.rows ?? []).map(({ label, text }) => ({ label, text }));
      const entry = { id: '', name: driver, rows, source: '', tables: [], invented: false };
      const { command } = putDriver(opened.sheet(), block, entry);
      expect(await opened.workbook.do(command)).toBeUndefined();
      const value = opened.state(name)?.value;
      expect(value?.kind === 'record' && value.record).toMatchObject({ kind: 'driver', name: driver });
    }
    expect(opened.problems()).toEqual([]);
  });
});

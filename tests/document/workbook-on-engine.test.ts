import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isRefusal } from '../../src/document/command.ts';
import { withFreshIds } from '../../src/document/create.ts';
import type { OctavoDocument } from '../../src/document/types.ts';
import { Workbook } from '../../src/document/workbook.ts';
import { createEngine } from '../../src/engine/direct.ts';
import { decodeDocument } from '../../src/exchange/decode.ts';
import { templates } from '../../templates/index.ts';
import { anyCommands, sampleDocument } from './samples.ts';

function template(id: string): OctavoDocument {
  const document = decodeDocument(templates.find((each) => each.id === id)?.content);
  if (isRefusal(document)) throw new Error(document.refused);
  return document;
}

async function opened(document: OctavoDocument, engine = createEngine()): Promise<Workbook> {
  const workbook = new Workbook(engine, document);
  await workbook.ready;
  return workbook;
}

const named = (workbook: Workbook, name: string, at = 0): { sheet: string; cell: string } => {
  const sheet = workbook.document.sheets[at];
  return { sheet: sheet?.id ?? '', cell: sheet?.names.get(name) ?? '' };
};
const numberOf = (workbook: Workbook, name: string, at = 0): number => {
  const { sheet, cell } = named(workbook, name, at);
  const value = workbook.state(sheet, cell)?.value;
  return value?.kind === 'number' ? value.value : Number.NaN;
};

/** All that a workbook shows, cell by cell. */
const allShown = (workbook: Workbook): unknown => workbook.shownTexts();

describe('the two-driver check on the real engine', () => {
  test('what is typed while another text is probed in the same cell is followed', async () => {
    const workbook = await opened(template('two-driver-check'));
    const handOver = named(workbook, 'HandOver');
    const probed = workbook.probe(handOver, '3000 Hz');
    const typed = workbook.do({ kind: 'write', sheet: handOver.sheet, texts: new Map([[handOver.cell, '2500 Hz']]) });
    await Promise.all([probed, typed]);
    expect(numberOf(workbook, 'HandOver')).toBe(2500);
    expect(allShown(workbook)).toEqual(allShown(await opened(workbook.document)));
  });

  test('probing, dragging and typing in any order end with the numbers of the document', async () => {
    const cells = ['HandOver', 'Target', 'PriceCap'] as const;
    const step = fc.record({
      what: fc.constantFrom('probe', 'preview', 'write', 'cancel', 'undo', 'settle', 'wait'),
      name: fc.constantFrom(...cells),
      number: fc.integer({ min: 30, max: 110 }),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(step, { minLength: 3, maxLength: 12 }), async (steps) => {
        const workbook = await opened(template('two-driver-check'));
        const done: Promise<unknown>[] = [];
        for (const { what, name, number } of steps) {
          const place = named(workbook, name);
          const text = String(number);
          if (what === 'wait') await Promise.all(done);
          else if (what === 'probe') done.push(workbook.probe(place, text));
          else if (what === 'preview') done.push(workbook.preview(place, text));
          else if (what === 'write')
            done.push(workbook.do({ kind: 'write', sheet: place.sheet, texts: new Map([[place.cell, text]]) }));
          else done.push(workbook[what]());
        }
        await Promise.all([...done, workbook.settle()]);
        expect(allShown(workbook)).toEqual(allShown(await opened(workbook.document)));
      }),
      { numRuns: 25 },
    );
  });

  test('follows a dragged hand-over, keeps it when it settles, and lists what it did', async () => {
    const workbook = await opened(template('two-driver-check'));
    const handOver = named(workbook, 'HandOver');
    const before = numberOf(workbook, 'OhmsAtHandOver');
    for (const hertz of [1900, 2200, 2500]) await workbook.preview(handOver, `${hertz} Hz`);
    await workbook.settle();
    expect(numberOf(workbook, 'HandOver')).toBe(2500);
    expect(numberOf(workbook, 'OhmsAtHandOver')).not.toBe(before);
    expect(workbook.consequences[0]).toMatchObject({ label: 'Hand-over frequency', isCause: true });
    const flips = workbook.consequences.filter(({ flip }) => flip).map(({ label }) => label);
    expect(flips).toContain('Hand-over frequency');
    await workbook.undo();
    expect(numberOf(workbook, 'OhmsAtHandOver')).toBe(before);
  });

  test('a duplicate is a sheet of its own: another number there changes nothing here', async () => {
    const workbook = await opened(template('two-driver-check'));
    const [original] = workbook.document.sheets;
    await workbook.do({ kind: 'duplicate-sheet', sheet: original?.id ?? '', id: 'copy' });
    expect(numberOf(workbook, 'SystemLevel', 1)).toBeCloseTo(numberOf(workbook, 'SystemLevel'), 9);
    const makeUp = named(workbook, 'MakeUp', 1);
    await workbook.do({ kind: 'write', sheet: 'copy', texts: new Map([[makeUp.cell, '0']]) });
    expect(numberOf(workbook, 'SystemLevel', 1)).toBeCloseTo(89.2, 9);
    expect(numberOf(workbook, 'SystemLevel')).toBeCloseTo(84.7, 9);
  });

  test('rows inserted above change no result', async () => {
    const workbook = await opened(template('two-driver-check'));
    const [sheet] = workbook.document.sheets;
    const names = [...(sheet?.names.keys() ?? [])];
    const before = names.map((name) => numberOf(workbook, name));
    await workbook.do({ kind: 'insert', sheet: sheet?.id ?? '', axis: 'rows', at: 2, count: 3 });
    await workbook.do({ kind: 'insert', sheet: sheet?.id ?? '', axis: 'columns', at: 1, count: 1 });
    expect(names.map((name) => numberOf(workbook, name))).toEqual(before);
  });

  test('in imperial units a bare number is stored in the unit that is shown', async () => {
    const workbook = await opened(template('closed-box-bench'));
    await workbook.do({ kind: 'system', system: 'imperial' });
    const [sheet] = workbook.document.sheets;
    const [cell = ''] = [...(sheet?.cells ?? [])].find(([, { text }]) => text.endsWith(' L')) ?? [];
    const shown = workbook.shown(sheet?.id ?? '', cell);
    expect(shown).toMatchObject({ kind: 'number', unit: 'ft³' });
    await workbook.do({ kind: 'write', sheet: sheet?.id ?? '', texts: new Map([[cell, '0.5']]) });
    expect(workbook.document.sheets[0]?.cells.get(cell)?.text).toBe('0.5 ft³');
  });
});

test('a formula that gives nothing shows nothing', async () => {
  const workbook = await opened(sampleDocument());
  const write = (cell: string, text: string): unknown =>
    workbook.do({ kind: 'write', sheet: 'one', texts: new Map([[cell, text]]) });
  await write('A1', '=F9');
  expect(workbook.shown('one', 'A1')).toEqual({ kind: 'empty' });
  await write('F9', '3');
  expect(workbook.shown('one', 'A1')).toEqual({ kind: 'number', number: '3', unit: '' });
  await workbook.undo();
  expect(workbook.shown('one', 'A1')).toEqual({ kind: 'empty' });
});

describe('one engine', () => {
  test('serves one document after another, and the same one opened again', async () => {
    const engine = createEngine();
    const first = await opened(template('closed-box-bench'), engine);
    const shown = allShown(first);
    const again = await opened(first.document, engine);
    expect(allShown(again)).toEqual(shown);
    const other = await opened(withFreshIds(template('vented-box')), engine);
    expect(allShown(other)).toEqual(allShown(await opened(other.document)));
  });

  test('shows after any sequence of edits what it shows of the resulting document opened anew', async () => {
    await fc.assert(
      fc.asyncProperty(anyCommands(), async (commands) => {
        const workbook = await opened(sampleDocument());
        for (const make of commands) {
          const command = make(workbook.document);
          if (command) await workbook.do(command);
        }
        const anew = await opened(workbook.document);
        expect(allShown(workbook)).toEqual(allShown(anew));
        while (workbook.canUndo) await workbook.undo();
        expect(allShown(workbook)).toEqual(allShown(await opened(sampleDocument())));
        while (workbook.canRedo) await workbook.redo();
        expect(allShown(workbook)).toEqual(allShown(anew));
      }),
      { numRuns: 15 },
    );
  });
});

test('two documents edited in turn know nothing of one another', async () => {
  await fc.assert(
    fc.asyncProperty(anyCommands(), anyCommands(), async (left, right) => {
      const both = await Promise.all([opened(sampleDocument()), opened(sampleDocument())]);
      const done: Promise<unknown>[] = [];
      for (let step = 0; step < Math.max(left.length, right.length); step++) {
        for (const [index, workbook] of both.entries()) {
          const command = [left, right][index]?.[step]?.(workbook.document);
          if (command) done.push(workbook.do(command));
        }
      }
      await Promise.all(done);
      for (const workbook of both) expect(allShown(workbook)).toEqual(allShown(await opened(workbook.document)));
    }),
    { numRuns: 8 },
  );
});

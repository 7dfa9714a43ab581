import { describe, expect, test } from 'vitest';
import { leanEngine } from '../../.config/lean-engine.ts';
import { catalogue } from '../../functions/index.ts';
import { isRefusal } from '../../src/document/command.ts';
import { contentOf } from '../../src/document/difference.ts';
import { bareEngine } from '../../src/engine/bare-engine.ts';
import { createEngine } from '../../src/engine/direct.ts';
import { RecordStore } from '../../src/engine/record-store.ts';
import type { CellState, SheetContent, SheetEngine } from '../../src/engine/types.ts';
import { decodeDocument } from '../../src/exchange/decode.ts';
import { engineFunctions } from '../../src/formula/engine-functions.ts';
import { templates } from '../../templates/index.ts';
import { built } from '../build/built.ts';

/** The engine as the page and the command line have it: without whatever no call of ours can reach. */
const lean = await built<{ readonly createEngine: typeof createEngine; readonly bareEngine: typeof bareEngine }>(
  ['src/engine/direct.ts', 'src/engine/bare-engine.ts'],
  leanEngine(),
);

/** What both engines tell, step by step. */
async function bothTell(steps: (engine: SheetEngine) => AsyncIterable<readonly CellState[]>): Promise<void> {
  const told: CellState[][] = [[], []];
  for (const [index, engine] of [createEngine(), lean.createEngine()].entries()) {
    for await (const cells of steps(engine)) told[index]?.push(...cells);
    engine.dispose();
  }
  expect(told[1]?.length).toBeGreaterThan(0);
  expect(told[1]).toEqual(told[0]);
}

const sheet = (id: string, cells: Readonly<Record<string, string>>): SheetContent => ({
  id,
  name: id,
  cells: new Map(Object.entries(cells)),
  names: new Map(),
});

/** A column of results. */
const regrets = '=RANK.REGRET(A1:A3,D1:E1,B1:C3)';

describe('the lean engine tells what the whole one tells', { timeout: 60_000 }, () => {
  test.each(templates.map(({ id, content }) => ({ id, content })))('of the starter sheet $id', async ({ content }) => {
    const document = decodeDocument(content);
    if (isRefusal(document)) throw new Error(document.refused);
    const sheets = contentOf(document.sheets);
    await bothTell(async function* (engine) {
      yield (await engine.load(sheets)).cells;
      for (const { id, cells } of sheets) {
        const inputs = [...cells].filter(([, text]) => /^\d/.test(text)).slice(0, 1);
        for (const [cell, text] of inputs) {
          for (const other of ['', text]) yield (await engine.write([{ sheet: id, cell, text: other }])).cells;
        }
      }
      yield (await engine.load(sheets.slice(0, 1))).cells;
    });
  });

  test('of every example of the catalogue', async () => {
    await bothTell(async function* (engine) {
      const sheets = catalogue.map(({ example: { formula, cells = {} } }, index) =>
        sheet(`s${String(index)}`, { ...cells, Z99: formula }),
      );
      yield (await engine.load(sheets)).cells;
    });
  });

  test('of everything that formulas may call of the engine, with arguments of every kind', async () => {
    const given = ['', 'A1', 'A1:B4', 'A1,2', 'A1:A4,B1:B4', '"b",A1:B4,2,FALSE()', 'A1:A4,">1"', '1,2,3', 'C1,"0.00"'];
    const called = [...engineFunctions].flatMap((name) => given.map((list) => `=${name}(${list})`));
    const cells = { A1: '3', A2: '1', A3: '-4', A4: '2.5', B1: 'a', B2: 'b', B3: '7', B4: '', C1: '=A1/3', D1: 'TRUE' };
    await bothTell(async function* (engine) {
      yield (await engine.load([sheet('s', cells)])).cells;
      yield await Promise.all(called.map((text) => engine.evaluate('s', text)));
    });
  });

  test('of loops, failures, spilled columns and what is written over them', async () => {
    const cells = {
      A1: 'one',
      A2: 'two',
      A3: 'three',
      D1: '2',
      E1: '1',
      B1: '3',
      B2: '4',
      B3: '5',
      C1: '9',
      C2: '7',
      C3: '8',
    };
    await bothTell(async function* (engine) {
      yield (await engine.load([sheet('s', { ...cells, Z1: regrets }), sheet('t', { A1: '=s!Z1' })])).cells;
      for (const text of ['in the way', '', '=1/0', '=Z4+1', '=Nothing(', "'text", '=t!A1'])
        yield (await engine.write([{ sheet: 's', cell: 'Z2', text }])).cells;
      for (const text of ['=B200', '=C200', '7', '']) {
        const loop = { sheet: 's', cell: 'B200', text: '=A200+1' };
        yield (await engine.write([{ sheet: 's', cell: 'A200', text }, loop])).cells;
      }
    });
  });
});

describe('the lean engine itself', () => {
  const context = { store: new RecordStore(), doubt: () => undefined, nameOf: String };

  test('takes back whatever was written over whatever', () => {
    const contents = [null, 3, 'text', true, '=A1+1', '=SUM(A1:A2)/0', "='other'!A1", '=B1', regrets];
    const engines = [bareEngine(catalogue, context), lean.bareEngine(catalogue, context)].map((engine) => {
      for (const name of ['sheet', 'other']) engine.addSheet(name);
      engine.setCellContents({ sheet: 0, row: 0, col: 0 }, [[7], [8]]);
      return engine;
    });
    for (const before of contents) {
      for (const after of contents) {
        const seen = engines.map((engine) => {
          const values = (): unknown[] =>
            Array.from({ length: 6 }, (_, row) => engine.getCellValue({ sheet: 0, row, col: 1 }));
          const write = (content: string | number | boolean | null): void =>
            void engine.batch(() => {
              engine.setCellContents({ sheet: 0, row: 0, col: 1 }, [[content], [null]]);
              engine.setCellContents({ sheet: 0, row: 0, col: 2 }, content);
            });
          write(before);
          const first = values();
          write(after);
          const second = values();
          engine.undo();
          const third = values();
          // A column of results stays in sight in either engine.
          if (after !== regrets) expect(third).toEqual(first);
          return [first, second, third];
        });
        expect(JSON.stringify(seen[1])).toBe(JSON.stringify(seen[0]));
      }
    }
  });

  test.each(['addRows', 'copy', 'updateConfig'] as const)('has no %s', (method) => {
    expect(bareEngine(catalogue, context)).toHaveProperty(method);
    expect(lean.bareEngine(catalogue, context)).not.toHaveProperty(method);
  });
});

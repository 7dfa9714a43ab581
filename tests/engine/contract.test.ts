import { HyperFormula } from 'hyperformula';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { define, type AnyFunction } from '../../functions/define.ts';
import type { Curve } from '../../functions/values/curve.ts';
import { frequencies } from '../../functions/values/grid.ts';
import { Problem } from '../../functions/values/problem.ts';
import { say } from '../../functions/values/say.ts';
import { createEngine } from '../../src/engine/direct.ts';
import { HyperFormulaEngine } from '../../src/engine/hyperformula-engine.ts';
import { RecordStore } from '../../src/engine/record-store.ts';
import { sheetWith, told, typed } from './sheet.ts';

let runs = 0;

const described = { source: { source: 'own', at: '' }, example: { formula: '=1', gives: 1 } } as const;
const number = { quantity: 'ratio', summary: 'a number' } as const;

/** Functions that misbehave, and one that counts how often it runs. */
const trials: readonly AnyFunction[] = [
  define({
    ...described,
    name: 'TRIAL.THROW',
    summary: 'Throws.',
    parameters: { number },
    returns: number,
    compute: ({ number: given }) => {
      if (given > 1) throw new Error('too much');
      return given;
    },
  }),
  define({
    ...described,
    name: 'TRIAL.REFUSE',
    summary: 'Refuses.',
    parameters: { number },
    returns: number,
    compute: () => new Problem(say`Nothing will do; give it up.`, 'number'),
  }),
  define({
    ...described,
    name: 'TRIAL.INFINITE',
    summary: 'Gives no finite number.',
    parameters: { number },
    returns: number,
    compute: ({ number: given }) => 1 / (given - given),
  }),
  define({
    ...described,
    name: 'TRIAL.COLUMN',
    summary: 'Gives as many numbers as there are cells.',
    parameters: { cells: { table: true, summary: 'cells' } },
    returns: { quantity: 'ratio', column: true, summary: 'numbers' },
    compute: ({ cells }) => cells.flat().map((_, index) => index + 1),
  }),
  define({
    ...described,
    name: 'TRIAL.CURVE',
    summary: 'A flat curve.',
    parameters: { number },
    returns: { record: 'curve', summary: 'curve' },
    compute: ({ number: given }): Curve => {
      runs++;
      const y = new Float64Array(frequencies.length).fill(given);
      return { kind: 'curve', title: `At ${String(given)}`, quantity: 'level', y, from: 10, to: 40_000 };
    },
  }),
  define({
    ...described,
    name: 'TRIAL.F3',
    summary: 'The first value of a curve.',
    parameters: { curve: { record: 'curve', summary: 'curve' } },
    returns: number,
    compute: ({ curve }) => {
      runs++;
      return curve.y[0] ?? 0;
    },
  }),
];

const trial = (store?: RecordStore): HyperFormulaEngine => new HyperFormulaEngine(store, trials);

describe('a function of the catalogue', () => {
  test('that throws is a problem of its cell alone, and everything else is calculated', async () => {
    const engine = trial();
    const cells = { A1: '1', B1: '=TRIAL.THROW(A1)', C1: '=B1+1', D1: '=A1*10' };
    const all = await told(engine, sheetWith(cells));
    expect([all.number('B1'), all.number('C1')]).toEqual([1, 2]);
    all.take(await engine.write([typed('A1', '2')]));
    expect(all.message('B1')).toMatch(/^TRIAL\.THROW has failed inside \(Error: too much\)\./);
    expect(all.value('C1')).toMatchObject({ kind: 'problem', origin: { sheet: 's', cell: 'B1' } });
    expect(all.number('D1')).toBe(20);
    all.take(await engine.write([typed('A1', '0.5')]));
    expect([all.number('B1'), all.number('C1')]).toEqual([0.5, 1.5]);
  });

  test('that refuses names itself and the argument', async () => {
    const all = await told(trial(), sheetWith({ A1: '=TRIAL.REFUSE(1)' }));
    expect(all.message('A1')).toBe('TRIAL.REFUSE, number (a number): Nothing will do; give it up.');
  });

  test('never gives a number that is none', async () => {
    const all = await told(trial(), sheetWith({ A1: '=TRIAL.INFINITE(1)' }));
    expect(all.message('A1')).toBe('TRIAL.INFINITE has no finite result for these arguments.');
  });

  test('gives a column as long as its range has cells, whichever way they lie', async () => {
    const all = await told(trial(), sheetWith({ B1: '7', A3: '=TRIAL.COLUMN(B1:E1)', A7: '9', B3: '=A6*2' }));
    expect(['A3', 'A4', 'A5', 'A6', 'A7', 'B3'].map((cell) => all.number(cell))).toEqual([1, 2, 3, 4, 9, 8]);
  });
});

describe('records', () => {
  test('stop what follows from being calculated where they are the same', async () => {
    const engine = trial();
    await engine.load(sheetWith({ A1: '1.04', B1: '=ROUND(A1,1)', C1: '=TRIAL.CURVE(B1)', D1: '=TRIAL.F3(C1)' }));
    runs = 0;
    const { cells } = await engine.write([typed('A1', '1.01')]);
    expect(cells.map(({ cell }) => cell)).toEqual(['A1']);
    expect(runs).toBe(0);
    await engine.write([typed('A1', '1.2')]);
    expect(runs).toBe(2);
  });

  test('go through the functions of the engine as what they are', async () => {
    const formulas = ['=IF(TRUE, C1, 0)', '=IFERROR(C1, 0)', '=CHOOSE(1, C1, 2)', '=INDEX(C1:C1, 1)', '=C1'];
    const cells = Object.fromEntries(formulas.map((formula, index) => [`D${String(index + 1)}`, formula]));
    const all = await told(trial(), sheetWith({ ...cells, C1: '=TRIAL.CURVE(3)' }));
    for (const cell of Object.keys(cells)) expect(all.value(cell)).toEqual(all.value('C1'));
  });

  test('show their title in a text, and nothing of how they travel', async () => {
    const engine = trial();
    const cells = {
      C1: '=TRIAL.CURVE(3)',
      D1: '="Curve: "&C1&"."',
      D2: '=LEFT(C1, 2)',
      D3: '=UPPER(C1)&"\uE0000\uE001"',
    };
    const all = await told(engine, sheetWith(cells));
    expect(all.value('D1')).toEqual({ kind: 'text', text: 'Curve: At 3.' });
    for (const { value } of all.states.values()) {
      expect(JSON.stringify(value.kind === 'record' ? value.kind : value)).not.toMatch(/[\uE000-\uE004]/);
    }
  });

  test('are no number, and typed marks are no records', async () => {
    const all = await told(
      trial(),
      sheetWith({ C1: '=TRIAL.CURVE(3)', D1: '=IF(TRUE, C1, 1)*2', D2: '\uE0000\uE001' }),
    );
    expect(all.value('D1').kind).toBe('problem');
    expect(all.value('D2')).toMatchObject({ kind: 'text' });
  });

  test('do not pile up over thousands of edits', async () => {
    const store = new RecordStore();
    const engine = trial(store);
    const cells = Object.fromEntries(
      Array.from({ length: 20 }, (_, index) => [`C${String(index + 1)}`, `=TRIAL.CURVE(A1+${String(index)})`]),
    );
    const all = await told(engine, sheetWith({ ...cells, A1: '0', D1: '=TRIAL.F3(TRIAL.CURVE(A1))' }));
    let most = 0;
    for (let edit = 1; edit <= 2000; edit++) {
      all.take(await engine.write([typed('A1', String(edit))]));
      most = Math.max(most, store.size);
    }
    expect(most).toBeLessThan(400);
    expect(all.number('D1')).toBe(2000);
    expect(all.value('C20')).toMatchObject({ record: { title: 'At 2019' } });
  });
});

describe('changes', () => {
  test('are only what changed', async () => {
    const engine = createEngine();
    const sheets = sheetWith({ A1: '5', B1: '=A1+1', C1: '=MAX(A1, 0)/MAX(A1, 0)' });
    await engine.load(sheets);
    const cellsOf = async (text: string): Promise<string[]> =>
      (await engine.write([typed('A1', text)])).cells.map(({ cell }) => cell).toSorted();
    expect((await engine.load(sheets)).cells).toEqual([]);
    expect(await cellsOf('5')).toEqual([]);
    expect(await cellsOf('6')).toEqual(['A1', 'B1']);
    expect(await cellsOf('6.0')).toEqual([]);
    expect(await cellsOf('6 L')).toEqual(['A1', 'B1']);
  });

  test('tell an empty state for what is cleared, and for a sheet that goes', async () => {
    const engine = createEngine();
    const [sheet] = sheetWith({ A1: '5', B1: '=A1' });
    const other = {
      id: 'o',
      name: 'O',
      cells: new Map([
        ['A1', '=S!A1'],
        ['A2', '3'],
      ]),
      names: new Map<string, string>(),
    };
    const all = await told(engine, sheet ? [sheet, other] : []);
    all.take(await engine.write([typed('B1', '')]));
    expect(all.state('B1')).toBeUndefined();
    all.take(await engine.load([other]));
    expect([...all.states.keys()].toSorted()).toEqual(['o!A1', 'o!A2']);
    expect(all.states.get('o!A1')?.value).toMatchObject({ message: expect.stringContaining('no sheet called “S”') });
    all.take(await engine.load(sheet ? [sheet, other] : []));
    expect(all.states.get('o!A1')?.value).toEqual({ kind: 'number', value: 5 });
  });

  test('follow a name that moves, and a sheet that is renamed', async () => {
    const engine = createEngine();
    const [sheet] = sheetWith({ A1: '5 L', A2: '7 Hz', B1: '=Low*2' }, { Low: 'A1' });
    const all = await told(engine, sheet ? [sheet] : []);
    expect(all.state('B1')?.type).toMatchObject({ quantity: 'volume' });
    all.take(await engine.load(sheet ? [{ ...sheet, names: new Map([['low', 'A2']]) }] : []));
    expect(all.number('B1')).toBe(14);
    expect(all.state('B1')?.type).toMatchObject({ quantity: 'frequency' });
    const moved = {
      ...sheet,
      name: 'T',
      cells: new Map(sheet?.cells).set('B1', '=T!A2'),
      names: new Map<string, string>(),
    };
    all.take(await engine.load(sheet ? [{ ...sheet, ...moved }] : []));
    expect(all.number('B1')).toBe(7);
  });

  test('are told of cells that follow through names and ranges', async () => {
    const engine = createEngine();
    await engine.load(sheetWith({ A1: '5', B1: '=Low*2', B2: '=SUM(A1:A3)', B3: '=B1' }, { Low: 'A1' }));
    const dependents = await engine.dependents({ sheet: 's', cell: 'A1' });
    expect(dependents.map(({ cell }) => cell).toSorted()).toEqual(['B1', 'B2']);
  });

  test('are as they were after another text was probed, which tells of the verdicts it would change', async () => {
    const engine = createEngine();
    const check = '=CHECK.AT_MOST(A1,5,6,"Low","Turn it down.")';
    const all = await told(engine, sheetWith({ A1: '5', B1: check, B2: '=A1*2' }));
    for (const [text, expected] of [
      ['9', [['B1', 'fail']]],
      ['5.5', [['B1', 'caution']]],
      ['5', []],
    ] as const) {
      const cells = await engine.probe({ sheet: 's', cell: 'A1', text });
      const statuses = cells.map(({ cell, value }) => [
        cell,
        value.kind === 'record' && value.record.kind === 'verdict' && value.record.status,
      ]);
      expect(statuses).toEqual(expected);
    }
    await engine.probe({ sheet: 's', cell: 'A1', text: '7' });
    expect(await engine.evaluate('s', '=B2')).toMatchObject({ value: { value: 10 } });
    await engine.probe({ sheet: 's', cell: 'A1', text: '=A2' });
    expect(await engine.dependents({ sheet: 's', cell: 'A2' })).toEqual([]);
    await engine.probe({ sheet: 's', cell: 'A1', text: '7' });
    await new Promise((resolve) => setTimeout(resolve, 60));
    expect(await engine.write([{ sheet: 's', cell: 'A1', text: '5' }])).toMatchObject({ cells: [] });
    all.take(await engine.write([{ sheet: 's', cell: 'A1', text: '6' }]));
    expect(all.number('B2')).toBe(12);
  });
});

describe('when the engine fails inside', () => {
  afterEach(() => void vi.restoreAllMocks());

  test('the written formula says so, nothing else is lost, and the next edit tries again', async () => {
    const engine = createEngine();
    const all = await told(engine, sheetWith({ A1: '5', B1: '=A1+1', C1: '=B1*2' }));
    const failing = vi.spyOn(HyperFormula.prototype, 'batch').mockImplementationOnce(function (
      this: HyperFormula,
      run,
    ) {
      failing.mockRestore();
      this.batch(run);
      throw new Error('broken');
    });
    all.take(await engine.write([typed('B1', '=A1+2')]));
    expect(all.message('B1')).toMatch(/^The calculation engine failed here \(Error: broken\)\./);
    expect(all.value('C1')).toMatchObject({ kind: 'problem', origin: { cell: 'B1' } });
    all.take(await engine.write([typed('A1', '6')]));
    expect(['A1', 'B1', 'C1'].map((cell) => all.number(cell))).toEqual([6, 8, 16]);
  });

  test('a typed number stays as typed', async () => {
    const engine = createEngine();
    const all = await told(engine, sheetWith({ A1: '5', B1: '=A1+1' }));
    const failing = vi.spyOn(HyperFormula.prototype, 'batch').mockImplementationOnce(function (
      this: HyperFormula,
      run,
    ) {
      failing.mockRestore();
      this.batch(run);
      throw new Error('broken');
    });
    all.take(await engine.write([typed('A1', '6')]));
    expect([all.number('A1'), all.number('B1')]).toEqual([6, 7]);
  });
});

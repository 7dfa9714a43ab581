import { describe, expect, test } from 'vitest';
import { say } from '../../functions/values/say.ts';
import { CellStates } from '../../src/document/cell-states.ts';
import type { CellState, CellValue } from '../../src/engine/types.ts';

const state = (cell: string, value: CellValue, isVerdict = false): CellState => ({
  sheet: 's',
  cell,
  value,
  type: isVerdict ? { kind: 'record', record: 'verdict' } : { kind: 'unknown' },
  findings: [],
});
const verdict: CellValue = {
  kind: 'record',
  record: { kind: 'verdict', status: 'good', word: 'Good', reason: say`It fits.` },
};
const number: CellValue = { kind: 'number', value: 1 };
const timing = { compile: 0, evaluate: 0 };

describe('the cells that are judged', () => {
  test('are those that hold a verdict, and those that should and cannot', () => {
    const states = new CellStates();
    const problem: CellValue = { kind: 'problem', message: 'It has none.' };
    states.take({ cells: [state('A1', verdict), state('A2', problem, true), state('A3', number)], timing });
    expect([...states.judged('s')]).toEqual(['A1', 'A2']);
    const before = states.copy();
    states.take({ cells: [state('A1', number), state('A2', { kind: 'empty' }), state('A3', verdict)], timing });
    expect([[...states.judged('s')], [...before.judged('s')]]).toEqual([['A3'], ['A1', 'A2']]);
    states.keep(new Set());
    expect([...states.judged('s')]).toEqual([]);
  });
});

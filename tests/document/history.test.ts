import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isRefusal } from '../../src/document/command.ts';
import { History } from '../../src/document/history.ts';
import type { OctavoDocument } from '../../src/document/types.ts';
import { anyCommands, sampleDocument, type Making } from './samples.ts';

/** All histories on the way, the first included; refused commands leave no trace. */
function walked(commands: readonly Making[], group?: string): History[] {
  const way = [new History(sampleDocument())];
  for (const make of commands) {
    const current = way.at(-1) ?? new History(sampleDocument());
    const command = make(current.document);
    const next = command && current.do(command, group);
    if (next && !isRefusal(next) && next !== current) way.push(next);
  }
  return way;
}

const write =
  (cell: string, text: string): Making =>
  () => ({ kind: 'write', sheet: 'one', texts: new Map([[cell, text]]) });
const textAt = ({ sheets }: OctavoDocument, cell: string): string | undefined => sheets[0]?.cells.get(cell)?.text;

describe('the history', () => {
  test('undoing everything gives every document on the way, and redoing gives them again', () => {
    fc.assert(
      fc.property(anyCommands(), (commands) => {
        const way = walked(commands);
        let current = way.at(-1) ?? new History(sampleDocument());
        for (const earlier of way.toReversed().slice(1)) {
          current = current.undo();
          expect(current.document).toEqual(earlier.document);
        }
        expect(current.canUndo).toBe(false);
        expect(current.document).toEqual(sampleDocument());
        for (const later of way.slice(1)) {
          current = current.redo();
          expect(current.document).toEqual(later.document);
        }
        expect(current.canRedo).toBe(false);
      }),
      { numRuns: 300 },
    );
  });

  test('no command changes the document that it is given', () => {
    fc.assert(
      fc.property(anyCommands(), (commands) => {
        const given = sampleDocument();
        const history = commands.reduce((held: History, make) => {
          const command = make(held.document);
          const next = command && held.do(command);
          return next && !isRefusal(next) ? next : held;
        }, new History(given));
        expect(given).toEqual(sampleDocument());
        expect(history.document.sheets.length).toBeGreaterThan(0);
      }),
      { numRuns: 100 },
    );
  });

  test('a new command after undoing leaves nothing to redo', () => {
    const [, , third] = walked([write('B4', '40 Hz'), write('B4', '41 Hz')]);
    const undone = third?.undo();
    const next = undone?.do({ kind: 'title', title: 'Other' });
    expect(undone?.canRedo).toBe(true);
    expect(next && !isRefusal(next) && next.canRedo).toBe(false);
  });

  test('commands of one group are one step back', () => {
    const last = walked([write('B4', '40 Hz'), write('B4', '41 Hz'), write('B5', '5')], 'drag').at(-1);
    const undone = last?.undo();
    expect(undone?.document).toEqual(sampleDocument());
    expect(undone?.canUndo).toBe(false);
    expect(textAt(undone?.redo().document ?? sampleDocument(), 'B4')).toBe('41 Hz');
  });

  test('a refused command changes nothing and says why', () => {
    const history = new History(sampleDocument());
    expect(history.do({ kind: 'rename-sheet', sheet: 'one', name: 'box' })).toEqual({
      refused: 'There is already a sheet "Box"; choose another name.',
    });
  });

  test('a command without effect is no step', () => {
    const history = new History(sampleDocument());
    expect(history.do({ kind: 'write', sheet: 'one', texts: new Map([['B4', '38 Hz']]) })).toBe(history);
  });

  test('of several commands in one, a refusal undoes all', () => {
    const history = new History(sampleDocument());
    const outcome = history.do({
      kind: 'all',
      commands: [
        { kind: 'title', title: 'Other' },
        { kind: 'rename-sheet', sheet: 'one', name: '' },
      ],
    });
    expect(outcome).toEqual({ refused: expect.stringContaining('at least one character') });
    expect(history.document.title).toBe('Sample');
  });
});

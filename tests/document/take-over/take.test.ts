import { describe, expect, test } from 'vitest';
import { apply } from '../../../src/document/apply.ts';
import { isRefusal } from '../../../src/document/command.ts';
import { takeOver } from '../../../src/document/take-over/command.ts';
import { takeFrom } from '../../../src/document/take-over/take.ts';
import type { Cell, Sheet } from '../../../src/document/types.ts';
import { openTemplate } from '../../templates/open-template.ts';
import { starterDocument } from '../../templates/starter-document.ts';
import { templates } from '../../../templates/index.ts';

const sheet = (name: string, cells: Record<string, Cell | string>, names: Record<string, string> = {}): Sheet => ({
  id: name,
  name,
  summary: '',
  rows: 40,
  columns: Array.from({ length: 6 }, () => ({ width: 100 })),
  cells: new Map(Object.entries(cells).map(([cell, held]) => [cell, typeof held === 'string' ? { text: held } : held])),
  names: new Map(Object.entries(names)),
  plots: [],
});
const driver = (column: string, name: string, fs: string): Record<string, string> => ({
  A1: 'Name',
  A2: 'Resonance Fs',
  A3: 'Electrical Q, Qes',
  A4: 'Coil resistance Re',
  [`${column}1`]: name,
  [`${column}2`]: fs,
  [`${column}3`]: '0.4',
  [`${column}4`]: '5.8 Ω',
  [`${column}5`]: `=DRIVER(A1:A4,${column}1:${column}4)`,
});
const nothing = (): undefined => undefined;

describe('what a sheet takes from another', () => {
  test('is each driver, where the same name gathers one', () => {
    const from = sheet(
      'from',
      { ...driver('B', 'Low one', '31 Hz'), ...driver('C', 'High one', '900 Hz') },
      { Woofer: 'B5', Tweeter: 'C5' },
    );
    const into = sheet(
      'into',
      { ...driver('B', 'x', '1200 Hz'), ...driver('D', 'y', '50 Hz') },
      { Tweeter: 'B5', Woofer: 'D5' },
    );
    const { texts } = takeFrom([from], into, nothing);
    expect([texts.get('B1'), texts.get('B2'), texts.get('D1'), texts.get('D2')]).toEqual([
      'High one',
      '900 Hz',
      'Low one',
      '31 Hz',
    ]);
  });

  test('is the first driver where no name is the same; the others are told', () => {
    const from = sheet(
      'from',
      { ...driver('B', 'Low one', '31 Hz'), ...driver('C', 'High one', '900 Hz') },
      { Woofer: 'B5', Tweeter: 'C5' },
    );
    const into = sheet('into', driver('B', 'x', '50 Hz'), { Unit: 'B5' });
    const { texts, left } = takeFrom([from], into, nothing);
    expect(texts.get('B2')).toBe('31 Hz');
    const why = 'The new sheet has no driver called Tweeter.';
    expect(left).toEqual([{ what: 'Tweeter', text: 'High one', why, cell: 'C5' }]);
  });

  test('is an input by the name of its cell, without regard to case and place', () => {
    const from = sheet('from', { A9: 'Litres', B9: '12.1 L' }, { Volume: 'B9' });
    const into = sheet('into', { A3: 'Net volume', C3: '20 L' }, { volume: 'C3' });
    const { texts, taken } = takeFrom([from], into, nothing);
    expect([...texts]).toEqual([['C3', '12.1 L']]);
    expect(taken).toEqual([{ what: 'Net volume', text: '12.1 L', cell: 'C3' }]);
  });

  test('is a computed number as it is shown, and never over a formula', () => {
    const from = sheet('from', { B9: '=10+2', B10: '7 Hz' }, { Volume: 'B9', Tuning: 'B10' });
    const into = sheet('into', { C3: '20 L', C4: '=C3*2' }, { Volume: 'C3', Tuning: 'C4' });
    const { texts } = takeFrom([from], into, (cell) => (cell === 'B9' ? '12 L' : undefined));
    expect([...texts]).toEqual([['C3', '12 L']]);
  });

  test('is an input without a name by its label, where each sheet has it once', () => {
    const watts: Cell = { text: '70 W', range: ['1 W', '500 W'] };
    const from = sheet('from', { A4: 'Amplifier power', B4: watts });
    const into = sheet('into', { A9: 'amplifier power', D9: { ...watts, text: '50 W' } });
    expect([...takeFrom([from], into, nothing).texts]).toEqual([['D9', '70 W']]);
    const twice = sheet('twice', { A4: 'Amplifier power', B4: watts, C4: { ...watts, text: '90 W' } });
    expect(takeFrom([twice], into, nothing).texts.size).toBe(0);
  });

  test('is nothing that does not fit, which is told with the reason', () => {
    const from = sheet(
      'from',
      { A1: 'Slope', B1: 'LR6', A2: 'Spot', B2: '3 mm', A3: 'Own', B3: '4 W' },
      {
        Slope: 'B1',
        Spot: 'B2',
        Own: 'B3',
      },
    );
    const into = sheet(
      'into',
      { B1: { text: 'LR4', choices: ['LR2', 'LR4'] }, B2: '20 Hz' },
      { Slope: 'B1', Spot: 'B2' },
    );
    const { texts, left } = takeFrom([from], into, nothing);
    expect(texts.size).toBe(0);
    expect(left).toEqual([
      { what: 'Slope', text: 'LR6', why: 'The new sheet offers LR2, LR4 there.', cell: 'B1' },
      { what: 'Spot', text: '3 mm', why: 'The new sheet wants a frequency there.', cell: 'B2' },
      { what: 'Own', text: '4 W', why: 'The new sheet has no such input.', cell: 'B3' },
    ]);
  });

  test('is the hand-over as the upper one where the new sheet has two', () => {
    const from = sheet('from', { B1: '2100 Hz' }, { HandOver: 'B1' });
    const into = sheet('into', { B1: '300 Hz', B2: '2000 Hz' }, { LowHandOver: 'B1', HighHandOver: 'B2' });
    expect([...takeFrom([from], into, nothing).texts]).toEqual([['B2', '2100 Hz']]);
  });
});

describe('a sheet made of a starter sheet with what another holds', () => {
  test('stands behind it under a free name, and one step takes it back', () => {
    const document = starterDocument('closed-box-bench');
    const id = document.sheets[0]?.id ?? '';
    const { command, sheet: added, name } = takeOver(document, id, starterDocument('closed-box-bench'), nothing);
    const outcome = apply(document, command);
    if (isRefusal(outcome)) throw new Error(outcome.refused);
    expect(name).toBe('Closed box 2');
    expect(outcome.document.sheets.map((each) => each.id)).toEqual([id, added]);
    const undone = apply(outcome.document, outcome.undo);
    expect(isRefusal(undone) ? undone : undone.document.sheets).toEqual(document.sheets);
  });

  // A driver of one's own, from the check into the box and from there into the vented box: nothing is typed twice.
  test('goes on computing with the driver and the numbers of the one before', async () => {
    const { workbook, write, sheet: first } = await openTemplate('two-driver-check');
    await write({ B4: 'Mine', B5: '30 Hz', B11: '24 g', B12: '7 mm' });
    const over = takeOver(workbook.document, first().id, starterDocument('closed-box-bench'), nothing);
    expect(await workbook.do(over.command)).toBeUndefined();
    const box = workbook.document.sheets[1];
    const woofer = box && workbook.state(box.id, box.names.get('Woofer') ?? '')?.value;
    expect(woofer?.kind === 'record' && woofer.record).toMatchObject({ name: 'Mine', fs: 30, mms: 0.024, xmax: 0.007 });
    expect(over.left.map(({ what }) => what)).toContain('Tweeter');
    const problems = [...(box?.cells.keys() ?? [])].filter(
      (cell) => workbook.state(box?.id ?? '', cell)?.value.kind === 'problem',
    );
    expect(problems).toEqual([]);
    await workbook.undo();
    expect(workbook.document.sheets).toHaveLength(1);
  });
});

test('between any two starter sheets no formula is written over and no input emptied', () => {
  for (const one of templates) {
    for (const other of templates) {
      const from = starterDocument(one.id).sheets[0];
      const into = starterDocument(other.id).sheets[0];
      if (!from || !into) throw new Error('A starter sheet without a sheet.');
      const { texts, taken } = takeFrom([from], into, nothing);
      for (const cell of texts.keys()) expect(into.cells.get(cell)?.text.startsWith('=') ?? false, cell).toBe(false);
      expect(taken.every(({ text }) => text !== '')).toBe(true);
    }
  }
});

test('a sheet takes all that one of its own kind holds', () => {
  for (const id of ['two-driver-check', 'closed-box-bench', 'vented-box']) {
    const [one] = starterDocument(id).sheets;
    if (one) expect(takeFrom([one], { ...one, id: 'other' }, nothing).left, id).toEqual([]);
  }
});

test('the pair that a shortlist looks at is taken over, not the first of its lists', async () => {
  const opened = await openTemplate('shortlist-grid');
  const [into] = starterDocument('two-driver-check').sheets;
  const from = opened.sheet();
  const pickedAt = (cell: string): string | undefined => {
    const value = opened.state(cell)?.value;
    return value?.kind === 'record' && value.record.kind === 'driver' ? value.record.name : undefined;
  };
  const { texts, left } = takeFrom([from], into!, nothing, pickedAt);
  expect([texts.get('B4'), texts.get('C4'), texts.get('C5')]).toEqual(['W-130 A', 'T-28 B', '540 Hz']);
  expect(left.map(({ what }) => what)).not.toContain('Woofer');
});

import { describe, expect, test } from 'vitest';
import { Workbook } from '../../src/document/workbook.ts';
import { SlowEngine } from './slow-engine.ts';
import { started, at, write, valueOf } from './small-workbook.ts';

describe('consequences', () => {
  const listed = (workbook: Workbook) =>
    workbook.consequences.map(({ label, flip, isCause }) => [
      label,
      flip ? `${flip.from} to ${flip.to}` : isCause ? 'cause' : '',
    ]);

  test('come with the cause first, then flipped verdicts, then the greatest change', async () => {
    const { workbook } = await started();
    await workbook.do(write('B4', '60 Hz'));
    expect(listed(workbook)).toEqual([
      ['Resonance, Woofer', 'cause'],
      ['Does it hold?', 'good to fail'],
      ['Twice that', ''],
      ['Sum', ''],
    ]);
    expect(workbook.consequences[0]).toMatchObject({
      before: { kind: 'number', number: '38', unit: 'Hz' },
      after: { kind: 'number', number: '60', unit: 'Hz' },
    });
  });

  test('of a drag are told from its beginning to where it is', async () => {
    const { workbook } = await started();
    for (const value of [40, 70, 60]) await workbook.preview(at('B4'), `${value} Hz`);
    expect(listed(workbook)).toHaveLength(4);
    await workbook.settle();
    expect(workbook.consequences.find(({ label }) => label === 'Twice that')).toMatchObject({
      before: { number: '76' },
      after: { number: '120' },
    });
  });

  test('of undoing are the same the other way round', async () => {
    const { workbook } = await started();
    await workbook.do(write('B4', '60 Hz'));
    await workbook.undo();
    expect(listed(workbook)[1]).toEqual(['Does it hold?', 'fail to good']);
  });

  test('stay while only the unit system or the title changes', async () => {
    const { workbook } = await started();
    await workbook.do(write('B4', '60 Hz'));
    await workbook.do({ kind: 'title', title: 'Other' });
    expect(listed(workbook)).toHaveLength(4);
  });
});

describe('a baseline', () => {
  test('tells the distance from the moment it was pinned', async () => {
    const { workbook } = await started();
    await workbook.pin();
    expect(workbook.distance).toEqual([]);
    await workbook.do(write('B4', '60 Hz'));
    await workbook.do(write('B8', '9'));
    expect(workbook.distance.map(({ label, isCause }) => [label, isCause])).toEqual([
      ['Resonance, Woofer', true],
      ['Plain', true],
      ['Does it hold?', false],
      ['Twice that', false],
      ['Sum', false],
    ]);
    expect(workbook.baselineShown(at('B4'))).toEqual({ kind: 'number', number: '38', unit: 'Hz' });
    expect(workbook.baselineState(at('B5'))?.value).toEqual({ kind: 'number', value: 76 });
  });

  test('is computed again when the document is opened', async () => {
    const { workbook } = await started();
    await workbook.pin();
    await workbook.do(write('B4', '60 Hz'));
    const again = new Workbook(new SlowEngine(), workbook.document);
    await again.ready;
    expect(again.baselineState(at('B5'))?.value).toEqual({ kind: 'number', value: 76 });
    expect(valueOf(again, 'B5')).toBe(120);
    expect(again.distance).toHaveLength(4);
  });

  test('follows inserted rows', async () => {
    const { workbook } = await started();
    await workbook.pin();
    await workbook.do({ kind: 'insert', sheet: 's', axis: 'rows', at: 0, count: 1 });
    expect(workbook.baselineState(at('B5'))?.value).toEqual({ kind: 'number', value: 38 });
    expect(workbook.distance).toEqual([]);
  });

  test('is gone when unpinned, and back when that is undone', async () => {
    const { workbook } = await started();
    await workbook.pin();
    await workbook.do(write('B4', '60 Hz'));
    await workbook.unpin();
    expect([workbook.distance.length, workbook.baselineState(at('B5'))]).toEqual([0, undefined]);
    await workbook.undo();
    expect(workbook.distance).toHaveLength(4);
  });
});

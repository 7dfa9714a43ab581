import { describe, expect, test } from 'vitest';
import { firstPlaces } from '../../src/document/copied-text.ts';
import { Workbook } from '../../src/document/workbook.ts';
import type { WorkbookChange } from '../../src/document/workbook-change.ts';
import { settled, SlowEngine } from './slow-engine.ts';
import { document, started, at, write, textOf, valueOf } from './small-workbook.ts';

describe('a workbook', () => {
  test('shows nothing before the engine has answered, and everything after', async () => {
    const engine = new SlowEngine();
    engine.hold();
    const workbook = new Workbook(engine, document());
    expect(workbook.shown('s', 'B4')).toBeUndefined();
    await engine.release();
    await workbook.ready;
    expect(workbook.shown('s', 'B4')).toEqual({ kind: 'number', number: '38', unit: 'Hz' });
    expect(workbook.shown('s', 'F9')).toEqual({ kind: 'empty' });
    expect(workbook.asText('s', 'B4')).toBe('38 Hz');
    expect(workbook.asText('s', 'D7')).toBe('Good: The value is 76.');
  });

  test('has an edit in its document at once, and its results when the promise is kept', async () => {
    const { engine, workbook } = await started();
    engine.hold();
    const done = workbook.do(write('B4', '40 Hz'));
    expect(textOf(workbook, 'B4')).toBe('40 Hz');
    expect(workbook.shown('s', 'B4')).toEqual({ kind: 'waiting', text: '40 Hz' });
    expect(valueOf(workbook, 'B5')).toBe(76);
    await engine.release();
    expect(await done).toBeUndefined();
    expect(valueOf(workbook, 'B5')).toBe(80);
    expect(engine.asked).toEqual(['B4: 40 Hz']);
  });

  test('tells the engine of edits in the order in which they were made', async () => {
    const { engine, workbook } = await started();
    engine.hold();
    const all = ['40 Hz', '41 Hz', '42 Hz'].map((text) => workbook.do(write('B4', text)));
    await engine.release();
    await Promise.all(all);
    expect(engine.asked).toEqual(['B4: 40 Hz', 'B4: 41 Hz', 'B4: 42 Hz']);
    expect(valueOf(workbook, 'B5')).toBe(84);
  });

  test('gives a bare number the unit of the cell', async () => {
    const { workbook } = await started();
    await workbook.do(write('B4', '45'));
    expect(textOf(workbook, 'B4')).toBe('45 Hz');
    await workbook.do(write('B8', '9'));
    expect(textOf(workbook, 'B8')).toBe('9');
    await workbook.do({ kind: 'paste-text', to: at('B4'), text: '50\t900' });
    expect([textOf(workbook, 'B4'), textOf(workbook, 'C4')]).toEqual(['50 Hz', '900 Hz']);
    await workbook.do(write('B4', '1 kHz'));
    expect(textOf(workbook, 'B4')).toBe('1 kHz');
  });

  test('undoes and redoes with the results following', async () => {
    const { workbook } = await started();
    await workbook.do(write('B4', '40 Hz'));
    await workbook.undo();
    expect([textOf(workbook, 'B4'), valueOf(workbook, 'B5'), workbook.canUndo]).toEqual(['38 Hz', 76, false]);
    await workbook.redo();
    expect([textOf(workbook, 'B4'), valueOf(workbook, 'B5'), workbook.canRedo]).toEqual(['40 Hz', 80, false]);
  });

  test('gives the reason of a refusal, and leaves everything as it was', async () => {
    const { engine, workbook } = await started();
    expect(await workbook.do({ kind: 'delete-sheet', sheet: 's' })).toEqual({
      refused: expect.stringContaining('only sheet'),
    });
    expect(engine.asked).toEqual([]);
    expect(workbook.canUndo).toBe(false);
  });

  test('tells which cells changed', async () => {
    const { workbook } = await started();
    const changes: WorkbookChange[] = [];
    workbook.addEventListener('change', (event) => changes.push((event as CustomEvent<WorkbookChange>).detail));
    await workbook.do(write('B4', '40 Hz'));
    expect(changes[0]).toEqual({ document: true, places: [at('B4')] });
    expect(changes[1]?.places).toEqual(expect.arrayContaining([at('B4'), at('B5'), at('D6')]));
    await workbook.do({ kind: 'system', system: 'imperial' });
    expect(changes[2]).toEqual({ document: true, places: 'all' });
  });

  test('goes on after the engine failed, by telling it everything again', async () => {
    const { engine, workbook } = await started();
    engine.failNext();
    await expect(workbook.do(write('B4', '40 Hz'))).rejects.toThrow('stumbled');
    expect(textOf(workbook, 'B4')).toBe('40 Hz');
    await workbook.do(write('C4', '900 Hz'));
    expect(engine.asked.at(-1)).toBe('load');
    expect([valueOf(workbook, 'B5'), valueOf(workbook, 'D6')]).toEqual([80, 980]);
  });

  test('shows what was typed while the engine begins anew', async () => {
    const { engine, workbook } = await started();
    engine.failNext();
    await expect(workbook.do(write('B4', '40 Hz'))).rejects.toThrow('stumbled');
    engine.hold();
    const done = workbook.do(write('C4', '900 Hz'));
    await engine.releaseOne();
    expect(workbook.shown('s', 'B8')).toEqual({ kind: 'waiting', text: '7' });
    expect(workbook.shown('s', 'F9')).toEqual({ kind: 'empty' });
    await engine.release();
    await done;
    expect(workbook.shown('s', 'B8')).toEqual({ kind: 'number', number: '7', unit: '' });
  });

  test('takes another document in its place, with a past of its own', async () => {
    const { workbook } = await started();
    await workbook.do(write('B4', '40 Hz'));
    await workbook.replace({ ...document(), id: 'other' });
    expect([workbook.document.id, valueOf(workbook, 'B5'), workbook.canUndo]).toEqual(['other', 76, false]);
  });

  test('gives the shown texts of all cells, for the next first paint', async () => {
    const { workbook } = await started();
    const texts = workbook.shownTexts().get('s');
    expect([texts?.size, texts?.get('A5'), texts?.get('B5')]).toEqual([11, 'Twice that', '76']);
    const first = workbook.shownTexts(firstPlaces(workbook.document, 4)).get('s');
    expect([...(first?.keys() ?? [])]).toEqual([...(texts?.keys() ?? [])].filter((cell) => Number(cell.slice(1)) <= 4));
  });
});

describe('trying out', () => {
  test('lets everything follow and leaves the document', async () => {
    const { workbook } = await started();
    await workbook.preview(at('B4'), '60 Hz');
    expect([textOf(workbook, 'B4'), valueOf(workbook, 'B5')]).toEqual(['38 Hz', 120]);
    expect(workbook.shown('s', 'B4')).toEqual({ kind: 'number', number: '60', unit: 'Hz' });
    expect(workbook.canUndo).toBe(false);
  });

  test('keeps only the newest of the texts that come while one is computed', async () => {
    const { engine, workbook } = await started();
    engine.hold();
    const all = [41, 42, 43, 44, 45].map((value) => workbook.preview(at('B4'), `${value} Hz`));
    await engine.releaseOne();
    all.push(...[46, 47, 48].map((value) => workbook.preview(at('B4'), `${value} Hz`)));
    await engine.release();
    await Promise.all(all);
    expect(engine.asked.length).toBeLessThanOrEqual(3);
    expect(engine.asked.at(-1)).toBe('B4: 48 Hz');
    expect(valueOf(workbook, 'B5')).toBe(96);
  });

  test('becomes one step when it settles', async () => {
    const { workbook } = await started();
    for (const value of [40, 50, 60]) await workbook.preview(at('B4'), `${value} Hz`);
    await workbook.settle();
    expect([textOf(workbook, 'B4'), valueOf(workbook, 'B5')]).toEqual(['60 Hz', 120]);
    await workbook.undo();
    expect([textOf(workbook, 'B4'), valueOf(workbook, 'B5'), workbook.canUndo]).toEqual(['38 Hz', 76, false]);
  });

  test('puts back what was there when it is cancelled', async () => {
    const { workbook } = await started();
    await workbook.do(write('B8', '8'));
    const before = workbook.consequences;
    await workbook.preview(at('B4'), '60 Hz');
    await workbook.cancel();
    expect([textOf(workbook, 'B4'), valueOf(workbook, 'B5'), valueOf(workbook, 'D7')]).toEqual(['38 Hz', 76, 'record']);
    expect(workbook.consequences).toEqual(before);
    expect(workbook.previewed).toBeUndefined();
  });

  test('settles before another command, and before trying out in another cell', async () => {
    const { engine, workbook } = await started();
    engine.hold();
    const all: Promise<unknown>[] = [workbook.preview(at('B4'), '60 Hz'), workbook.preview(at('C4'), '900 Hz')];
    all.push(workbook.do(write('B8', '9')));
    await engine.release();
    await Promise.all(all);
    await settled();
    expect(['B4', 'C4', 'B8'].map((cell) => textOf(workbook, cell))).toEqual(['60 Hz', '900 Hz', '9']);
    expect([valueOf(workbook, 'B5'), valueOf(workbook, 'D6'), valueOf(workbook, 'B8')]).toEqual([120, 1020, 9]);
  });

  test('is given up by undoing, and the step before stays', async () => {
    const { workbook } = await started();
    await workbook.do(write('B4', '40 Hz'));
    await workbook.preview(at('C4'), '900 Hz');
    await workbook.undo();
    expect([valueOf(workbook, 'C4'), valueOf(workbook, 'B4')]).toEqual([850, 40]);
  });

  test('of a bare number keeps the unit', async () => {
    const { workbook } = await started();
    await workbook.preview(at('B4'), '61');
    await workbook.settle();
    expect(textOf(workbook, 'B4')).toBe('61 Hz');
  });
});

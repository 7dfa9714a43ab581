import { describe, expect, test } from 'vitest';
import { lessonOf } from '../../src/app/pages/lesson-source.ts';
import { shownText } from '../../src/document/show-cell.ts';
import { openTemplate } from './open-template.ts';

const step = async (number: number, texts: Record<string, string> = {}) => {
  const opened = await openTemplate('first-speaker');
  await opened.write(texts);
  const found = lessonOf(opened.workbook, opened.sheet())[number - 1];
  if (!found) throw new Error(`There is no step ${number}.`);
  return found;
};

describe('the answers of the first speaker lesson', () => {
  // From the acceptance table for these drivers; hertz and litres within 2 %, dB 0.2, octaves 0.03. The watts from the same
  // table (47 W, and 133 W with 6 dB per doubling) follow from a level that may be 0.2 dB off, which is 4.7 % of power.
  test.each([
    ['LowestHandOver', 1700, 34],
    ['HighestHandOver', 1923, 38],
    ['WindowWidth', 0.18, 0.03],
    ['D49', 0.8, 0.2],
    ['Pad', 5.3, 0.2],
    ['SystemLevel', 84.7, 0.2],
    ['D51', 523, 10],
    ['Litres', 0.0121, 0.00024],
    ['Fall3', 69.6, 1.4],
    ['D58', 40.2, 0.8],
    ['Watts', 47, 2.2],
    ['D63', 133, 6.3],
  ] as const)('%s is %d', async (cell, expected, tolerance) => {
    const opened = await openTemplate('first-speaker');
    expect(Math.abs(opened.number(cell) - expected), opened.text(cell)).toBeLessThanOrEqual(tolerance);
  });
});

describe('the lesson', () => {
  test('has eight steps, each with question, answer, reason and way on, and no guess yet', async () => {
    const { workbook, sheet } = await openTemplate('first-speaker');
    const steps = lessonOf(workbook, sheet());
    expect(steps).toHaveLength(8);
    for (const { title, text, why, next, guess, reveal } of steps) {
      expect(
        [title, text, why, next].every((words) => words.length > 10 && !/[{}]/u.test(words)),
        title,
      ).toBe(true);
      expect(guess.text).toBe('');
      expect(reveal.length, title).toBeGreaterThan(0);
    }
  });

  test('puts the numbers of the sheet into its questions', async () => {
    expect((await step(1)).text).toContain('T-25 A resonates at 850 Hz and moves 0.35 mm');
    expect((await step(1, { C4: 'Mine', C5: '900 Hz' })).text).toContain('Mine resonates at 900 Hz');
  });

  test.each([
    ['0.8 dB', 'Too low'],
    ['5 dB', 'Close enough'],
    ['9 dB', 'Too high'],
  ])('says how close a guess of %s for the pad is', async (guess, words) => {
    const { guess: input, reveal } = await step(4, { E48: guess });
    expect(input).toMatchObject({ cell: 'E48', text: guess, unit: 'dB' });
    expect(reveal.map(({ shown }) => shownText(shown))).toContain(words);
  });

  test('advises a proven plan until every line of the check-list is true', async () => {
    const yes = { D67: 'yes', D68: 'yes', D69: 'yes' };
    const advice = async (texts: Record<string, string>): Promise<string> => {
      const [first] = (await step(8, texts)).reveal;
      return first ? shownText(first.shown) : '';
    };
    expect(await advice({})).toBe('a proven plan');
    expect(await advice(yes)).toBe('a proven plan');
    expect(await advice({ ...yes, D70: 'yes' })).toBe('my own design');
    expect((await step(8)).asked.map(({ cell }) => cell)).toEqual(['D67', 'D68', 'D69', 'D70']);
  });

  test('follows rows that come in before it, and loses a step whose guess is deleted', async () => {
    const { workbook, sheet } = await openTemplate('first-speaker');
    const { id } = sheet();
    await workbook.do({ kind: 'insert', sheet: id, axis: 'rows', at: 2, count: 3 });
    expect(sheet().lesson?.[0]).toMatchObject({ guess: 'E39', reveal: ['LowestHandOver', 'F39', 'C40', 'C41'] });
    await workbook.do({ kind: 'delete', sheet: id, axis: 'rows', at: 38, count: 1 });
    expect(sheet().lesson).toHaveLength(7);
    await workbook.undo();
    await workbook.undo();
    expect(sheet().lesson?.[0]).toMatchObject({ guess: 'E36' });
    await workbook.do({ kind: 'rename-name', sheet: id, from: 'Pad', to: 'Loss' });
    expect(sheet().lesson?.[3]?.reveal[0]).toBe('Loss');
  });
});

import { expect, test } from 'vitest';
import type { Person } from './person.ts';
import { during } from './visit.ts';

const telephone = { width: 390, height: 844 };

/** The words of the answer over the sheet, where all of it is in view. */
const answer = ({ page }: Person): Promise<string | undefined> =>
  page.evaluate(() => {
    const line = document.querySelector('octavo-app')?.shadowRoot?.querySelector<HTMLElement>('.answer');
    if (!line?.checkVisibility()) return undefined;
    const { left, right, top, bottom } = line.getBoundingClientRect();
    if (left < 0 || top < 0 || right > innerWidth || bottom > innerHeight) return undefined;
    return `${line.querySelector('verdict-chip')?.word ?? ''}: ${line.textContent.trim()}`;
  });

test('a sheet says its answer over its numbers, and again after an edit', async () => {
  await during(telephone, async ({ person }) => {
    await expect.poll(() => answer(person)).toMatch(/^Tight: Resonance at .* wanted\.$/u);
    await person.type('D24', '4000');
    await expect.poll(() => answer(person)).toMatch(/^Fail: /u);
  });
});

test('the answer leads to its cell, where the whole reason is read', async () => {
  await during(telephone, async ({ person }) => {
    await (await person.seen('>>> .answer'))?.click();
    await person.seen('>>> #cell-E2[aria-selected=true]');
    expect(await person.shownIn('E2')).toMatch(/^Tight /u);
  });
});

test('where the column of verdicts is in view the answer stands there alone', async () => {
  await during({ width: 1440, height: 900 }, async ({ person }) => {
    await person.atRest();
    expect(await answer(person)).toBeUndefined();
    expect(await person.shownIn('E2')).toMatch(/^Tight /u);
  });
});

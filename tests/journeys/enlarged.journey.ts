import { expect, test } from 'vitest';
import { askAbout, told } from './asking.ts';
import { during } from './visit.ts';

/** A window enlarged to twice and four times, the narrowest that must do, a telephone on its side, and a small one. */
const windows = [
  { of: 'twice as large', width: 720, height: 450 },
  { of: 'four times as large', width: 360, height: 225 },
  { of: 'as narrow as can be', width: 320, height: 256 },
  { of: 'a telephone on its side', width: 844, height: 390 },
  { of: 'a small telephone', width: 360, height: 640 },
] as const;

test.each(windows)('$of, the sheet has room, nothing lies over it, and nothing leads sideways', async (shown) => {
  await during(shown, async ({ session, person }) => {
    const { wide, parts } = await session.page.evaluate(() => {
      const app = document.querySelector('octavo-app')?.shadowRoot;
      const boxes = ['top-bar', 'sheet-head', 'sheet-grid', 'aside'].map((name) => {
        const { top = 0, bottom = 0 } = app?.querySelector(name)?.getBoundingClientRect() ?? {};
        return { name, top, bottom };
      });
      return { wide: document.documentElement.scrollWidth, parts: boxes };
    });
    expect(wide).toBe(shown.width);
    for (const [index, { name, top, bottom }] of parts.entries()) {
      expect(top, name).toBeGreaterThanOrEqual(parts[index - 1]?.bottom ?? 0);
      if (name === 'sheet-grid') expect(bottom - top).toBeGreaterThanOrEqual(160);
    }
    // A cell that is gone to is seen.
    await person.goTo('D60');
    const isSeen = (): Promise<boolean> =>
      session.page.evaluate(() => {
        const grid = document.querySelector('octavo-app')?.shadowRoot?.querySelector('sheet-grid')?.shadowRoot;
        const { top = -1, bottom = 0 } = grid?.getElementById('cell-D60')?.getBoundingClientRect() ?? {};
        return top >= 0 && bottom <= innerHeight;
      });
    await expect.poll(isSeen).toBe(true);
  });
});

test('on a telephone, why a question cannot be answered is seen where it was asked', async () => {
  await during({ width: 390, height: 844 }, async ({ session, person }) => {
    await askAbout(person, 'D24');
    await session.page.keyboard.type('which flibber gives wobble?');
    await person.press('Enter');
    expect(await told(person)).toContain('“wobble”');
    const bottom = (): Promise<number> =>
      session.page.evaluate(() => {
        const page = document.querySelector('octavo-app')?.shadowRoot?.querySelector('ask-page')?.shadowRoot;
        return page?.querySelector('ask-told')?.getBoundingClientRect().bottom ?? Infinity;
      });
    await expect.poll(bottom).toBeLessThanOrEqual(844);
  });
});

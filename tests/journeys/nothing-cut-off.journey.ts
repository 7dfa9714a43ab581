import { expect, test } from 'vitest';
import { templates } from '../../templates/index.ts';
import { cutOff } from './cut-off.ts';
import { during } from './visit.ts';

/** High enough for every row of every starter sheet at once. */
const HIGH = { 1440: 9000, 820: 14_000, 390: 16_000 };
/** On a telephone the bar has no room for the name of a document; the rail has. */
const isShortened = (cut: string): boolean => cut.endsWith('by h1.');

test.each([1440, 820, 390] as const)(
  'every starter sheet opens at its first column, and its words can be read whole, %i pixels wide',
  async (width) => {
    await during({ width, height: HIGH[width] }, async ({ person }) => {
      const cuts = async (): Promise<string[]> =>
        (await cutOff(person.page)).filter((cut) => width > 600 || !isShortened(cut));
      const scrolled = (): Promise<number | undefined> =>
        person.page.evaluate(() => {
          const grid = document.querySelector('octavo-app')?.shadowRoot?.querySelector('sheet-grid')?.shadowRoot;
          return grid?.querySelector('[role=grid]')?.scrollLeft;
        });
      for (const [index, { content }] of templates.entries()) {
        if (width < 1181) await person.openDrawer();
        await person.openTemplate(content.title);
        await person.atRest();
        // The first one stands there already: its active cell is gone to.
        if (index > 0) expect(await scrolled(), content.title).toBe(0);
        // Rows become as high as their words need once nothing more changes.
        await expect.poll(cuts, { message: content.title }).toEqual([]);
      }
    });
  },
);

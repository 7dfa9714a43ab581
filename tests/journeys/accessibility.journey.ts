import type { RunOptions } from 'axe-core';
import { describe, expect, test } from 'vitest';
import type { Page } from '../../src/app/app-host.ts';
import { templates } from '../../templates/index.ts';
import type { Person } from './person.ts';
import { violations } from './violations.ts';
import { during } from './visit.ts';

const options: RunOptions = {
  runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
  resultTypes: ['violations'],
};

const widths = [1440, 820, 390];
const schemes = [
  ['light', false],
  ['dark', true],
] as const;

/** What the checker objects to as the page is, at each width. */
async function atEachWidth({ page }: Person): Promise<string[]> {
  const found: string[] = [];
  for (const width of widths) {
    await page.setViewport({ width, height: 900 });
    // Rows and plots find their places.
    await new Promise((resolve) => setTimeout(resolve, 400));
    for (const objection of await violations(page, options)) found.push(`${String(width)} pixels wide: ${objection}`);
  }
  await page.setViewport({ width: 1440, height: 900 });
  return found;
}

/** The pages that open over the sheet. */
const pages = [
  'cell',
  'keys',
  'guide',
  'gallery',
  'take-over',
  'three-way',
  'tour',
  'shelf',
  'shortlist',
  'ask',
  'review',
  'compare',
  'link',
  'plot',
  'looks',
] as const satisfies readonly Page[];

describe.each(schemes)('the page, %s, wide, middling and narrow,', (_, dark) => {
  test('has nothing that the checker objects to, on any starter sheet', async () => {
    await during({ width: 1440, height: 900, dark }, async ({ person }) => {
      for (const { content } of templates) {
        await person.openTemplate(content.title);
        expect(await atEachWidth(person), content.title).toEqual([]);
      }
    });
  });

  test('has nothing that the checker objects to, on any page over the sheet', async () => {
    await during({ width: 1440, height: 900, dark }, async ({ person }) => {
      await person.atRest();
      for (const name of pages) {
        await person.page.evaluate((page) => document.querySelector('octavo-app')?.open(page), name);
        await person.seen('>>> dialog[open]');
        expect(await atEachWidth(person), name).toEqual([]);
        await person.press('Escape');
        await person.page.waitForSelector('>>> dialog[open]', { hidden: true });
        // The one that was closed is taken away.
        await new Promise((resolve) => setTimeout(resolve, 200));
      }
    });
  });
});

/** Opens the page, does something, and gives what the checker objects to then. */
async function violationsAfter(act: (person: Person) => Promise<void>, dark = false): Promise<string[]> {
  return during({ width: 1440, height: 900, dark }, async ({ person }) => {
    await act(person);
    await new Promise((resolve) => setTimeout(resolve, 300));
    return await violations(person.page, options);
  });
}

const moved = async (person: Person): Promise<void> => {
  await person.goTo('D24');
  await person.press('Control+b');
  await person.type('D24', '4000');
};
const asked = async (person: Person): Promise<void> => {
  await person.press('Control+k');
  await person.seen('>>> dialog[open]');
};

describe.each(schemes)('the checker, %s, has no objection', (_, dark) => {
  test('to a baseline, verdicts that fail and what changed', async () => {
    expect(await violationsAfter(moved, dark)).toEqual([]);
  });

  test('to a question', async () => {
    expect(await violationsAfter(asked, dark)).toEqual([]);
  });

  test('to a wrong unit and its fix', async () => {
    expect(await violationsAfter((person) => person.type('D27', '3 kg'), dark)).toEqual([]);
  });
});

test('the checker has no objection to a cell being typed into', async () => {
  const found = await violationsAfter(async (person) => {
    await person.goTo('B4');
    await person.press('F2');
  });
  expect(found).toEqual([]);
});

test('the checker has no objection to the menu of the cells', async () => {
  const found = await violationsAfter(async (person) => {
    await person.goTo('B4');
    await person.press('Shift+F10');
  });
  expect(found).toEqual([]);
});

import type { RunOptions } from 'axe-core';
import { describe, expect, test } from 'vitest';
import { openSession } from '../../.config/browser-session.mjs';
import { templates } from '../../templates/index.ts';
import { Person } from './person.ts';
import { violations } from './violations.ts';

const options: RunOptions = {
  runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
  resultTypes: ['violations'],
};

describe.each([
  ['wide and light', 1440, false],
  ['wide and dark', 1440, true],
  ['narrow and light', 390, false],
  ['narrow and dark', 390, true],
] as const)('the page, %s,', (_, width, dark) => {
  test('has nothing that the checker objects to, on any starter sheet', async () => {
    const session = await openSession({ width, height: 900, dark });
    try {
      const person = new Person(session.page);
      await person.settled();
      for (const { content } of templates) {
        if (width < 1024) await person.openDrawer();
        await person.openTemplate(content.title);
        await new Promise((resolve) => setTimeout(resolve, 600));
        expect(await violations(person.page, options)).toEqual([]);
      }
    } finally {
      await session.close();
    }
  });
});

/** Opens the page, does something, and gives what the checker objects to then. */
async function violationsAfter(act: (person: Person) => Promise<void>, dark = false): Promise<string[]> {
  const session = await openSession({ width: 1440, height: 900, dark });
  try {
    const person = new Person(session.page);
    await person.settled();
    await act(person);
    await new Promise((resolve) => setTimeout(resolve, 300));
    return await violations(person.page, options);
  } finally {
    await session.close();
  }
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

describe.each([
  ['light', false],
  ['dark', true],
] as const)('the checker, %s, has no objection', (_, dark) => {
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

import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { AxeResults, RunOptions } from 'axe-core';
import { describe, expect, test } from 'vitest';
import { openSession } from '../../.config/browser-session.mjs';
import { templates } from '../../templates/index.ts';
import { Person } from './person.ts';

const axe = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const options: RunOptions = {
  runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
  resultTypes: ['violations'],
};

/** Every violation on the page as a line: the rule, where, and what is wrong. */
async function violations({ page }: Person): Promise<string[]> {
  const found = await page.evaluate(
    (given) => (globalThis as unknown as { axe: { run(options: RunOptions): Promise<AxeResults> } }).axe.run(given),
    options,
  );
  return found.violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id} at ${target.flat().join(' > ')}: ${failureSummary ?? ''}`),
  );
}

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
      await session.page.evaluate(axe);
      for (const { content } of templates) {
        if (width < 1024) await person.openDrawer();
        await person.openTemplate(content.title);
        await new Promise((resolve) => setTimeout(resolve, 600));
        expect(await violations(person)).toEqual([]);
      }
    } finally {
      await session.close();
    }
  });
});

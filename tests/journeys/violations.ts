import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { AxeResults, RunOptions } from 'axe-core';
import type { Page } from 'puppeteer-core';

type Checked = typeof globalThis & { axe: { run(options: RunOptions): Promise<AxeResults> } };

const checker = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** What the checker of accessibility objects to on the page, a line each: the rule, where, and what is wrong. */
export async function violations(page: Page, options: RunOptions = {}): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(checker);
  const found = await page.evaluate((given) => (globalThis as Checked).axe.run(given), options);
  return found.violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id} at ${target.flat().join(' > ')}: ${failureSummary ?? ''}`),
  );
}

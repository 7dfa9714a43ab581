import type { Page } from 'puppeteer-core';
import type { Person } from './person.ts';

/** What assistive technology calls the element with the focus. */
export const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    let active = document.activeElement;
    while (active?.shadowRoot?.activeElement) active = active.shadowRoot.activeElement;
    const label = active instanceof HTMLInputElement ? active.labels?.[0]?.textContent.trim() : undefined;
    return active?.getAttribute('aria-label') ?? label ?? active?.textContent?.trim() ?? '';
  });

/** Presses a key until that element has the focus. */
export async function keyTo(person: Person, key: string, name: string): Promise<void> {
  for (let presses = 0; presses < 60; presses++) {
    if ((await focused(person.page)) === name) return;
    await person.press(key);
  }
  throw new Error(`${key} does not lead to “${name}”.`);
}

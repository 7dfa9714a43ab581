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

/** Whether a line is drawn around the element with the focus, or around what it stands in. The sheet frames its active cell. */
export const isFramed = (page: Page): Promise<boolean> =>
  page.evaluate(() => {
    let active = document.activeElement;
    while (active?.shadowRoot?.activeElement) active = active.shadowRoot.activeElement;
    const lined = active?.role === 'grid' ? active.querySelector('.body > .active') : active;
    const isLined = (element: Element | null | undefined): boolean => {
      if (!element) return false;
      const { outlineStyle, outlineWidth, boxShadow } = getComputedStyle(element);
      return boxShadow !== 'none' || (outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2);
    };
    return isLined(lined) || isLined(active?.parentElement);
  });

/** Presses a key until that element has the focus. */
export async function keyTo(person: Person, key: string, name: string): Promise<void> {
  for (let presses = 0; presses < 60; presses++) {
    if ((await focused(person.page)) === name) return;
    await person.press(key);
  }
  throw new Error(`${key} does not lead to “${name}”.`);
}

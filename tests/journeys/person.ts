import type { Page } from 'puppeteer-core';
import { expect } from 'vitest';

/** How long a slow machine may take until something is seen, in milliseconds. */
const PATIENCE = 15_000;

/** What a person does at the page: goes to a cell, types, reads what is shown. Nothing here touches the document behind it. */
export class Person {
  readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  /** Waits until the page is whole: what comes after the first paint has come, and the numbers are there. */
  async settled(): Promise<void> {
    await this.page.waitForFunction(() => {
      const app = document.querySelector('octavo-app')?.shadowRoot;
      const grid = app?.querySelector('sheet-grid')?.shadowRoot;
      return (
        app?.querySelector('plot-dock') &&
        grid?.querySelector('.cell.number') &&
        !grid.querySelector('.row:not([hidden]) .cell.waiting:not([hidden])')
      );
    });
  }

  /** Waits until nothing more is under way: everything is drawn in its own type, looked up and saved. */
  async atRest(): Promise<void> {
    await this.settled();
    // Asked again and again: the promise that the browser has for it is sometimes thrown away unkept.
    await this.page.waitForFunction(() => document.fonts.status === 'loaded');
    await this.page.waitForFunction(() => {
      const app = document.querySelector('octavo-app')?.shadowRoot;
      const head = app?.querySelector('sheet-head');
      const plots = [...(app?.querySelector('plot-dock')?.shadowRoot?.querySelectorAll('curve-plot') ?? [])];
      const isDrawn = plots.length > 0 && plots.every((plot) => plot.shadowRoot?.querySelector('svg.drawing'));
      const isSaved = app?.querySelector('sheet-rail')?.shadowRoot?.querySelector('.kept.saved');
      return isDrawn && isSaved && head && !head.scanning;
    });
    // Widths that the faces of type change are drawn a frame later.
    await this.page.evaluate(async () => {
      for (let frame = 0; frame < 3; frame++) await new Promise((drawn) => requestAnimationFrame(drawn));
    });
  }

  /** Waits until something is seen, and gives it. Asked anew each frame: what happens inside components is no change of the page. */
  seen(selector: string): ReturnType<Page['waitForSelector']> {
    return this.page.waitForSelector(selector, { visible: true, timeout: PATIENCE });
  }

  /** What the foot of the rail says of saving. */
  saving(): Promise<string> {
    return this.page.evaluate(() => {
      const rail = document.querySelector('octavo-app')?.shadowRoot?.querySelector('sheet-rail');
      return rail?.shadowRoot?.querySelector('.kept')?.textContent.trim() ?? '';
    });
  }

  /** The messages across the foot of the sheet. */
  notices(): Promise<string[]> {
    return this.page.evaluate(() => {
      const messages = document.querySelector('octavo-app')?.shadowRoot?.querySelectorAll('.notice p') ?? [];
      return [...messages].map(({ textContent }) => textContent);
    });
  }

  /** The documents on this device as the rail lists them. */
  documents(): Promise<string[]> {
    return this.page.evaluate(() => {
      const rail = document.querySelector('octavo-app')?.shadowRoot?.querySelector('sheet-rail');
      const names = rail?.shadowRoot?.querySelectorAll('nav[aria-label^=Documents] .name') ?? [];
      return [...names].map(({ textContent }) => textContent.trim());
    });
  }

  async press(keys: string): Promise<void> {
    const parts = keys.split('+');
    const held = parts.slice(0, -1) as ('Control' | 'Shift' | 'Alt')[];
    for (const key of held) await this.page.keyboard.down(key);
    await this.page.keyboard.press(parts.at(-1) as 'Enter');
    for (const key of held.toReversed()) await this.page.keyboard.up(key);
  }

  /** Opens a starter sheet from the gallery as a new document. */
  async openTemplate(title: string): Promise<void> {
    await (await this.seen('>>> nav[aria-label="Starter sheets"] ::-p-text(Starter sheets…)'))?.click();
    await (await this.seen(`>>> ::-p-aria([name="${title}"][role="button"])`))?.click();
    await this.page.waitForFunction(
      (wanted) => document.querySelector('octavo-app')?.shadowRoot?.querySelector('top-bar')?.title === wanted,
      {},
      title,
    );
    await this.settled();
  }

  /** Opens the rail where it is drawn over the sheet. */
  async openDrawer(): Promise<void> {
    await (await this.seen('>>> button[aria-label="Sheets and documents"]'))?.click();
    await this.seen('octavo-app[drawer]');
  }

  /** Shows a sheet of the document from the rail. */
  async showSheet(name: string): Promise<void> {
    await (await this.seen(`>>> .name[title="${name}"]`))?.click();
    await this.seen(`>>> [role=grid][aria-label="${name}"]`);
  }

  /** Chooses from the menu of a sheet in the rail. */
  async chooseForSheet(name: string, words: string): Promise<void> {
    await (await this.seen(`>>> button[aria-label="More for ${name}"]`))?.click();
    await (await this.seen(`>>> [role=menu][aria-label="More for ${name}"] ::-p-text(${words})`))?.click();
  }

  /** Presses a button of the bar that carries these words. */
  async pressButton(words: string): Promise<void> {
    await (await this.seen(`>>> ::-p-aria([name="${words}"][role="button"])`))?.click();
  }

  /** Gives a file to the page where it asks for one. */
  async giveFile(path: string, ask: () => Promise<void>): Promise<void> {
    const asked = this.page.waitForFileChooser();
    // The browser must have heard that the file comes from here before the page asks: the two go different ways.
    await this.page.evaluate(() => document.readyState);
    const [chooser] = await Promise.all([asked, ask()]);
    await chooser.accept([path]);
  }

  async focusRuler(): Promise<void> {
    await (await this.seen('>>> .rule[role=slider]'))?.focus();
  }

  /** The text in the input over the cell that is being edited. */
  beingTyped(): Promise<string | undefined> {
    return this.page.evaluate(() => {
      const grid = document.querySelector('octavo-app')?.shadowRoot?.querySelector('sheet-grid')?.shadowRoot;
      return grid?.querySelector<HTMLInputElement>('input.inline')?.value;
    });
  }

  /** Goes to a cell by the keyboard, by its address or name. */
  async goTo(cell: string): Promise<void> {
    await this.press('Control+k');
    await this.seen('>>> dialog[open] input');
    // What is typed before the input has the focus would go to the sheet.
    await this.page.waitForFunction(() => {
      let active = document.activeElement;
      while (active?.shadowRoot?.activeElement) active = active.shadowRoot.activeElement;
      return active instanceof HTMLInputElement && active.closest('dialog[open]') !== null;
    });
    await this.page.keyboard.type(cell);
    await this.page.keyboard.press('Enter');
    await this.page.waitForFunction(() => {
      const app = document.querySelector('octavo-app')?.shadowRoot;
      const grid = app?.querySelector('sheet-grid');
      const isClosed = !app?.querySelector('ask-dialog')?.shadowRoot?.querySelector('dialog[open]');
      return isClosed && grid?.shadowRoot?.activeElement?.getAttribute('role') === 'grid';
    });
  }

  /** Types into cells one after the other downwards, as Enter leads. */
  async type(cell: string, ...texts: readonly string[]): Promise<void> {
    await this.goTo(cell);
    for (const text of texts) {
      await this.page.keyboard.type(text);
      await this.page.keyboard.press('Enter');
    }
  }

  /** What a cell shows, after going there. */
  async textOf(cell: string): Promise<string> {
    await this.goTo(cell);
    return this.shownIn(cell);
  }

  /** What a cell in view shows. */
  shownIn(cell: string): Promise<string> {
    return this.page.evaluate((id) => {
      const grid = document.querySelector('octavo-app')?.shadowRoot?.querySelector('sheet-grid')?.shadowRoot;
      const shown = grid?.getElementById(id);
      const parts = [...(shown?.querySelectorAll('.value, .unit, .chip, .reason, .words') ?? [])];
      return parts
        .map(({ textContent }) => textContent.trim())
        .join(' ')
        .trim();
    }, `cell-${cell}`);
  }

  /** The number in a text as shown; kHz counts as thousands. */
  static numberIn(text: string): number {
    const number = /[-−]?[\d\s]*\.?\d+/u.exec(text)?.[0] ?? 'NaN';
    const value = Number(number.replace('−', '-').replaceAll(/\s/gu, ''));
    return text.includes('kHz') ? value * 1000 : value;
  }

  /** Expects a cell to come to show a number within the tolerance, in the unit that it shows. */
  async expectNumber(cell: string, expected: number, tolerance: number): Promise<void> {
    await this.goTo(cell);
    const isThere = async (): Promise<boolean> =>
      Math.abs(Person.numberIn(await this.shownIn(cell)) - expected) <= tolerance;
    for (const until = Date.now() + PATIENCE; Date.now() < until && !(await isThere());)
      await new Promise((resolve) => setTimeout(resolve, 40));
    const shown = await this.shownIn(cell);
    expect(Math.abs(Person.numberIn(shown) - expected), `${cell} shows ${shown}, not ${expected}`).toBeLessThanOrEqual(
      tolerance,
    );
  }

  /** Expects a cell to come to show this. */
  async expectText(cell: string, wanted: RegExp): Promise<void> {
    await this.goTo(cell);
    await expect.poll(() => this.shownIn(cell)).toMatch(wanted);
  }
}

/** The tolerances of the scenarios: hertz, litres and millimetres in per cent. */
export const twoPercent = (of: number): number => Math.abs(of) * 0.02;
export const decibels = 0.2;
export const octaves = 0.03;
/** The scenarios give no tolerance for Q: one in the last digit that they print. */
export const lastDigit = 0.001;

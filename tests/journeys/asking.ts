import type { Person } from './person.ts';

/** What stands in the line of the answer, as soon as no search is under way. */
export async function told({ page }: Person): Promise<string> {
  const handle = await page.waitForFunction(
    () => {
      const page = document.querySelector('octavo-app')?.shadowRoot?.querySelector('ask-page')?.shadowRoot;
      const line = page?.querySelector('ask-told');
      return line && line.progress === undefined && line.said !== '' && line.said;
    },
    { timeout: 15_000 },
  );
  return String(await handle.jsonValue());
}

/** Opens the questions about a cell; the line in plain words has the focus then. */
export async function askAbout(person: Person, cell: string): Promise<void> {
  await person.goTo(cell);
  await person.press('Control+Shift+F');
  await person.page.waitForFunction(() => {
    let active = document.activeElement;
    while (active?.shadowRoot?.activeElement) active = active.shadowRoot.activeElement;
    return active?.getAttribute('aria-describedby') === 'words';
  });
}

/** Goes with Tab until the element with these words has the focus.
 *  @returns All its words. */
export async function tabTo(person: Person, wanted: string): Promise<string> {
  for (let presses = 0; presses < 60; presses++) {
    const name = await person.page.evaluate(() => {
      let active = document.activeElement;
      while (active?.shadowRoot?.activeElement) active = active.shadowRoot.activeElement;
      return active?.getAttribute('aria-label') ?? active?.parentElement?.textContent ?? '';
    });
    if (name.includes(wanted)) return name;
    await person.press('Tab');
  }
  throw new Error(`Tab does not lead to “${wanted}”.`);
}

/** Chooses the kind of question with the arrows, as soon as what moves the result most is known. */
export async function kindOf(person: Person, words: string): Promise<void> {
  await person.page.waitForFunction(() => {
    const page = document.querySelector('octavo-app')?.shadowRoot?.querySelector('ask-page')?.shadowRoot;
    return page?.querySelector('ask-form')?.choices.inputs[0]?.group.startsWith('Behind');
  });
  await tabTo(person, 'Find a value');
  for (let presses = 0; presses < 12; presses++) {
    const chosen = await person.page.evaluate(() => {
      const page = document.querySelector('octavo-app')?.shadowRoot?.querySelector('ask-page')?.shadowRoot;
      const form = page?.querySelector('ask-form')?.shadowRoot;
      return form?.querySelector('input:checked')?.parentElement?.textContent?.trim();
    });
    if (chosen === words) return;
    await person.press('ArrowRight');
  }
  throw new Error(`There is no kind “${words}”.`);
}

/** The page of questions is closed, and the sheet has the focus again. */
export const closed = ({ page }: Person): Promise<unknown> =>
  page.waitForFunction(() => {
    const app = document.querySelector('octavo-app')?.shadowRoot;
    return (
      !app?.querySelector('ask-page') &&
      app?.querySelector('sheet-grid')?.shadowRoot?.activeElement?.getAttribute('role') === 'grid'
    );
  });

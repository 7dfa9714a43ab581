import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Person } from './person.ts';
import { leave, visit, type Session } from './visit.ts';

let session: Session;
let person: Person;

beforeAll(async () => {
  ({ session, person } = await visit());
});
afterAll(() => leave(session));

/** The titles of the cards that have no picture. */
const undrawn = (): Promise<string[]> =>
  session.page.evaluate(() => {
    const page = document.querySelector('octavo-app')?.shadowRoot?.querySelector('gallery-page')?.shadowRoot;
    const cards = page?.querySelector('template-gallery')?.shadowRoot?.querySelectorAll('.card') ?? [];
    return [...cards]
      .filter((card) => !card.querySelector('sheet-image')?.shadowRoot?.querySelector('li'))
      .map((card) => card.querySelector('.title')?.textContent.trim() ?? '');
  });

const titleOfDocument = (): Promise<string | undefined> =>
  session.page.evaluate(() => document.querySelector('octavo-app')?.shadowRoot?.querySelector('top-bar')?.title);

test('opens by key, draws every starter sheet, and Escape leaves everything as it was', async () => {
  await person.goTo('B5');
  await person.press('Control+g');
  await person.seen('>>> template-gallery');
  await person.seen('>>> .card');
  await expect.poll(undrawn, { timeout: 60_000 }).toEqual([]);
  await person.press('Escape');
  await session.page.waitForFunction(
    () => !document.querySelector('octavo-app')?.shadowRoot?.querySelector('gallery-page'),
  );
  await person.seen('>>> [aria-activedescendant="cell-B5"]:focus');
  expect(await titleOfDocument()).toBe('Two-driver check');
});

test('begins a new document from words and Enter, with the sheet ready for typing', async () => {
  await person.press('Control+g');
  await person.seen('>>> input[type=search]:focus');
  await session.page.keyboard.type('vented port fits');
  await person.press('Enter');
  await expect.poll(titleOfDocument).toBe('Vented box with a port that fits');
  await person.settled();
  await person.seen('>>> [role=grid]:focus');
});

test('begins an empty document', async () => {
  await person.press('Control+g');
  await person.pressButton('Empty document');
  await expect.poll(titleOfDocument).toBe('Untitled');
  await person.seen('>>> [role=grid]:focus');
  expect(session.problems).toEqual([]);
});

test('whatever the rail opens takes what is typed next', async () => {
  const rail = '>>> sheet-rail';
  const press = async (words: string): Promise<void> => {
    await (await person.seen(`${rail} >>> ::-p-aria([name="${words}"][role="button"])`))?.click();
    await person.seen('>>> [role=grid]:focus');
  };
  await press('Empty document');
  await press('Add a sheet');
  await session.page.keyboard.type('38 Hz');
  await person.press('Enter');
  await person.expectText('A1', /^38 Hz$/);
});

import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Person } from './person.ts';
import { leave, visit, type Session } from './visit.ts';

let session: Session;
let person: Person;

beforeAll(async () => {
  ({ session, person } = await visit());
});
afterAll(() => leave(session));

const sheets = (): Promise<string[]> =>
  session.page.evaluate(() => {
    const rail = document.querySelector('octavo-app')?.shadowRoot?.querySelector('sheet-rail')?.shadowRoot;
    const names = rail?.querySelectorAll('nav[aria-label="Sheets of this document"] .name') ?? [];
    return [...names].map(({ textContent }) => textContent);
  });

test('a driver typed into the check stands in the box without being typed again', async () => {
  await person.type('B4', 'Mine', '31 Hz');
  await person.chooseForSheet('Two drivers', 'Take this over into…');
  await person.seen('>>> ::-p-text(Take “Two drivers” over into…)');
  await person.seen('>>> input[type=search]:focus');
  await session.page.keyboard.type('closed-box bench');
  await (await person.seen('>>> ::-p-aria([name="Closed-box bench"][role="button"])'))?.click();
  await person.seen('>>> ::-p-text(“Two drivers” taken over into “Closed box”)');
  await person.seen('>>> ::-p-text(The new sheet has no driver called Tweeter.)');
  await person.press('Escape');
  expect(await sheets()).toEqual(['Two drivers', 'Closed box']);
  await person.expectText('B7', /^Mine$/);
  await person.expectNumber('B8', 31, 0);
});

test('one step takes it back', async () => {
  await person.press('Control+z');
  await expect.poll(sheets).toEqual(['Two drivers']);
});

test('a two-way becomes a three-way with its hand-over as the upper one', async () => {
  await person.type('D24', '2100 Hz');
  await person.chooseForSheet('Two drivers', 'Make a three-way of this');
  await person.seen('>>> ::-p-text(taken over into)');
  await person.press('Escape');
  expect(await sheets()).toHaveLength(2);
  await person.expectText('B4', /^Mine$/);
  await person.expectNumber('E25', 2100, 0);
  expect(session.problems).toEqual([]);
});

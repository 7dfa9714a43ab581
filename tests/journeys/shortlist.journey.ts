import { afterAll, beforeAll, expect, test } from 'vitest';
import { openSession } from '../../.config/browser-session.mjs';
import { Person } from './person.ts';
import { violations } from './violations.ts';

let session: Awaited<ReturnType<typeof openSession>>;
let person: Person;

beforeAll(async () => {
  session = await openSession();
  person = new Person(session.page);
  await person.atRest();
});

afterAll(async () => {
  expect(session.problems).toEqual([]);
  await session.close();
});

/** The words in a part of the page. */
const said = (selector: string): Promise<string> =>
  session.page.$eval(`>>> ${selector}`, (each) => (each.textContent ?? '').replaceAll(/\s+/g, ' ').trim());

test('the limits are set by the keyboard, and what keeps them is ranked', async () => {
  await person.press('Shift+F8');
  await person.seen('>>> shortlist-table >>> tbody tr');
  await session.page.waitForFunction(
    () =>
      document
        .querySelector('octavo-app')
        ?.shadowRoot?.querySelector('shortlist-page')
        ?.shadowRoot?.querySelector('driver-shortlist')
        ?.shadowRoot?.querySelector('shortlist-form')?.shadowRoot?.activeElement,
  );
  await person.press('Tab');
  await session.page.keyboard.type('300');
  await person.press('Tab');
  await session.page.keyboard.type('45 Hz');
  await person.press('Tab');
  await person.press('Tab');
  await session.page.keyboard.type('103 dB');
  await person.press('Enter');
  await expect.poll(() => said('driver-shortlist >>> [role=status]')).toContain('do not keep the limits');
  await expect.poll(() => said('shortlist-table >>> tbody tr')).toContain('W-165 A + T-28 B');
  expect(await said('driver-shortlist >>> details ul')).not.toBe('');
});

test('the checker has no objection to the shortlist over the sheet', async () => {
  expect(await violations(session.page)).toEqual([]);
});

test('the first opens as a sheet with both drivers, its level and its verdicts; one step takes it back', async () => {
  await (await person.seen('>>> shortlist-table >>> tbody button'))?.focus();
  await person.press('Enter');
  await person.seen('>>> [role=grid][aria-label="W-165 A, T-28 B"]');
  await expect.poll(() => person.shownIn('B4')).toBe('W-165 A');
  await expect.poll(() => person.shownIn('C4')).toBe('T-28 B');
  expect(await person.shownIn('D22')).toBe('103 dB');
  await expect.poll(() => person.shownIn('E2')).toMatch(/\p{L}/u);
  await person.goTo('D30');
  await expect.poll(() => person.shownIn('D30')).toBe('300 ¤');
  await person.goTo('E41');
  await expect.poll(() => person.shownIn('E41')).toContain('Comfortable');
  await person.press('Control+z');
  await session.page.waitForFunction(
    () =>
      document
        .querySelector('octavo-app')
        ?.shadowRoot?.querySelector('sheet-grid')
        ?.shadowRoot?.querySelector('[role=grid]')
        ?.getAttribute('aria-label') === 'Two drivers',
  );
});

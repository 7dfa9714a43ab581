import { rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { writeShelf } from '../../src/exchange/shelf-file.ts';
import { downloadFolder } from './downloads.ts';
import { manyDrivers } from './many-drivers.ts';
import type { Person } from './person.ts';
import { violations } from './violations.ts';
import { leave, visit, type Session } from './visit.ts';

let session: Session;
let person: Person;
let folder: string;

beforeAll(async () => {
  ({ session, person } = await visit());
  await person.atRest();
  folder = await downloadFolder(session.page);
});

afterAll(async () => {
  await leave(session);
  await rm(folder, { recursive: true });
});

/** The words in a part of the page. */
const said = (selector: string): Promise<string> =>
  session.page.$eval(`>>> ${selector}`, (each) => (each.textContent ?? '').replaceAll(/\s+/g, ' ').trim());
/** The words of each of several parts. */
const allSaid = (selector: string): Promise<string[]> =>
  session.page.$$eval(`>>> ${selector}`, (all) =>
    all.map((each) => (each.textContent ?? '').replaceAll(/\s+/g, ' ').trim()),
  );

const openShortlist = async (): Promise<void> => {
  await person.press('Shift+F8');
  await person.seen('>>> shortlist-table >>> tbody tr');
  await session.page.waitForFunction(
    () =>
      document
        .querySelector('octavo-app')
        ?.shadowRoot?.querySelector('shortlist-page')
        ?.shadowRoot?.querySelector('driver-shortlist')
        ?.shadowRoot?.querySelector('shortlist-wish')?.shadowRoot?.activeElement,
  );
};

test('a wish is typed, what was understood stands in the form, and the best are ranked with their reasons', async () => {
  await openShortlist();
  await session.page.keyboard.type('a two-way under 300 that reaches 45 Hz and plays 103 dB in walnut');
  await person.press('Enter');
  await expect.poll(() => said('shortlist-wish >>> [role=status]')).toContain('Left out, not understood: walnut.');
  const typed = await session.page.$$eval('>>> shortlist-form >>> input', (all) => all.map(({ value }) => value));
  expect(typed).toEqual(['300', '45 Hz', '103 dB', 'window*10-price/100']);
  await expect.poll(() => said('driver-shortlist >>> .said')).toContain('do not keep the limits');
  const [first = ''] = await allSaid('best-rows >>> li.row');
  expect(first).toContain('W-165 A + T-28 B');
  expect(first).toContain('0.33 oct more than comfortable');
  expect(first).toContain('Bound by resonance of T-28 B from below and by narrowing of W-165 A from above.');
  expect(first).toContain('40 ¤ under the limit');
  expect(await said('driver-shortlist >>> details ul')).not.toBe('');
});

test('a rule is set by the keyboard, the list follows, and the rule goes with the pair into its sheet', async () => {
  await (await person.seen('>>> driver-shortlist >>> details:first-of-type summary'))?.focus();
  await person.press('Enter');
  const rule = await person.seen('>>> shortlist-rules >>> [name="resonance 0"]');
  await rule?.click({ count: 3 });
  await session.page.keyboard.type('2.5');
  await person.press('Enter');
  await person.press('Tab');
  await expect.poll(async () => (await allSaid('best-rows >>> li.row'))[0]).toContain('0.01 oct more than comfortable');
  expect(await violations(session.page)).toEqual([]);
  await (await person.seen('>>> best-rows >>> button'))?.focus();
  await person.press('Enter');
  await person.seen('>>> [role=grid][aria-label="W-165 A, T-28 B"]');
  await expect.poll(() => person.shownIn('B4')).toBe('W-165 A');
  await expect.poll(() => person.shownIn('C4')).toBe('T-28 B');
  expect(await person.shownIn('D22')).toBe('103 dB');
  await person.goTo('D30');
  await expect.poll(() => person.shownIn('D30')).toBe('300 ¤');
  await person.goTo('F33');
  await expect.poll(() => person.shownIn('F33')).toMatch(/^2\.5/);
  await person.expectText('E41', /^Comfortable/);
  await person.press('Control+z');
  await person.seen('>>> [role=grid][aria-label="Two drivers"]');
});

test('mains with subs are found for a wish, and open as a sheet that counts the same subs', async () => {
  await openShortlist();
  await session.page.keyboard.type('mains with subs under 600 that reach 30 Hz and play 98 dB');
  await person.press('Enter');
  await expect.poll(async () => (await allSaid('best-rows >>> li.row'))[0]).toMatch(/\+ \d × |\+ L-250 T/);
  const [first = ''] = await allSaid('best-rows >>> li.row');
  const count = /\+ (\d) × /.exec(first)?.[1] ?? '1';
  await (await person.seen('>>> best-rows >>> button'))?.click();
  await person.seen('>>> [role=grid][aria-label="L-250 T, W-220 A"]');
  await person.expectText('C62', new RegExp(`^${count}$`));
  await person.expectText('C56', /^104 dB$/);
});

test('from a shelf of two hundred drivers a wish leads to three full live sheets in one act', async () => {
  await person.press('F8');
  await person.seen('>>> driver-list >>> tbody tr');
  const path = join(folder, 'many.octavo-shelf.json');
  await writeFile(path, writeShelf(manyDrivers(200, 5)));
  await person.giveFile(path, () => person.pressButton('Read a shelf from a file'));
  await expect.poll(() => said('driver-shelf >>> .told')).toContain('200 added');
  await person.press('Escape');
  await openShortlist();
  await session.page.keyboard.type('a two-way under 300 that reaches 45 Hz and plays 103 dB');
  await person.press('Enter');
  await expect.poll(() => said('driver-shortlist >>> .said')).toMatch(/work.*of them comfortably/);
  const cards = await allSaid('best-rows >>> li.row');
  expect(cards).toHaveLength(3);
  for (const card of cards) {
    expect(card).toMatch(/Hand over between .* Bound by/);
    expect(card).toMatch(/lower than asked.*to spare.*under the limit.*Place [123] by/);
  }
  const names = (await allSaid('best-rows >>> h3')).map((each) => /^(.*no\. \d+)/.exec(each)?.[1]?.split(' + ') ?? []);
  await person.pressButton('Open all 3 as sheets');
  for (const [woofer = '', tweeter = ''] of names) {
    const sheet = `${woofer}, ${tweeter}`;
    await person.showSheet(sheet);
    await person.expectText('B4', new RegExp(`^${woofer}$`));
    await person.expectText('C4', new RegExp(`^${tweeter}$`));
    await person.expectText('E41', /^(Comfortable|Tight)/);
    await person.expectText('E67', /^Good/);
    // Live: what is typed moves the verdict.
    await person.type('D30', '20');
    await person.expectText('E67', /^Fail/);
  }
});

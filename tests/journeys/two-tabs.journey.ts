import { afterEach, beforeEach, expect, test } from 'vitest';
import { openSession } from '../../.config/browser-session.mjs';
import { Person } from './person.ts';
import { leave, type Session } from './visit.ts';

let session: Session;
let here: Person;
let there: Person;

beforeEach(async () => {
  session = await openSession();
  here = new Person(session.page);
  await here.atRest();
  const second = await session.browser.newPage();
  second.on('pageerror', (error) => session.problems.push(String(error)));
  await second.setViewport({ width: 1440, height: 900 });
  await second.goto(session.address, { waitUntil: 'load' });
  there = new Person(second);
  await there.atRest();
});

afterEach(() => leave(session));

/** Holds back what the other tab says, as when both type at the same moment. */
const deafen = ({ page }: Person): Promise<void> =>
  page.evaluate(() => {
    globalThis.addEventListener('message', (event) => event.stopImmediatePropagation(), { capture: true });
    BroadcastChannel.prototype.postMessage = () => undefined;
  });

test('what is typed in one tab comes to the other, which has nothing of its own unsaved', async () => {
  await here.page.bringToFront();
  await here.type('D22', '104');
  await there.page.bringToFront();
  await there.expectText('D22', /^104 dB$/);
  await there.type('D22', '99');
  await here.page.bringToFront();
  await here.expectText('D22', /^99 dB$/);
});

test('the reader stays where he was when the other tab saves', async () => {
  await there.page.bringToFront();
  await there.goTo('D27');
  await here.page.bringToFront();
  await here.type('D22', '104');
  await there.page.bringToFront();
  await expect.poll(() => there.shownIn('D22')).toMatch(/^104 dB$/);
  expect(await there.page.$('>>> [aria-activedescendant="cell-D27"]')).not.toBeNull();
});

/** An edit here of which the other tab does not hear, and one there of the same cell. */
async function editUnheard(): Promise<void> {
  await deafen(here);
  await here.page.bringToFront();
  await here.type('D22', '104');
  await expect.poll(() => here.saving()).toMatch(/Saved/);
  await here.atRest();
  await there.page.bringToFront();
  await there.type('D22', '99');
}

test('an edit over one that was not heard of is not saved; the reader is asked, and both can be kept', async () => {
  await editUnheard();
  await expect.poll(() => there.notices()).toEqual([expect.stringMatching(/^Another tab saved this document/)]);
  await (await there.seen('>>> ::-p-aria([name="Keep mine as a copy"][role="button"])'))?.click();
  await expect.poll(() => there.notices()).toEqual([]);
  await there.expectText('D22', /^99 dB$/);
  expect(await there.page.evaluate(() => document.querySelector('octavo-app')?.workbook?.document.title)).toMatch(
    /\(this tab\)$/,
  );
  await here.page.bringToFront();
  await here.page.reload({ waitUntil: 'load' });
  await here.atRest();
  expect(await here.documents()).toHaveLength(2);
});

test('an edit over one that was not heard of can replace it', async () => {
  await editUnheard();
  await (await there.seen('>>> ::-p-aria([name="Replace theirs"][role="button"])'))?.click();
  await expect.poll(() => there.notices()).toEqual([]);
  await expect.poll(() => there.saving()).toMatch(/Saved/);
  await here.page.bringToFront();
  await here.page.reload({ waitUntil: 'load' });
  await here.atRest();
  await here.expectText('D22', /^99 dB$/);
  // One alone is not listed.
  expect(await here.documents()).toEqual([]);
});

test('where another document is opened before the reader has chosen, both are kept', async () => {
  await editUnheard();
  await there.openTemplate('Closed-box bench');
  await expect.poll(() => there.documents()).toHaveLength(3);
  expect(await there.documents()).toContain('Two-driver check (not saved)');
  await (await there.seen('>>> nav[aria-label="Documents on this device"] ::-p-text(not saved)'))?.click();
  await there.expectText('D22', /^99 dB$/);
});

import { afterAll, beforeAll, expect, test } from 'vitest';
import { Person } from './person.ts';
import { leave, visit, type Session } from './visit.ts';

let session: Session;
let person: Person;

beforeAll(async () => {
  ({ session, person } = await visit());
  await person.atRest();
});

afterAll(() => leave(session));

/** Lets the browser refuse what is to be stored, as it does when the disk is full, or take it again. */
const refuse = (isRefused: boolean): Promise<void> =>
  session.page.evaluate((refused) => {
    const page = globalThis as unknown as { transaction?: IDBDatabase['transaction'] };
    page.transaction ??= IDBDatabase.prototype.transaction;
    const { transaction } = page;
    IDBDatabase.prototype.transaction = function (this: IDBDatabase, ...given) {
      if (refused && given[1] === 'readwrite') throw new DOMException('No room.', 'QuotaExceededError');
      return transaction.apply(this, given);
    };
  }, isRefused);

test('a save that fails says so, and what to do', async () => {
  await refuse(true);
  await person.type('D22', '104');
  await expect.poll(() => person.saving()).toMatch(/Not saved\. .*no room.*Save the document to a file.*Trying again/);
  await person.expectText('D22', /^104 dB$/);
});

test('it is tried again until it is done, with all that was typed meanwhile', async () => {
  await person.type('D27', '230 mm');
  await refuse(false);
  await expect.poll(() => person.saving(), { timeout: 40_000 }).toMatch(/Saved \d/);
  await session.page.reload({ waitUntil: 'load' });
  await person.settled();
  await person.expectText('D22', /^104 dB$/);
  await person.expectText('D27', /^230 mm$/);
});

test('another document is opened all the same; what was not saved is kept, and is there when one comes back', async () => {
  await refuse(true);
  await person.type('D22', '99');
  await expect.poll(() => person.saving()).toMatch(/Not saved/);
  await person.openTemplate('Closed-box bench');
  await refuse(false);
  await expect.poll(() => person.saving(), { timeout: 40_000 }).toMatch(/Saved \d/);
  await (await person.seen('>>> nav[aria-label="Documents on this device"] ::-p-text(Two-driver check)'))?.click();
  await person.expectText('D22', /^99 dB$/);
});

test('where the browser keeps nothing at all the page works, says that nothing is saved, and lets nothing typed go', async () => {
  const page = await session.browser.newPage();
  await page.setViewport({ width: 1440, height: 900 });
  await page.evaluateOnNewDocument(() => {
    const refuseAll = (): never => {
      throw new DOMException('Access is denied.', 'SecurityError');
    };
    Object.defineProperty(globalThis, 'localStorage', { get: refuseAll });
    IDBFactory.prototype.open = refuseAll;
  });
  await page.goto(session.address, { waitUntil: 'load' });
  const there = new Person(page);
  await there.settled();
  await there.type('D22', '104');
  await there.expectText('D22', /^104 dB$/);
  await there.seen('>>> .kept.failed');
  expect(await there.saving()).toMatch(/Access is denied.*Save it to a file/);
  await (await there.seen('>>> nav[aria-label="Starter sheets"] ::-p-text(Starter sheets…)'))?.click();
  await (await there.seen('>>> ::-p-aria([name="Closed-box bench"][role="button"])'))?.click();
  await expect.poll(() => there.notices()).toEqual([expect.stringMatching(/is not saved.*Save it to a file/)]);
  await there.expectText('D22', /^104 dB$/);
});

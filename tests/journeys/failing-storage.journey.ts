import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Person } from './person.ts';
import { leave, visit, type Session } from './visit.ts';

let session: Session;
let person: Person;

beforeAll(async () => {
  ({ session, person } = await visit());
  await person.atRest();
});

afterAll(() => leave(session));

const saving = (): Promise<string> =>
  session.page.evaluate(
    () =>
      document
        .querySelector('octavo-app')
        ?.shadowRoot?.querySelector('sheet-rail')
        ?.shadowRoot?.querySelector('.kept')
        ?.textContent.trim() ?? '',
  );

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
  await expect.poll(saving).toMatch(/Not saved\. .*no room.*Save the document to a file.*Trying again/);
  await person.expectText('D22', /^104 dB$/);
});

test('it is tried again until it is done, with all that was typed meanwhile', async () => {
  await person.type('D27', '230 mm');
  await refuse(false);
  await expect.poll(saving, { timeout: 40_000 }).toMatch(/Saved \d/);
  await session.page.reload({ waitUntil: 'load' });
  await person.settled();
  await person.expectText('D22', /^104 dB$/);
  await person.expectText('D27', /^230 mm$/);
});

import { afterEach, beforeEach, expect, test } from 'vitest';
import { comeBack } from './come-back.ts';
import { Person } from './person.ts';
import { leave, visit, type Session } from './visit.ts';

let session: Session;
let person: Person;

beforeEach(async () => {
  ({ session, person } = await visit());
  await person.atRest();
  await person.goTo('D24');
});

afterEach(() => leave(session));

/** Takes hold of the rule at a part of its length and drags it to another; the pointer stays down. */
async function drag(from: number, to: number): Promise<void> {
  const box = await (await person.seen('>>> .rule[role=slider]'))?.boundingBox();
  if (!box) throw new Error('The rule is not on the page.');
  const { mouse } = session.page;
  const y = box.y + box.height / 2;
  await mouse.move(box.x + box.width * from, y);
  await mouse.down();
  await mouse.move(box.x + box.width * to, y, { steps: 12 });
}

/** What the list of changes says, row by row: how a verdict is drawn before and after, and the words. */
const changes = (): Promise<{ isCause: boolean; isTurn: boolean; words: string }[]> =>
  session.page.evaluate(() => {
    const dock = document.querySelector('octavo-app')?.shadowRoot?.querySelector('plot-dock')?.shadowRoot;
    const rows = dock?.querySelector('consequence-list')?.shadowRoot?.querySelectorAll('li') ?? [];
    return [...rows].map((row) => {
      const looks = ['.before', '.after'].map(
        (part) => row.querySelector(`${part} > .good, ${part} > .caution, ${part} > .fail`)?.className,
      );
      return {
        isCause: row.className === 'cause',
        isTurn: looks[0] !== undefined && looks[1] !== undefined && looks[0] !== looks[1],
        words: row.textContent.replaceAll(/\s+/g, ' ').trim(),
      };
    });
  });

const hertz = async (): Promise<number> => Person.numberIn(await person.shownIn('D24'));

test('the sheet follows while the rule is dragged, and what is let go is kept', async () => {
  await drag(0.4, 0.75);
  await expect.poll(hertz).toBeGreaterThan(2500);
  await session.page.mouse.up();
  await person.atRest();
  const kept = await person.shownIn('D24');
  await session.page.reload({ waitUntil: 'load' });
  await person.atRest();
  expect(await person.textOf('D24')).toBe(kept);
});

test('Escape in the middle of a drag puts back what was there', async () => {
  const before = await person.shownIn('D24');
  await drag(0.4, 0.75);
  await expect.poll(hertz).toBeGreaterThan(2500);
  await session.page.keyboard.press('Escape');
  await expect.poll(() => person.shownIn('D24')).toBe(before);
  await session.page.mouse.up();
  expect(await person.textOf('D24')).toBe(before);
});

test('the list of changes begins with the cause, then the verdicts that turned; a drag is one step to take back', async () => {
  await drag(0.4, 0.46);
  await session.page.mouse.up();
  await expect.poll(async () => (await changes()).some(({ isTurn }) => isTurn)).toBe(true);
  const rows = await changes();
  const order = rows.map(({ isCause, isTurn }) => (isCause ? 0 : isTurn ? 1 : 2));
  expect(rows[0]?.words).toMatch(/^D24/);
  expect(order).toEqual(order.toSorted((a, b) => a - b));
  expect(order).toContain(2);
  await person.goTo('D24');
  await person.press('Control+z');
  await expect.poll(() => person.shownIn('D24')).toMatch(/^1.?808 Hz$/);
});

test('a tab that is closed in the middle of a drag opens again with what was kept before it', async () => {
  await drag(0.4, 0.75);
  await expect.poll(hertz).toBeGreaterThan(2500);
  const later = await comeBack(session);
  expect(await later.textOf('D24')).toMatch(/^1.?808 Hz$/);
});

import { afterAll, beforeAll, expect, test } from 'vitest';
import { openSession } from '../../.config/browser-session.mjs';
import { Person } from './person.ts';

let session: Awaited<ReturnType<typeof openSession>>;
let person: Person;

beforeAll(async () => {
  session = await openSession();
  person = new Person(session.page);
  await person.settled();
  await session.page.waitForSelector('>>> formula-editor');
});

afterAll(async () => {
  expect(session.problems).toEqual([]);
  await session.close();
});

/** Cells below one another that hold nothing. */
const [first, second, third] = ['F4', 'F5', 'F6'] as const;

/** Takes the pointer to the middle of a cell in view. */
async function click(cell: string): Promise<void> {
  const box = await (await session.page.waitForSelector(`>>> #cell-${cell}`))?.boundingBox();
  if (!box) throw new Error(`${cell} is not in view.`);
  await session.page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
}

test('a formula typed over a cell is computed, and Enter leads on', async () => {
  await person.goTo(first);
  await session.page.keyboard.type('=2*3.5');
  await person.press('Enter');
  await person.expectText(first, /^7$/);
});

test('a click on a cell while a formula is written means that cell', async () => {
  await person.goTo(second);
  await session.page.keyboard.type('=10*');
  await click(first);
  await session.page.keyboard.type('+1');
  await person.press('Enter');
  await person.expectText(second, /^71$/);
});

test('what was typed stays with its cell when the reader clicks elsewhere', async () => {
  await person.goTo(third);
  await session.page.keyboard.type(`=${first}+${second}`);
  await click(first);
  await person.expectText(third, /^78$/);
});

test('the guide opens at the function that is written, and its example goes into the cell', async () => {
  await person.goTo(third);
  await session.page.keyboard.type('=CLOSED.QTC(');
  await person.press('F1');
  await session.page.waitForSelector('>>> function-guide >>> article[aria-label="CLOSED.QTC"]', { visible: true });
  await (await session.page.waitForSelector('>>> function-guide >>> button.use'))?.click();
  await person.press('Enter');
  await person.expectText(third, /^0\.\d+$/);
});

import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Person } from './person.ts';
import { leave, visit, type Session } from './visit.ts';

let session: Session;
let person: Person;

beforeAll(async () => {
  ({ session, person } = await visit());
  await session.page.waitForSelector('>>> formula-editor');
});

afterAll(() => leave(session));

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

test('while a function is written its words are seen: what it does, what its argument means, where it comes from', async () => {
  await person.goTo(third);
  await session.page.keyboard.type('=CLOSED.QT');
  await person.seen('>>> formula-editor >>> li ::-p-text(Total Q of a driver in a closed box without losses.)');
  await session.page.keyboard.type('C(');
  await person.seen('>>> formula-editor >>> .hint ::-p-text(total Q of the driver)');
  await person.press('F1');
  const page = await person.seen('>>> function-guide >>> article[aria-label="CLOSED.QTC"]');
  const words = await page?.evaluate(({ textContent }) => textContent);
  for (const said of [
    'Total Q of a driver in',
    'total Q in the box',
    '=CLOSED.QTC(0.386',
    'R. H. Small',
    'Qtc = Qts·√',
  ])
    expect(words).toContain(said);
});

test('its example goes from the guide into the cell', async () => {
  await (await session.page.waitForSelector('>>> function-guide >>> button.use'))?.click();
  await person.press('Enter');
  await person.expectText(third, /^0\.\d+$/);
});

test('a number that is hardly meant is questioned where it is typed, though another cell asks', async () => {
  await person.type('B10', '132 mm2');
  await person.goTo('B10');
  await person.seen('>>> sheet-head >>> .finding ::-p-text(B20, Driver, completed, Woofer: Sd of 1.32 cm² is not)');
  await person.press('Control+z');
});

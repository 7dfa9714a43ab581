import { afterAll, beforeAll, expect, test } from 'vitest';
import { typedDriver } from '../references/demo-drivers.ts';
import { comeBack } from './come-back.ts';
import { focused, isFramed, keyTo } from './focus.ts';
import { octaves, Person } from './person.ts';
import { leave, visit, type Session } from './visit.ts';

let session: Session;
let person: Person;

beforeAll(async () => {
  ({ session, person } = await visit());
  await person.atRest();
});

afterAll(() => leave(session));

test('the sheet takes keys as soon as it stands', async () => {
  expect(await focused(session.page)).toBe('Two drivers');
  await person.press('ArrowDown');
  await person.seen('>>> sheet-grid >>> [role=grid][aria-activedescendant="cell-D25"]');
});

test.each([
  ['Shift+Tab', 'A1'],
  ['Tab', 'J92'],
])('by %s from the sheet whatever has the focus is framed', async (key, corner) => {
  await person.goTo(corner);
  const names: string[] = [];
  while (await session.page.evaluate(() => document.activeElement !== document.body)) {
    names.push(await focused(session.page));
    expect(await isFramed(session.page), names.at(-1)).toBe(true);
    await person.press(key);
  }
  expect(names.length).toBeGreaterThan(10);
});

/** The main job with no pointer anywhere: two drivers, the verdict, a tweak, another tweeter beside it, home again. */
test('both drivers are typed, and the verdict read', async () => {
  await person.type('B4', ...typedDriver('W-130 A'));
  await person.type('C4', ...typedDriver('T-28 B'));
  await person.expectNumber('D43', 1.15, octaves);
  await person.expectText('E41', /^Comfortable/);
});

test('the hand-over is moved in small steps and in tens, and put back', async () => {
  await person.goTo('D24');
  await person.press('Alt+ArrowUp');
  await expect.poll(() => person.shownIn('D24')).toMatch(/^1.?81\d Hz$/);
  await person.press('Alt+Shift+ArrowUp');
  await expect.poll(() => person.shownIn('D24')).toMatch(/^1.?9\d\d Hz$/);
  await person.atRest();
  await person.press('Control+z');
  await expect.poll(() => person.shownIn('D24')).toMatch(/^1.?8\d\d Hz$/);
});

test('a formula points at cells by arrows, and at a range with Shift', async () => {
  await person.goTo('G10');
  await session.page.keyboard.type('=');
  for (const key of ['ArrowUp', 'ArrowLeft', 'ArrowLeft', 'ArrowLeft', 'ArrowLeft', 'ArrowLeft', 'Shift+ArrowRight'])
    await person.press(key);
  await session.page.keyboard.type('*2');
  await person.press('Escape');
  await session.page.keyboard.type('=SUM(');
  for (const key of ['ArrowUp', 'Control+ArrowLeft', 'Shift+ArrowLeft']) await person.press(key);
  await session.page.keyboard.type(')');
  await person.press('Enter');
  // C9 and B9, the inductances of both coils.
  const [woofer, tweeter] = [await person.textOf('B9'), await person.textOf('C9')].map((text) => Person.numberIn(text));
  await person.expectNumber('G10', (woofer ?? NaN) + (tweeter ?? NaN), 0.001);
});

test('the sheet is duplicated for another tweeter, and both are there after closing and coming back', async () => {
  await keyTo(person, 'Shift+Tab', 'More for Two drivers');
  await person.press('Enter');
  await expect.poll(() => focused(session.page)).toMatch(/Rename|Duplicate/);
  for (let presses = 0; presses < 10 && (await focused(session.page)) !== 'Duplicate'; presses++)
    await person.press('ArrowDown');
  await person.press('Enter');
  await person.seen('>>> [role=grid][aria-label="Two drivers 2"]');
  await person.atRest();
  await person.type('C4', ...typedDriver('T-19 C'));
  await person.expectNumber('D43', -0.46, octaves);
  await person.atRest();
  const later = await comeBack(session);
  await later.expectText('C4', /^T-28 B$/);
  await later.expectNumber('D43', 1.15, octaves);
  await later.seen('>>> .name[title="Two drivers 2"]');
});

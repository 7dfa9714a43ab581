import { afterAll, beforeAll, expect, test } from 'vitest';
import { openSession } from '../../.config/browser-session.mjs';
import { askAbout, closed, kindOf, tabTo, told } from './asking.ts';
import { lastDigit, Person, twoPercent } from './person.ts';

let session: Awaited<ReturnType<typeof openSession>>;
let person: Person;

beforeAll(async () => {
  session = await openSession();
  person = new Person(session.page);
  await person.settled();
  await person.openTemplate('Closed-box bench');
});

afterAll(async () => {
  expect(session.problems).toEqual([]);
  await session.close();
});

test('which litres give Qtc 0.707: asked, found and set by the keyboard', async () => {
  await person.type('B19', '30 L');
  await askAbout(person, 'Qtc');
  await session.page.keyboard.type('which litres give Qtc 0.707?');
  await person.press('Enter');
  expect(await told(person)).toMatch(/^Net volume 12\.1\d* L brings Damping Qtc .* to 0\.707\.$/);
  await tabTo(person, 'Set it: Net volume 12.1');
  await person.press('Enter');
  await closed(person);
  await person.expectNumber('C22', 0.707, lastDigit);
  // The sheet's own closed form.
  await person.expectNumber('C18', 12.13, twoPercent(12.13));
  await person.press('Control+z');
  await person.expectNumber('B19', 30, 0);
});

test('a question that cannot be read says what is missing', async () => {
  await askAbout(person, 'Qtc');
  await session.page.keyboard.type('make it better');
  await person.press('Enter');
  expect(await told(person)).toMatch(/Ask for the value of an input/);
});

test('a map: a point is picked with the arrows and set', async () => {
  await kindOf(person, 'Move two inputs');
  await tabTo(person, 'Points each way');
  await person.press('Enter');
  expect(await told(person)).toMatch(/Damping Qtc .* at 1681 points/);
  await tabTo(person, 'Pick a point');
  await person.press('ArrowRight');
  await person.press('ArrowUp');
  await person.press('Enter');
  await closed(person);
  await person.press('Control+z');
});

test('a scatter repeats with its seed', async () => {
  const run = async (): Promise<string> => {
    await askAbout(person, 'Qtc');
    await kindOf(person, 'How sure is it');
    await tabTo(person, 'Runs');
    await person.press('Enter');
    const said = await told(person);
    await person.press('Escape');
    await closed(person);
    return said;
  };
  const first = await run();
  expect(first).toMatch(/1000 runs from seed 1/);
  expect(await run()).toBe(first);
});

test('a long search is given up, and nothing has changed', async () => {
  await askAbout(person, 'Qtc');
  await kindOf(person, 'How sure is it');
  await tabTo(person, 'Runs');
  await session.page.keyboard.type('20000');
  await person.press('Enter');
  await tabTo(person, 'Stop');
  await person.press('Enter');
  expect(await told(person)).toBe('Given up: nothing was changed.');
  await person.press('Escape');
  await closed(person);
  await person.expectNumber('B19', 30, 0);
});

import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Person } from './person.ts';
import { leave, visit, type Session } from './visit.ts';

let session: Session;
let person: Person;

beforeAll(async () => {
  ({ session, person } = await visit());
});
afterAll(() => leave(session));

test('opens with the lesson, takes a guess by the keyboard, tells how close it is and why', async () => {
  await person.press('Control+g');
  await person.seen('>>> input[type=search]:focus');
  await session.page.keyboard.type('first speaker lesson');
  await person.press('Enter');
  await person.seen('>>> ::-p-text(Step 1 of 8)');
  await (await person.seen('>>> input[name=E36]'))?.focus();
  await session.page.keyboard.type('2500');
  await person.press('Enter');
  await person.seen('>>> ::-p-text(Too high)');
  await person.seen('>>> ::-p-text(Near its resonance a tweeter moves most)');
});

test('goes on, leaves by Escape, and the guess stands in the sheet with its unit', async () => {
  await person.pressButton('Next');
  await person.seen('>>> ::-p-text(Step 2 of 8)');
  await person.press('Escape');
  await person.expectText('E36', /^2\s?500 Hz$/u);
  await person.expectText('F36', /^Too high$/u);
});

test('goes on from the menu of the sheet where the guesses end', async () => {
  await person.chooseForSheet('First speaker', 'Go on with the lesson');
  await person.seen('>>> ::-p-text(Step 2 of 8)');
  await person.pressButton('Begin again');
  await person.seen('>>> ::-p-text(Step 1 of 8)');
  await person.press('Escape');
  await person.expectText('E36', /^$/u);
  await person.press('Control+z');
  await person.expectText('E36', /^2\s?500 Hz$/u);
  expect(session.problems).toEqual([]);
});

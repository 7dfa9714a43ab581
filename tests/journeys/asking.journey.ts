import { afterAll, beforeAll, expect, test } from 'vitest';
import { askAbout, closed, kindOf, tabTo, told } from './asking.ts';
import { lastDigit, type Person, twoPercent } from './person.ts';
import { violations } from './violations.ts';
import { leave, visit, type Session } from './visit.ts';

let session: Session;
let person: Person;

beforeAll(async () => {
  ({ session, person } = await visit());
  await person.openTemplate('Closed-box bench');
});

afterAll(() => leave(session));

test('which litres give Qtc 0.707: asked, found and set by the keyboard', async () => {
  await person.type('B24', '30 L');
  await askAbout(person, 'Qtc');
  await session.page.keyboard.type('which litres give Qtc 0.707?');
  await person.press('Enter');
  expect(await told(person)).toMatch(
    /^Net volume 12\.1\d* L brings Damping Qtc .* to 0\.707\. Looked at \d+ values\. .* could be missed\.$/,
  );
  await tabTo(person, 'Set it: Net volume 12.1');
  await person.press('Enter');
  await closed(person);
  await person.expectNumber('C27', 0.707, lastDigit);
  // The sheet's own closed form.
  await person.expectNumber('C23', 12.13, twoPercent(12.13));
  await person.press('Control+z');
  await person.expectNumber('B24', 30, 0);
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
  await person.expectNumber('B24', 30, 0);
});

test('the box of least F3 is found by the keyboard, compared with what stands there, and set', async () => {
  await person.type('B24', '30 L');
  await askAbout(person, 'Fall3');
  await session.page.keyboard.type('lowest Fall3 by Volume from 5 L to 60 L');
  await person.press('Enter');
  expect(await told(person)).toMatch(/^F3: 3 dB down: .* Hz, .* Hz as the sheet stands\./);
  expect(await violations(session.page)).toEqual([]);
  await tabTo(person, 'Set it: Net volume');
  await person.press('Enter');
  await closed(person);
  // f3² is proportional to ½ − q + √(2q² − q + ¼) with q = Qtc², least at q = ½, where F3 is the resonance in the box.
  await person.expectNumber('C31', 69.6, 0.2);
  await person.press('Control+z');
  await person.expectNumber('B24', 30, 0);
});

test('every combination: a row is picked and set', async () => {
  await askAbout(person, 'Qtc');
  await kindOf(person, 'Every combination');
  await tabTo(person, 'Net volume to one of');
  await session.page.keyboard.type('8 L, 12 L, 20 L');
  await tabTo(person, 'Compute');
  await person.press('Enter');
  expect(await told(person)).toMatch(/^15 combinations computed/);
  expect(await violations(session.page)).toEqual([]);
  const picked = await tabTo(person, 'Set it: ');
  const litres = Number(/Net volume ([\d.]+) L/.exec(picked)?.[1]);
  await person.press('Enter');
  await closed(person);
  await person.expectNumber('B24', litres, 0);
  await person.press('Control+z');
  await person.expectNumber('B24', 30, 0);
});

test('every combination is kept as a sheet', async () => {
  await askAbout(person, 'Qtc');
  await kindOf(person, 'Every combination');
  await tabTo(person, 'Compute');
  await person.press('Enter');
  await told(person);
  await person.pressButton('Keep as a sheet');
  await closed(person);
  await person.expectText('A1', /^Every combination: Damping Qtc/);
});

test('the cheapest change turns what fails, and is set in one step', async () => {
  await person.openTemplate('Two-driver check');
  await person.type('C5', '2400 Hz');
  await askAbout(person, 'E2');
  await session.page.keyboard.type('cheapest change that passes');
  await person.press('Enter');
  expect(await told(person)).toMatch(/^6 fail now: .* Found: .* in place of /);
  expect(await violations(session.page)).toEqual([]);
  await tabTo(person, 'Set it: ');
  await person.press('Enter');
  await closed(person);
  await person.expectText('E2', /^(?!Fail)/);
  await person.press('Control+z');
  await person.expectText('E2', /^Fail/);
});

import { afterAll, beforeAll, expect, test } from 'vitest';
import { decibels, Person } from './person.ts';
import { violations } from './violations.ts';
import { leave, visit, type Session } from './visit.ts';

let session: Session;
let person: Person;

beforeAll(async () => {
  ({ session, person } = await visit());
});
afterAll(() => leave(session));

/** Takes the sheet shown over into a starter sheet, and closes what tells of it. */
async function takeOver(from: string, title: string, name: string): Promise<void> {
  await person.chooseForSheet(from, 'Take this over into…');
  await person.seen('>>> input[type=search]:focus');
  await session.page.keyboard.type(title);
  await (await person.seen(`>>> ::-p-aria([name="${title}"][role="button"])`))?.click();
  await person.seen(`>>> ::-p-text(“${from}” taken over into “${name}”)`);
  await person.press('Escape');
  await person.seen(`>>> [role=grid][aria-label="${name}"]`);
  await person.settled();
}

test('two drivers are typed once and go from the check to the box, the panel, the parts, the saw and the basket', async () => {
  await person.type('B4', 'Mine', '36 Hz');
  await person.type('Width', '240 mm');
  await person.type('MakeUp', '4 dB');
  // The tweeter's 90 dB over the woofer's 89.2 dB less its make-up.
  const pad = 90 - (89.2 - 4);
  await person.expectNumber('D56', pad, decibels);

  await takeOver('Two drivers', 'Vented box with a port that fits', 'Vented box');
  await person.expectText('B8', /^Mine$/);
  await person.type('SeriesOhms', '0.5 ohm');
  const port = Person.numberIn(await person.textOf('C40'));

  await person.showSheet('Two drivers');
  await takeOver('Two drivers', 'Front panel and padding', 'Front panel');
  await person.expectText('B4', /^Mine$/);
  await person.expectNumber('D22', 240, 0);
  await person.expectNumber('D63', pad, decibels);

  await takeOver('Front panel', 'First-draft crossover', 'First crossover');
  await person.expectText('B5', /^Mine$/);
  await person.expectNumber('D26', 4, 0);
  await person.expectNumber('D28', pad, decibels);

  await person.showSheet('Vented box');
  await takeOver('Vented box', 'Saw list', 'Saw list');
  await person.expectText('B4', /^Mine$/);
  await person.expectNumber('B36', 0.5, 0);
  // As the old sheet shows it, to its last digit.
  await person.expectNumber('B44', port, 0.5);

  await person.showSheet('Two drivers');
  await takeOver('Two drivers', 'Shopping basket', 'Basket');
  await person.expectText('B6', /^Mine$/);
});

test('all of it in one go, and what is changed arrives at the end when one goes again', async () => {
  await person.openTemplate('Two-driver check');
  await person.type('B4', 'Ours', '33 Hz');
  const goAllTheWay = async (): Promise<void> => {
    await person.chooseForSheet('Two drivers', 'Take this over into…');
    await (await person.seen('>>> ::-p-aria([name="With a closed box"][role="button"])'))?.click();
    await person.seen('>>> ::-p-text(“Two drivers” taken as far as “Basket”)');
  };
  await goAllTheWay();
  expect(await violations(session.page)).toEqual([]);
  await person.press('Escape');
  await person.showSheet('Front panel');
  await person.type('Thickness', '22 mm');
  await person.showSheet('Two drivers');
  await person.type('B4', 'Others');
  await person.type('HandOver', '2050 Hz');
  await goAllTheWay();
  await person.press('Escape');
  await person.showSheet('First crossover');
  await person.expectNumber('D23', 2050, 0);
  const coils = Person.numberIn(await person.textOf('D96'));
  await person.showSheet('Saw list');
  await person.expectNumber('B22', 22, 0);
  const board = Person.numberIn(await person.textOf('C62'));
  await person.showSheet('Basket');
  await person.expectText('B6', /^Others$/);
  await person.expectNumber('B37', coils, 0);
  await person.expectNumber('C43', board, 0);
  await person.press('Control+z');
  await person.expectText('B6', /^Ours$/);
});

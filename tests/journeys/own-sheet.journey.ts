import { afterAll, beforeAll, expect, test } from 'vitest';
import { comeBack } from './come-back.ts';
import { focused, keyTo } from './focus.ts';
import type { Person } from './person.ts';
import { leave, visit, type Session } from './visit.ts';

let session: Session;
let person: Person;

beforeAll(async () => {
  ({ session, person } = await visit());
  await person.atRest();
});

afterAll(() => leave(session));

const type = (text: string): Promise<void> => session.page.keyboard.type(text);

/** Chooses from the menu of the cells. */
async function choose(words: string): Promise<void> {
  await person.press('Shift+F10');
  await person.seen('>>> [role=menu][aria-label="Cells"]');
  for (let presses = 0; presses < 30 && !(await focused(session.page)).startsWith(words); presses++)
    await person.press('ArrowDown');
  await person.press('Enter');
}

/** A field of the form that is open has the focus. */
const inField = (label: string): Promise<void> => expect.poll(() => focused(session.page)).toBe(label);

const titles = (): Promise<string[]> =>
  session.page.evaluate(() => {
    const dock = document.querySelector('octavo-app')?.shadowRoot?.querySelector('plot-dock')?.shadowRoot;
    return [...(dock?.querySelectorAll('curve-plot, cell-plot') ?? [])].map(
      (plot) => plot.shadowRoot?.querySelector('h2')?.textContent ?? '',
    );
  });

/** A sheet of one's own with no pointer anywhere: cells, a plot, a heading, choices, its line; and home again. */
test('an empty document says how to add a plot', async () => {
  await keyTo(person, 'Shift+Tab', 'Empty document');
  await person.press('Enter');
  await person.seen('>>> [role=grid][aria-label="Sheet 1"]');
  await person.seen('>>> ::-p-text(This sheet has no plots yet.)');
  await person.type('A1', 'Own box', 'Response', 'Volume', 'Limit', 'Corner', 'Box');
  await person.type(
    'B2',
    '=BOX.RESPONSE(CLOSED.BOX(DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "5.8 ohm", "132 cm2", "5.5 mm", "0.55 mH", "70 W"), B3))',
    '12 L',
    '3 dB',
    '90 Hz',
    'closed',
  );
  await person.expectText('B5', /^90 Hz$/);
});

test('a plot of what is selected is filled in; what is wrong is said at the field, and stays', async () => {
  await person.goTo('A2');
  for (const key of ['ArrowRight', 'ArrowDown', 'ArrowDown', 'ArrowDown']) await person.press(`Shift+${key}`);
  await person.press('F9');
  await inField('Title');
  await type('Own response');
  await keyTo(person, 'Tab', 'Cell');
  await type('Other!B2');
  await person.seen('>>> ::-p-text(A plot draws cells of its own sheet: write =Other!B2 into a cell here)');
  await person.press('Enter');
  await person.seen('>>> ::-p-text(One field must be put right first.)');
  expect(await titles()).toEqual([]);
  await person.press('Control+a');
  await type('B2');
  await person.press('Enter');
  await expect.poll(titles).toEqual(['Own response']);
  await inField('Sheet 1');
  const plot = await session.page.evaluate(() => document.querySelector('octavo-app')?.sheet?.plots[0]);
  expect(plot).toMatchObject({
    kind: 'curves',
    series: [{ cell: 'B2', label: 'Response' }],
    limits: [{ cell: 'B4', label: 'Limit', forbidden: 'above' }],
    marks: [{ cell: 'B5', label: 'Corner' }],
  });
});

test('adding it is one step back, and forth', async () => {
  await person.press('Control+z');
  await expect.poll(titles).toEqual([]);
  await person.press('Control+y');
  await expect.poll(titles).toEqual(['Own response']);
});

test('a second plot is moved up from its own menu, and changed', async () => {
  await person.goTo('B3');
  await person.press('F9');
  await inField('Title');
  await person.press('Enter');
  await expect.poll(titles).toEqual(['Own response', 'Volume']);
  await keyTo(person, 'Tab', 'More for Volume');
  await person.press('Enter');
  await expect.poll(() => focused(session.page)).toBe('Change this plot…');
  await person.press('ArrowDown');
  await person.press('Enter');
  await expect.poll(titles).toEqual(['Volume', 'Own response']);
  await inField('More for Volume');
  await person.press('Enter');
  await expect.poll(() => focused(session.page)).toBe('Change this plot…');
  await person.press('Enter');
  await inField('Title');
  await type('Litres');
  await person.press('Enter');
  await expect.poll(titles).toEqual(['Litres', 'Own response']);
});

test('a cell becomes a heading, and a column has a title', async () => {
  await person.goTo('A1');
  await choose('Looks and column titles');
  await expect.poll(() => focused(session.page)).toMatch(/^Plain/);
  await person.press('ArrowDown');
  await keyTo(person, 'Tab', 'Title of column A');
  await type('What');
  await person.press('Enter');
  await person.seen('>>> #cell-A1.heading');
  await person.seen('>>> .head b[title="What"]');
});

test('an input takes the words that were given to it', async () => {
  await person.goTo('B6');
  await choose('Choices of this input');
  await person.seen('>>> dialog[open] ::-p-text(Choices of B6)');
  await type('closed, vented');
  await person.press('Enter');
  await inField('Sheet 1');
  await person.press('Alt+ArrowUp');
  await expect.poll(() => person.shownIn('B6')).toBe('vented');
});

test('the sheet says in a line what it answers', async () => {
  await keyTo(person, 'Shift+Tab', 'More for Sheet 1');
  await person.press('Enter');
  await expect.poll(() => focused(session.page)).toBe('Duplicate');
  await keyTo(person, 'ArrowDown', 'Line under its name…');
  await person.press('Enter');
  await person.seen('>>> dialog[open] ::-p-text(Line under “Sheet 1”)');
  await type('How low does it go?');
  await person.press('Enter');
  await person.seen('>>> .title ::-p-text(How low does it go?)');
});

test('rows above move all of it along, and it is there after closing and coming back', async () => {
  await person.goTo('A1');
  await choose('Insert rows above');
  await person.expectText('B7', /^vented$/);
  await person.atRest();
  const later = await comeBack(session);
  session = { ...session, page: later.page };
  expect(await titles()).toEqual(['Litres', 'Own response']);
  const plots = await later.page.evaluate(() => document.querySelector('octavo-app')?.sheet?.plots);
  expect(plots).toMatchObject([{ series: [{ cell: 'B4' }] }, { series: [{ cell: 'B3' }], marks: [{ cell: 'B6' }] }]);
  await later.seen('>>> #cell-A2.heading');
  await later.seen('>>> .title ::-p-text(How low does it go?)');
  await later.expectText('B7', /^vented$/);
});

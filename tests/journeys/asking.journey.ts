import { afterAll, beforeAll, expect, test } from 'vitest';
import { openSession } from '../../.config/browser-session.mjs';
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

/** What stands in the line of the answer, as soon as no search is under way. */
async function told(): Promise<string> {
  const handle = await session.page.waitForFunction(
    () => {
      const page = document.querySelector('octavo-app')?.shadowRoot?.querySelector('ask-page')?.shadowRoot;
      const line = page?.querySelector('ask-told');
      return line && line.progress === undefined && line.said !== '' && line.said;
    },
    { timeout: 15_000 },
  );
  return String(await handle.jsonValue());
}

/** Opens the questions about a cell; the line in plain words has the focus then. */
async function askAbout(cell: string): Promise<void> {
  await person.goTo(cell);
  await person.press('Control+Shift+F');
  await session.page.waitForFunction(() => {
    let active = document.activeElement;
    while (active?.shadowRoot?.activeElement) active = active.shadowRoot.activeElement;
    return active?.getAttribute('aria-describedby') === 'words';
  });
}

/** Goes with Tab until the element with these words, or this role, has the focus. */
async function tabTo(wanted: string): Promise<void> {
  for (let presses = 0; presses < 60; presses++) {
    const name = await session.page.evaluate(() => {
      let active = document.activeElement;
      while (active?.shadowRoot?.activeElement) active = active.shadowRoot.activeElement;
      return active?.getAttribute('aria-label') ?? active?.parentElement?.textContent ?? '';
    });
    if (name.includes(wanted)) return;
    await person.press('Tab');
  }
  throw new Error(`Tab does not lead to “${wanted}”.`);
}

/** The page of questions is closed, and the sheet has the focus again. */
const closed = (): Promise<unknown> =>
  session.page.waitForFunction(() => {
    const app = document.querySelector('octavo-app')?.shadowRoot;
    return (
      !app?.querySelector('ask-page') &&
      app?.querySelector('sheet-grid')?.shadowRoot?.activeElement?.getAttribute('role') === 'grid'
    );
  });

test('which litres give Qtc 0.707: asked, found and set by the keyboard', async () => {
  await person.type('B19', '30 L');
  await askAbout('Qtc');
  await session.page.keyboard.type('which litres give Qtc 0.707?');
  await person.press('Enter');
  expect(await told()).toMatch(/^Net volume 12\.1\d* L brings Damping Qtc .* to 0\.707\.$/);
  await tabTo('Set it: Net volume 12.1');
  await person.press('Enter');
  await closed();
  await person.expectNumber('C22', 0.707, lastDigit);
  // The sheet's own closed form.
  await person.expectNumber('C18', 12.13, twoPercent(12.13));
  await person.press('Control+z');
  await person.expectNumber('B19', 30, 0);
});

test('a question that cannot be read says what is missing', async () => {
  await askAbout('Qtc');
  await session.page.keyboard.type('make it better');
  await person.press('Enter');
  expect(await told()).toMatch(/Ask for the value of an input/);
});

test('a map: a point is picked with the arrows and set', async () => {
  await tabTo('Find a value');
  await person.press('ArrowRight');
  await person.press('ArrowRight');
  await tabTo('Points each way');
  await person.press('Enter');
  expect(await told()).toMatch(/Damping Qtc .* at 1681 points/);
  await tabTo('Pick a point');
  await person.press('ArrowRight');
  await person.press('ArrowUp');
  await person.press('Enter');
  await closed();
  await person.press('Control+z');
});

test('a scatter repeats with its seed', async () => {
  const run = async (): Promise<string> => {
    await askAbout('Qtc');
    await tabTo('Find a value');
    for (const _ of [1, 2, 3]) await person.press('ArrowRight');
    await tabTo('Runs');
    await person.press('Enter');
    const said = await told();
    await person.press('Escape');
    await closed();
    return said;
  };
  const first = await run();
  expect(first).toMatch(/1000 runs from seed 1/);
  expect(await run()).toBe(first);
});

test('a long search is given up, and nothing has changed', async () => {
  await askAbout('Qtc');
  await tabTo('Find a value');
  for (const _ of [1, 2, 3]) await person.press('ArrowRight');
  await tabTo('Runs');
  await session.page.keyboard.type('20000');
  await person.press('Enter');
  await tabTo('Stop');
  await person.press('Enter');
  expect(await told()).toBe('Given up: nothing was changed.');
  await person.press('Escape');
  await closed();
  await person.expectNumber('B19', 30, 0);
});

import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Person } from './person.ts';
import { leave, visit, type Session } from './visit.ts';

let session: Session;
let person: Person;

const textOf = (selector: string): Promise<string | undefined> =>
  session.page.evaluate(
    (wanted) => document.querySelector('octavo-app')?.shadowRoot?.querySelector(wanted)?.textContent,
    selector,
  );

/** Goes through the whole tour by the keyboard: each title, and whether something is ringed. */
async function walked(): Promise<{ title: string; ringed: boolean }[]> {
  const stops: { title: string; ringed: boolean }[] = [];
  for (;;) {
    const now = await session.page.evaluate(() => {
      const page = document.querySelector('octavo-app')?.shadowRoot?.querySelector('tour-page')?.shadowRoot;
      const root = page?.querySelector('tour-dialog')?.shadowRoot;
      const { width = 0 } = root?.querySelector('.ring')?.getBoundingClientRect() ?? {};
      return { title: root?.activeElement?.textContent ?? '', ringed: width > 8 };
    });
    if (stops.at(-1)?.title === now.title) return stops;
    stops.push(now);
    await person.press('ArrowRight');
  }
}

describe.each([
  ['wide', 1440],
  ['narrow', 390],
])('a newcomer on a %s page', (_, width) => {
  beforeAll(async () => {
    ({ session, person } = await visit({ newcomer: true, width, height: 900 }));
  });
  afterAll(() => leave(session));

  test('is offered the tour, and led through it by the keyboard alone', async () => {
    await (await person.seen('>>> .notice ::-p-text(Take the tour)'))?.click();
    await person.seen('>>> h2#title');
    const stops = await walked();
    expect(stops.map(({ title }) => title)).toHaveLength(8);
    expect(stops.filter(({ ringed }) => !ringed)).toEqual([]);
    await person.press('Escape');
    await session.page.waitForFunction(
      () => !document.querySelector('octavo-app')?.shadowRoot?.querySelector('tour-page'),
    );
  });

  test('is never asked again, but finds it in the help', async () => {
    await session.page.reload({ waitUntil: 'load' });
    await person.settled();
    expect(await textOf('.notice')).toBeUndefined();
    await person.pressButton('Help');
    await (await person.seen('>>> [role=menu][aria-label="Help"] ::-p-text(Short tour)'))?.click();
    await person.seen('>>> h2#title');
    await person.press('Escape');
    await session.page.waitForFunction(() => {
      const bar = document.querySelector('octavo-app')?.shadowRoot?.querySelector('top-bar')?.shadowRoot;
      return bar?.activeElement?.getAttribute('label') === 'Help';
    });
    expect(session.problems).toEqual([]);
  });
});

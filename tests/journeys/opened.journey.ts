import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Person } from './person.ts';
import { leave, visit, type Session } from './visit.ts';

let session: Session;
let person: Person;

beforeAll(async () => {
  ({ session, person } = await visit());
  await person.atRest();
});

afterAll(() => leave(session));

/** What an open page over the sheet says. */
const said = (): Promise<string> =>
  session.page.evaluate(() => {
    const app = document.querySelector('octavo-app')?.shadowRoot;
    const page = app?.querySelector('page-dialog');
    const inner = page?.querySelector('record-card, key-page')?.shadowRoot;
    const words = [...(inner?.children ?? [])].filter((each) => !(each instanceof HTMLStyleElement));
    return words
      .map(({ textContent }) => textContent)
      .join(' ')
      .replaceAll(/\s+/g, ' ')
      .trim();
  });

/** Whether the keyboard is back in the sheet. */
const isInSheet = (): Promise<boolean> =>
  session.page.evaluate(() => {
    const active = document.querySelector('octavo-app')?.shadowRoot?.activeElement;
    return active?.localName === 'sheet-grid';
  });

describe('a cell opened in full', () => {
  test('from the keyboard shows every field, the formula with its values and the sources', async () => {
    await person.goTo('E24');
    await person.press('Control+i');
    await session.page.waitForSelector('>>> page-dialog >>> dialog[open]');
    const words = await said();
    expect(words).toContain('PAIR.HANDOVER_VERDICT(HandOver');
    expect(words).toMatch(/With its values =PAIR\.HANDOVER_VERDICT\(1\s808 Hz/);
    expect(words).toContain('Common practice, no source');
  });

  test('closes on Escape and leaves the keyboard in the sheet', async () => {
    await person.press('Escape');
    await session.page.waitForFunction(
      () => !document.querySelector('octavo-app')?.shadowRoot?.querySelector('page-dialog'),
    );
    expect(await isInSheet()).toBe(true);
  });

  test('from the menu of the cells shows every point of a curve', async () => {
    await person.openTemplate('Closed-box bench');
    await person.goTo('B1');
    const curve = await session.page.evaluate(() => {
      const app = document.querySelector('octavo-app');
      const sheet = app?.sheet;
      const cells = [...(sheet?.cells.keys() ?? [])];
      return cells.find((cell) => {
        const value = app?.workbook?.state(sheet?.id ?? '', cell)?.value;
        return value?.kind === 'record' && value.record.kind === 'curve';
      });
    });
    await person.goTo(curve ?? 'there is no curve');
    await person.press('Shift+F10');
    await (await person.seen('>>> [role=menu][aria-label="Cells"] ::-p-text(Open in full)'))?.click();
    await session.page.waitForSelector('>>> .points tbody tr');
    const rows = await session.page.$$('>>> .points tbody tr');
    expect(rows.length).toBeGreaterThan(200);
    await person.press('Escape');
    await expect.poll(isInSheet).toBe(true);
  });
});

test('the page of keys has those of the sheet and of the formula line', async () => {
  await person.press('Control+/');
  await session.page.waitForSelector('>>> key-page');
  const words = await said();
  for (const group of ['Everywhere', 'In the sheet', 'In the formula line']) expect(words).toContain(group);
  expect(words).toContain('Up to the edge of data');
  expect(words).toContain('Open the cell in full');
  await person.press('Escape');
  await expect.poll(isInSheet).toBe(true);
});

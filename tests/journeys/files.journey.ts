import { readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { downloadFolder } from './downloads.ts';
import type { Person } from './person.ts';
import { leave, visit, type Session } from './visit.ts';

let session: Session;
let person: Person;
let folder: string;

beforeAll(async () => {
  ({ session, person } = await visit());
  await person.atRest();
  folder = await downloadFolder(session.page);
});

afterAll(async () => {
  await leave(session);
  await rm(folder, { recursive: true });
});

const titleShown = (): Promise<string> =>
  session.page.evaluate(() => document.querySelector('octavo-app')?.shadowRoot?.querySelector('top-bar')?.title ?? '');

/** Chooses a file where the page asks for one. */
const open = (path: string): Promise<void> => person.giveFile(path, () => person.press('Control+o'));

const saved = async (): Promise<string | undefined> =>
  (await readdir(folder)).find((name) => name.endsWith('.octavo.json'));

test('a copy saved to a file says what was typed, and opens as another document', async () => {
  await person.goTo('D22');
  await person.page.keyboard.type('104 dB');
  // What is still being typed is kept first.
  await person.press('Control+s');
  await expect.poll(saved).toBe('Two-driver check.octavo.json');
  const path = join(folder, 'Two-driver check.octavo.json');
  expect(await readFile(path, 'utf8')).toContain('"104 dB"');
  await person.type('D22', '97');
  await open(path);
  await person.expectText('D22', /^104 dB$/);
  await person.atRest();
  expect(await person.documents()).toEqual(['Two-driver check', 'Two-driver check']);
});

test.each([
  ['damaged.octavo.json', '{"format": "octavo", "sheets": [{"name'],
  ['foreign.json', '{"drivers": [1, 2, 3]}'],
  ['letter.json', 'Dear reader'],
])('%s gets a message with its name and changes nothing', async (name, content) => {
  const path = join(folder, name);
  await writeFile(path, content);
  const before = await titleShown();
  await open(path);
  await expect
    .poll(() => person.notices())
    .toEqual([expect.stringMatching(new RegExp(`^${name.replaceAll('.', '\\.')}: .{20,}`))]);
  expect(await titleShown()).toBe(before);
  await person.expectText('D22', /^104 dB$/);
  await (await person.seen('>>> button[aria-label="Close the message"]'))?.click();
  await expect.poll(() => person.notices()).toEqual([]);
});

test('documents lie side by side: the first is as it was left', async () => {
  await person.openTemplate('Closed-box bench');
  await person.atRest();
  const others = (await person.documents()).filter((title) => title === 'Two-driver check');
  expect(others).toHaveLength(2);
  const first = await person.seen('>>> nav[aria-label="Documents on this device"] li:last-child button.entry');
  await first?.click();
  await expect.poll(titleShown).toBe('Two-driver check');
  await person.settled();
  await person.expectText('D22', /^97 dB$/);
});

test('what is typed just before the page closes is there when it opens again', async () => {
  await person.type('D22', '98.5');
  await session.page.reload({ waitUntil: 'load' });
  await person.settled();
  await person.expectText('D22', /^98\.5 dB$/);
});

import { readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { downloadFolder } from './downloads.ts';
import type { Person } from './person.ts';
import { violations } from './violations.ts';
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

/** Numbers of an invented driver, as some maker might print them. */
const SHEET = `W-175 C  mid-bass, invented
Resonance (Fs): 41 Hz
Q ts 0,43   Q ms 5,2
Qes = 0,469
Re (ohms) 5,6
Sd 145
Mms 16,5 g
Le @ 1 kHz 0,6 mH
Xmax ±5 mm
Power handling (RMS) 60 W
Sensitivity 87,9 dB (2.83 V/1 m)
Nominal impedance 8 ohm
Frequency range 40-5000 Hz
Price € 48`;

/** The words in a part of the shelf. */
const said = (selector: string): Promise<string> =>
  session.page.$eval(`>>> ${selector}`, (each) => (each.textContent ?? '').replaceAll(/\s+/g, ' ').trim());

const openShelf = async (): Promise<void> => {
  await person.press('F8');
  await person.seen('>>> driver-list >>> tbody tr');
};
const closed = (): Promise<unknown> =>
  session.page.waitForFunction(() => !document.querySelector('octavo-app')?.shadowRoot?.querySelector('shelf-page'));

/** The words of the list of what changed. */
const consequences = (): Promise<string> =>
  session.page.evaluate(() => {
    const dock = document.querySelector('octavo-app')?.shadowRoot?.querySelector('plot-dock')?.shadowRoot;
    const list = dock?.querySelector('consequence-list')?.shadowRoot;
    return [...(list?.querySelectorAll('li') ?? [])]
      .map(({ textContent }) => textContent)
      .join('\n')
      .replaceAll(/[ \n]+/g, ' ');
  });

test('a pasted datasheet shows what is open, and nothing is taken before it is answered', async () => {
  await person.goTo('B9');
  await openShelf();
  await person.pressButton('Paste a datasheet');
  await (await person.seen('>>> sheet-paste >>> textarea'))?.focus();
  await session.page.keyboard.sendCharacter(SHEET);
  await person.seen('>>> sheet-paste >>> tbody tr');
  expect(await said('sheet-paste >>> [role=status]')).toBe('13 rows understood, 1 open, 2 lines not taken.');
  expect(await said('sheet-paste >>> section > ul')).toContain('Frequency range 40-5000 Hz');
  await person.pressButton('Call it “W-175 C mid-bass, invented”');
  await (await person.seen('>>> sheet-paste >>> select'))?.select('145 cm²');
  await expect.poll(() => said('sheet-paste >>> [role=status]')).toBe('14 rows understood, 0 open, 2 lines not taken.');
  expect(await said('sheet-paste >>> .audit')).toContain('Level is printed as 87.9 dB, the others give 89.6 dB');
  await person.pressButton('Put it on the shelf');
  await person.seen('>>> driver-list >>> tbody tr');
  await expect.poll(() => said('driver-shelf >>> .told')).toBe('On the shelf now: W-175 C mid-bass, invented.');
});

test('it is found by its numbers, stands in the sheet in one act, and what follows is shown', async () => {
  const before = await person.shownIn('B20');
  await (await person.seen('>>> driver-list >>> input[type=search]'))?.focus();
  await session.page.keyboard.type('Fs = 40 to 42 Hz, Sd > 140');
  await expect.poll(() => said('driver-list >>> tbody')).toMatch(/^W-175 C/);
  await person.press('ArrowDown');
  await person.press('Enter');
  await closed();
  await expect.poll(() => person.shownIn('B4')).toMatch(/^W-175 C/);
  await expect.poll(() => person.shownIn('B5')).toBe('41 Hz');
  expect(await person.shownIn('B10')).toBe('145 cm²');
  expect(await person.shownIn('B19')).toBe('48 €');
  await expect.poll(() => person.shownIn('B20')).not.toBe(before);
  const changed = await consequences();
  expect(changed).toMatch(/B5 Resonance Fs.*41 Hz/);
  expect(changed).toMatch(/D6[47]|Load|ohms|price/i);
});

test('one step takes it back, and one brings it again', async () => {
  await person.press('Control+z');
  await expect.poll(() => person.shownIn('B4')).toBe('W-165 A');
  await expect.poll(() => person.shownIn('B5')).toBe('38 Hz');
  await person.press('Control+y');
  await expect.poll(() => person.shownIn('B4')).toMatch(/^W-175 C/);
});

test('after a reload it is still on the shelf and in the sheet, and in every other document', async () => {
  await person.atRest();
  await session.page.reload({ waitUntil: 'load' });
  await person.settled();
  await expect.poll(() => person.shownIn('B4')).toMatch(/^W-175 C/);
  await openShelf();
  expect(await said('driver-list >>> tbody')).toContain('W-175 C');
  await person.press('Escape');
  await closed();
});

test('the shelf goes to a file and comes back without a second copy; a foreign file is refused', async () => {
  await openShelf();
  await person.pressButton('Save my drivers to a file');
  const path = join(folder, 'drivers.octavo-shelf.json');
  await expect.poll(() => readFile(path, 'utf8').catch(() => '')).toContain('["Fs", "41 Hz"]');
  const read = (file: string): Promise<void> =>
    person.giveFile(file, () => person.pressButton('Read a shelf from a file'));
  await read(path);
  await expect.poll(() => said('driver-shelf >>> .told')).toBe('drivers.octavo-shelf.json: 0 added, 1 already here.');
  await writeFile(path, (await readFile(path, 'utf8')).replace('41 Hz', '43 Hz'));
  await read(path);
  await expect.poll(() => said('driver-shelf >>> .told')).toContain('with different numbers: both are kept');
  const foreign = join(folder, 'letter.json');
  await writeFile(foreign, '{"dear": "reader"}');
  await read(foreign);
  await expect.poll(() => said('driver-shelf >>> .told')).toContain('letter.json: This is no driver shelf');
});

test('the checker has no objection to the shelf over the sheet', async () => {
  expect(await violations(session.page)).toEqual([]);
});

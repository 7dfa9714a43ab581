import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Person } from './person.ts';
import { violations } from './violations.ts';
import { leave, visit, type Session } from './visit.ts';

let session: Session;
let person: Person;

beforeAll(async () => {
  ({ session, person } = await visit());
  await session.browser
    .defaultBrowserContext()
    .overridePermissions(session.address, ['clipboard-read', 'clipboard-sanitized-write']);
  await person.atRest();
});
afterAll(() => leave(session));

/** Two invented drivers as makers print them, each in a style of its own. */
const WOOFER = `Name: W-150 K
Fs: 44 Hz
Qms 4,1
Qes 0,44
Re (ohms) 5,7
Le @ 1 kHz 0,5 mH
Sd 113 cm²
Mms 12,4 g
Xmax ±5 mm
Power handling (RMS) 60 W
Sensitivity 87,6 dB (2.83 V/1 m)
Nominal impedance 8 ohm`;
const TWEETER = [
  ['Name', 'T-26 K'],
  ['Resonance frequency', '620 Hz'],
  ['Mechanical Q', '2.7'],
  ['Electrical Q', '0.8'],
  ['DC resistance', '5.4 ohm'],
  ['Effective area', '8 cm2'],
  ['Moving mass', '0.4 g'],
  ['Linear travel', '0.5 mm'],
  ['Sensitivity', '91 dB at 2.83 V'],
  ['Nominal impedance', '8 ohm'],
]
  .map((row) => row.join('\t'))
  .join('\n');

/** Pastes a text where the selection is, as a person does. */
async function paste(text: string): Promise<void> {
  await session.page.evaluate((words) => navigator.clipboard.writeText(words), text);
  await session.page.keyboard.down('Control');
  await session.page.keyboard.press('KeyV', { commands: ['Paste'] });
  await session.page.keyboard.up('Control');
}
const copied = (): Promise<string> => session.page.evaluate(() => navigator.clipboard.readText());

test('a datasheet pasted over a driver is shown as understood, and stands in the sheet in one act', async () => {
  await person.goTo('B9');
  await paste(WOOFER);
  await person.seen('>>> sheet-paste >>> tbody tr');
  expect(await violations(session.page)).toEqual([]);
  await person.pressButton('Put it on the shelf and into Woofer');
  await person.expectText('B4', /^W-150 K$/);
  await person.expectText('B5', /^44 Hz$/);
  await person.goTo('C9');
  await paste(TWEETER);
  await person.seen('>>> sheet-paste >>> tbody tr');
  await person.pressButton('Put it on the shelf and into Tweeter');
  await person.expectText('C4', /^T-26 K$/);
  await person.expectText('C5', /^620 Hz$/);
});

test('what no datasheet says is told, and typed or pasted into its cell as ever', async () => {
  await person.seen('>>> .notice ::-p-text(Not given for T-26 K, so emptied)');
  await person.goTo('B18');
  await paste('4800 Hz\n70 ¤');
  await person.expectText('B18', /^4.?800 Hz$/u);
  await person.type('B17', '150 mm');
  await person.type('C17', '100 mm', '18 kHz', '40 ¤');
});

test('the answer names what decides, and the page to post has each number with where it comes from', async () => {
  await person.expectText('E2', /^Good All \d+ checks are good/u);
  // Twice the resonance of the tweeter.
  await person.expectText('E41', /^Comfortable.*resonance at 1.?240\sHz/u);
  await person.press('Control+p');
  await (await person.seen('>>> copy-button >>> ::-p-text(Copy as text)'))?.click();
  await expect.poll(copied).toContain('W-150 K');
  const text = await copied();
  expect(text).toMatch(/resonance at 1.?240 Hz/u);
  expect(text).toMatch(/Level at 1 m: .*87\.6 dB at 2\.83 V/u);
  expect(text).toMatch(/data ?sheet: .*Resonance Fs/iu);
  expect(text).not.toMatch(/invented: .*Resonance Fs/iu);
  await person.press('Escape');
});

test('both drivers are on the shelf for the next sheet', async () => {
  await person.goTo('B9');
  await person.press('F8');
  await person.seen('>>> driver-list >>> ::-p-text(W-150 K)');
  await person.seen('>>> driver-list >>> ::-p-text(T-26 K)');
  await person.press('Escape');
});

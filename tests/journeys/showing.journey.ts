import { readdir, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openSession } from '../../.config/browser-session.mjs';
import { downloadFolder } from './downloads.ts';
import { Person } from './person.ts';
import { violations } from './violations.ts';
import { leave, visit, type Session } from './visit.ts';

let session: Session;
let person: Person;
let folder: string;

beforeAll(async () => {
  ({ session, person } = await visit());
  await session.browser
    .defaultBrowserContext()
    .overridePermissions(session.address, ['clipboard-read', 'clipboard-sanitized-write']);
  folder = await downloadFolder(session.page);
});

afterAll(async () => {
  await leave(session);
  await rm(folder, { recursive: true });
});

const copied = (): Promise<string> => session.page.evaluate(() => navigator.clipboard.readText());

async function press(words: string): Promise<void> {
  await (await person.seen(`>>> copy-button >>> ::-p-text(${words})`))?.click();
}

/** A file once it is whole. */
async function saved(name: string): Promise<Buffer> {
  await expect.poll(async () => (await readdir(folder)).includes(name), { timeout: 10_000 }).toBe(true);
  return readFile(join(folder, name));
}

test('the review opens by key, is copied as text and prints without the sheet behind it', async () => {
  await person.press('Control+p');
  await person.seen('>>> review-sheet >>> article');
  await person.seen('>>> review-sheet >>> curve-plot >>> svg.drawing');
  expect(await violations(session.page)).toEqual([]);
  await press('Copy as text');
  await expect.poll(copied).toMatch(/^Two-driver check, Two drivers\n[^]*\n- Hand-over frequency: 1\u2009808 Hz\n/);
  await session.page.emulateMediaType('print');
  const seen = await session.page.evaluate(() => {
    const app = document.querySelector('octavo-app')?.shadowRoot;
    return [...(app?.children ?? [])].filter((each) => each.checkVisibility()).map(({ localName }) => localName);
  });
  await session.page.emulateMediaType();
  expect(seen.filter((name) => name !== 'style')).toEqual(['review-page']);
  const paper = Buffer.from(await session.page.pdf({ format: 'A4' })).toString('latin1');
  const pages = paper.match(/\/Type\s*\/Page\b/g)?.length ?? 0;
  expect(pages).toBeGreaterThan(1);
  expect(pages).toBeLessThan(7);
  await person.press('Escape');
});

test('where a number comes from is noted, and stands in the review', async () => {
  await person.goTo('B5');
  await person.press('Shift+F10');
  await (await person.seen('>>> [role=menu][aria-label="Cells"] ::-p-text(Where these numbers come from)'))?.click();
  await (await person.seen('>>> ask-dialog >>> input'))?.click({ count: 3 });
  await session.page.keyboard.type('measured');
  await person.press('Enter');
  await person.press('Control+p');
  await person.seen('>>> review-sheet >>> ::-p-text(M, measured: Resonance Fs, Woofer)');
  await person.press('Escape');
});

test('a plot, a selection and the sheet are saved as files', async () => {
  const choose = async (words: string): Promise<void> => {
    await (await person.seen('>>> button[aria-label="More for Impedance"]'))?.click();
    await (await person.seen(`>>> [role=menu][aria-label="More for Impedance"] ::-p-text(${words})`))?.click();
  };
  await choose('SVG');
  const svg = (await saved('Impedance.svg')).toString('utf8');
  for (const part of ['Impedance', 'amplifier minimum', '@font-face', 'data:font/woff2;base64,', '<desc>'])
    expect(svg).toContain(part);
  expect(svg).not.toMatch(/var\(--|class=|href="http/);
  await choose('PNG');
  const png = await saved('Impedance.png');
  expect(png.subarray(1, 4).toString()).toBe('PNG');
  expect(png.readUInt32BE(16)).toBeGreaterThan(900);
  await choose('CSV');
  const csv = (await saved('Two-driver check, Impedance.csv')).toString('utf8');
  expect(csv).toMatch(/^\uFEFFFrequency,Woofer,[^]*\r\nHz,Ω,/);
  await person.goTo('B5');
  await person.press('Shift+F10');
  await (await person.seen('>>> [role=menu][aria-label="Cells"] ::-p-text(Save these cells as a table)'))?.click();
  expect((await saved('Two-driver check, Two drivers B5.csv')).toString('utf8')).toBe('\uFEFFWoofer\r\nHz\r\n38\r\n');
});

test('a baseline and the sheet stand side by side, and a copy beside its original', async () => {
  await person.press('Control+b');
  await person.type('D24', '4000');
  await person.press('Control+Shift+b');
  await person.seen('>>> comparison-table >>> ::-p-text(Verdicts that turn)');
  expect(await violations(session.page)).toEqual([]);
  await press('Copy as text');
  await expect.poll(copied).toMatch(/^Baseline .+ → Now\n\nVERDICTS THAT TURN\n- .+GOOD → FAIL/);
  await person.press('Escape');
  await person.chooseForSheet('Two drivers', 'Duplicate');
  await person.seen('>>> .name[title="Two drivers 2"]');
  await person.chooseForSheet('Two drivers 2', 'Compare');
  // The copy has the baseline of its original; it comes first.
  await person.seen('>>> comparison-table >>> ::-p-text(Verdicts that turn)');
  await (await person.seen('>>> comparison-page >>> select'))?.focus();
  await person.press('ArrowDown');
  await person.seen('>>> comparison-table >>> ::-p-text(Nothing differs)');
  await person.press('Escape');
});

test('a link opens as a copy elsewhere, and one that is cut off says so', async () => {
  await (await person.seen('>>> button[aria-label="Document"]'))?.click();
  await (await person.seen('>>> [role=menu][aria-label="Document"] ::-p-text(Link to this document)'))?.click();
  await press('Copy the link');
  await expect.poll(copied).toContain('#octavo=1.');
  const link = await copied();
  const other = await openSession();
  try {
    const reader = new Person(other.page);
    // A page of ours without the app, so that the app is loaded with the link in its address.
    await other.page.goto(new URL('licences.txt', other.address).href);
    await other.page.goto(link.replace(session.address, other.address), { waitUntil: 'load' });
    await reader.settled();
    await reader.expectText('D24', /^4.?000 Hz$/);
    expect(other.page.url()).toBe(other.address);
    await other.page.evaluate((cut) => (location.hash = cut), new URL(link).hash.slice(0, 400));
    await reader.seen('>>> .notice ::-p-text(cannot be read)');
    await reader.expectText('D24', /^4.?000 Hz$/);
    expect(other.problems).toEqual([]);
  } finally {
    await other.close();
  }
});

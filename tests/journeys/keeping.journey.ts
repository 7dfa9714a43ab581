import { afterAll, beforeAll, expect, test } from 'vitest';
import { typedDriver } from '../references/demo-drivers.ts';
import { octaves, type Person } from './person.ts';
import { leave, visit, type Session } from './visit.ts';

let session: Session;
let person: Person;

beforeAll(async () => {
  ({ session, person } = await visit());
});

afterAll(() => leave(session));

const pause = (milliseconds: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, milliseconds));

/** Texts of elements inside one component of the page or of its dock. */
const textsIn = (host: string, selector: string): Promise<string[]> =>
  session.page.evaluate(
    (component, wanted) => {
      const app = document.querySelector('octavo-app')?.shadowRoot;
      const dock = app?.querySelector('plot-dock')?.shadowRoot;
      return [...(app?.querySelectorAll(component) ?? []), ...(dock?.querySelectorAll(component) ?? [])].flatMap(
        (each) => [...(each.shadowRoot?.querySelectorAll(wanted) ?? [])].map((found) => found.textContent.trim()),
      );
    },
    host,
    selector,
  );

test('what was typed a second ago is there when the page opens again', async () => {
  await person.type('D22', '104 dB');
  await person.type('C4', 'My tweeter');
  await pause(1000);
  await session.page.reload({ waitUntil: 'load' });
  await person.settled();
  await person.expectText('D22', /^104 dB$/);
  await person.expectText('C4', /^My tweeter$/);
});

test('undo and redo lead back and forth', async () => {
  await person.type('D22', '100');
  await person.expectText('D22', /^100 dB$/);
  await person.type('D22', '97');
  await person.expectText('D22', /^97 dB$/);
  await person.press('Control+z');
  await person.expectText('D22', /^100 dB$/);
  await person.press('Control+y');
  await person.expectText('D22', /^97 dB$/);
  await person.press('Control+z');
  await person.expectText('D22', /^100 dB$/);
});

test('another tweeter in a copy of the sheet leaves the original alone', async () => {
  await person.type('C4', ...typedDriver('T-25 A'));
  await person.expectNumber('D43', 0.18, octaves);
  await person.chooseForSheet('Two drivers', 'Duplicate');
  await expect.poll(() => textsIn('sheet-rail', 'nav[aria-label^=Sheets] .name')).toHaveLength(2);
  await expect.poll(() => textsIn('sheet-rail', 'li.current .name')).not.toContain('Two drivers');
  await person.type('C4', ...typedDriver('T-28 B'));
  await person.expectNumber('D43', 0.83, octaves);
  await person.expectText('C33', /^1\s080 Hz$/);
  await person.showSheet('Two drivers');
  await person.expectNumber('D43', 0.18, octaves);
  await person.expectText('C33', /^1\s700 Hz$/);
});

test('a pinned baseline stays as a ghost while the hand-over is moved, and the list says what changed', async () => {
  await person.goTo('D24');
  await person.press('Control+b');
  await expect.poll(() => textsIn('top-bar', 'button[aria-pressed=true] b')).toHaveLength(1);
  expect(await textsIn('curve-plot', 'path.ghost')).toEqual([]);
  await person.focusRuler();
  for (let step = 0; step < 3; step++) await person.press('Shift+ArrowRight');
  await person.press('Tab');
  await person.expectText('D24', /^2\s\d\d\d Hz$/);
  await expect.poll(async () => (await textsIn('curve-plot', 'path.ghost')).length).toBeGreaterThan(0);
  await expect.poll(() => textsIn('consequence-list', '.label')).toContain('Hand-over frequency');
  expect((await textsIn('consequence-list', 'h2'))[0]).toMatch(/^Changed since \d/);
  await person.press('Control+b');
  await expect.poll(async () => (await textsIn('curve-plot', 'path.ghost')).length).toBe(0);
});

test('imperial units change what is shown and not what was typed', async () => {
  await person.expectText('D27', /^220 mm$/);
  await person.pressButton('Metric');
  await person.expectText('D27', /^8\.66\d* in$/);
  await person.press('F2');
  expect(await person.beingTyped()).toBe('220 mm');
  await person.press('Escape');
  await person.pressButton('Imperial');
  await person.expectText('D27', /^220 mm$/);
});

test('documents of one name are told apart by when they were saved; one without verdicts counts none', async () => {
  await person.openTemplate('Closed-box bench');
  const alone = await textsIn('sheet-rail', 'nav[aria-label^=Documents] .detail');
  expect(alone.join('')).toBe('');
  await person.openTemplate('Closed-box bench');
  await expect
    .poll(async () => (await textsIn('sheet-rail', 'nav[aria-label^=Documents] .detail')).filter(Boolean))
    .toEqual([expect.stringMatching(/\d:\d\d/), expect.stringMatching(/\d:\d\d/)]);
  await (await person.seen('>>> ::-p-text(Empty document)'))?.click();
  await expect
    .poll(() =>
      session.page.evaluate(() =>
        document.querySelector('octavo-app')?.shadowRoot?.querySelector('.title .tally')?.textContent.trim(),
      ),
    )
    .toBe('');
});

test('in an empty sheet a formula that cannot be says why, once; what is not there is not drawn', async () => {
  await person.type('B1', '12 L', '0.7', '=B1+B2');
  await person.goTo('B3');
  const headTexts = (selector: string): Promise<string[]> =>
    session.page.evaluate((wanted) => {
      const head = document.querySelector('octavo-app')?.shadowRoot?.querySelector('sheet-head')?.shadowRoot;
      const readout = head?.querySelector('cell-head')?.shadowRoot;
      return [...(head?.querySelectorAll(wanted) ?? []), ...(readout?.querySelectorAll(wanted) ?? [])].map((each) =>
        each.textContent.trim(),
      );
    }, selector);
  await expect.poll(() => headTexts('.problem')).toEqual([expect.stringContaining('cannot be added to a volume')]);
  expect(await headTexts('.finding')).toEqual([]);
  expect(await headTexts('.what')).toEqual(['B3']);
  expect(await textsIn('plot-dock', '.plots')).toEqual([expect.stringContaining('no plots')]);
});

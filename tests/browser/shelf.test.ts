import { expect, fixture, html } from '@open-wc/testing';
import { emulateMedia, sendKeys, setViewport } from '@web/test-runner-commands';
import '../../src/app/fonts/faces.css';
import '../../src/components/shelf/driver-shelf.ts';
import type { DriverForm } from '../../src/components/shelf/driver-form.ts';
import type { DriverList } from '../../src/components/shelf/driver-list.ts';
import type { SheetPaste } from '../../src/components/shelf/sheet-paste.ts';
import type { DriverShelf, ShelfView } from '../../src/components/shelf/driver-shelf.ts';
import { newId } from '../../src/document/create.ts';
import type { DriverEntry } from '../../src/document/shelf/entry.ts';
import { readDatasheet } from '../../src/exchange/datasheet/read.ts';
import { decodeShelf } from '../../src/exchange/shelf-file.ts';
import drivers from '../../templates/drivers.json' with { type: 'json' };
import { paint } from './paint.ts';

const demo = decodeShelf(drivers) as readonly DriverEntry[];
const named = (name: string): DriverEntry => demo.find((each) => each.name === name)!;

/** The shelf as a page holds it: the view that it asks for is given to it. */
async function shelf(view: ShelfView = { kind: 'list' }, place = 'Woofer'): Promise<DriverShelf> {
  const element = await fixture<DriverShelf>(
    html`<driver-shelf .entries=${demo} .view=${view} .read=${readDatasheet} place=${place}></driver-shelf>`,
  );
  element.addEventListener('view', (event) => {
    element.view = (event as CustomEvent<{ view: ShelfView }>).detail.view;
  });
  await settled(element);
  return element;
}

async function settled(element: DriverShelf): Promise<void> {
  await element.updateComplete;
  await inner(element).updateComplete;
  await new Promise((drawn) => requestAnimationFrame(drawn));
}

const inner = (element: DriverShelf): DriverList | DriverForm | SheetPaste =>
  element.shadowRoot!.querySelector<DriverList | DriverForm | SheetPaste>('driver-list, driver-form, sheet-paste')!;
const all = <E extends Element>(element: DriverShelf, selector: string): E[] => [
  ...inner(element).shadowRoot!.querySelectorAll<E>(selector),
];
const names = (element: DriverShelf): string[] =>
  all(element, 'tbody th button').map((each) => each.textContent.trim());
const button = (element: DriverShelf, words: string): HTMLButtonElement =>
  [...all<HTMLButtonElement>(element, 'button'), ...element.shadowRoot!.querySelectorAll('button')].find((each) =>
    each.textContent.replaceAll(/\s+/g, ' ').includes(words),
  )!;
const said = (element: Element): string => (element.textContent ?? '').replaceAll(/\s+/g, ' ').trim();

async function search(element: DriverShelf, text: string): Promise<void> {
  const field = all<HTMLInputElement>(element, 'input[type=search]')[0]!;
  field.value = text;
  field.dispatchEvent(new InputEvent('input'));
  await settled(element);
}

async function paste(element: DriverShelf, text: string): Promise<void> {
  const field = all<HTMLTextAreaElement>(element, 'textarea')[0]!;
  field.value = text;
  field.dispatchEvent(new InputEvent('input'));
  await settled(element);
}

function heard<T>(element: DriverShelf, name: string): T[] {
  const details: T[] = [];
  element.addEventListener(name, (event) => details.push((event as CustomEvent<T>).detail));
  return details;
}

const SHEET = 'W-180 own\nFs 33 Hz\nQms 4.9\nQes 0.39\nSd 150\nSensitivity 89 dB\nMmd 14 g';

before(paint);

describe('the driver shelf', () => {
  for (const colorScheme of ['light', 'dark'] as const)
    for (const width of [1440, 390])
      it(`is accessible on ${colorScheme} paper, ${width} wide`, async () => {
        await emulateMedia({ colorScheme });
        await setViewport({ width, height: 900 });
        await expect(await shelf()).to.be.accessible();
        await expect(await shelf({ kind: 'driver', entry: named('X-200 Z'), kept: true })).to.be.accessible();
        await expect(await shelf({ kind: 'paste', text: SHEET })).to.be.accessible();
        await emulateMedia({ colorScheme: 'light' });
        await setViewport({ width: 1440, height: 900 });
      });

  it('begins in the search, with every driver listed and its audit beside it', async () => {
    const element = await shelf();
    expect(inner(element).shadowRoot!.activeElement?.getAttribute('type')).to.equal('search');
    expect(names(element)).to.have.length(12);
    const chips = all(element, 'verdict-chip').map((chip) => chip.getAttribute('word'));
    expect(chips.slice(0, 11).every((word) => word === 'Consistent')).to.equal(true);
    expect(chips[11]).to.equal('Check Qts');
  });

  it('finds by numbers and words, and says what it does not understand', async () => {
    const element = await shelf();
    await search(element, 'Sd > 100 cm2, price <= 62');
    expect(names(element)).to.deep.equal(['W-165 A', 'W-165 A4']);
    expect(said(all(element, '[role=status]')[0]!)).to.equal('2 of 12 drivers');
    await search(element, 'Colour < 3');
    expect(names(element)).to.deep.equal([]);
    expect(said(all(element, '[role=status]')[0]!)).to.contain('“Colour” is no number of a driver');
  });

  it('draws a large shelf a part at a time, and finds among all of it', async () => {
    const element = await shelf();
    const [one = named('W-165 A')] = demo;
    element.entries = Array.from({ length: 450 }, (_, index) => ({ ...one, id: `d${index}`, name: `Driver ${index}` }));
    await settled(element);
    expect(names(element)).to.have.length(200);
    button(element, 'Show 200 more of the other 250').click();
    await settled(element);
    button(element, 'Show 50 more of the other 50').click();
    await settled(element);
    expect(names(element)).to.have.length(450);
    expect(button(element, 'more of the other')).to.equal(undefined);
    await search(element, 'Driver 449');
    expect(names(element)).to.deep.equal(['Driver 449']);
  });

  it('hides the invented ones when asked to', async () => {
    const element = await shelf();
    all<HTMLInputElement>(element, 'input[type=checkbox]')[0]!.click();
    await settled(element);
    expect(names(element)).to.deep.equal([]);
  });

  it('hands a driver to the sheet by the keyboard alone', async () => {
    const element = await shelf();
    const put = heard<{ entry: DriverEntry }>(element, 'put-driver');
    await sendKeys({ press: 'ArrowDown' });
    await sendKeys({ press: 'ArrowDown' });
    await sendKeys({ press: 'Enter' });
    expect(put.map(({ entry }) => entry.name)).to.deep.equal(['W-165 A']);
    await sendKeys({ press: 'ArrowUp' });
    await sendKeys({ press: 'ArrowUp' });
    expect(inner(element).shadowRoot!.activeElement?.getAttribute('type')).to.equal('search');
  });

  it('hands over a driver that is looked at in full', async () => {
    const element = await shelf({ kind: 'driver', entry: named('T-28 B'), kept: true });
    const put = heard<{ entry: DriverEntry }>(element, 'put-driver');
    button(element, 'Put it into').click();
    expect(put.map(({ entry }) => entry.name)).to.deep.equal(['T-28 B']);
  });

  it('offers no place where none is selected', async () => {
    const element = await shelf({ kind: 'list' }, '');
    expect(button(element, 'Put here')).to.equal(undefined);
    expect(said(element.shadowRoot!.querySelector('p')!)).to.contain('select a cell of a driver there first');
  });
});

describe('a pasted datasheet', () => {
  it('shows what was understood, what is open and what was not taken', async () => {
    const element = await shelf({ kind: 'paste', text: '' });
    await paste(element, SHEET);
    const rows = all(element, 'tbody tr').map(said);
    expect(rows[0]).to.equal('Fs 33 Hz Fs 33 Hz');
    expect(rows.some((row) => row.startsWith('Sd No unit is printed. Which is meant?'))).to.equal(true);
    expect(rows.some((row) => row.startsWith('Level basis The level is printed without its basis'))).to.equal(true);
    expect(all(element, 'li').map(said).join()).to.contain('the mass without its air load is no Mms');
    expect(said(all(element, '[role=status]')[0]!)).to.equal('4 rows understood, 2 open, 2 lines not taken.');
  });

  it('takes nothing without a name, then what was answered, and the whole text beside it', async () => {
    const element = await shelf({ kind: 'paste', text: SHEET });
    const added = heard<{ entries: readonly DriverEntry[] }>(element, 'add');
    button(element, 'Put it on the shelf').click();
    await settled(element);
    expect(added).to.have.length(0);
    expect(said(all(element, '[role=alert]')[0]!)).to.contain('needs a name');
    button(element, 'Call it “W-180 own”').click();
    await settled(element);
    const [area] = all<HTMLSelectElement>(element, 'select');
    area!.value = '150 cm²';
    area!.dispatchEvent(new Event('change'));
    await settled(element);
    button(element, 'Put it on the shelf').click();
    const [entry] = added[0]!.entries;
    expect(entry!.name).to.equal('W-180 own');
    expect(entry!.rows).to.deep.include({ label: 'Sd', text: '150 cm²' });
    expect(entry!.rows.some(({ label }) => label === 'Level basis')).to.equal(false);
    expect(entry!.tables).to.deep.equal([{ title: 'Datasheet as pasted', text: SHEET }]);
  });
});

describe('one driver', () => {
  it('is audited while it is typed', async () => {
    const element = await shelf({ kind: 'driver', entry: named('W-165 A'), kept: true });
    expect(all(element, 'verdict-chip')[0]!.getAttribute('word')).to.equal('Consistent');
    const qts = all<HTMLInputElement>(element, '.fields input').find(({ value }) => value === '0.3862')!;
    qts.value = '0.5';
    qts.dispatchEvent(new InputEvent('input'));
    await settled(element);
    expect(all(element, 'verdict-chip')[0]!.getAttribute('word')).to.equal('Check Qts');
  });

  it('says at the field what cannot be read there, and keeps it as typed', async () => {
    const element = await shelf({
      kind: 'driver',
      entry: { ...named('W-165 A'), id: newId(), invented: false },
      kept: false,
    });
    const added = heard<{ entries: readonly DriverEntry[] }>(element, 'add');
    const [fs] = all<HTMLInputElement>(element, '.fields input');
    fs!.value = '38';
    fs!.dispatchEvent(new InputEvent('input'));
    await settled(element);
    expect(fs!.getAttribute('aria-invalid')).to.equal('true');
    expect(said(fs!.parentElement!)).to.contain('has no unit');
    button(element, 'Put it on the shelf').click();
    expect(added[0]!.entries[0]!.rows[0]).to.deep.equal({ label: 'Fs', text: '38' });
  });

  it('of the examples becomes one of one’s own when it is changed', async () => {
    const element = await shelf({ kind: 'driver', entry: named('W-165 A'), kept: true });
    const added = heard<{ entries: readonly DriverEntry[] }>(element, 'add');
    button(element, 'Put it on the shelf').click();
    expect(added[0]!.entries[0]!.invented).to.equal(false);
    expect(added[0]!.entries[0]!.id).not.to.equal(named('W-165 A').id);
  });
});

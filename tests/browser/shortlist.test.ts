import { expect, fixture, html } from '@open-wc/testing';
import { emulateMedia, sendKeys, setViewport } from '@web/test-runner-commands';
import '../../src/app/fonts/faces.css';
import type { Finding, ListedRow, PlaceChoice, Wanted } from '../../src/components/shortlist/data.ts';
import '../../src/components/shortlist/driver-shortlist.ts';
import type { DriverShortlist } from '../../src/components/shortlist/driver-shortlist.ts';
import { paint } from './paint.ts';

const row = (rank: number, part: Partial<ListedRow> = {}): ListedRow => ({
  members: [rank, 0],
  names: [`W-${rank}`, 'T-25 A'],
  status: 'good',
  word: 'Comfortable',
  windows: [{ low: 1700, high: 2400 + rank, octaves: 0.5, floor: 'resonance', ceiling: 'narrowing' }],
  pads: [3],
  level: 85,
  lowestOhms: 2.9,
  price: 100 + rank,
  reach: 60 - rank / 10,
  plays: 101,
  rank,
  isFront: true,
  ...part,
});
const rows = Array.from({ length: 60 }, (_, index) => row(index + 1));
const found: Finding = {
  rows,
  front: rows.slice(0, 5),
  alone: [{ place: 'woofer', drivers: [{ name: 'W-9', why: 'W-9 reaches 69.6 Hz in a closed box, not 45 Hz.' }] }],
  said: '60 work.',
};
const places: readonly PlaceChoice[] = [
  { place: 'woofer', drivers: [{ id: 'w', name: 'W-1', isTaken: true }] },
  { place: 'tweeter', drivers: [{ id: 't', name: 'T-25 A', isTaken: false }] },
];
const wanted: Wanted = { ways: 2, price: '', reach: '', box: 'vented', plays: '', ranking: 'window' };

async function list(finding: Finding = found): Promise<DriverShortlist> {
  const element = await fixture<DriverShortlist>(
    html`<driver-shortlist .wanted=${wanted} .finding=${finding} .places=${places}></driver-shortlist>`,
  );
  await settled();
  return element;
}
const settled = (): Promise<unknown> =>
  new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)));
const inside = (element: Element, tag: string): ShadowRoot => element.shadowRoot!.querySelector(tag)!.shadowRoot!;
const buttons = (root: ShadowRoot, selector: string): HTMLButtonElement[] => [
  ...root.querySelectorAll<HTMLButtonElement>(selector),
];
function heard<T>(element: Element, name: string): T[] {
  const details: T[] = [];
  element.addEventListener(name, (event) => details.push((event as CustomEvent<T>).detail));
  return details;
}

before(paint);

describe('the shortlist of drivers', () => {
  for (const colorScheme of ['light', 'dark'] as const)
    for (const width of [1440, 390])
      it(`is accessible on ${colorScheme} paper, ${width} wide`, async () => {
        await emulateMedia({ colorScheme });
        await setViewport({ width, height: 900 });
        await expect(await list()).to.be.accessible();
        await expect(await list({ ...found, rows: [], front: [], progress: 0.4 })).to.be.accessible();
        await emulateMedia({ colorScheme: 'light' });
        await setViewport({ width: 1440, height: 900 });
      });

  it('asks by the keyboard: the gaps of the sentence, then Enter', async () => {
    const element = await list();
    const asked = heard<{ wanted: Wanted }>(element, 'ask');
    element.focus();
    await settled();
    await sendKeys({ press: 'Tab' });
    await sendKeys({ type: '300' });
    await sendKeys({ press: 'Tab' });
    await sendKeys({ type: '45 Hz' });
    await sendKeys({ press: 'Enter' });
    expect(asked.at(-1)?.wanted).to.deep.equal({ ...wanted, price: '300', reach: '45 Hz' });
  });

  it('opens a row by the keyboard alone, and draws more rows when asked', async () => {
    const element = await list();
    const opened = heard<{ row: ListedRow }>(element, 'open-row');
    const table = inside(element, 'shortlist-table');
    expect(buttons(table, 'tbody button')).to.have.length(25);
    buttons(table, 'tbody button')[0]!.focus();
    await sendKeys({ press: 'ArrowDown' });
    await sendKeys({ press: 'Enter' });
    expect(opened.map(({ row: { rank } }) => rank)).to.deep.equal([2]);
    buttons(table, 'p button')[0]!.click();
    await settled();
    expect(buttons(table, 'tbody button')).to.have.length(50);
  });

  it('picks a trade-off by the arrows and describes it', async () => {
    const element = await list();
    const opened = heard<{ row: ListedRow }>(element, 'open-row');
    const plot = inside(element, 'trade-offs');
    expect(buttons(plot, '.point').map(({ tabIndex }) => tabIndex)).to.deep.equal([0, -1, -1, -1, -1]);
    buttons(plot, '.point')[0]!.focus();
    await sendKeys({ press: 'ArrowRight' });
    await settled();
    expect(plot.querySelector('[role=status]')?.textContent).to.contain('W-2 + T-25 A');
    await sendKeys({ press: 'Enter' });
    expect(opened.map(({ row: { rank } }) => rank)).to.deep.equal([2]);
  });

  it('says why a driver has no partner, at once where nothing was found', async () => {
    const element = await list({ ...found, rows: [], front: [], said: 'None works under these limits.' });
    const details = element.shadowRoot!.querySelector('details')!;
    expect(details.open).to.equal(true);
    expect(details.textContent).to.contain('W-9 reaches 69.6 Hz');
  });

  it('shows progress and can be stopped', async () => {
    const element = await list({ ...found, progress: 0.25 });
    const stopped = heard(element, 'stop');
    expect(element.shadowRoot!.querySelector('progress')?.value).to.equal(0.25);
    buttons(element.shadowRoot!, '.said button')[0]!.click();
    expect(stopped).to.have.length(1);
  });

  it('lets drivers take part or not', async () => {
    const element = await list();
    const taken = heard(element, 'take');
    element.shadowRoot!.querySelectorAll<HTMLInputElement>('input[type=checkbox]')[1]!.click();
    expect(taken).to.deep.equal([{ place: 'tweeter', id: 't', isTaken: true }]);
  });
});

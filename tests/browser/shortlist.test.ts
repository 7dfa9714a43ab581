import { expect, fixture, html } from '@open-wc/testing';
import { emulateMedia, sendKeys, setViewport } from '@web/test-runner-commands';
import '../../src/app/fonts/faces.css';
import type {
  Finding,
  ListedRow,
  PlaceChoice,
  RuleShown,
  Wanted,
  WishShown,
} from '../../src/components/shortlist/data.ts';
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
  best: rows.slice(0, 3).map((each) => ({ row: each, why: [`Reaches ${each.reach} Hz.`, 'Plays 101 dB.'] })),
  front: rows.slice(0, 5),
  alone: [{ place: 'woofer', drivers: [{ name: 'W-9', why: 'W-9 reaches 69.6 Hz in a closed box, not 45 Hz.' }] }],
  said: '60 work.',
};
const places: readonly PlaceChoice[] = [
  { place: 'woofer', drivers: [{ id: 'w', name: 'W-1', isTaken: true }] },
  { place: 'tweeter', drivers: [{ id: 't', name: 'T-25 A', isTaken: false }] },
];
const wanted: Wanted = { ways: 2, price: '', reach: '', box: 'vented', plays: '', ranking: 'window', rules: {} };
const rules: readonly RuleShown[] = [
  { name: 'target', label: 'Level', usual: ['100 dB'] },
  { name: 'slope', label: 'Acoustic slope', usual: ['LR4'], choices: ['LR4', 'LR2'] },
  { name: 'travel', label: 'Share of Xmax', usual: ['0.7', '1'] },
];
const taken: WishShown = { understood: [{ words: 'under 300', means: 'a pair for 300' }], left: ['walnut'] };

async function list(finding: Finding = found): Promise<DriverShortlist> {
  const element = await fixture<DriverShortlist>(
    html`<driver-shortlist
      .wanted=${wanted}
      .finding=${finding}
      .places=${places}
      .rules=${rules}
      wish="under 300, walnut"
      .taken=${taken}
    ></driver-shortlist>`,
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
        const whole = await list();
        for (const each of whole.shadowRoot!.querySelectorAll('details')) each.open = true;
        await settled();
        await expect(whole).to.be.accessible();
        await emulateMedia({ colorScheme: 'light' });
        await setViewport({ width: 1440, height: 900 });
      });

  it('is accessible while nothing is found yet', async () => {
    await expect(await list({ ...found, rows: [], best: [], front: [], progress: 0.4 })).to.be.accessible();
  });

  it('asks by the keyboard: the gaps of the sentence, then Enter', async () => {
    const element = await list();
    const asked = heard<{ wanted: Wanted }>(element, 'ask');
    inside(element, 'shortlist-form').querySelector('select')!.focus();
    await sendKeys({ press: 'Tab' });
    await sendKeys({ type: '300' });
    await sendKeys({ press: 'Tab' });
    await sendKeys({ type: '45 Hz' });
    await sendKeys({ press: 'Enter' });
    expect(asked.at(-1)?.wanted).to.deep.equal({ ...wanted, price: '300', reach: '45 Hz' });
  });

  it('means closed boxes for subs and a vented one for others, until another is chosen', async () => {
    const element = await list();
    const { box: _, ...unsaid } = wanted;
    const asked = heard<{ wanted: Wanted }>(element, 'ask');
    const form = inside(element, 'shortlist-form');
    const choose = (name: string, value: string): void => {
      const select = form.querySelector<HTMLSelectElement>(`[name=${name}]`)!;
      select.value = value;
      select.dispatchEvent(new Event('change', { bubbles: true }));
    };
    element.wanted = unsaid;
    await settled();
    choose('ways', 'subs');
    expect(asked.at(-1)?.wanted.box).to.equal(undefined);
    element.wanted = asked.at(-1)!.wanted;
    await settled();
    expect(form.querySelector<HTMLSelectElement>('[name=box]')!.value).to.equal('closed');
    choose('box', 'vented');
    expect(asked.at(-1)?.wanted).to.deep.include({ ways: 'subs', box: 'vented' });
  });

  it('hands on a wish by the keyboard, and says what was understood of it and what was not', async () => {
    const element = await list();
    const wishes = heard<{ text: string }>(element, 'wish');
    element.focus();
    await settled();
    inside(element, 'shortlist-wish').querySelector('input')!.select();
    await sendKeys({ type: 'under 200' });
    await sendKeys({ press: 'Enter' });
    expect(wishes).to.deep.equal([{ text: 'under 200' }]);
    const said = inside(element, 'shortlist-wish').querySelector('[role=status]')!.textContent;
    expect(said.replaceAll(/\s+/g, ' ')).to.contain('under 300: a pair for 300');
    expect(said.replaceAll(/\s+/g, ' ')).to.contain('Left out, not understood: walnut.');
  });

  it('takes rules of one’s own, and goes back to the usual ones', async () => {
    const element = await list();
    const asked = heard<{ wanted: Wanted }>(element, 'ask');
    element.shadowRoot!.querySelector('details')!.open = true;
    const table = inside(element, 'shortlist-rules');
    table.querySelector<HTMLInputElement>('[name="travel 1"]')!.select();
    await sendKeys({ type: '0.9' });
    await sendKeys({ press: 'Tab' });
    expect(asked.at(-1)?.wanted.rules).to.deep.equal({ travel: ['', '0.9'] });
    element.wanted = { ...wanted, rules: { travel: ['', '0.9'] } };
    await settled();
    expect(table.querySelector<HTMLInputElement>('[name="travel 1"]')!.value).to.equal('0.9');
    buttons(table, 'button')[0]!.click();
    expect(asked.at(-1)?.wanted.rules).to.deep.equal({});
  });

  it('opens one of the best, or all of them', async () => {
    const element = await list();
    const opened = heard<{ rows: readonly ListedRow[] }>(element, 'open-rows');
    const cards = inside(element, 'best-rows');
    expect(cards.querySelectorAll('li.row')[1]!.textContent).to.contain('Reaches 59.8 Hz.');
    for (const each of buttons(cards, 'button')) each.click();
    expect(opened.map(({ rows: all }) => all.map(({ rank }) => rank))).to.deep.equal([[1], [2], [3], [1, 2, 3]]);
  });

  it('opens a row by the keyboard alone, and draws more rows when asked', async () => {
    const element = await list();
    const opened = heard<{ rows: readonly ListedRow[] }>(element, 'open-rows');
    const table = inside(element, 'shortlist-table');
    expect(buttons(table, 'tbody button')).to.have.length(25);
    buttons(table, 'tbody button')[0]!.focus();
    await sendKeys({ press: 'ArrowDown' });
    await sendKeys({ press: 'Enter' });
    expect(opened.map(({ rows: [first] }) => first?.rank)).to.deep.equal([2]);
    buttons(table, 'p button')[0]!.click();
    await settled();
    expect(buttons(table, 'tbody button')).to.have.length(50);
  });

  it('picks a trade-off by the arrows and describes it', async () => {
    const element = await list();
    const opened = heard<{ rows: readonly ListedRow[] }>(element, 'open-rows');
    const plot = inside(element, 'trade-offs');
    expect(buttons(plot, '.point').map(({ tabIndex }) => tabIndex)).to.deep.equal([0, -1, -1, -1, -1]);
    buttons(plot, '.point')[0]!.focus();
    await sendKeys({ press: 'ArrowRight' });
    await settled();
    expect(plot.querySelector('[role=status]')?.textContent).to.contain('W-2 + T-25 A');
    await sendKeys({ press: 'Enter' });
    expect(opened.map(({ rows: [first] }) => first?.rank)).to.deep.equal([2]);
  });

  it('says why a driver has no partner, at once where nothing was found', async () => {
    const element = await list({
      ...found,
      rows: [],
      best: [],
      front: [],
      said: 'None works under these limits.',
      nearest: ['Without the limit on the price: A + B costs 310 ¤.'],
    });
    const details = element.shadowRoot!.querySelectorAll('details')[1]!;
    expect(details.open).to.equal(true);
    expect(details.textContent).to.contain('W-9 reaches 69.6 Hz');
    expect(element.shadowRoot!.querySelector('[aria-label=Nearest]')?.textContent).to.contain('A + B costs 310');
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
    const last = [...element.shadowRoot!.querySelectorAll('details')].at(-1)!;
    last.open = true;
    await settled();
    element.shadowRoot!.querySelectorAll<HTMLInputElement>('input[type=checkbox]')[1]!.click();
    expect(taken).to.deep.equal([{ place: 'tweeter', id: 't', isTaken: true }]);
  });
});

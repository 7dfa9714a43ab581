import { expect, fixture, html } from '@open-wc/testing';
import { emulateMedia, sendKeys } from '@web/test-runner-commands';
import '../../src/app/fonts/faces.css';
import '../../src/components/consequences/consequence-list.ts';
import type { ConsequenceList } from '../../src/components/consequences/consequence-list.ts';
import type { Consequence } from '../../src/document/consequences.ts';
import type { ShownCell } from '../../src/document/shown.ts';
import { paint } from './paint.ts';

const number = (text: string, unit: string): ShownCell => ({ kind: 'number', number: text, unit });
const verdict = (status: 'good' | 'caution' | 'fail', word: string): ShownCell => ({
  kind: 'verdict',
  status,
  word,
  reason: '',
  note: '',
});
const row = (
  cell: string,
  label: string,
  before: ShownCell,
  after: ShownCell,
  more: Partial<Consequence> = {},
): Consequence => ({
  place: { sheet: 'match', cell },
  label,
  before,
  after,
  isCause: false,
  change: 1,
  doubts: [],
  ...more,
});

const changed: readonly Consequence[] = [
  row('D3', 'Minimum impedance', number('3.9', 'Ω'), number('3.6', 'Ω')),
  row('E14', 'Centre spacing', verdict('good', 'Good'), verdict('caution', 'Wide'), {
    flip: { from: 'good', to: 'caution' },
  }),
  row('D10', 'Crossover frequency', number('1 900', 'Hz'), number('2 150', 'Hz'), { isCause: true }),
  ...['E', 'F', 'G', 'H', 'I'].map((column) => row(`${column}20`, 'Level', number('1', 'dB'), number('2', 'dB'))),
  row('J2', 'Port length', number('90', 'mm'), { kind: 'problem', message: 'vb must be above 0.' }),
];

const list = (consequences: readonly Consequence[]): Promise<ConsequenceList> =>
  fixture(html`<consequence-list since="since 14:02" .total=${58} .consequences=${consequences}></consequence-list>`);
const rows = (element: ConsequenceList): HTMLElement[] => [
  ...element.shadowRoot!.querySelectorAll<HTMLElement>('li button'),
];
const said = (one: Element): string => one.textContent.replaceAll(/\s+/g, ' ').trim();

before(paint);

describe('the list of what changed', () => {
  for (const colorScheme of ['light', 'dark'] as const)
    it(`is accessible on ${colorScheme} paper`, async () => {
      await emulateMedia({ colorScheme });
      await expect(await list(changed)).to.be.accessible();
      await expect(await list([])).to.be.accessible();
      await emulateMedia({ colorScheme: 'light' });
    });

  it('begins with the cause and with verdicts that turned, in words', async () => {
    const [cause, flip, value] = rows(await list(changed)).map(said);
    expect(cause).to.equal('D10 Crossover frequency 1 900 →now 2 150 Hz');
    expect(flip).to.match(/^E14 Centre spacing Good\s?→now Wide$/);
    expect(value).to.equal('D3 Minimum impedance 3.9 →now 3.6 Ω');
  });

  it('keeps the smaller changes behind a button', async () => {
    const element = await list(changed);
    const more = element.shadowRoot!.querySelector<HTMLElement>('.more')!;
    expect(rows(element)).to.have.length(6);
    expect(said(more)).to.equal('3 smaller changes');
    more.click();
    await element.updateComplete;
    expect(rows(element)).to.have.length(9);
    expect(more.getAttribute('aria-expanded')).to.equal('true');
    expect(said(rows(element)[8]!)).to.contain('no result');
  });

  it('counts', async () => {
    const element = await list(changed);
    expect(said(element.shadowRoot!.querySelector('.count')!)).to.equal('9 of 58 cells');
    expect(said(element.shadowRoot!.querySelector('h2')!)).to.equal('Changed since 14:02');
  });

  it('leads to a cell by click and by key', async () => {
    const element = await list(changed);
    const places: unknown[] = [];
    element.addEventListener('go', (event) => places.push((event as CustomEvent).detail));
    rows(element)[1]!.click();
    rows(element)[2]!.focus();
    await sendKeys({ press: 'Enter' });
    expect(places).to.deep.equal([
      { sheet: 'match', cell: 'E14' },
      { sheet: 'match', cell: 'D3' },
    ]);
  });

  it('says below a cell what it asks since then', async () => {
    const asked = row('B20', 'Driver', number('1', 'L'), number('2', 'L'), { doubts: ['Is 132 mm² meant?'] });
    const element = await list([...changed, asked]);
    const [, , below] = [...element.shadowRoot!.querySelectorAll('li')].map(said);
    expect(below).to.equal('B20 Driver 1 →now 2 L Is 132 mm² meant?');
  });

  it('names the sheet of a cell on another one', async () => {
    const element = await list(changed);
    element.sheet = 'drivers';
    element.sheetNames = new Map([['match', 'Two-way match']]);
    await element.updateComplete;
    expect(said(rows(element)[0]!)).to.match(/^Two-way match!D10 /);
  });

  it('says so when nothing changed', async () => {
    const element = await list([]);
    expect(rows(element)).to.have.length(0);
    expect(said(element.shadowRoot!.querySelector('.none')!)).to.contain('Nothing yet');
  });

  it('says how far a curve moved, and that a record changed that shows the same words', async () => {
    const box: ShownCell = { kind: 'record', title: 'W-165 A', text: '' };
    const element = await list([
      row('D4', 'Impedance', box, box, { move: 'by up to 0.35 Ω near 44 Hz' }),
      row('D5', 'Driver', box, box),
      row('E5', 'Lowest ohms', verdict('good', 'Good'), verdict('good', 'Good')),
    ]);
    expect(rows(element).map(said)).to.deep.equal([
      'D4 Impedance by up to 0.35 Ω near 44 Hz',
      'D5 Driver changed',
      'E5 Lowest ohms still Good',
    ]);
  });
});

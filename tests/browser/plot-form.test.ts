import { expect, fixture, html } from '@open-wc/testing';
import { emulateMedia, sendKeys, setViewport } from '@web/test-runner-commands';
import '../../src/app/fonts/faces.css';
import type { Offers, PlotDraft, Remark } from '../../src/components/plot-form/data.ts';
import '../../src/components/plot-form/plot-form.ts';
import type { PlotForm } from '../../src/components/plot-form/plot-form.ts';
import { texts, within } from './inside.ts';
import { paint } from './paint.ts';

const series = { cell: 'Response', label: 'Box', line: 'system', column: '', across: '', names: '' } as const;
const draft: PlotDraft = {
  id: 'plot',
  title: 'Response',
  kind: 'curves',
  series: [series],
  limits: [{ cell: 'B4', label: 'Floor', forbidden: 'below' }],
  marks: [{ cell: 'B5', label: 'Hand-over' }],
  horizontal: ['', ''],
  vertical: ['', ''],
  best: ['', ''],
  ground: ['', ''],
};
const offers: Offers = {
  kinds: ['curves', 'bars', 'points', 'shapes'],
  series: [{ cell: 'Response', words: 'Response of the box' }],
  beside: [{ cell: 'A4:A9', words: 'Distance' }],
  limits: [{ cell: 'B4', words: 'Floor' }],
  marks: [{ cell: 'B5', words: 'Hand-over' }],
  sizes: [],
  columns: [undefined],
  labels: new Map([['series.0.label', 'Response of the box']]),
  horizontal: ['20 Hz', '20 kHz'],
};

interface Given {
  readonly draft?: Partial<PlotDraft>;
  readonly offers?: Partial<Offers>;
  readonly remarks?: readonly (readonly [string, Remark])[];
}

async function form(given: Given = {}): Promise<PlotForm> {
  const element = await fixture<PlotForm>(
    html`<plot-form
      .draft=${{ ...draft, ...given.draft }}
      .offers=${{ ...offers, ...given.offers }}
      .remarks=${new Map(given.remarks)}
      ><p>The picture</p></plot-form
    >`,
  );
  await element.updateComplete;
  return element;
}
const heard = (element: PlotForm, name: string): PlotDraft[] => {
  const told: PlotDraft[] = [];
  element.addEventListener(name, (event) => told.push((event as CustomEvent<{ draft: PlotDraft }>).detail.draft));
  return told;
};
const input = (element: PlotForm, id: string): HTMLInputElement => within(element, `#${id}`) as HTMLInputElement;
const press = async (element: PlotForm, words: string): Promise<void> => {
  const all = [...element.shadowRoot!.querySelectorAll('button')];
  const wanted = all.find((each) => (each.getAttribute('aria-label') ?? each.textContent.trim()) === words);
  wanted!.click();
  await element.updateComplete;
};
const wrong = (text: string): Remark => ({ text, isWrong: true });

before(paint);

describe('the form of a plot', () => {
  const states: Readonly<Record<string, Given>> = {
    'as it opens': {},
    'with something wrong': {
      draft: { horizontal: ['50', ''] },
      remarks: [
        ['series.0.cell', wrong('Response is empty.')],
        ['horizontal.0', { text: 'Read as 50 Hz.', isWrong: false }],
      ],
    },
    'of a table': {
      draft: { kind: 'points' },
      offers: { columns: [{ numbers: ['Level', 'Distance'], words: ['Name'] }] },
    },
    'of a drawing': { draft: { kind: 'shapes' } },
  };
  for (const colorScheme of ['light', 'dark'] as const)
    for (const [words, given] of Object.entries(states))
      it(`is accessible ${words}, ${colorScheme}`, async () => {
        await emulateMedia({ colorScheme });
        await expect(await form(given)).to.be.accessible();
      });

  it('tells each letter that is typed', async () => {
    const element = await form();
    const told = heard(element, 'draft');
    input(element, 'series-0-cell').select();
    await sendKeys({ type: 'B3' });
    expect(told.map((each) => each.series[0]!.cell)).to.deep.equal(['B', 'B3']);
    const style = within(element, '#series-0-line') as HTMLSelectElement;
    style.value = 'tweeter';
    style.dispatchEvent(new Event('change'));
    expect(told.at(-1)!.series[0]).to.deep.equal({ ...series, cell: 'B3', line: 'tweeter' });
  });

  it('asks what its kind wants', async () => {
    const has = (element: PlotForm, ...ids: string[]): boolean[] =>
      ids.map((id) => element.shadowRoot!.querySelector(`#${id}`) !== null);
    const fields = ['series-0-across', 'series-0-names', 'add-marks', 'vertical-0', 'best-0', 'ground-0'];
    expect(has(await form(), ...fields)).to.deep.equal([false, false, true, true, false, false]);
    expect(has(await form({ draft: { kind: 'bars' } }), ...fields)).to.deep.equal([
      false,
      true,
      false,
      false,
      false,
      false,
    ]);
    expect(has(await form({ draft: { kind: 'points' } }), ...fields)).to.deep.equal([
      true,
      true,
      true,
      true,
      true,
      false,
    ]);
    expect(has(await form({ draft: { kind: 'shapes' } }), ...fields)).to.deep.equal([
      false,
      false,
      false,
      false,
      false,
      true,
    ]);
  });

  it('takes a further curve in a line of its own, and is ready for its cell', async () => {
    const element = await form();
    await press(element, 'Add a curve');
    await sendKeys({ type: 'B3' });
    expect(element.draft.series[1]).to.deep.equal({ ...series, cell: 'B3', label: '', line: 'woofer' });
    await press(element, 'Leave out Curve 2');
    expect(element.draft.series).to.have.length(1);
    expect(element.shadowRoot!.activeElement?.id).to.equal('add-series');
    await press(element, 'Leave out limit 1');
    await press(element, 'Add a mark');
    expect(element.draft).to.deep.include({ limits: [], marks: [...draft.marks, { cell: '', label: '' }] });
  });

  it('says beside a field what is wrong as soon as something stands in it, and keeps what was typed', async () => {
    const element = await form({
      draft: { series: [{ ...series, cell: 'Foo' }], marks: [{ cell: '', label: '' }] },
      remarks: [
        ['series.0.cell', wrong('There is no cell “Foo”.')],
        ['marks.0.cell', wrong('Name a cell.')],
      ],
    });
    const kept = heard(element, 'keep');
    expect(texts(element, 'small.wrong')).to.deep.equal(['There is no cell “Foo”.']);
    expect(input(element, 'series-0-cell').getAttribute('aria-describedby')).to.equal('series-0-cell-said');
    input(element, 'title').focus();
    await sendKeys({ press: 'Enter' });
    await element.updateComplete;
    expect(texts(element, 'small.wrong')).to.deep.equal(['There is no cell “Foo”.', 'Name a cell.']);
    expect(texts(element, '[role=alert]')).to.deep.equal(['2 fields must be put right first.']);
    expect(element.shadowRoot!.activeElement).to.equal(input(element, 'series-0-cell'));
    expect(input(element, 'series-0-cell').value).to.equal('Foo');
    expect(kept).to.have.length(0);
  });

  it('is kept with what is only remarked', async () => {
    const element = await form({ remarks: [['series.0.cell', { text: 'Response is empty.', isWrong: false }]] });
    const kept = heard(element, 'keep');
    await press(element, 'Add the plot');
    await element.updateComplete;
    expect(kept).to.have.length(1);
  });

  it('offers cells, and what is called so where nothing is typed', async () => {
    const element = await form({ draft: { series: [{ ...series, label: '' }] } });
    expect(input(element, 'series-0-label').placeholder).to.equal('Response of the box');
    expect(texts(element, '#offered-series option')).to.deep.equal(['Response of the box']);
    expect(texts(element, '#kind option')).to.have.length(4);
  });

  it('fits the narrowest page with room for a finger', async () => {
    await setViewport({ width: 390, height: 844 });
    const element = await form();
    expect(element.scrollWidth).to.be.at.most(element.clientWidth);
    for (const button of element.shadowRoot!.querySelectorAll('button'))
      expect(button.getBoundingClientRect().height).to.be.at.least(44);
    await setViewport({ width: 1440, height: 900 });
  });
});

import { expect, fixture, html } from '@open-wc/testing';
import { emulateMedia, setViewport } from '@web/test-runner-commands';
import '../../src/app/fonts/faces.css';
import '../../src/components/comparison/comparison-table.ts';
import type { ComparisonTable } from '../../src/components/comparison/comparison-table.ts';
import '../../src/components/review/review-sheet.ts';
import type { ReviewSheet } from '../../src/components/review/review-sheet.ts';
import { themeSheet } from '../../src/components/theme.ts';
import type { Consequence } from '../../src/document/consequences.ts';
import type { Review } from '../../src/document/review/types.ts';
import type { Differences } from '../../src/document/sheet-differences.ts';

const review: Review = {
  title: 'Bench',
  sheet: 'One box',
  summary: 'Is it large enough?',
  made: '2026-11-25T10:00:00.000Z',
  counts: { good: 0, caution: 0, fail: 1 },
  verdicts: [
    {
      label: 'Volume',
      status: 'fail',
      word: 'Too small',
      reason: '9 L of 12 L.',
      note: 'Mind the weight.',
      limits: ['Good 12 L'],
    },
  ],
  doubts: ['Level at 1 m: no basis is given.'],
  plots: [],
  inputs: [
    {
      title: 'Driver',
      columns: ['Woofer', 'Tweeter'],
      rows: [
        {
          label: 'Resonance Fs',
          cells: [
            { text: '38 Hz', origin: 'measured' },
            { text: '850 Hz', origin: 'datasheet' },
          ],
        },
      ],
    },
  ],
  results: [{ title: '', columns: ['Together'], rows: [{ label: 'Volume', cells: [{ text: '9 L' }] }] }],
  origins: [{ origin: 'measured', inputs: ['Resonance Fs, Woofer'] }],
  assumptions: [],
  rules: [],
  notes: [],
  sources: [],
};

const row = (
  label: string,
  before: Consequence['before'],
  after: Consequence['after'],
  more: Partial<Consequence> = {},
): Consequence => ({
  place: { sheet: 's', cell: 'D4' },
  label,
  before,
  after,
  isCause: false,
  change: 0.5,
  doubts: [],
  ...more,
});

const number = (text: string, unit: string) => ({ kind: 'number', number: text, unit }) as const;
const verdict = (status: 'good' | 'fail', word: string) =>
  ({ kind: 'verdict', status, word, reason: `${word} it is.`, note: '' }) as const;

const differences: Differences = {
  flips: [
    row('Volume', verdict('good', 'Enough'), verdict('fail', 'Too small'), { flip: { from: 'good', to: 'fail' } }),
  ],
  inputs: [row('Width', number('220', 'mm'), number('330', 'mm'), { isCause: true })],
  results: [],
  alone: [],
};

const textOf = (element: Element): string => (element.shadowRoot?.textContent ?? '').replaceAll(/\s+/g, ' ');

before(() => document.adoptedStyleSheets.push(themeSheet()));
afterEach(async () => {
  await emulateMedia({ colorScheme: 'light', media: 'screen' });
  await setViewport({ width: 1000, height: 800 });
});

describe('the review', () => {
  const shown = (): Promise<ReviewSheet> => fixture<ReviewSheet>(html`<review-sheet .review=${review}></review-sheet>`);

  for (const colorScheme of ['light', 'dark'] as const) {
    it(`has nothing that the checker objects to, ${colorScheme}`, async () => {
      await emulateMedia({ colorScheme });
      await expect(await shown()).to.be.accessible();
    });
  }

  it('says verdict, reason, limit, doubts and where each number comes from', async () => {
    const text = textOf(await shown());
    for (const part of [
      'fail: Volume: Too small',
      '9 L of 12 L.',
      'Mind the weight.',
      'Good 12 L',
      'no basis is given',
      'M, measured: Resonance Fs, Woofer',
      '25 November 2026',
    ])
      expect(text).to.contain(part);
    expect(text).to.match(/38 Hz ?M ?measured/);
  });

  it('leaves out headings with nothing under them', async () => {
    const headings = [...((await shown()).shadowRoot?.querySelectorAll('h3') ?? [])].map(
      ({ textContent }) => textContent,
    );
    expect(headings).to.deep.equal(['Verdicts', 'Open doubts', 'Inputs', 'Results', 'Where the numbers come from']);
  });

  it('fits a telephone without scrolling sideways', async () => {
    await setViewport({ width: 390, height: 800 });
    const element = await shown();
    expect(element.scrollWidth).to.be.at.most(element.clientWidth);
  });

  it('is dark on light when printed from a dark page', async () => {
    await emulateMedia({ colorScheme: 'dark' });
    const element = await shown();
    const dark = getComputedStyle(element).color;
    await emulateMedia({ media: 'print' });
    expect(dark).to.equal('rgb(236, 235, 229)');
    expect(getComputedStyle(element).color).to.equal('rgb(25, 28, 30)');
  });
});

describe('the comparison', () => {
  const shown = (given = differences): Promise<ComparisonTable> =>
    fixture<ComparisonTable>(
      html`<comparison-table .differences=${given} .sides=${{ first: 'Box', second: 'Box 2' }}></comparison-table>`,
    );

  for (const colorScheme of ['light', 'dark'] as const) {
    it(`has nothing that the checker objects to, ${colorScheme}`, async () => {
      await emulateMedia({ colorScheme });
      await expect(await shown()).to.be.accessible();
    });
  }

  it('shows verdicts that turn before inputs, with both sides and the distance', async () => {
    const element = await shown();
    const headings = [...(element.shadowRoot?.querySelectorAll('th.group') ?? [])].map(({ textContent }) =>
      textContent.trim(),
    );
    expect(headings).to.deep.equal(['Verdicts that turn 1', 'Inputs that differ 1']);
    expect(textOf(element)).to.match(/220 mm ?330 mm ?\+50 %/);
  });

  it('leads to the cell', async () => {
    const element = await shown();
    const went = new Promise<Event>((resolve) => element.addEventListener('go', resolve, { once: true }));
    element.shadowRoot?.querySelector<HTMLButtonElement>('tbody button')?.click();
    expect(((await went) as CustomEvent<object>).detail).to.deep.equal({ sheet: 's', cell: 'D4' });
  });

  it('says when nothing differs', async () => {
    const nothing = { flips: [], inputs: [], results: [], alone: [] };
    expect(textOf(await shown(nothing)).trim()).to.equal('Nothing differs.');
  });

  it('fits a telephone without scrolling sideways', async () => {
    await setViewport({ width: 390, height: 800 });
    const element = await shown();
    expect(element.scrollWidth).to.be.at.most(element.clientWidth);
  });
});

import { expect, fixture, html, nextFrame, waitUntil } from '@open-wc/testing';
import { emulateMedia } from '@web/test-runner-commands';
import type { Driver } from '../../functions/values/driver.ts';
import { measured, say } from '../../functions/values/say.ts';
import type { CellRecord } from '../../functions/values/record.ts';
import '../../src/app/fonts/faces.css';
import '../../src/components/record-card/record-card.ts';
import type { CardFinding, CardState, CardValue } from '../../src/components/record-card/content.ts';
import type { RecordCard } from '../../src/components/record-card/record-card.ts';
import { closedBox } from '../components/plot/curves.ts';
import { paint } from './paint.ts';

const woofer: Driver = {
  kind: 'driver',
  name: 'Woofer, 170 mm',
  fs: 38,
  qts: 0.386,
  vas: 0.0285,
  xmax: 0.0055,
  derived: ['qts'],
  doubts: [say`Vas implies a moving mass of ${measured(0.014, 'mass')}.`],
};

/** A cell of the sheet `match`; a number is a volume in litres. */
const stateOf = (value: CardValue, findings: readonly CardFinding[] = []): CardState => ({
  sheet: 'match',
  cell: 'B20',
  value,
  type: value.kind === 'number' ? { kind: 'number', quantity: 'volume' } : { kind: 'unknown' },
  unit: 'L',
  findings,
});

async function card(
  value: CardValue,
  more: Partial<RecordCard> = {},
  findings: readonly CardFinding[] = [],
): Promise<RecordCard> {
  const element = await fixture<RecordCard>(html`<record-card .state=${stateOf(value, findings)}></record-card>`);
  Object.assign(element, more);
  await element.updateComplete;
  await nextFrame();
  await nextFrame();
  return element;
}
const ofRecord = (record: CellRecord, more?: Partial<RecordCard>): Promise<RecordCard> =>
  card({ kind: 'record', record }, more);
const said = (element: Element): string =>
  (element.shadowRoot?.textContent ?? element.textContent).replaceAll(/\s+/g, ' ');

function copied(element: RecordCard): string {
  let text = '';
  element.addEventListener('copy-text', (event) => (text = (event as CustomEvent<{ text: string }>).detail.text), {
    once: true,
  });
  [...element.shadowRoot!.querySelectorAll('button')]
    .find((button) => button.textContent.trim() === 'Copy as text')!
    .click();
  return text;
}

before(paint);

describe('a card', () => {
  for (const colorScheme of ['light', 'dark'] as const)
    it(`is accessible on ${colorScheme} paper`, async () => {
      await emulateMedia({ colorScheme });
      const content: readonly CardValue[] = [
        { kind: 'empty' },
        { kind: 'number', value: 0.0121 },
        {
          kind: 'problem',
          message: 'vb must be above 0 L, but is 0 L.',
          origin: { sheet: 's', cell: 'B18' },
        },
        { kind: 'record', record: woofer },
        { kind: 'record', record: closedBox() },
      ];
      for (const one of content)
        await expect(
          await card(one, { formula: '=CLOSED.QTC(Woofer, B18)' }, [
            { level: 'doubt', message: 'Litres were assumed.', fix: '12 L' },
          ]),
        ).to.be.accessible();
      await emulateMedia({ colorScheme: 'light' });
    });

  it('opens a driver with every field in its unit, computed ones marked, and what is doubtful', async () => {
    const element = await ofRecord(woofer);
    const fields = [...element.shadowRoot!.querySelectorAll('dl > div')].map((line) =>
      line.textContent.replaceAll(/\s+/g, ' ').trim(),
    );
    expect(fields.some((line) => /38(\.0)? Hz$/.test(line))).to.equal(true);
    expect(fields.some((line) => /28\.5 (L|l)$/.test(line))).to.equal(true);
    expect(fields.some((line) => /5\.50? mm/.test(line))).to.equal(true);
    expect(fields.filter((line) => line.includes('computed'))).to.have.length(1);
    expect(fields.find((line) => line.includes('computed'))).to.contain('0.386');
    expect(said(element)).to.match(/Vas implies a moving mass of 14(\.0)?.g\./);
  });

  it('opens a box with its driver', async () => {
    const element = await ofRecord({
      kind: 'box',
      style: 'vented',
      driver: woofer,
      volume: 0.03,
      tuning: 42,
      fill: 1,
      seriesResistance: 0,
      leakageQ: 7,
      absorptionQ: 100,
      portQ: 100,
    });
    expect(said(element)).to.contain('Vented box');
    expect(said(element)).to.match(/30(\.0)?.(L|l)/);
    expect(said(element)).to.contain('Driver: Woofer, 170 mm');
    expect(said(element)).to.contain('0.386');
  });

  it('opens a verdict with its reason and note', async () => {
    const element = await ofRecord({
      kind: 'verdict',
      status: 'caution',
      word: 'Tight',
      reason: say`The band is ${measured(0.4, 'octaves')} wide.`,
      note: say`Protect the tweeter.`,
    });
    expect(said(element)).to.match(/Tight The band is 0\.40?.oct(aves)? wide\. Protect the tweeter\./);
    expect(element.shadowRoot!.querySelector('.note.caution')).not.to.equal(null);
  });

  it('opens a curve as a plot with its table', async () => {
    const element = await ofRecord(closedBox(), { label: 'Response' });
    const plot = element.shadowRoot!.querySelector('curve-plot')!;
    await waitUntil(() => plot.shadowRoot!.querySelector('.curve'), 'a curve is drawn');
    expect(plot.shadowRoot!.querySelector('button.values')).not.to.equal(null);
  });

  it('shows a problem in full and leads to where it arose', async () => {
    const message = 'vb (Net volume of the box) must be above 0 L, but is 0 L. Enter a volume such as 12 L.';
    const element = await card(
      { kind: 'problem', message, origin: { sheet: 's', cell: 'B18' } },
      { sheetNames: new Map([['s', 'Drivers']]) },
    );
    expect(said(element)).to.contain(message);
    let place: unknown;
    element.addEventListener('go', (event) => (place = (event as CustomEvent).detail));
    [...element.shadowRoot!.querySelectorAll('button')]
      .find((button) => button.textContent.includes('Drivers!B18'))!
      .click();
    expect(place).to.deep.equal({ sheet: 's', cell: 'B18' });
  });

  it('shows a number rounded in its unit and unrounded, with its formula', async () => {
    const element = await card({ kind: 'number', value: 0.0121234567 }, { formula: '=Vas / 2' });
    expect(element.shadowRoot!.querySelector('.number')!.textContent).to.match(/^12\.12\s?L$/);
    expect(said(element)).to.contain('0.0121234567');
    expect(element.shadowRoot!.querySelector('code')!.textContent).to.equal('=Vas / 2');
  });

  it('asks about what is doubtful and says what to write', async () => {
    const element = await card({ kind: 'number', value: 12 }, {}, [
      { level: 'doubt', message: 'Cubic metres were assumed.', fix: '12 L' },
    ]);
    expect(said(element)).to.contain('Cubic metres were assumed. Write 12 L');
  });
});

describe('copying as text', () => {
  it('gives a driver as lines', async () => {
    const lines = copied(await ofRecord(woofer)).split('\n');
    expect(lines[0]).to.equal('Woofer, 170 mm');
    expect(lines.some((line) => /\t38(\.0)?\sHz$/.test(line))).to.equal(true);
    expect(lines.at(-1)).to.contain('Vas implies');
  });

  it('gives a curve as a table of every point at which it holds', async () => {
    const lines = copied(await ofRecord({ ...closedBox(), from: 20, to: 20000 })).split('\n');
    expect(lines[1]).to.equal('Hz\tdB');
    // 48 points an octave over log2(1000) octaves.
    expect(lines.length - 2).to.be.closeTo(48 * Math.log2(1000), 1);
    for (const line of lines.slice(2)) expect(line).to.match(/^[\d.]+\t-?[\d.]+$/);
  });

  it('shows the formula with its values and where its functions come from', async () => {
    const element = await ofRecord(woofer, {
      formula: '=CLOSED.QTC(Qts, Vas, Vb)',
      worked: '=CLOSED.QTC(0.386, 28.5 L, 12.1 L)',
      origins: [{ name: 'CLOSED.QTC', summary: 'Q of a driver in a closed box.', source: 'A paper, 1972; eq. 10' }],
    });
    expect([...element.shadowRoot!.querySelectorAll('code')].map(({ textContent }) => textContent)).to.deep.equal([
      '=CLOSED.QTC(Qts, Vas, Vb)',
      '=CLOSED.QTC(0.386, 28.5 L, 12.1 L)',
    ]);
    expect(said(element)).to.contain('Q of a driver in a closed box. A paper, 1972; eq. 10');
    await expect(element).to.be.accessible();
  });

  it('opened in full has every point of a curve', async () => {
    const curve = closedBox();
    const element = await ofRecord(curve, { full: true });
    const rows = element.shadowRoot!.querySelectorAll('.points tbody tr');
    // 12 octaves from 10 Hz, 48 points an octave, both ends.
    expect(rows).to.have.length(577);
    const cells = [...rows[0]!.querySelectorAll('td')];
    expect(cells[0]!.textContent).to.equal('10');
    expect(new Set(cells.map((cell) => cell.getBoundingClientRect().top))).to.have.length(1);
    expect(rows[0]!.clientHeight).to.be.below(30);
    expect(copied(element).split('\n')).to.have.length(577 + 2);
    await expect(element).to.be.accessible();
  });
});

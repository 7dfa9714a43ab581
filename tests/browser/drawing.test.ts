import { expect, fixture, html, nextFrame } from '@open-wc/testing';
import { emulateMedia, sendKeys, setViewport } from '@web/test-runner-commands';
import '../../src/app/fonts/faces.css';
import '../../src/components/drawing/cell-plot.ts';
import type { CellPlot } from '../../src/components/drawing/cell-plot.ts';
import type { BarsData, DrawingData, PointsData, ShapesData } from '../../src/components/drawing/data.ts';
import { paint } from './paint.ts';
import { asChosen, pairs, price, priceCap } from '../components/drawing/samples.ts';

const bars: BarsData = {
  form: 'bars',
  title: 'Cost',
  axis: price,
  bars: [asChosen, { name: 'With the other woofer', parts: [{ label: 'Drivers', line: 'woofer', value: 144 }] }],
  limits: [priceCap],
  system: 'metric',
};
const points: PointsData = {
  form: 'points',
  title: 'Window over price',
  across: price,
  up: { quantity: 'octaves', symbol: 'oct' },
  groups: [pairs],
  limits: [{ label: 'comfortable from', value: 0.5, forbidden: 'below' }],
  marks: [],
  best: ['low', 'high'],
  system: 'metric',
};
const panel: ShapesData = {
  form: 'shapes',
  title: 'Front panel',
  axis: { quantity: 'length', symbol: 'mm' },
  width: 0.22,
  height: 0.36,
  grounds: [
    [
      { name: 'Woofer', outline: 'circle', line: 'woofer', left: 0.11, below: 0.105, width: 0.166, height: 0.166 },
      { name: 'Slot', outline: 'rectangle', line: 'other', left: 0.03, below: 0.2, width: 0.25, height: 0.03 },
    ],
  ],
  system: 'metric',
};

async function plot(given: DrawingData, width = 364): Promise<CellPlot> {
  const frame = await fixture<HTMLElement>(html`<div><cell-plot .data=${given}></cell-plot></div>`);
  frame.style.width = `${width}px`;
  const element = frame.querySelector('cell-plot')!;
  await nextFrame();
  await nextFrame();
  await element.updateComplete;
  return element;
}

const inside = <T extends Element>(element: Element, selector: string): T[] => [
  ...element.shadowRoot!.querySelectorAll<T>(selector),
];

before(paint);

describe('a plot of cells', () => {
  for (const given of [bars, points, panel])
    for (const colorScheme of ['light', 'dark'] as const)
      it(`of ${given.form} is accessible on ${colorScheme} paper, its table open`, async () => {
        await emulateMedia({ colorScheme });
        await setViewport({ width: 390, height: 844 });
        const element = await plot(given);
        inside<HTMLButtonElement>(element, 'button.values')[0]!.click();
        await element.updateComplete;
        await expect(element).to.be.accessible();
        expect(inside(element, 'tbody tr').length).to.be.greaterThan(1);
        await emulateMedia({ colorScheme: 'light' });
      });

  it('is read by the arrow keys from one thing to the next', async () => {
    const element = await plot(points);
    const [slider] = inside<HTMLElement>(element, '[role=slider]');
    slider!.focus();
    await sendKeys({ press: 'ArrowRight' });
    await sendKeys({ press: 'ArrowRight' });
    await element.updateComplete;
    expect(slider!.getAttribute('aria-valuetext')).to.match(/^good: .*0\.80?.oct.*no other beats it/);
    expect(inside(element, '.readout b')[0]!.textContent).to.equal('good');
    await sendKeys({ press: 'Escape' });
    await element.updateComplete;
    expect(inside(element, '.readout')).to.have.length(0);
  });

  it('names its limit with its value and hatches the forbidden side', async () => {
    const element = await plot(bars);
    expect(inside(element, '.limit-name')[0]!.textContent).to.match(/^price cap 250.¤$/);
    expect(inside(element, 'rect[fill="url(#hatch)"]')).to.have.length(1);
  });

  it('keeps every text inside its width, narrow too', async () => {
    for (const given of [bars, points, panel])
      for (const width of [300, 364, 640]) {
        const element = await plot(given, width);
        const edge = element.getBoundingClientRect();
        for (const text of inside<SVGTextElement>(element, 'svg.drawing text')) {
          const { left, right } = text.getBoundingClientRect();
          expect(left, `${given.form} ${width}: ${text.textContent}`).to.be.at.least(edge.left - 1);
          expect(right, `${given.form} ${width}: ${text.textContent}`).to.be.at.most(edge.right + 1);
        }
      }
  });

  it('marks what reaches over the edge, and says so', async () => {
    const element = await plot(panel);
    expect(inside(element, '.shape.over')).to.have.length(1);
    expect(inside(element, 'svg.drawing')[0]!.getAttribute('aria-label')).to.contain('Slot: size 250');
    expect(inside(element, 'svg.drawing')[0]!.getAttribute('aria-label')).to.contain('reaches over the edge');
  });

  it('is a picture of its own, with colours written into it', async () => {
    const svg = (await plot(panel)).svgText();
    expect(svg).to.contain('Front panel');
    expect(svg).not.to.contain('var(--');
    expect(new DOMParser().parseFromString(svg, 'image/svg+xml').querySelector('parsererror')).to.equal(null);
  });
});

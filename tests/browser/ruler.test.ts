import { expect, fixture, html, nextFrame } from '@open-wc/testing';
import { emulateMedia, sendKeys, sendMouse, resetMouse } from '@web/test-runner-commands';
import '../../src/app/fonts/faces.css';
import '../../src/components/ruler/value-ruler.ts';
import type { RulerDetail, ValueRuler } from '../../src/components/ruler/value-ruler.ts';
import { paint } from './paint.ts';

type Told = { type: string } & RulerDetail;

/** A crossover of 2150 Hz between 1 and 4 kHz, and what it tells. */
async function ruler(more: Partial<ValueRuler> = {}, width = 812): Promise<{ element: ValueRuler; told: Told[] }> {
  const frame = await fixture<HTMLElement>(html`<div></div>`);
  frame.style.width = `${width}px`;
  const element = Object.assign(document.createElement('value-ruler'), {
    address: 'D10',
    name: 'Crossover frequency',
    value: 2150,
    baseline: 1900,
    range: [1000, 4000],
    quantity: 'frequency',
    unit: 'Hz',
    ...more,
  });
  const told: Told[] = [];
  for (const type of ['input', 'change', 'cancel'])
    element.addEventListener(type, (event) => told.push({ type, ...(event as CustomEvent<RulerDetail>).detail }));
  frame.append(element);
  await nextFrame();
  await nextFrame();
  await element.updateComplete;
  return { element, told };
}

const slider = (element: ValueRuler): HTMLElement => element.shadowRoot!.querySelector<HTMLElement>('[role=slider]')!;
const shown = (element: ValueRuler): string => element.shadowRoot!.querySelector('strong')!.textContent.trim();
const frames = async (count: number): Promise<void> => {
  for (let index = 0; index < count; index++) await nextFrame();
};

/** The pixel of a value on the screen. */
const placeOf = (element: ValueRuler, value: number): [number, number] => {
  const box = slider(element).getBoundingClientRect();
  const share = Math.log(value / 1000) / Math.log(4);
  return [Math.round(box.left + 26 + share * (box.width - 52)), Math.round(box.top + 30)];
};

before(paint);
afterEach(() => resetMouse());

describe('the ruler', () => {
  for (const colorScheme of ['light', 'dark'] as const)
    for (const width of [812, 390])
      it(`is accessible ${width} pixels wide on ${colorScheme} paper`, async () => {
        await emulateMedia({ colorScheme });
        const { element } = await ruler({ passes: [{ from: 1950, to: 2016, label: 'crossover checks pass' }] }, width);
        await expect(element).to.be.accessible();
        await emulateMedia({ colorScheme: 'light' });
      });

  it('shows the number, its unit, its name and what it was', async () => {
    const { element } = await ruler();
    expect(shown(element)).to.equal('2\u2009150');
    const text = element.shadowRoot!.querySelector('.readout')!.textContent;
    for (const part of ['D10', 'Crossover frequency', 'Hz', 'was 1\u2009900']) expect(text).to.contain(part);
    expect(slider(element).getAttribute('aria-valuetext')).to.equal('2150 hertz, was 1900');
  });

  it('says nothing of a baseline that is the same', async () => {
    const { element } = await ruler({ baseline: 2150 });
    expect(element.shadowRoot!.querySelector('.was')).to.equal(null);
    expect(slider(element).getAttribute('aria-valuetext')).to.equal('2150 hertz');
  });

  it('marks the window in which the named checks pass', async () => {
    const { element } = await ruler({ passes: [{ from: 1950, to: 2016, label: 'crossover checks pass' }] });
    expect(element.shadowRoot!.querySelector('.pass-name')!.textContent).to.equal(
      'crossover checks pass 1\u2009950–2\u2009010',
    );
    const box = element.shadowRoot!.querySelector('.pass')!.getBoundingClientRect();
    expect(box.left).to.be.closeTo(placeOf(element, 1950)[0], 1.5);
    expect(box.right).to.be.closeTo(placeOf(element, 2016)[0], 1.5);
  });
});

describe('stepping with keys', () => {
  it('goes a step, with Shift to the next ten steps, and tells every value', async () => {
    const { element, told } = await ruler();
    slider(element).focus();
    await sendKeys({ press: 'ArrowRight' });
    await frames(2);
    await sendKeys({ down: 'Shift' });
    await sendKeys({ press: 'ArrowRight' });
    await sendKeys({ up: 'Shift' });
    await frames(2);
    expect(told.map(({ type, text }) => `${type} ${text}`)).to.deep.equal(['input 2160 Hz', 'input 2200 Hz']);
    expect(told[1]!.address).to.equal('D10');
    expect(shown(element)).to.equal('2\u2009200');
  });

  it('goes to the ends and no further', async () => {
    const { element, told } = await ruler();
    slider(element).focus();
    await sendKeys({ press: 'Home' });
    await frames(2);
    await sendKeys({ press: 'ArrowLeft' });
    await frames(2);
    await sendKeys({ press: 'End' });
    await frames(2);
    expect(told.map(({ value }) => value)).to.deep.equal([1000, 4000]);
  });

  it('keeps the value on Enter, and when the focus leaves', async () => {
    const { element, told } = await ruler();
    slider(element).focus();
    await sendKeys({ press: 'ArrowRight' });
    await frames(2);
    await sendKeys({ press: 'Enter' });
    expect(told.map(({ type }) => type)).to.deep.equal(['input', 'change']);
    element.value = 2160;
    await sendKeys({ press: 'ArrowRight' });
    await frames(2);
    slider(element).blur();
    expect(told.at(-1)).to.include({ type: 'change', text: '2170 Hz' });
  });

  it('keeps the value by itself after a while', async () => {
    const { element, told } = await ruler();
    slider(element).focus();
    await sendKeys({ press: 'ArrowRight' });
    await new Promise((resolve) => setTimeout(resolve, 1100));
    expect(told.map(({ type }) => type)).to.deep.equal(['input', 'change']);
  });

  it('puts back on Escape: before it was kept, to what it was; afterwards, to the baseline', async () => {
    const { element, told } = await ruler();
    slider(element).focus();
    await sendKeys({ press: 'ArrowRight' });
    await frames(2);
    await sendKeys({ press: 'Escape' });
    await element.updateComplete;
    expect(told.at(-1)).to.include({ type: 'cancel', value: 2150, text: '2150 Hz' });
    expect(shown(element)).to.equal('2\u2009150');
    await sendKeys({ press: 'Escape' });
    expect(told.at(-1)).to.include({ type: 'change', value: 1900, text: '1900 Hz' });
  });

  it('takes a nudge from elsewhere', async () => {
    const { element, told } = await ruler();
    element.nudge(-1);
    await frames(2);
    element.nudge(1, true);
    await frames(2);
    expect(told.map(({ text }) => text)).to.deep.equal(['2140 Hz', '2200 Hz']);
  });

  it('uses the step it is given', async () => {
    const { element, told } = await ruler({ step: 25 });
    slider(element).focus();
    await sendKeys({ press: 'ArrowRight' });
    await frames(2);
    expect(told[0]!.value).to.equal(2175);
  });
});

describe('dragging', () => {
  it('tells values while it goes on and the last one when let go', async () => {
    const { element, told } = await ruler();
    await sendMouse({ type: 'move', position: placeOf(element, 2150) });
    await sendMouse({ type: 'down' });
    await sendMouse({ type: 'move', position: placeOf(element, 2600) });
    await frames(2);
    await sendMouse({ type: 'move', position: placeOf(element, 3000) });
    await frames(2);
    await sendMouse({ type: 'up' });
    expect(told.map(({ type }) => type)).to.deep.equal(['input', 'input', 'change']);
    expect(told[2]!.value).to.be.closeTo(3000, 20);
    expect(told[2]!.value % 10).to.equal(0);
    expect(told[2]!.text).to.equal(`${told[2]!.value} Hz`);
  });

  it('tells at most one value a frame, the newest', async () => {
    const { element, told } = await ruler();
    const rule = slider(element);
    rule.setPointerCapture = () => undefined;
    const [x, y] = placeOf(element, 2150);
    const fire = (type: string, clientX: number) =>
      rule.dispatchEvent(new PointerEvent(type, { clientX, clientY: y, pointerId: 1, button: 0, bubbles: true }));
    fire('pointerdown', x);
    for (let step = 1; step <= 20; step++) fire('pointermove', x + step);
    await frames(2);
    expect(told).to.have.length(1);
    fire('pointerup', x + 20);
    expect(told.at(-1)).to.include({ type: 'change', value: told[0]!.value });
  });

  it('does not move when the needle is only touched', async () => {
    const { element, told } = await ruler();
    const [x, y] = placeOf(element, 2150);
    await sendMouse({ type: 'move', position: [x + 5, y] });
    await sendMouse({ type: 'down' });
    await sendMouse({ type: 'up' });
    expect(told).to.deep.equal([]);
  });

  it('puts back on Escape', async () => {
    const { element, told } = await ruler();
    await sendMouse({ type: 'move', position: placeOf(element, 2150) });
    await sendMouse({ type: 'down' });
    await sendMouse({ type: 'move', position: placeOf(element, 3000) });
    await frames(2);
    await sendKeys({ press: 'Escape' });
    await sendMouse({ type: 'up' });
    expect(told.map(({ type }) => type)).to.deep.equal(['input', 'cancel']);
    expect(told[1]!.value).to.equal(2150);
  });

  it('shows the value under the needle while the sheet is still computing', async () => {
    const { element } = await ruler();
    await sendMouse({ type: 'move', position: placeOf(element, 2150) });
    await sendMouse({ type: 'down' });
    await sendMouse({ type: 'move', position: placeOf(element, 3000) });
    await frames(2);
    expect(Number(shown(element).replace('\u2009', ''))).to.be.closeTo(3000, 20);
    await sendMouse({ type: 'up' });
  });
});

describe('by touch', () => {
  it('has buttons of a finger’s size', async () => {
    const { element, told } = await ruler({}, 390);
    const buttons = [...element.shadowRoot!.querySelectorAll('button')];
    expect(buttons.map((button) => button.textContent.trim())).to.deep.equal(['− 10', '+ 10', 'Put back']);
    for (const button of buttons) {
      expect(button.getBoundingClientRect().height).to.be.at.least(44);
      expect(button.getBoundingClientRect().width).to.be.at.least(44);
    }
    buttons[1]!.click();
    await frames(2);
    expect(told[0]).to.include({ type: 'input', text: '2160 Hz' });
    buttons[2]!.click();
    expect(told[1]).to.include({ type: 'cancel', value: 2150 });
  });
});

describe('another cell', () => {
  it('gets its own rule, and the value in hand is kept for the first', async () => {
    const { element, told } = await ruler();
    slider(element).focus();
    await sendKeys({ press: 'ArrowRight' });
    await frames(2);
    Object.assign(element, {
      address: 'C12',
      name: 'Level trim',
      value: -4.7,
      baseline: undefined,
      range: [-12, 3],
      quantity: 'level',
      unit: 'dB',
    });
    await element.updateComplete;
    expect(told.at(-1)).to.include({ type: 'change', text: '2160 Hz', address: 'D10' });
    expect(shown(element)).to.equal('\u22124.7');
    await sendKeys({ press: 'ArrowRight' });
    await frames(2);
    expect(told.at(-1)).to.include({ type: 'input', text: '-4.65 dB', address: 'C12' });
  });
});

import { expect, fixture, html } from '@open-wc/testing';
import { emulateMedia, sendKeys, setViewport } from '@web/test-runner-commands';
import '../../src/app/fonts/faces.css';
import '../../src/components/tour/tour-dialog.ts';
import type { TourDialog, TourStop } from '../../src/components/tour/tour-dialog.ts';
import { paint } from './paint.ts';

const stops: readonly TourStop[] = [
  { title: 'First', text: 'About the first.', target: () => ({ left: 40, top: 30, width: 200, height: 60 }) },
  { title: 'Second', text: 'Not to be seen now.', target: () => undefined },
  { title: 'Third', text: 'About the third.', target: () => ({ left: 0, top: 0, width: 300, height: 30 }) },
];
const tour = (): Promise<TourDialog> => fixture<TourDialog>(html`<tour-dialog .stops=${stops}></tour-dialog>`);
const root = (element: TourDialog): ShadowRoot => element.shadowRoot!;
const title = (element: TourDialog): string => root(element).querySelector('h2')!.textContent;
const box = (element: TourDialog, part: string): DOMRect => root(element).querySelector(part)!.getBoundingClientRect();

before(paint);

describe('the tour', () => {
  for (const colorScheme of ['light', 'dark'] as const) {
    it(`is accessible, ${colorScheme}`, async () => {
      await emulateMedia({ colorScheme });
      await expect(await tour()).to.be.accessible();
    });
  }

  it('rings what it speaks of, with the card beside it', async () => {
    await setViewport({ width: 1000, height: 700 });
    const element = await tour();
    const { left, top, width } = box(element, '.ring');
    expect([left, top, width]).to.deep.equal([38, 28, 204]);
    expect(box(element, '.card').top).to.be.at.least(90);
  });

  it('is led by buttons and arrows, with each title in focus', async () => {
    const element = await tour();
    expect(title(element)).to.equal('First');
    expect(root(element).activeElement?.tagName).to.equal('H2');
    await sendKeys({ press: 'ArrowRight' });
    await element.updateComplete;
    expect(title(element)).to.equal('Second');
    expect(root(element).activeElement?.tagName).to.equal('H2');
    root(element).querySelector<HTMLButtonElement>('button.main')!.click();
    await element.updateComplete;
    expect(title(element)).to.equal('Third');
    expect(root(element).querySelector('.place')!.textContent).to.equal('Short tour, 3 of 3');
    await sendKeys({ press: 'ArrowRight' });
    await sendKeys({ press: 'ArrowLeft' });
    await element.updateComplete;
    expect(title(element)).to.equal('Second');
  });

  it('is left by Escape or at its end, and gives the focus back', async () => {
    const button = await fixture<HTMLButtonElement>(html`<button>Help</button>`);
    for (const leave of [
      () => sendKeys({ press: 'Escape' }),
      async (element: TourDialog) => {
        await sendKeys({ press: 'ArrowRight' });
        await sendKeys({ press: 'ArrowRight' });
        await element.updateComplete;
        root(element).querySelector<HTMLButtonElement>('button.main')!.click();
      },
    ]) {
      button.focus();
      const element = await tour();
      const closed = new Promise((resolve) => element.addEventListener('close', resolve, { once: true }));
      await leave(element);
      await closed;
      expect(document.activeElement).to.equal(button);
    }
  });

  it('fits the narrowest page', async () => {
    await setViewport({ width: 390, height: 700 });
    const element = await tour();
    const { left, right } = box(element, '.card');
    expect(left).to.be.at.least(0);
    expect(right).to.be.at.most(390);
  });
});

import { expect, fixture, html } from '@open-wc/testing';
import { emulateMedia, sendKeys, setViewport } from '@web/test-runner-commands';
import '../../src/app/fonts/faces.css';
import type { Looks, LooksForm } from '../../src/components/looks-form/looks-form.ts';
import '../../src/components/looks-form/looks-form.ts';
import { within } from './inside.ts';
import { paint } from './paint.ts';

const looks: Looks = {
  look: 'plain',
  columns: [
    { letters: 'B', title: 'Woofer', line: 'woofer' },
    { letters: 'C', title: '', line: undefined },
  ],
};

async function form(given: Looks = looks): Promise<{ readonly element: LooksForm; readonly kept: Looks[] }> {
  const element = await fixture<LooksForm>(html`<looks-form cells="B4:C9" .looks=${given}></looks-form>`);
  const kept: Looks[] = [];
  element.addEventListener('keep', (event) => kept.push((event as CustomEvent<{ looks: Looks }>).detail.looks));
  return { element, kept };
}

before(paint);

describe('looks of cells and columns', () => {
  for (const colorScheme of ['light', 'dark'] as const) {
    it(`are accessible, ${colorScheme}`, async () => {
      await emulateMedia({ colorScheme });
      await expect((await form()).element).to.be.accessible();
      await expect((await form({ ...looks, look: undefined })).element).to.be.accessible();
    });
  }

  it('are chosen and typed by keys, and given together', async () => {
    const { element, kept } = await form();
    (within(element, '.plain input') as HTMLInputElement).focus();
    await sendKeys({ press: 'ArrowDown' });
    (within(element, '[aria-label="Title of column C"]') as HTMLInputElement).focus();
    await sendKeys({ type: 'Tweeter' });
    const line = within(element, '[aria-label="Line of column C"]') as HTMLSelectElement;
    line.value = 'tweeter';
    line.dispatchEvent(new Event('change'));
    (within(element, '[aria-label="Title of column C"]') as HTMLInputElement).focus();
    await sendKeys({ press: 'Enter' });
    expect(kept).to.deep.equal([
      { look: 'section', columns: [looks.columns[0], { letters: 'C', title: 'Tweeter', line: 'tweeter' }] },
    ]);
  });

  it('stay as they are where nothing is chosen', async () => {
    const { element, kept } = await form({ ...looks, look: undefined });
    expect(element.shadowRoot!.querySelector('input:checked')).to.equal(null);
    (within(element, '.main') as HTMLButtonElement).click();
    expect(kept).to.deep.equal([{ ...looks, look: undefined }]);
  });

  it('fit the narrowest page with room for a finger', async () => {
    await setViewport({ width: 390, height: 844 });
    const { element } = await form();
    expect(element.scrollWidth).to.be.at.most(element.clientWidth);
    for (const each of element.shadowRoot!.querySelectorAll('button, .look'))
      expect(each.getBoundingClientRect().height).to.be.at.least(44);
    await setViewport({ width: 1440, height: 900 });
  });
});

import { expect, fixture, html } from '@open-wc/testing';
import { emulateMedia } from '@web/test-runner-commands';
import '../../src/app/fonts/faces.css';
import '../../src/components/take-over/taken-list.ts';
import type { TakenList } from '../../src/components/take-over/taken-list.ts';
import { paint } from './paint.ts';

const list = (taken = 1): Promise<TakenList> =>
  fixture<TakenList>(
    html`<taken-list
      .taken=${[{ what: 'Net volume', text: '12.1 L', cell: 'B19' }].slice(0, taken)}
      .left=${[{ what: 'Tweeter', text: 'T-25 A', why: 'The new sheet has no driver called Tweeter.' }]}
      .told=${['Woofer: Computed from its other numbers: Vas.']}
    ></taken-list>`,
  );
const said = (element: Element): string => element.shadowRoot!.textContent.replaceAll(/\s+/g, ' ');

before(paint);

describe('what was taken over', () => {
  for (const colorScheme of ['light', 'dark'] as const) {
    it(`is accessible, ${colorScheme}`, async () => {
      await emulateMedia({ colorScheme });
      await expect(await list()).to.be.accessible();
    });
  }

  it('says what was taken, what found no place and why, and what to know', async () => {
    const text = said(await list());
    expect(text).to.contain('Taken over: 1').and.to.contain('Net volume').and.to.contain('12.1 L');
    expect(text).to.contain('Found no place: 1').and.to.contain('no driver called Tweeter');
    expect(text).to.contain('Computed from its other numbers: Vas');
  });

  it('counts what still stood as its starter sheet gave it', async () => {
    const element = await list();
    element.asMade = 11;
    await element.updateComplete;
    expect(said(element)).to.contain('11 more inputs of the old sheet, still as its starter sheet gave them');
    element.left = [];
    await element.updateComplete;
    expect(said(element)).to.contain('Whatever you changed found its place. 11 inputs of the old sheet');
  });

  it('leads to the cell', async () => {
    const element = await list();
    let cell = '';
    element.addEventListener('go', (event) => ({ cell } = (event as CustomEvent<{ cell: string }>).detail));
    element.shadowRoot!.querySelector('button')!.click();
    expect(cell).to.equal('B19');
  });

  it('says so when nothing was taken', async () => {
    expect(said(await list(0))).to.contain('Nothing in the new sheet is called as in the one before');
  });
});

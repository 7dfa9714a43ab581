import { expect, fixture, html } from '@open-wc/testing';
import { emulateMedia } from '@web/test-runner-commands';
import '../../src/app/fonts/faces.css';
import '../../src/components/take-over/taken-stages.ts';
import type { TakenStages } from '../../src/components/take-over/taken-stages.ts';
import type { Stage } from '../../src/document/take-over/whole-way.ts';
import { paint } from './paint.ts';

const stage = (name: string, more: Partial<Stage>): Stage => ({
  sheet: name,
  name,
  stood: false,
  texts: new Map(),
  origins: new Map(),
  taken: [],
  left: [],
  told: [],
  command: { kind: 'all', commands: [] },
  ...more,
});
const stages = (): Promise<TakenStages> =>
  fixture<TakenStages>(
    html`<taken-stages
      .stages=${[
        stage('Closed box', { taken: [{ what: 'Net volume', text: '12.1 L', cell: 'B19' }] }),
        stage('Saw list', { stood: true, told: ['Woofer: Not given for Mine, so emptied: depth.'] }),
        stage('Basket', { stood: true }),
      ]}
    ></taken-stages>`,
  );

before(paint);

describe('what the sheets of a way took over', () => {
  for (const colorScheme of ['light', 'dark'] as const) {
    it(`is accessible, ${colorScheme}`, async () => {
      await emulateMedia({ colorScheme });
      await expect(await stages()).to.be.accessible();
    });
  }

  it('says of each sheet how much, and opens where there is something to know', async () => {
    const each = [...(await stages()).shadowRoot!.querySelectorAll('details')];
    const said = each.map((details) => details.querySelector('summary')!.textContent.replaceAll(/\s+/g, ' ').trim());
    expect(said).to.deep.equal([
      'Closed box new, 1 taken over',
      'Saw list filled anew, nothing has changed',
      'Basket filled anew, nothing has changed',
    ]);
    expect(each.map(({ open }) => open)).to.deep.equal([false, true, false]);
  });

  it('leads to the cell on its sheet', async () => {
    const element = await stages();
    let place: unknown;
    element.addEventListener('go', (event) => (place = (event as CustomEvent<unknown>).detail));
    const list = element.shadowRoot!.querySelector('taken-list')!;
    await list.updateComplete;
    list.shadowRoot!.querySelector('button')!.click();
    expect(place).to.deep.equal({ sheet: 'Closed box', cell: 'B19' });
  });
});

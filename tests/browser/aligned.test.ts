import { expect, fixture, html } from '@open-wc/testing';
import { LitElement, css, type TemplateResult } from 'lit';
import { aligned, alignedStyles } from '../../src/components/aligned.ts';
import { paint } from './paint.ts';

class AlignedColumn extends LitElement {
  static override styles = [
    alignedStyles,
    css`
      td {
        text-align: end;
        font-variant-numeric: tabular-nums;
      }
    `,
  ];
  texts: readonly string[] = [];

  protected override render(): TemplateResult {
    return html`<table>
      ${aligned(this.texts).map(
        (text) =>
          html`<tr>
            <td>${text}</td>
          </tr>`,
      )}
    </table>`;
  }
}
customElements.define('aligned-column', AlignedColumn);

async function cellsOf(...texts: string[]): Promise<HTMLElement[]> {
  const element = await fixture<AlignedColumn>(html`<aligned-column .texts=${texts}></aligned-column>`);
  return [...element.shadowRoot!.querySelectorAll('td')];
}

/** Where the whole part of a number ends. */
function pointOf(cell: HTMLElement): number {
  const texts = document.createTreeWalker(cell, NodeFilter.SHOW_TEXT);
  const range = document.createRange();
  let seen = '';
  for (let node = texts.nextNode(); node; node = texts.nextNode()) {
    const text = node.textContent ?? '';
    const end = text.search(/[^\d\u2009\u2212]|$/u);
    if (seen === '' && end > 0) {
      range.setStart(node, 0);
      range.setEnd(node, end);
      seen = text;
    }
  }
  return range.getBoundingClientRect().right;
}

before(paint);

describe('the numbers of a column', () => {
  it('have their decimals below one another, and are read as they are', async () => {
    const texts = ['38 Hz', '4.85 Hz', '1\u2009250.2 Hz', '\u22120.1 Hz'];
    const cells = await cellsOf(...texts);
    expect(cells.map(({ textContent }) => textContent)).to.deep.equal(texts);
    const [first, ...others] = cells.map(pointOf);
    for (const each of others) expect(each).to.be.closeTo(first!, 0.6);
  });

  it('stand as they are in several units, among words, and without decimals', async () => {
    for (const texts of [
      ['38 Hz', '4.85 kHz'],
      ['LR4', 'BW2'],
      ['12 W', '105 W'],
    ]) {
      const cells = await cellsOf(...texts);
      expect(cells.some((cell) => cell.querySelector('[data-lacking]'))).to.equal(false);
    }
  });

  it('leave a place without a number empty', async () => {
    const cells = await cellsOf('4.8', '', '12');
    expect(cells.map(({ textContent }) => textContent)).to.deep.equal(['4.8', '', '12']);
    expect(cells[2]!.querySelector('[data-lacking]')!.getAttribute('data-lacking')).to.equal('.0');
  });
});

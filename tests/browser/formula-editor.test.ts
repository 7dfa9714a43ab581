import { expect, fixture, html, nextFrame, oneEvent, waitUntil } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import type { Scope } from '../../src/formula/types.ts';
import { numberOf } from '../../src/formula/type-of.ts';
import '../../src/components/formula-editor/formula-editor.ts';
import type { FormulaEditor } from '../../src/components/formula-editor/formula-editor.ts';
import { paint } from './paint.ts';

/** A sheet on which Vb is B4 and Woofer, a driver, is C4; every other cell holds ohms. */
const scope: Scope = {
  sheet: 's',
  sheetNamed: (name) => (name.toLowerCase() === 'box' ? 's' : undefined),
  cellsNamed: (_sheet, name) => ({ vb: 'B4', woofer: 'C4' })[name.toLowerCase()],
  namesOf: () => ['Vb', 'Woofer'],
  typeOf: (_sheet, cell) =>
    cell === 'C4' ? { kind: 'record', record: 'driver' } : numberOf(cell === 'B4' ? 'volume' : 'resistance'),
};

async function editor(text = ''): Promise<FormulaEditor> {
  const element = await fixture<FormulaEditor>(
    html`<formula-editor
      label="Text of B9"
      .text=${text}
      .scope=${scope}
      .sheets=${[{ name: 'Box' }]}
    ></formula-editor>`,
  );
  await nextFrame();
  return element;
}
const all = (element: FormulaEditor, selector: string): string[] =>
  [...element.shadowRoot!.querySelectorAll(selector)].map(({ textContent }) => textContent.trim());

before(paint);

describe('the formula editor', () => {
  it('is accessible, with its completion open too', async () => {
    const element = await editor('=Vb*2');
    await expect(element).to.be.accessible();
    element.begin('=');
    await sendKeys({ type: 'CLOSED.Q' });
    await waitUntil(() => all(element, 'li[role=option]').length > 0, 'completion opens');
    expect(all(element, 'li[role=option]').join()).to.contain('CLOSED.QTC');
    await expect(element).to.be.accessible();
  });

  it('commits what was typed with Enter, and puts back with Escape', async () => {
    const element = await editor('12 L');
    element.begin('');
    await sendKeys({ type: '14 L' });
    setTimeout(() => void sendKeys({ press: 'Enter' }));
    const event = await oneEvent<CustomEvent<object>>(element, 'commit');
    expect(event.detail).to.deep.equal({ text: '14 L', move: 'down' });
    element.begin('');
    await sendKeys({ type: '99' });
    setTimeout(() => void sendKeys({ press: 'Escape' }));
    await oneEvent(element, 'cancel');
    expect(element.takeDraft()).to.equal(undefined);
    expect(all(element, '.cm-line')).to.deep.equal(['12 L']);
  });

  it('keeps what was typed when the reader goes elsewhere', async () => {
    const element = await editor('12 L');
    element.begin('');
    await sendKeys({ type: '15 L' });
    setTimeout(() => (document.activeElement as HTMLElement).blur());
    const event = await oneEvent<CustomEvent<object>>(element, 'commit');
    expect(event.detail).to.deep.equal({ text: '15 L', move: 'leave' });
  });

  it('says which argument is at hand, in what unit and range', async () => {
    const element = await editor();
    element.begin('=CLOSED.QTC(0.386, ');
    await waitUntil(() => all(element, '.hint').length === 1, 'the hint opens');
    expect(all(element, '.hint b')).to.deep.equal(['vas']);
    expect(all(element, '.hint')[0]).to.contain('a volume');
  });

  it('colours references and tells the sheet of them', async () => {
    const element = await editor();
    let told: readonly { readonly cells: string }[] = [];
    element.addEventListener('references', (event) => (told = (event as CustomEvent<typeof told>).detail));
    element.begin('=Vb+D5:D6+B4+');
    await element.updateComplete;
    expect(told.map(({ cells }) => cells)).to.deep.equal(['B4', 'D5:D6', 'B4']);
    expect(all(element, '.reference-0')).to.deep.equal(['Vb', 'B4']);
    expect(all(element, '.reference-1')).to.deep.equal(['D5:D6']);
  });

  it('takes cells that are pointed at, the last one in place of the one before', async () => {
    const element = await editor();
    element.begin('=2*');
    await element.updateComplete;
    expect(element.isPointing).to.equal(true);
    element.insertReference('D5');
    element.insertReference('D6');
    await sendKeys({ type: '+1' });
    expect(element.isPointing).to.equal(false);
    expect(element.takeDraft()).to.equal('=2*D6+1');
  });

  it('underlines what is wrong where it is', async () => {
    const element = await editor('=Vb + D5');
    await waitUntil(() => all(element, '.finding-error').length > 0, 'it is underlined');
    expect(all(element, '.finding-error').join('')).to.contain('D5');
  });

  it('offers the parts of a record', async () => {
    const element = await editor();
    element.begin('=');
    await sendKeys({ type: 'Woofer.f' });
    await waitUntil(() => all(element, 'li[role=option]').some((each) => each.startsWith('fs')), 'parts are offered');
  });
});

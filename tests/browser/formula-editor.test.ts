import { aTimeout, expect, fixture, html, nextFrame, oneEvent, waitUntil } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { catalogue } from '../../functions/index.ts';
import { wordsByName } from '../../functions/words.ts';
import { functionsByName, type Scope } from '../../src/formula/types.ts';
import { numberOf } from '../../src/formula/type-of.ts';
import { learnUsual } from '../../src/components/function-guide/usual.ts';
import '../../src/components/formula-editor/formula-editor.ts';
import type { FormulaEditor } from '../../src/components/formula-editor/formula-editor.ts';
import { paint } from './paint.ts';

/** A sheet on which Vb is B4 and Woofer, a driver, is C4; every other cell holds ohms. */
const scope: Scope = {
  functions: functionsByName(catalogue, wordsByName(catalogue)),
  sheet: 's',
  sheetNamed: (name) => (name.toLowerCase() === 'box' ? 's' : undefined),
  cellsNamed: (_sheet, name) => ({ vb: 'B4', woofer: 'C4' })[name.toLowerCase()],
  namesOf: () => ['Vb', 'Woofer'],
  textOf: () => '',
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

async function withControl(key: string): Promise<void> {
  await sendKeys({ down: 'Control' });
  await sendKeys({ press: key });
  await sendKeys({ up: 'Control' });
}

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
    expect(all(element, '.line')).to.deep.equal(['12 L']);
  });

  it('keeps what was typed when the reader goes elsewhere', async () => {
    const element = await editor('12 L');
    element.begin('');
    await sendKeys({ type: '15 L' });
    setTimeout(() => (document.activeElement as HTMLElement).blur());
    const event = await oneEvent<CustomEvent<object>>(element, 'commit');
    expect(event.detail).to.deep.equal({ text: '15 L', move: 'leave' });
  });

  it('keeps what was typed with Tab, and lets the reader through where nothing was', async () => {
    const element = await editor('12 L');
    const moves: unknown[] = [];
    element.addEventListener('commit', (event) => moves.push((event as CustomEvent<{ move: string }>).detail.move));
    element.begin('14 L');
    await sendKeys({ press: 'Tab' });
    expect(moves).to.deep.equal(['right']);
    element.focus();
    await sendKeys({ press: 'Tab' });
    expect(moves).to.deep.equal(['right']);
    expect(document.activeElement).not.to.equal(element);
  });

  it('says which argument is at hand, in what unit and range', async () => {
    const element = await editor();
    element.begin('=CLOSED.QTC(0.386, ');
    await waitUntil(() => all(element, '.hint').length === 1, 'the hint opens');
    expect(all(element, '.hint b')).to.deep.equal(['vas']);
    expect(all(element, '.hint')[0]).to.contain('a volume');
    await learnUsual();
    element.begin('=IF(1 > 2, ');
    await waitUntil(() => all(element, '.hint b')[0] === 'then', 'of the usual functions too');
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

  it('asks for the next cell by an arrow where a reference was begun, and leads the caret elsewhere', async () => {
    const element = await editor();
    const steps: unknown[] = [];
    element.addEventListener('point', (event) => {
      steps.push((event as CustomEvent<object>).detail);
      element.insertReference(steps.length === 1 ? 'B10' : 'B10:B11');
    });
    element.begin('=');
    await sendKeys({ press: 'ArrowDown' });
    await sendKeys({ down: 'Shift' });
    await sendKeys({ press: 'ArrowDown' });
    await sendKeys({ up: 'Shift' });
    expect(steps).to.deep.equal([
      { toward: 'down', isEdge: false, isExtending: false, isFirst: true },
      { toward: 'down', isEdge: false, isExtending: true, isFirst: false },
    ]);
    expect(field(element).value).to.equal('=B10:B11');
    await sendKeys({ type: '*2' });
    await sendKeys({ press: 'ArrowLeft' });
    await sendKeys({ type: '1' });
    expect(steps.length).to.equal(2);
    expect(element.takeDraft()).to.equal('=B10:B11*12');
  });

  it('leads the caret by arrows through a formula that was there', async () => {
    const element = await editor('=Vb*');
    let steps = 0;
    element.addEventListener('point', () => steps++);
    element.focus();
    await sendKeys({ press: 'ArrowLeft' });
    await sendKeys({ type: '^2' });
    expect(steps).to.equal(0);
    expect(element.takeDraft()).to.equal('=Vb^2*');
  });

  it('leads a reference by F4 through the ways of staying put', async () => {
    const element = await editor();
    const seen: string[] = [];
    element.begin('=2*Box!B4:b12');
    for (let press = 0; press < 4; press++) {
      await element.updateComplete;
      await sendKeys({ press: 'F4' });
      seen.push(field(element).value);
    }
    expect(seen).to.deep.equal(['=2*Box!$B$4:$b$12', '=2*Box!B$4:b$12', '=2*Box!$B4:$b12', '=2*Box!B4:b12']);
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

  const field = (element: FormulaEditor): HTMLTextAreaElement => element.shadowRoot!.querySelector('textarea')!;
  const chosen = (element: FormulaEditor): string => all(element, '[aria-selected=true]').join();

  it('takes an option by arrow and Enter, and by a click', async () => {
    const element = await editor();
    element.begin('=');
    await sendKeys({ type: 'closed.' });
    await waitUntil(() => all(element, 'li[role=option]').length > 1, 'completion opens');
    const [first] = all(element, 'li[role=option]');
    await sendKeys({ press: 'ArrowDown' });
    expect(chosen(element)).not.to.equal(first);
    expect(field(element).getAttribute('aria-activedescendant')).to.equal('option-1');
    await sendKeys({ press: 'ArrowUp' });
    await aTimeout(100);
    await sendKeys({ press: 'Enter' });
    expect(element.takeDraft()).to.match(/^=CLOSED\.[A-Z0-9]+\($/);
    element.begin('=');
    await sendKeys({ type: 'Woofer.f' });
    await waitUntil(() => all(element, 'li[role=option]').length > 0, 'completion opens');
    element.shadowRoot!.querySelector<HTMLElement>('li[role=option]')!.click();
    expect(element.takeDraft()).to.equal('=Woofer.fs');
  });

  it('closes the list with the first Escape and the edit with the second', async () => {
    const element = await editor('12 L');
    element.begin('=');
    await sendKeys({ type: 'CLOSED.Q' });
    await waitUntil(() => all(element, 'li[role=option]').length > 0, 'completion opens');
    await sendKeys({ press: 'Escape' });
    await element.updateComplete;
    expect(all(element, 'li[role=option]')).to.deep.equal([]);
    expect(field(element).value).to.equal('=CLOSED.Q');
    await sendKeys({ press: 'Escape' });
    expect(field(element).value).to.equal('12 L');
  });

  it('leaves Enter to the text where the list has only just come up', async () => {
    const element = await editor();
    const kept: unknown[] = [];
    element.addEventListener('commit', (event) => kept.push((event as CustomEvent<object>).detail));
    element.begin('=Vb');
    element.shadowRoot!.querySelector('textarea')!.setRangeText('+CLOSED.Q', 3, 3, 'end');
    const given = { bubbles: true, composed: true };
    field(element).dispatchEvent(new InputEvent('input', { ...given, inputType: 'insertText' }));
    field(element).dispatchEvent(new KeyboardEvent('keydown', { ...given, key: 'Enter', cancelable: true }));
    expect(kept).to.deep.equal([{ text: '=Vb+CLOSED.Q', move: 'down' }]);
  });

  it('undoes and redoes inside the edit', async () => {
    const element = await editor();
    element.begin('=');
    await sendKeys({ type: '2*3 +4' });
    await withControl('z');
    expect(field(element).value).to.equal('=2*3 ');
    await withControl('z');
    expect(field(element).value).to.equal('=');
    await withControl('y');
    await withControl('y');
    expect(element.takeDraft()).to.equal('=2*3 +4');
  });

  it('makes one line of what is pasted, in place of what is selected', async () => {
    const element = await editor();
    element.begin('=A1+1');
    field(element).setSelectionRange(1, 3);
    const clipboardData = new DataTransfer();
    clipboardData.setData('text/plain', 'B2\n  +B3\r\n');
    field(element).dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }));
    expect(element.takeDraft()).to.equal('=B2 +B3+1');
  });

  it('leaves the keys of an input method alone, and shows its letters as it draws them', async () => {
    const element = await editor();
    let kept = 0;
    element.addEventListener('commit', () => kept++);
    element.begin('');
    field(element).dispatchEvent(new CompositionEvent('compositionstart', { bubbles: true }));
    await element.updateComplete;
    expect(getComputedStyle(field(element)).color).not.to.equal('rgba(0, 0, 0, 0)');
    field(element).dispatchEvent(
      new KeyboardEvent('keydown', { key: 'Enter', isComposing: true, bubbles: true, cancelable: true }),
    );
    expect(kept).to.equal(0);
    field(element).dispatchEvent(new CompositionEvent('compositionend', { bubbles: true }));
    await element.updateComplete;
    expect(getComputedStyle(field(element)).color).to.equal('rgba(0, 0, 0, 0)');
  });

  it('grows with a long formula, and its letters stand where the caret is', async () => {
    const element = await editor('=Vb');
    element.style.width = '300px';
    const before = field(element).offsetHeight;
    element.begin(`=SUM(${Array.from({ length: 40 }, (_, index) => `D${String(index)}`).join(',')})`);
    await element.updateComplete;
    expect(field(element).offsetHeight).to.be.greaterThan(2 * before);
    // The field needs no more room than the layer makes.
    expect(field(element).scrollHeight).to.equal(field(element).clientHeight);
    await expect(element).to.be.accessible();
  });

  it('says in words what is wrong away from the caret, while it is written', async () => {
    const element = await editor();
    element.begin('=(Vb + D5) * 2');
    await waitUntil(() => all(element, '.problem').length > 0, 'it is said');
    expect(all(element, '.problem')[0]).to.contain('volume');
    expect(field(element).getAttribute('aria-describedby')).to.equal('problems');
    await expect(element).to.be.accessible();
  });
});

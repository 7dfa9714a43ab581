import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { GridPage } from './grid-page.ts';
import { paint } from './paint.ts';

let page: GridPage;
/** Draws what was typed, as the page does once it knows what follows from it. */
let draw: () => Promise<void>;

function fieldBeside(name: string): HTMLInputElement {
  const field = document.createElement('input');
  field.setAttribute('aria-label', name);
  page.grid.after(field);
  return field;
}

before(paint);
beforeEach(async () => {
  page = await GridPage.open();
  await page.select('B2');
  let drawn: (() => void) | undefined;
  let due: Promise<void> | undefined;
  page.grid.due = () => due;
  page.grid.addEventListener('cell-commit', () => (due ??= new Promise((resolve) => (drawn = resolve))));
  draw = async () => {
    page.grid.release();
    due = undefined;
    drawn?.();
    await page.grid.updateComplete;
  };
});

describe('what is typed while an edit waits to be drawn', () => {
  it('stays where it is until then', async () => {
    await sendKeys({ type: '4.5' });
    await sendKeys({ press: 'Enter' });
    expect(page.told).to.deep.equal([['cell-commit', { row: 1, column: 1, text: '4.5' }]]);
    expect(page.input!.value).to.equal('4.5');
    expect(page.selected).to.equal('B2');
    await draw();
    expect(page.input).to.equal(null);
    expect(page.selected).to.equal('B3');
    expect(page.root.activeElement).to.equal(page.scroller);
    expect(page.told).to.have.length(1);
  });

  it('goes on in the next cell', async () => {
    await sendKeys({ type: '4.5' });
    await sendKeys({ press: 'Enter' });
    await sendKeys({ type: '67' });
    expect(page.input!.value).to.equal('67');
    await draw();
    expect(page.input!.value).to.equal('67');
    await sendKeys({ press: 'Tab' });
    await draw();
    expect(page.told).to.deep.equal([
      ['cell-commit', { row: 1, column: 1, text: '4.5' }],
      ['cell-commit', { row: 2, column: 1, text: '67' }],
    ]);
    expect(page.selected).to.equal('C3');
  });

  it('goes on in the next cell where it comes by no key', async () => {
    await sendKeys({ type: '4.5' });
    await sendKeys({ press: 'Enter' });
    await sendKeys({ type: '½ in' });
    await draw();
    expect(page.selected).to.equal('B3');
    expect(page.input!.value).to.equal('½ in');
    expect(page.told).to.have.length(1);
  });

  it('moves on by keys that were pressed meanwhile', async () => {
    await sendKeys({ type: '4.5' });
    await sendKeys({ press: 'Enter' });
    await sendKeys({ press: 'ArrowRight' });
    await draw();
    expect(page.selected).to.equal('C3');
    expect(page.told).to.have.length(1);
  });

  it('lets the focus go elsewhere', async () => {
    const other = fieldBeside('Elsewhere');
    await sendKeys({ type: '7' });
    await sendKeys({ press: 'Enter' });
    other.focus();
    await draw();
    expect(page.told).to.have.length(1);
    expect(page.input).to.equal(null);
    expect(document.activeElement).to.equal(other);
  });

  it('takes what is typed elsewhere before the focus has come', async () => {
    const line = fieldBeside('Formula line');
    line.focus();
    page.grid.dispatchEvent(new CustomEvent('cell-commit', { detail: {} }));
    page.grid.focusWhenDrawn();
    expect(document.activeElement).to.equal(line);
    await sendKeys({ type: '8' });
    expect(line.value).to.equal('');
    expect(page.input!.value).to.equal('8');
  });

  it('leaves the focus where it has gone meanwhile', async () => {
    const line = fieldBeside('Formula line');
    const other = fieldBeside('Elsewhere');
    line.focus();
    page.grid.dispatchEvent(new CustomEvent('cell-commit', { detail: {} }));
    page.grid.focusWhenDrawn();
    other.focus();
    await draw();
    expect(document.activeElement).to.equal(other);
  });

  it('is closed at once by a key of the whole page', async () => {
    await sendKeys({ type: '7' });
    await sendKeys({ down: 'Control' });
    await sendKeys({ press: 'k' });
    await sendKeys({ up: 'Control' });
    expect(page.told).to.have.length(1);
    expect(page.input).to.equal(null);
  });
});

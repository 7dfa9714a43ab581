import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { GridPage } from './grid-page.ts';
import { paint } from './paint.ts';

let page: GridPage;

/** Presses keys one after another; `Control+Shift+End` holds the first ones. */
const press = async (...chords: string[]): Promise<void> => {
  for (const chord of chords) {
    const held = chord.split('+');
    const key = held.pop()!;
    for (const down of held) await sendKeys({ down });
    await sendKeys({ press: key });
    for (const up of held) await sendKeys({ up });
  }
  await page.grid.updateComplete;
};

before(paint);
beforeEach(async () => {
  page = await GridPage.open();
  await page.select('B2');
});

describe('keys that move', () => {
  for (const [keys, to] of [
    ['ArrowDown', 'B3'],
    ['ArrowUp', 'B1'],
    ['ArrowRight', 'C2'],
    ['ArrowLeft', 'A2'],
    ['Control+ArrowRight', 'C2'],
    ['Control+ArrowDown', 'B7'],
    ['Home', 'A2'],
    ['End', 'C2'],
    ['Control+Home', 'A1'],
    ['Control+End', 'AX100000'],
    ['Tab', 'C2'],
    ['Shift+Tab', 'A2'],
    ['Enter', 'B3'],
    ['Shift+Enter', 'B1'],
  ] as const)
    it(`${keys} leads to ${to}, told to assistive technology`, async () => {
      await press(keys);
      expect(page.selected).to.equal(to);
      await page.drawn();
      expect(page.scroller.getAttribute('aria-activedescendant')).to.equal(`cell-${to}`);
      expect(page.cell(to)!.getAttribute('aria-selected')).to.equal('true');
      expect(page.cell(to)!.closest('[role=row]')!.getAttribute('aria-rowindex')).to.equal(
        String(page.grid.selection.focus.row + 2),
      );
    });

  it('Page down shows the next rows and Page up the ones before', async () => {
    await press('PageDown');
    const { row } = page.grid.selection.focus;
    expect(row).to.be.within(10, 17);
    await press('PageUp');
    expect(page.selected).to.equal('B2');
  });

  it('Shift extends from the corner where it began', async () => {
    await press('Shift+ArrowDown', 'Shift+ArrowRight', 'Shift+ArrowDown');
    expect(page.selected).to.equal('C4:B2');
    const selected = page.shown.filter((each) => each.getAttribute('aria-selected') === 'true');
    expect(selected.map(({ id }) => id.slice(5)).sort()).to.deep.equal(['B2', 'B3', 'B4', 'C2', 'C3', 'C4']);
    await press('Control+Shift+ArrowDown');
    expect(page.selected).to.equal('C5:B2');
    await press('ArrowUp');
    expect(page.selected).to.equal('C4');
  });

  it('Ctrl+A selects everything and stays where the reader is', async () => {
    await press('Control+a');
    expect(page.selected).to.equal('A1:AX100000');
    expect(page.scroller.scrollTop).to.equal(0);
  });

  it('Tab leaves the grid at its border', async () => {
    const after = document.createElement('button');
    after.textContent = 'Next';
    page.grid.after(after);
    await page.select('AX4');
    await press('Tab');
    expect(page.selected).to.equal('AX4');
    expect(document.activeElement).to.equal(after);
  });

  it('brings the active cell into view, clear of the heads', async () => {
    await press('Control+End');
    await page.drawn();
    const cell = page.cell('AX100000')!.getBoundingClientRect();
    const frame = page.scroller.getBoundingClientRect();
    expect(cell.bottom).to.be.at.most(frame.bottom);
    expect(cell.right).to.be.at.most(frame.right);
    await press('Control+ArrowUp', 'Control+Home');
    await page.drawn();
    const heads = page.root.querySelector('.heads')!.getBoundingClientRect();
    expect(page.cell('A1')!.getBoundingClientRect().top).to.be.at.least(heads.bottom - 1);
  });
});

describe('keys that do something', () => {
  for (const [key, name, detail] of [
    ['Delete', 'clear', {}],
    ['Backspace', 'clear', {}],
    ['Control+d', 'fill', { direction: 'down' }],
    ['Control+r', 'fill', { direction: 'right' }],
    ['Alt+ArrowUp', 'nudge', { direction: 1, coarse: false }],
    ['Alt+Shift+ArrowDown', 'nudge', { direction: -1, coarse: true }],
    ['Alt+Shift+ArrowRight', 'column-resize', { column: 1, width: 138 }],
    ['Alt+Shift+ArrowLeft', 'column-resize', { column: 1, width: 122 }],
  ] as const)
    it(`${key} asks for ${name}`, async () => {
      await press(key);
      expect(page.told).to.deep.equal([[name, detail]]);
    });

  it('Shift+F10 asks for the menu below the active cell', async () => {
    await press('Shift+F10');
    const { left, bottom } = page.cell('B2')!.getBoundingClientRect();
    expect(page.told).to.deep.equal([['menu', { x: left, y: bottom }]]);
  });

  it('does not make a column narrower than can be used', async () => {
    page.grid.model = { ...page.model, columns: page.model.columns.map((each) => ({ ...each, width: 48 })) };
    await page.grid.updateComplete;
    await press('Alt+Shift+ArrowLeft');
    expect(page.told).to.deep.equal([]);
  });
});

describe('typing', () => {
  it('takes the signs that the Option key gives, and leaves letters with Alt to the browser', async () => {
    const typed = (key: string): boolean =>
      page.grid.shadowRoot!.activeElement!.dispatchEvent(
        new KeyboardEvent('keydown', { key, altKey: true, bubbles: true, cancelable: true }),
      );
    expect(typed('d')).to.equal(true);
    expect(page.input).not.to.exist;
    expect(typed('€')).to.equal(false);
    expect(page.input!.value).to.equal('€');
  });

  it('replaces what is there, and Enter commits and leads down', async () => {
    await sendKeys({ type: '4.5' });
    expect(page.input!.value).to.equal('4.5');
    await press('Enter');
    expect(page.told).to.deep.equal([['cell-commit', { row: 1, column: 1, text: '4.5' }]]);
    expect(page.selected).to.equal('B3');
    expect(page.input).to.equal(null);
    await press('ArrowDown');
    expect(page.selected).to.equal('B4');
  });

  for (const [key, to] of [
    ['Tab', 'C2'],
    ['Shift+Tab', 'A2'],
    ['Shift+Enter', 'B1'],
  ] as const)
    it(`${key} commits and leads to ${to}`, async () => {
      await sendKeys({ type: '5 ohm' });
      await press(key);
      expect(page.told).to.deep.equal([['cell-commit', { row: 1, column: 1, text: '5 ohm' }]]);
      expect(page.selected).to.equal(to);
      expect(page.root.activeElement).to.equal(page.scroller);
    });

  it('Escape puts back what was there', async () => {
    await sendKeys({ type: '4.5' });
    await press('Escape');
    expect(page.input).to.equal(null);
    expect(page.told).to.deep.equal([]);
    expect(page.selected).to.equal('B2');
    expect(page.root.activeElement).to.equal(page.scroller);
  });

  it('F2 edits the text that was typed, not what is shown', async () => {
    await press('F2');
    expect(page.input!.value).to.equal('8 ohm');
    await press('End');
    await sendKeys({ type: 's' });
    await press('Enter');
    expect(page.told).to.deep.equal([['cell-commit', { row: 1, column: 1, text: '8 ohms' }]]);
  });

  it('writes nothing where nothing was changed', async () => {
    await press('F2', 'Enter');
    expect(page.told).to.deep.equal([]);
    expect(page.selected).to.equal('B3');
  });

  for (const [key, to] of [
    ['ArrowDown', 'B3'],
    ['ArrowUp', 'B1'],
    ['ArrowRight', 'C2'],
    ['ArrowLeft', 'A2'],
  ] as const)
    it(`${key} after typing over a cell commits and leads to ${to}`, async () => {
      await sendKeys({ type: '15' });
      await press(key);
      expect(page.told).to.deep.equal([['cell-commit', { row: 1, column: 1, text: '15' }]]);
      expect(page.selected).to.equal(to);
    });

  for (const key of ['F2', 'Home', 'End'])
    it(`arrows move in the text once ${key} was pressed`, async () => {
      await sendKeys({ type: '15' });
      await press(key, 'End', 'ArrowLeft');
      await sendKeys({ type: '2' });
      await press('Enter');
      expect(page.told).to.deep.equal([['cell-commit', { row: 1, column: 1, text: '125' }]]);
    });

  it('keeps what is typed before a key of the whole page is answered', async () => {
    const asked: string[] = [];
    const listen = ({ key }: KeyboardEvent): void => void (key === 'k' && asked.push(String(page.told.length)));
    addEventListener('keydown', listen);
    await sendKeys({ type: '15' });
    await press('Control+k');
    removeEventListener('keydown', listen);
    expect(asked).to.deep.equal(['1']);
    expect(page.root.activeElement).to.equal(page.scroller);
  });

  it('commits when the focus goes elsewhere, and lets it go', async () => {
    const other = document.createElement('input');
    other.setAttribute('aria-label', 'Elsewhere');
    page.grid.after(other);
    await sendKeys({ type: '7' });
    other.focus();
    expect(page.told).to.deep.equal([['cell-commit', { row: 1, column: 1, text: '7' }]]);
    expect(document.activeElement).to.equal(other);
  });

  it('= begins a formula elsewhere, and a formula is edited there', async () => {
    await sendKeys({ press: '=' });
    await page.select('B3');
    await press('F2');
    expect(page.told).to.deep.equal([
      ['formula-start', { text: '=' }],
      ['formula-start', {}],
    ]);
    expect(page.input).to.equal(null);
  });

  it('keeps what is being typed while other cells change', async () => {
    await sendKeys({ type: '12' });
    page.model.cells.set('C2', { text: '4 ohm' });
    page.grid.model = { ...page.model };
    await page.drawn();
    await sendKeys({ type: '3' });
    await press('Enter');
    expect(page.told).to.deep.equal([['cell-commit', { row: 1, column: 1, text: '123' }]]);
  });

  it('keeps what is being typed when the window grows', async () => {
    await sendKeys({ type: '12' });
    page.grid.parentElement!.style.height = '900px';
    await page.drawn();
    await sendKeys({ type: '3' });
    expect(page.input!.value).to.equal('123');
    expect(page.told).to.deep.equal([]);
  });

  it('lies exactly over its cell', async () => {
    await sendKeys({ type: '1' });
    const [over, cell] = [page.input!, page.cell('B2')!].map((each) => each.getBoundingClientRect());
    expect([over!.left, over!.top, over!.width]).to.deep.equal([cell!.left, cell!.top, cell!.width]);
    const [x, y] = page.middle('B2');
    expect(page.root.elementFromPoint(x, y)).to.equal(page.input);
  });
});

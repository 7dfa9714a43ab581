import { expect } from '@open-wc/testing';
import { sendKeys, sendMouse } from '@web/test-runner-commands';
import { GridPage } from './grid-page.ts';
import { paint } from './paint.ts';

let page: GridPage;

const click = async (of: string | Element, button: 'left' | 'right' = 'left'): Promise<void> => {
  await sendMouse({ type: 'click', position: page.middle(of), button });
  await page.grid.updateComplete;
};
const shiftClick = async (of: string | Element): Promise<void> => {
  await sendKeys({ down: 'Shift' });
  await click(of);
  await sendKeys({ up: 'Shift' });
};
const drag = async (...path: (string | Element | [number, number])[]): Promise<void> => {
  const [first, ...rest] = path.map((of) => (Array.isArray(of) ? of : page.middle(of)));
  await sendMouse({ type: 'move', position: first! });
  await sendMouse({ type: 'down' });
  for (const position of rest) await sendMouse({ type: 'move', position });
  await sendMouse({ type: 'up' });
  await page.grid.updateComplete;
};
const head = (column: number): HTMLElement => page.root.querySelector(`.head[data-column="${String(column)}"]`)!;

before(paint);
beforeEach(async () => {
  page = await GridPage.open();
});

describe('the mouse', () => {
  it('selects a cell, and with Shift all up to another', async () => {
    await click('B3');
    expect(page.selected).to.equal('B3');
    expect(page.root.activeElement).to.equal(page.scroller);
    await shiftClick('C5');
    expect(page.selected).to.equal('C5:B3');
  });

  it('selects what it is dragged over, and no more once it is let go', async () => {
    await drag('B2', 'C3', 'C4');
    expect(page.selected).to.equal('C4:B2');
    await sendMouse({ type: 'move', position: page.middle('A6') });
    expect(page.selected).to.equal('C4:B2');
  });

  it('goes on selecting beyond the border, and the sheet follows', async () => {
    const { left, bottom } = page.scroller.getBoundingClientRect();
    await drag('B2', 'B6', [left + 300, bottom + 20], [left + 300, bottom + 30]);
    await page.drawn();
    expect(page.grid.selection.anchor).to.deep.equal({ row: 1, column: 1 });
    expect(page.grid.selection.focus.row).to.be.above(14);
    expect(page.scroller.scrollTop).to.be.above(0);
  });

  it('selects columns and rows by their heads, and everything by the corner', async () => {
    await click(head(2));
    expect(page.selected).to.equal('C1:C100000');
    await shiftClick(head(3));
    expect(page.selected).to.equal('D1:C100000');
    await click(page.rowHead('A4'));
    expect(page.selected).to.equal('A4:AX4');
    await drag(page.rowHead('A4'), page.rowHead('A6'));
    expect(page.selected).to.equal('A6:AX4');
    await click(page.root.querySelector('.corner')!);
    expect(page.selected).to.equal('A1:AX100000');
  });

  it('reaches the heads of the active column and row too', async () => {
    await click('B4');
    await click(page.rowHead('B4'));
    expect(page.selected).to.equal('A4:AX4');
    await click('B4');
    await click(head(1));
    expect(page.selected).to.equal('B1:B100000');
  });

  it('stays where the sheet is when a column is selected far down', async () => {
    page.scroller.scrollTop = 60_000;
    await page.drawn();
    await click(head(1));
    await page.drawn();
    expect(page.scroller.scrollTop).to.equal(60_000);
  });

  it('opens a cell on a double click', async () => {
    const position = page.middle('B2');
    await sendMouse({ type: 'click', position });
    page.cell('B2')!.dispatchEvent(new MouseEvent('dblclick', { bubbles: true, composed: true }));
    expect(page.input!.value).to.equal('8 ohm');
    await click('C4');
    expect(page.input).to.equal(null);
    expect(page.told).to.deep.equal([]);
    expect(page.selected).to.equal('C4');
  });

  it('commits what is typed when another cell is pressed', async () => {
    await click('B2');
    await sendKeys({ type: '3' });
    await click('C4');
    expect(page.told).to.deep.equal([['cell-commit', { row: 1, column: 1, text: '3' }]]);
    expect(page.selected).to.equal('C4');
    expect(page.root.activeElement).to.equal(page.scroller);
  });

  it('asks for the menu where it is, for the cell under it or for the selection around it', async () => {
    await page.select('B2:C4');
    await click('C3', 'right');
    expect(page.selected).to.equal('B2:C4');
    await click('D5', 'right');
    expect(page.selected).to.equal('D5');
    const [x, y] = page.middle('D5');
    expect(page.told.map(([name]) => name)).to.deep.equal(['menu', 'menu']);
    expect(page.told[1]![1]).to.deep.equal({ x, y });
    await click(head(1), 'right');
    expect(page.selected).to.equal('B1:B100000');
  });
});

describe('the width of a column', () => {
  const grip = (column: number): Element => head(column).querySelector('.grip')!;

  it('follows the grip, that of the active column too', async () => {
    await click('B2');
    const [x, y] = page.middle(grip(1));
    await drag([x, y], [x + 20, y], [x + 40, y]);
    expect(page.told).to.deep.equal([['column-resize', { column: 1, width: 170 }]]);
    expect(page.selected).to.equal('B2');
  });

  it('stays within what can be used', async () => {
    const [x, y] = page.middle(grip(1));
    await drag([x, y], [x - 300, y]);
    expect(page.told).to.deep.equal([['column-resize', { column: 1, width: 48 }]]);
  });

  it('is shown by head and cells alike once the model has it', async () => {
    page.grid.model = {
      ...page.model,
      columns: page.model.columns.map((each, index) => (index === 1 ? { ...each, width: 180 } : each)),
    };
    await page.drawn();
    expect(head(1).getBoundingClientRect().width).to.equal(180);
    expect(page.cell('B2')!.getBoundingClientRect().width).to.equal(180);
    expect(page.cell('C2')!.getBoundingClientRect().left).to.equal(head(2).getBoundingClientRect().left);
  });
});

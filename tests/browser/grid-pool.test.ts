import { aTimeout, expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { GridPage, testModel } from './grid-page.ts';
import { paint } from './paint.ts';

let page: GridPage;

before(paint);
beforeEach(async () => {
  page = await GridPage.open();
});

describe('the pool of rows', () => {
  it('draws what is in view only', () => {
    expect(page.shown.length).to.be.below(24 * 12);
  });

  it('shows row 100 000 and comes back, and the active cell is always there', async () => {
    await page.select('B2');
    page.scroller.scrollTop = page.scroller.scrollHeight;
    await page.drawn();
    expect(page.cell('A100000')!.checkVisibility()).to.equal(true);
    const active = page.scroller.getAttribute('aria-activedescendant')!;
    expect(page.root.querySelectorAll(`[id="${active}"]`)).to.have.length(1);
    expect(page.said('B2')).to.equal('8Ω');
    await sendKeys({ press: 'ArrowDown' });
    await page.drawn();
    expect(page.selected).to.equal('B3');
    const { top } = page.cell('B3')!.getBoundingClientRect();
    expect(top).to.be.at.least(page.scroller.getBoundingClientRect().top);
  });

  it('never shows a cell twice nor leaves a hole, wherever it is scrolled to', async () => {
    await page.select('C40');
    for (const [left, top] of [
      [0, 700],
      [900, 900],
      [3000, 40_000],
      [120, 1_000],
      [4000, 2_799_000],
      [0, 0],
    ] as const) {
      page.scroller.scrollTo(left, top);
      await page.drawn();
      const ids = page.shown.map(({ id }) => id);
      expect(new Set(ids).size).to.equal(ids.length);
      expect(page.root.querySelectorAll('[id="cell-C40"]')).to.have.length(1);
      const box = page.scroller.getBoundingClientRect();
      // Clear of the hairlines between rows, which belong to no cell.
      for (const [x, y] of [
        [60, 40],
        [400, 250],
        [box.width - 30, box.height - 30],
      ] as const) {
        const found = page.root.elementFromPoint(box.left + x, box.top + y);
        expect(found?.closest('.cell'), `at ${String(x)}, ${String(y)} of ${String(left)}, ${String(top)}`).to.exist;
      }
    }
  });

  it('is in reading order once scrolling has ended', async () => {
    for (const top of [333, 900, 20_000, 4_000]) {
      page.scroller.scrollTop = top;
      await page.drawn();
    }
    await aTimeout(400);
    const rows = [...page.root.querySelectorAll<HTMLElement>('.row')].filter((row) => row.checkVisibility());
    const read = rows.map((row) => Number(row.getAttribute('aria-rowindex'))).filter((row) => row > 2);
    expect(read).to.deep.equal([...read].sort((a, b) => a - b));
  });

  it('keeps the number of the active row beside it when scrolled sideways', async () => {
    await page.select('D4');
    page.scroller.scrollLeft = 260;
    await page.drawn();
    const head = page.rowHead('D4').getBoundingClientRect();
    expect(head.left).to.equal(page.scroller.getBoundingClientRect().left);
  });

  it('keeps rows out of the layers of the browser: the numbers are in one column, and each row says its own', async () => {
    await page.drawn();
    expect(page.root.querySelectorAll('.row .rowhead')).to.have.length(0);
    const read = page.cell('D4')!.parentElement!.querySelector('[role="rowheader"]')!;
    expect(read.textContent).to.equal('4');
    const { top, height } = page.cell('D4')!.parentElement!.getBoundingClientRect();
    const number = page.rowHead('D4').getBoundingClientRect();
    expect([number.top, number.height]).to.deep.equal([top, height]);
  });

  it('leaves the labels where they are for a column that reaches past the border of the view', async () => {
    page.grid.parentElement!.style.width = '700px';
    await page.drawn();
    await page.select('D3');
    await page.drawn();
    expect(page.scroller.scrollLeft).to.equal(0);
    await page.select('E3');
    await page.drawn();
    expect(page.scroller.scrollLeft).to.be.above(0);
  });

  it('leaves out the number before where its column has no room for two', async () => {
    page.model.was.set('B3', '5.9');
    page.model.was.set('D6', '10.4');
    page.model.looks.set('D6', { kind: 'number', number: '10.9', unit: 'mm' });
    page.grid.refresh();
    await page.drawn();
    expect(page.cell('B3')!.querySelector('.was')!.checkVisibility()).to.equal(false);
    expect(page.cell('B3')!.title).to.equal('5.9 before');
    expect(page.cell('D6')!.querySelector('.was')!.checkVisibility()).to.equal(true);
  });

  it('draws the words of a heading below the numbers of the rows', async () => {
    page.scroller.scrollLeft = 60;
    await page.drawn();
    const { left, top, height } = page.rowHead('A1').getBoundingClientRect();
    const seen = page.root.elementFromPoint(left + 30, top + height / 2);
    expect(seen?.className).to.contain('rowhead');
  });

  it('shows a long number whole: the room of the unit gives way to it', async () => {
    page.model.cells.set('E8', { text: '0.33 g' });
    page.model.looks.set('E8', { kind: 'number', number: '0.01164', unit: 'oz' });
    page.grid.refresh();
    await page.drawn();
    const cell = page.cell('E8')!;
    const [value, unit] = [...cell.querySelectorAll('.value, .unit')].map((part) => part.getBoundingClientRect());
    const { left, right } = cell.getBoundingClientRect();
    expect(value!.left).to.be.at.least(left);
    expect(unit!.right).to.be.at.most(right);
  });

  it('stands as before once it has its room again, unless it was scrolled since', async () => {
    const frame = page.grid.parentElement!;
    const give = async (width: string): Promise<number> => {
      frame.style.width = width;
      await page.drawn();
      return page.scroller.scrollLeft;
    };
    await page.select('C8');
    expect(await give('360px')).to.be.greaterThan(0);
    expect(await give('300px')).to.be.greaterThan(0);
    expect(await give('800px')).to.equal(0);
    await give('360px');
    page.scroller.scrollLeft += 30;
    await page.drawn();
    expect(await give('800px')).to.be.greaterThan(0);
  });

  it('keeps the active cell in view while it loses room, and stands still where it was not', async () => {
    const bottom = (): number => page.cell('B12')!.getBoundingClientRect().bottom;
    const frame = (): number => page.scroller.getBoundingClientRect().bottom;
    await page.select('B12');
    await page.drawn();
    page.grid.parentElement!.style.height = '240px';
    await page.drawn();
    await page.drawn();
    expect(bottom()).to.be.at.most(frame());
    page.scroller.scrollTop = 0;
    await page.drawn();
    page.grid.parentElement!.style.height = '200px';
    await page.drawn();
    await page.drawn();
    expect(page.scroller.scrollTop).to.equal(0);
  });

  it('takes the focus with the active cell in view, or stands still where told to', async () => {
    await page.select('B60');
    page.scroller.scrollTop = 0;
    page.grid.focus({ preventScroll: true });
    expect(page.scroller.scrollTop).to.equal(0);
    page.grid.focus();
    expect(page.scroller.scrollTop).to.be.above(0);
    expect(page.grid.shadowRoot?.activeElement).to.equal(page.scroller);
  });

  it('leaves nothing of a larger sheet behind when a smaller one is shown', async () => {
    page.scroller.scrollTop = 50_000;
    await page.drawn();
    const small = testModel(5);
    page.grid.model = { ...small, columns: small.columns.slice(0, 2) };
    await page.select('A1');
    await page.drawn();
    const ids = page.shown.map(({ id }) => id.slice(5)).sort();
    expect(ids).to.deep.equal(['A', 'B'].flatMap((column) => [1, 2, 3, 4, 5].map((row) => `${column}${String(row)}`)));
  });

  it('shows another sheet from its beginning, as a grid that never showed the first', async () => {
    page.model.was.set('B3', '7.1');
    page.grid.refresh();
    page.scroller.scrollTo(300, 9_000);
    await page.drawn();
    const other = testModel(60);
    other.looks.set('D3', { kind: 'verdict', status: 'good', word: 'Good', reason: 'All is well.', note: '' });
    other.cells.delete('B4');
    other.looks.delete('B4');
    page.grid.model = other;
    page.grid.of = 'another';
    await page.drawn();
    expect([page.scroller.scrollTop, page.scroller.scrollLeft]).to.deep.equal([0, 0]);
    const seen = (of: GridPage): string[] =>
      of.shown.map(({ id, className, textContent }) => `${id} ${className} ${textContent}`).sort();
    const switched = seen(page);
    // The pool of the first grid has become larger.
    expect(switched).to.include.members(seen(await GridPage.open(other)));
    expect(switched.filter((cell) => /-(AX|B4) /.test(cell))).to.deep.equal(['cell-B4 cell empty ']);
  });

  it('draws what changed, and only after it is told', async () => {
    const untouched = page.cell('B3')!.firstElementChild;
    page.model.looks.set('B2', { kind: 'number', number: '4', unit: 'Ω' });
    page.grid.refresh();
    await page.drawn();
    expect(page.said('B2')).to.equal('4Ω');
    expect(page.cell('B3')!.firstElementChild).to.equal(untouched);
  });
});

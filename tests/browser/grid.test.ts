import { aTimeout, expect } from '@open-wc/testing';
import { emulateMedia, sendKeys } from '@web/test-runner-commands';
import { GridPage, testModel } from './grid-page.ts';
import { paint } from './paint.ts';

let page: GridPage;

before(paint);
beforeEach(async () => {
  page = await GridPage.open();
});

describe('the grid is accessible', () => {
  for (const colorScheme of ['light', 'dark'] as const)
    it(`on ${colorScheme} paper, with changed cells, findings, a selection and an open input`, async () => {
      await emulateMedia({ colorScheme });
      page.model.was.set('B3', '7.1');
      page.model.findings.set('C3', 'doubt');
      page.grid.refresh();
      await page.select('B2:C4');
      await page.drawn();
      await expect(page.grid).to.be.accessible();
      await sendKeys({ type: '4' });
      await expect(page.grid).to.be.accessible();
      await emulateMedia({ colorScheme: 'light' });
    });

  it('and says how large it is and where each part stands', () => {
    const { scroller } = page;
    expect(scroller.getAttribute('aria-rowcount')).to.equal('100001');
    expect(scroller.getAttribute('aria-colcount')).to.equal('51');
    expect(scroller.getAttribute('aria-label')).to.equal('Two drivers');
    const cell = page.cell('C4')!;
    expect(cell.getAttribute('aria-colindex')).to.equal('4');
    expect(cell.parentElement!.getAttribute('aria-rowindex')).to.equal('5');
  });
});

describe('a cell says in words', () => {
  for (const [address, words] of [
    ['B2', '8Ω'],
    ['D3', 'Caution3.6 Ω is below 4 Ω.'],
    ['B4', 'Woofer, on axis: 86 dB at 1 kHz'],
    ['B5', 'W-165 A'],
    ['C5', 'The divisor is 0: give another one.'],
    ['D5', '12 L'],
    ['A1', 'Drivers1caution3good'],
  ] as const)
    it(`${words} in ${address}`, () => {
      expect(page.said(address)).to.equal(words);
    });

  it('what it was before, and what is wrong with it', async () => {
    page.model.was.set('B3', '7.1');
    page.model.was.set('D3', 'Good: all is well');
    page.model.findings.set('B2', 'doubt');
    page.model.findings.set('C2', 'error');
    page.grid.refresh();
    await page.drawn();
    expect(page.said('B3')).to.equal('7.1 →6.2Ω');
    expect(page.said('D3')).to.contain('was good');
    expect(page.said('B2')).to.contain('in doubt');
    expect(page.said('C2')).to.contain('error in the formula');
  });
});

describe('numbers', () => {
  const right = (address: string, part: string): number =>
    page.cell(address)!.querySelector(part)!.getBoundingClientRect().right;

  it('end at one line whatever their unit, and without one', () => {
    expect(right('B3', '.value')).to.equal(right('B2', '.value'));
    expect(right('B7', '.value')).to.equal(right('B2', '.value'));
  });

  it('and their units stay in the cell', async () => {
    await document.fonts.ready;
    for (const address of ['B2', 'B6']) {
      const range = document.createRange();
      range.selectNodeContents(page.cell(address)!.querySelector('.unit')!);
      expect(range.getBoundingClientRect().right).to.be.at.most(page.cell(address)!.getBoundingClientRect().right);
    }
  });
});

describe('words', () => {
  it('of a heading are whole, over the cells beside it, in front of its verdicts', async () => {
    page.model.cells.set('A1', { text: 'Drivers, invented: type yours over them', look: 'section' });
    page.grid.refresh();
    await page.drawn();
    const [words, tally] = ['.words', '.tally'].map((part) => page.cell('A1')!.querySelector<HTMLElement>(part)!);
    expect(words!.scrollWidth).to.be.at.most(words!.clientWidth);
    expect(words!.clientWidth).to.be.above(page.cell('A1')!.clientWidth);
    expect(tally!.getBoundingClientRect().left).to.be.at.least(words!.getBoundingClientRect().right);
  });

  it('of a note are whole, over the cells beside it', async () => {
    page.model.cells.set('A8', { text: 'Predicted from data sheets; measure before you cut wood.', look: 'note' });
    page.grid.refresh();
    await page.drawn();
    const words = page.cell('A8')!.querySelector<HTMLElement>('.words')!;
    expect(words.scrollWidth).to.be.at.most(words.clientWidth);
    expect(words.clientWidth).to.be.above(page.cell('A8')!.clientWidth);
  });

  it('of a verdict end at the border of the view, and stay in their lines when scrolled', async () => {
    const verdict = page.model.looks.get('D3')!;
    page.model.looks.set('D3', { ...verdict, reason: 'A reason of more than '.repeat(3) } as typeof verdict);
    page.grid.parentElement!.style.width = '700px';
    page.grid.refresh();
    await page.drawn();
    const right = (): number => page.cell('D3')!.querySelector('.reason')!.getBoundingClientRect().right;
    expect(right()).to.be.at.most(page.scroller.getBoundingClientRect().left + page.scroller.clientWidth);
    const width = (): number => page.cell('D3')!.getBoundingClientRect().width;
    const before = width();
    page.scroller.scrollLeft = 400;
    await page.drawn();
    expect(width()).to.equal(before);
  });

  it('and numbers: only inputs of numbers and choices are underlined', async () => {
    page.model.cells.set('C7', { text: 'sealed', choices: ['sealed', 'vented'] });
    page.grid.refresh();
    await page.drawn();
    const isUnderlined = (address: string): boolean =>
      getComputedStyle(page.cell(address)!.querySelector('.value')!).borderBottomStyle === 'dotted';
    expect(['A2', 'B2', 'B3', 'B5', 'B7', 'C7'].filter(isUnderlined)).to.deep.equal(['B2', 'B7', 'C7']);
  });
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

describe('rings', () => {
  it('lie over the active cell, the selection and what a formula refers to', async () => {
    await page.select('C4:B2');
    page.grid.references = [{ cells: 'B2:C3', colour: 'rgb(10, 100, 30)' }];
    await page.drawn();
    const box = (of: string | Element): number[] => {
      const element = typeof of === 'string' ? page.cell(of)! : of;
      const { left, top, right, bottom } = element.getBoundingClientRect();
      return [left, top, right, bottom].map(Math.round);
    };
    const around = (first: string, last: string): number[] => {
      const [left = 0, top = 0] = box(first);
      const [, , right = 0, bottom = 0] = box(last);
      return [left - 1, top - 1, right, bottom + 1];
    };
    const ring = (kind: string): number[] => box(page.root.querySelector(`.body > .${kind}`)!);
    expect(ring('active')).to.deep.equal(around('C4', 'C4'));
    expect(ring('selection')).to.deep.equal(around('B2', 'C4'));
    expect(ring('outline')).to.deep.equal(around('B2', 'C3'));
    page.grid.references = [];
    await page.drawn();
    expect(page.root.querySelector('.outline')).to.equal(null);
  });
});

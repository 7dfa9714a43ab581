import { expect } from '@open-wc/testing';
import { emulateMedia, sendKeys } from '@web/test-runner-commands';
import { GridPage } from './grid-page.ts';
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
    page.model.cells.set('A8', { text: 'Predicted from datasheets; measure before you cut wood.', look: 'note' });
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

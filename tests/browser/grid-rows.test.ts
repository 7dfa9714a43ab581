import { expect } from '@open-wc/testing';
import { fitRows } from '../../src/components/grid/fit-rows.ts';
import type { ShownCell } from '../../src/document/shown.ts';
import { GridPage, testModel, type TestModel } from './grid-page.ts';
import { paint } from './paint.ts';

const verdict = (reason: string): ShownCell => ({
  kind: 'verdict',
  status: 'caution',
  word: 'Caution',
  reason,
  note: '',
});
const short = verdict('3.6 Ω is below 4 Ω.');
const long = verdict('The load falls to 2.9 Ω at 411 Hz, where music is strong. '.repeat(4).trim());

let page: GridPage;
let model: TestModel;

/** Until rows have had time to become higher. */
const fitted = async (): Promise<void> => {
  await new Promise((resolve) => setTimeout(resolve, 400));
  await page.drawn();
};
const show = async (address: string, shown: ShownCell): Promise<void> => {
  model.cells.set(address, { text: '=CHECK()' });
  model.looks.set(address, shown);
  page.grid.refresh();
  await fitted();
};
const topOf = (row: number): number => page.cell(`A${String(row)}`)!.getBoundingClientRect().top;
const heightOf = (row: number): number => topOf(row + 1) - topOf(row);

/** Whether all that stands in a cell lies within it. */
function isWhole(address: string): boolean {
  const cell = page.cell(address)!;
  const range = document.createRange();
  range.selectNodeContents(cell.querySelector('.reason, .words')!);
  const box = cell.getBoundingClientRect();
  return [...range.getClientRects()].every(({ right, bottom }) => right <= box.right && bottom <= box.bottom);
}

before(paint);
beforeEach(async () => {
  model = testModel(200);
  page = await GridPage.open(model);
  page.grid.fit = fitRows;
  await fitted();
});

describe('a row', () => {
  it('is one line high where its words have room, two lines of a reason included', async () => {
    await show('D3', short);
    expect(heightOf(3)).to.equal(28);
    expect(isWhole('D3')).to.equal(true);
  });

  it('takes the lines that a long reason needs, and gives them back', async () => {
    await show('D3', long);
    expect(heightOf(3)).to.be.greaterThan(56);
    expect(isWhole('D3')).to.equal(true);
    expect(heightOf(4)).to.equal(28);
    await show('D3', short);
    expect(heightOf(3)).to.equal(28);
  });

  it('takes the lines that long words need', async () => {
    await show('B7', { kind: 'text', text: 'Second order: one of the two is wired the other way round' });
    expect(heightOf(7)).to.be.greaterThan(28);
    expect(isWhole('B7')).to.equal(true);
  });

  it('is higher for a column that has become narrower', async () => {
    await show('D3', long);
    const before = heightOf(3);
    const columns = model.columns.map((column, index) => (index === 3 ? { ...column, width: 150 } : column));
    page.grid.model = { ...model, columns };
    await fitted();
    expect(heightOf(3)).to.be.greaterThan(before);
    expect(isWhole('D3')).to.equal(true);
  });
});

it('what is read stays where it is when a row above it becomes higher', async () => {
  page.scroller.scrollTop = 28 * 50;
  await page.drawn();
  const before = topOf(60);
  await show('D3', long);
  expect(topOf(60)).to.equal(before);
});

it('no row changes while what is shown keeps changing', async () => {
  model.cells.set('D3', { text: '=CHECK()' });
  for (let step = 0; step < 8; step++) {
    model.looks.set('D3', step === 0 ? short : long);
    page.grid.refresh();
    await page.drawn();
    expect(heightOf(3)).to.equal(28);
  }
  await fitted();
  expect(heightOf(3)).to.be.greaterThan(56);
});

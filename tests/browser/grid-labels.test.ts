import { expect } from '@open-wc/testing';
import { keepLabels } from '../../src/components/grid/label-strip.ts';
import { GridPage, testModel, type TestModel } from './grid-page.ts';
import { paint } from './paint.ts';

let page: GridPage;
let model: TestModel;

const labelOf = (address: string): string | undefined => page.rowHead(address).dataset['label'];
const edgeOf = (address: string): number => {
  const { width } = getComputedStyle(page.rowHead(address), '::after');
  return page.rowHead(address).getBoundingClientRect().right + Number.parseFloat(width);
};
/** Selects a cell, which brings it into view, and waits until that is drawn. */
async function lookAt(row: number, column: number): Promise<void> {
  page.grid.selection = { anchor: { row, column }, focus: { row, column } };
  await page.drawn();
  await page.drawn();
}

before(paint);
for (const width of [390, 800]) {
  describe(`the labels of rows in a view of ${String(width)} pixels`, () => {
    beforeEach(async () => {
      model = testModel(200);
      page = await GridPage.open(model);
      page.grid.parentElement!.style.width = `${String(width)}px`;
      page.grid.fit = keepLabels;
      await page.drawn();
      await page.drawn();
    });

    it('stand in their column while that is seen', async () => {
      await lookAt(1, 1);
      expect(labelOf('B2')).to.equal(undefined);
    });

    it('stay beside the numbers of the rows when the sheet is scrolled sideways', async () => {
      await lookAt(1, 8);
      expect(page.scroller.scrollLeft).to.be.greaterThan(100);
      expect([labelOf('B1'), labelOf('B2'), labelOf('B8')]).to.eql(['Drivers', 'Nominal impedance', '']);
      expect(page.scroller.querySelector<HTMLElement>('.corner')!.dataset['label']).to.equal('Quantity');
      await lookAt(1, 0);
      expect(labelOf('B2')).to.equal(undefined);
    });

    it('leave the active cell free on the way back', async () => {
      await lookAt(1, 12);
      await lookAt(1, 5);
      expect(labelOf('F2')).to.equal('Nominal impedance');
      expect(page.cell('F2')!.getBoundingClientRect().left).to.be.at.least(edgeOf('F2') - 1);
    });

    it('are there where the cell beside them is come back to', async () => {
      await lookAt(1, 12);
      await lookAt(1, 1);
      const { left } = page.cell('A2')!.getBoundingClientRect();
      const isWhole = left >= page.rowHead('A2').getBoundingClientRect().right - 1;
      expect(isWhole || labelOf('B2') === 'Nominal impedance').to.equal(true);
    });

    it('do not hide notes that run on over the cells beside them', async () => {
      model.cells.set('A5', { text: 'A sentence that runs on', look: 'note' });
      await lookAt(1, 8);
      expect(labelOf('B5')).to.equal(undefined);
    });

    it('are none where the first column holds numbers', async () => {
      for (const [address] of model.cells) if (address.startsWith('A')) model.cells.delete(address);
      await lookAt(1, 8);
      expect(labelOf('B2')).to.equal(undefined);
    });
  });
}

it('gives way to a verdict that needs the whole view', async () => {
  page = await GridPage.open(testModel(200));
  page.grid.parentElement!.style.width = '390px';
  page.grid.fit = keepLabels;
  await lookAt(1, 8);
  expect(labelOf('B3')).to.equal('Lowest impedance');
  await lookAt(2, 3);
  expect(labelOf('B3')).to.equal(undefined);
});

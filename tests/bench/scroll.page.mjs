/** Scrolling a sheet of 100 000 rows by 50 columns, every cell filled, in a usual window. */
import { atRest, onPage, percent, quantile, tell, USUAL } from './frames.mjs';

const FRAME = 1000 / 60;
const GOAL = 16.7;

await onPage(async (page) => {
  await page.evaluate(showLargeSheet);
  const empty = await atRest(page);
  for (const [name, across, down, frames] of [
    ['slowly down', 0, 40, 240],
    ['a page in three frames, down', 0, 500, 240],
    ['hundreds of rows in a frame', 0, 9_000, 240],
    ['to the side', 60, 0, 60],
    ['aslant', 40, 300, 80],
  ]) {
    const { gaps, works } = await page.evaluate(scroll, across, down, frames);
    const late = gaps.filter((gap) => Math.round(gap / FRAME) > 1).length / gaps.length;
    console.log(`${name}: ${percent(late)} of ${gaps.length} frames late`);
    tell('  work in a frame, median', quantile(works, 0.5), { empty });
    tell('  work in a frame, 95 of 100', quantile(works, 0.95), { goal: GOAL, empty });
  }
}, USUAL);

/** Numbers, words and a verdict in each row, made up as they are asked for. */
function showLargeSheet() {
  const grid = document.querySelector('octavo-app').shadowRoot.querySelector('sheet-grid');
  const units = ['Hz', 'mm', 'dB', 'Ω'];
  grid.model = {
    rows: 100_000,
    columns: Array.from({ length: 50 }, () => ({ width: 100 })),
    cell: (row, column) => ({ text: column % 5 === 0 ? `Row ${row}` : `${row}.${column}` }),
    shown: (row, column) => {
      if (column % 5 === 0) return { kind: 'text', text: `Row ${row}` };
      if (column % 10 === 9)
        return {
          kind: 'verdict',
          status: 'caution',
          word: 'Caution',
          reason: `${row} Hz is below the limit.`,
          note: '',
        };
      return { kind: 'number', number: `${row}.${column}`, unit: units[column % 4] };
    },
  };
  return grid.updateComplete;
}

/** Scrolls by so much in every frame. */
async function scroll(across, down, frames) {
  const grid = document.querySelector('octavo-app').shadowRoot.querySelector('sheet-grid');
  const scroller = grid.shadowRoot.querySelector('.scroller');
  scroller.scrollTo(0, 0);
  await globalThis.bench.frame();
  await globalThis.bench.frame();
  const stop = globalThis.bench.record();
  for (let frame = 0; frame < frames; frame++) {
    scroller.scrollBy(across, down);
    await globalThis.bench.frame();
  }
  return stop();
}

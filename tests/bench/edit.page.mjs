/** From an edit in the two-driver check to the painted frame, with every plot open: in a usual window, and in one that is
 *  tall enough to have all of them in view. */
import { byHand } from './by-hand.mjs';
import { atRest, milliseconds, onPage, pause, percent, quantile, tell, TALL, USUAL } from './frames.mjs';

const EDITS = 120;
const GOAL = 16.7;

for (const view of [USUAL, TALL]) await onPage(measure, view);

async function measure(page) {
  const empty = await atRest(page);
  const edits = [];
  for (let count = 0; count < EDITS; count++) {
    const text = `${1700 + ((count * 37) % 260)} Hz`;
    edits.push(await page.evaluate(edit, text));
    // As a person types: what the page does when at rest has begun by the next edit.
    await pause(count % 4 === 3 ? 260 : 60);
  }
  const measured = edits.slice(20);
  const { open, seen } = await page.evaluate(plotsInView);
  const { width, height } = page.viewport();
  const cells = Math.max(...measured.map((each) => each.cells));
  console.log(
    `${measured.length} edits of the hand-over, ${width} by ${height} pixels, ${open} plots open, ${seen} in view, up to ${cells} cells follow`,
  );
  const totals = measured.map(({ total }) => total);
  tell('median', quantile(totals, 0.5), { empty });
  tell('95 of 100', quantile(totals, 0.95), { goal: GOAL, empty });
  const waits = measured.map(({ wait }) => wait);
  console.log(`  beside it the wait for the beat of the display: ${milliseconds(quantile(waits, 0.5))} in the median`);
  for (const part of ['inference', 'engine', 'messages', 'painting']) {
    const times = measured.map((each) => each[part]);
    const share = sum(times) / sum(totals);
    console.log(`  ${part}: ${percent(share)} of it, 95 of 100 within ${milliseconds(quantile(times, 0.95))}`);
  }
  const { took, changed } = await byHand(page, edit, ['1750 Hz', '1920 Hz'], 60);
  const least = quantile(took, 0.5);
  console.log(
    `the same ${changed} words and lines put there by hand: median ${milliseconds(least)}, 95 of 100 within ` +
      `${milliseconds(quantile(took, 0.95))}; an edit takes ${(quantile(totals, 0.5) / least).toFixed(1)} times that`,
  );
  console.log(`an empty frame: ${milliseconds(empty)}`);
}

function sum(values) {
  return values.reduce((total, value) => total + value, 0);
}

/** Writes into the cell of the hand-over as the grid does; waits for the frame in which all that follows is painted. */
async function edit(text) {
  const app = document.querySelector('octavo-app');
  const { workbook } = app.session;
  const grid = app.shadowRoot.querySelector('sheet-grid');
  const answered = new Promise((resolve) => {
    const heard = ({ detail }) => {
      if (detail.document || !detail.timing) return;
      workbook.removeEventListener('change', heard);
      resolve({
        at: performance.now(),
        timing: detail.timing,
        cells: detail.places.length,
        settling: globalThis.bench.settled(),
        drawing: globalThis.bench.frame(),
      });
    };
    workbook.addEventListener('change', heard);
  });
  const { focus } = app.selection;
  const started = performance.now();
  grid.dispatchEvent(new CustomEvent('cell-commit', { detail: { ...focus, text } }));
  const { at, timing, cells, settling, drawing } = await answered;
  const { began, painted } = await drawing;
  const handled = await settling;
  if (app.isUpdatePending) throw new Error('The frame came before what it should show.');
  const wait = Math.max(0, began - handled);
  return {
    total: painted - started - wait,
    wait,
    inference: timing.compile,
    engine: timing.evaluate,
    messages: at - started - timing.compile - timing.evaluate,
    painting: painted - at - wait,
    cells,
  };
}

/** How many plots are open, and how many of them are in view, if only in part: the dock beside the sheet is scrolled. */
function plotsInView() {
  const dock = document.querySelector('octavo-app').shadowRoot.querySelector('plot-dock').shadowRoot;
  const { bottom } = dock.querySelector('.plots').getBoundingClientRect();
  const plots = [...dock.querySelectorAll('curve-plot, window-plot')];
  return { open: plots.length, seen: plots.filter((each) => each.getBoundingClientRect().top < bottom).length };
}

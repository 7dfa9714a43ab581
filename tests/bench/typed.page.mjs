/** From Enter after a number is typed, as a person does it, to the painted frame: in the cell and in the formula line. The
 *  selection moves on with it, and the page has rested since the edit before. */
import { milliseconds, onPage, pause, quantile, tell, TALL, USUAL } from './frames.mjs';

const EDITS = 50;
const GOAL = 16.7;
const places = [
  { where: 'in the cell', text: (hertz) => `${hertz} Hz` },
  { where: 'in the formula line', text: (hertz) => `=${hertz}+0` },
];

for (const view of [USUAL, TALL]) await onPage((page) => measure(page, view), view);

async function measure(page, { width, height }) {
  await page.evaluate(listen);
  for (const { where, text } of places) {
    for (let count = 0; count < EDITS; count++) {
      await page.keyboard.type(text(1700 + ((count * 37) % 260)), { delay: 20 });
      await pause(80);
      await page.keyboard.press('Enter');
      await pause(150);
      await page.keyboard.press('ArrowUp');
      await pause(100);
    }
    const measured = (await page.evaluate(() => globalThis.bench.typed.splice(0))).slice(10);
    if (measured.length < EDITS - 10) throw new Error(`Only ${measured.length} edits were painted.`);
    const totals = measured.map(({ total }) => total);
    console.log(`${measured.length} numbers typed ${where} and left by Enter, ${width} by ${height} pixels`);
    tell('median', quantile(totals, 0.5), {});
    tell('95 of 100', quantile(totals, 0.95), { goal: GOAL });
    const answers = measured.map(({ answer }) => answer);
    console.log(`  the answer of the engine is there after ${milliseconds(quantile(answers, 0.5))} in the median`);
  }
}

/** Keeps for each Enter how long it took from the key to the answer of the engine, and to the frame that shows it. */
function listen() {
  const app = document.querySelector('octavo-app');
  const { bench } = globalThis;
  bench.typed = [];
  app.begin();
  const pressed = ({ key, timeStamp }) => {
    if (key !== 'Enter') return;
    const { workbook } = app.session;
    const heard = async ({ detail }) => {
      if (detail.document || !detail.timing) return;
      workbook.removeEventListener('change', heard);
      const answer = performance.now() - timeStamp;
      const [handled, { began, painted }] = await Promise.all([bench.settled(), bench.frame()]);
      bench.typed.push({ answer, total: painted - timeStamp - Math.max(0, began - handled) });
    };
    workbook.addEventListener('change', heard);
  };
  document.addEventListener('keydown', pressed, { capture: true });
}

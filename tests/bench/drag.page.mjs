/** The hand-over of the two-driver check dragged to and fro for five seconds, every plot following. */
import { atRest, onPage, percent, quantile, tell } from './frames.mjs';

const SECONDS = 5;
const FRAME = 1000 / 60;
const GOAL = 0.05;

await onPage(async (page) => {
  const empty = await atRest(page);
  const rule = await (await page.waitForSelector('>>> .rule[role=slider]', { visible: true })).boundingBox();
  const y = rule.y + rule.height / 2;
  const x = (part) => rule.x + rule.width * (0.3 + 0.3 * part);
  await page.mouse.move(x(0), y);
  await page.mouse.down();
  await page.evaluate(() => {
    globalThis.followed = 0;
    document.querySelector('octavo-app').session.workbook.addEventListener('change', () => globalThis.followed++);
    globalThis.stop = globalThis.bench.record();
  });
  const until = performance.now() + SECONDS * 1000;
  for (let step = 0; performance.now() < until; step++) await page.mouse.move(x((1 - Math.cos(step / 40)) / 2), y);
  const { gaps, works, followed } = await page.evaluate(() => ({
    ...globalThis.stop(),
    followed: globalThis.followed,
  }));
  await page.mouse.up();
  // A display at 60 Hz: a frame that took longer is seen on a later beat.
  const late = gaps.filter((gap) => Math.round(gap / FRAME) > 1).length / gaps.length;
  console.log(`${gaps.length} frames in ${SECONDS} s, the sheet followed ${followed} times`);
  console.log(`frames over 16.7 ms: ${percent(late)}, ${late <= GOAL ? 'within' : 'over'} ${percent(GOAL)}`);
  tell('work in a frame, median', quantile(works, 0.5), { empty });
  tell('work in a frame, 95 of 100', quantile(works, 0.95), { goal: 16.7, empty });
});

/** What the benches of the page share: a browser on the built application, and how frames are timed in it. */
import { launch } from 'puppeteer-core';
import { ensureBuilt, serveApplication } from '../../.config/application.mjs';
import { findBrowser } from '../../.config/packaged-browser.mjs';

export const USUAL = { width: 1440, height: 900 };
/** Tall enough for every plot of the two-driver check at once. */
export const TALL = { width: 1440, height: 1700 };

/** Opens the two-driver check and runs `measure` on it. */
export async function onPage(measure, view = TALL) {
  await ensureBuilt();
  const served = await serveApplication();
  const browser = await launch({ ...(await findBrowser()), headless: 'shell' });
  try {
    const [page] = await browser.pages();
    page.on('pageerror', (error) => console.error(String(error)));
    await page.setViewport(view);
    await page.goto(served.address, { waitUntil: 'load' });
    // Asked anew each frame: what happens inside components is no change of the page.
    await page.waitForSelector('>>> curve-plot', { visible: true });
    await page.waitForSelector('>>> .cell.number', { visible: true });
    await page.evaluate(inPage);
    await pause(2000);
    await measure(page);
  } finally {
    await browser.close();
    await served.close();
  }
}

export const pause = (milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds));

/** Puts the helpers of timing on the page. */
function inPage() {
  const channel = new MessageChannel();
  const told = [];
  channel.port1.addEventListener('message', () => {
    const now = performance.now();
    for (const each of told.splice(0)) each(now);
  });
  channel.port1.start();
  /** When the next task begins: after all that is under way now. */
  const settled = () =>
    new Promise((resolve) => {
      told.push(resolve);
      channel.port2.postMessage(0);
    });
  /** When the next frame begins, on the beat of the display, and when it has been laid out and painted; what the page
   *  itself does at the beginning of the frame counts as work in it. */
  const frame = () =>
    new Promise((resolve) =>
      requestAnimationFrame((began) => {
        told.push((painted) => resolve({ began, painted }));
        channel.port2.postMessage(0);
      }),
    );
  /** Counts frames until stopped: from one to the next, and what the page worked in each. */
  const record = () => {
    const gaps = [];
    const works = [];
    let last;
    let isOn = true;
    const tick = (at) => {
      if (!isOn) return;
      if (last !== undefined) gaps.push(at - last);
      last = at;
      const started = performance.now();
      told.push((now) => works.push(now - started));
      channel.port2.postMessage(0);
      requestAnimationFrame(tick);
    };
    requestAnimationFrame(tick);
    return () => {
      isOn = false;
      return { gaps, works };
    };
  };
  globalThis.bench = { settled, frame, record };
}

/** The work in frames of a page at rest. */
export async function atRest(page) {
  const works = await page.evaluate(async () => {
    const stop = globalThis.bench.record();
    for (let frame = 0; frame < 90; frame++) await globalThis.bench.frame();
    return stop().works;
  });
  return quantile(works, 0.5);
}

export function quantile(values, part) {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.round(part * (sorted.length - 1))] ?? Number.NaN;
}

export const milliseconds = (value) => `${value.toFixed(2)} ms`;
export const percent = (part) => `${(100 * part).toFixed(1)} %`;

/** A line with a time, what is aimed at, and the ratio to an empty frame. */
export function tell(name, value, { goal, empty }) {
  const aim = goal === undefined ? '' : `, ${value <= goal ? 'within' : 'over'} ${milliseconds(goal)}`;
  const ratio = empty === undefined ? '' : `, ${(value / empty).toFixed(1)} times an empty frame`;
  console.log(`${name}: ${milliseconds(value)}${aim}${ratio}`);
}

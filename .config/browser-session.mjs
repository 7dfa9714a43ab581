/** A browser page on the built application, for journeys and screenshots. */
import { launch } from 'puppeteer-core';
import { findBrowser } from './packaged-browser.mjs';

/**
 * Opens the application in a browser of its own, with empty storage. Give an address, or the application is built
 * when out of date and served for this session.
 *
 * @param {{ address?: string, width?: number, height?: number, scale?: number, dark?: boolean,
 *   newcomer?: boolean }} [options] - A newcomer is offered the tour; everyone else has been.
 * @returns {Promise<{ page: import('puppeteer-core').Page, browser: import('puppeteer-core').Browser, address: string,
 *   problems: string[], close: () => Promise<void> }>} `problems` collects errors the page reports: exceptions, console
 *   errors (which include refusals by the content security policy) and requests that failed.
 */
export async function openSession(options = {}) {
  const { width = 1440, height = 900, scale = 1, dark = false, newcomer = false } = options;
  const given = options.address ?? process.env['OCTAVO_ADDRESS'];
  const served = given ? undefined : await buildAndServe();
  const address = given ?? served.address;
  const browser = await launch({ ...(await findBrowser()), headless: 'shell' });
  const close = async () => {
    await browser.close();
    await served?.close();
  };
  try {
    const [page] = await browser.pages();
    const problems = [];
    page.on('pageerror', (error) => problems.push(String(error.stack ?? error)));
    page.on('console', (message) => message.type() === 'error' && problems.push(message.text()));
    page.on('requestfailed', (request) => problems.push(`${request.url()} ${request.failure()?.errorText}`));
    await page.setViewport({ width, height, deviceScaleFactor: scale });
    await page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: dark ? 'dark' : 'light' }]);
    if (!newcomer) await page.evaluateOnNewDocument(() => localStorage.setItem('octavo-tour', 'offered'));
    // A slower machine, to see whether what waits for the page waits long enough: OCTAVO_SLOWER=4.
    const slower = Number(process.env['OCTAVO_SLOWER'] ?? 1);
    if (slower > 1) await page.emulateCPUThrottling(slower);
    await page.goto(address, { waitUntil: 'load' });
    await page.waitForSelector('octavo-app');
    return { page, browser, address, problems, close };
  } catch (error) {
    await close();
    throw error;
  }
}

async function buildAndServe() {
  const { ensureBuilt, serveApplication } = await import('./application.mjs');
  await ensureBuilt();
  return serveApplication();
}

/** `npm run shots [-- folder]`: pictures of the opening page, light, dark and on a tablet, for the README. */
import './node-version.mjs';
import { mkdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { ensureInstalled, root } from './install.mjs';

ensureInstalled();
const { openSession } = await import('./browser-session.mjs');
const folder = resolve(process.argv[2] ?? join(root, '.github'));
mkdirSync(folder, { recursive: true });

const settings = {
  'two-driver-check': { width: 1440, height: 900, scale: 2 },
  'two-driver-check-dark': { width: 1440, height: 900, scale: 2, dark: true },
  'two-driver-check-tablet': { width: 820, height: 1180, scale: 2 },
};

for (const [name, setting] of Object.entries(settings)) {
  const { page, problems, close } = await openSession(setting);
  await page.waitForFunction(() => document.fonts.status === 'loaded');
  await page.waitForNetworkIdle({ idleTime: 500 });
  await page.waitForSelector('>>> value-ruler >>> .pass', { visible: true });
  const path = join(folder, `${name}.png`);
  await page.screenshot({ path });
  await close();
  console.log(path);
  for (const problem of problems) console.error(`The page reported: ${problem}`);
}

import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'puppeteer-core';

/** A folder of its own into which the page saves files; to be removed by who asked for it. */
export async function downloadFolder(page: Page): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'octavo-'));
  const client = await page.createCDPSession();
  await client.send('Browser.setDownloadBehavior', { behavior: 'allow', downloadPath: folder });
  return folder;
}

import { afterAll, beforeAll, expect, test } from 'vitest';
import { serveApplication } from '../../.config/application.mjs';
import type { Person } from './person.ts';
import { visit, type Session } from './visit.ts';

let served: Awaited<ReturnType<typeof serveApplication>>;
let person: Person;
let session: Session;
const requested = new Set<string>();

beforeAll(async () => {
  served = await serveApplication({ port: 4300 });
  ({ session, person } = await visit({ address: served.address }));
  session.page.on('request', (request) => requested.add(new URL(request.url()).origin));
  await session.page.reload({ waitUntil: 'networkidle0' });
});

afterAll(async () => {
  await session?.close();
  await served?.close();
});

/** What stands in the page, as text, through every shadow root; rows of the sheet only where they can be seen. */
function textOfPage(): Promise<string> {
  return session.page.evaluate(() => {
    const read = (node: Node): string => {
      if (node instanceof HTMLStyleElement) return '';
      if (node instanceof Element && node.matches('.row') && node.getBoundingClientRect().top > innerHeight) return '';
      const inner = node instanceof Element && node.shadowRoot ? read(node.shadowRoot) : '';
      return inner + (node.nodeType === Node.TEXT_NODE ? node.textContent : [...node.childNodes].map(read).join(' '));
    };
    return read(document.body.querySelector('octavo-app') ?? document)
      .replaceAll(/\s+/g, ' ')
      .trim();
  });
}

test('opens with nothing refused and nothing failing', async () => {
  expect(await textOfPage()).not.toBe('');
  expect(session.problems).toEqual([]);
});

test('asks nobody but its own server', () => {
  expect([...requested].filter((origin) => origin !== new URL(served.address).origin)).toEqual([]);
});

test('a count of verdicts is read with its word', async () => {
  expect(await person.seen('>>> ::-p-aria([name="Two drivers 2 caution"][role="button"])')).not.toBeNull();
});

test('opens again when the server is gone', async () => {
  const { page } = session;
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller) return;
    await new Promise((settle) => navigator.serviceWorker.addEventListener('controllerchange', settle, { once: true }));
  });
  await person.atRest();
  const before = await textOfPage();
  await served.close();
  await expect(fetch(served.address)).rejects.toThrow();

  await page.reload({ waitUntil: 'networkidle0' });
  await person.atRest();
  await expect.poll(textOfPage).toBe(before);
  expect(session.problems).toEqual([]);
});

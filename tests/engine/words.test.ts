import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { catalogue } from '../../functions/index.ts';
import { wordsByName } from '../../functions/words.ts';
import { wordsOf } from '../../src/engine/words-beside.ts';

const words = wordsByName(catalogue);
const file = (): Response => Response.json(Object.fromEntries(words));

beforeEach(() => {
  vi.useFakeTimers();
  vi.stubGlobal('address', 'https://sheets.example/words.json');
});

afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

test('what is said of functions is asked for until it is to be had, then no more', async () => {
  const refused = [Promise.reject(new TypeError('offline')), Promise.resolve(new Response('', { status: 503 }))];
  const fetched = vi.fn(() => refused.shift() ?? Promise.resolve(file()));
  vi.stubGlobal('fetch', fetched);
  const asked = wordsOf();
  let isThere = false;
  void asked.then(() => (isThere = true));
  await vi.advanceTimersByTimeAsync(9000);
  expect([fetched.mock.calls.length, isThere]).toEqual([2, false]);
  await vi.advanceTimersByTimeAsync(2000);
  expect(await asked).toEqual(words);
  expect(await wordsOf()).toBe(await asked);
  expect(fetched.mock.calls.flat()).toEqual(['1', '2', '3'].map(() => 'https://sheets.example/words.json'));
});

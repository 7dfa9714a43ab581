import { expect, test } from 'vitest';
import type { DriverEntry } from '../../src/document/shelf/entry.ts';
import { decodeEntry, encodeEntry } from '../../src/exchange/shelf-file.ts';
import { MemoryShelf } from '../../src/storage/shelf-storage.ts';

const codec = { encode: encodeEntry, decode: decodeEntry };
const entry = (id: string, fs: string): DriverEntry => ({
  id,
  name: id,
  rows: [{ label: 'Fs', text: fs }],
  source: '',
  tables: [],
  invented: false,
});

test('drivers are kept as they were typed, and removed one by one', async () => {
  const shelf = new MemoryShelf(codec);
  await shelf.put([entry('a', '38,0 Hz'), entry('b', '40 Hz')], []);
  expect(await shelf.list()).toEqual({ entries: [entry('a', '38,0 Hz'), entry('b', '40 Hz')], refused: [] });
  await shelf.remove('a');
  expect((await shelf.list()).entries).toEqual([entry('b', '40 Hz')]);
});

test('a driver that another tab changed is not written over, and is given back', async () => {
  const shelf = new MemoryShelf(codec);
  await shelf.put([entry('a', '38 Hz')], []);
  const read = (await shelf.list()).entries;
  expect(await shelf.put([entry('a', '39 Hz')], read)).toEqual([]);
  expect(await shelf.put([entry('a', '45 Hz'), entry('c', '50 Hz')], read)).toEqual([entry('a', '45 Hz')]);
  expect((await shelf.list()).entries).toEqual([entry('a', '39 Hz'), entry('c', '50 Hz')]);
});

test('what cannot be read is told, and the others are there', async () => {
  let isDamaging = false;
  const shelf = new MemoryShelf({ ...codec, encode: (each) => (isDamaging ? { name: 3 } : encodeEntry(each)) });
  await shelf.put([entry('a', '38 Hz')], []);
  isDamaging = true;
  await shelf.put([entry('b', '40 Hz')], []);
  const { entries, refused } = await shelf.list();
  expect(entries).toEqual([entry('a', '38 Hz')]);
  expect(refused.join()).toContain('name: a text is wanted');
});

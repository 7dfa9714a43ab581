import { expect } from '@open-wc/testing';
import type { DriverEntry } from '../../src/document/shelf/entry.ts';
import { decodeEntry, encodeEntry } from '../../src/exchange/shelf-file.ts';
import { ShelfStorage } from '../../src/storage/shelf-storage.ts';

const codec = { encode: encodeEntry, decode: decodeEntry };
const entry = (id: string, fs: string): DriverEntry => ({
  id,
  name: id,
  rows: [{ label: 'Fs', text: fs }],
  source: '',
  tables: [],
  invented: false,
});

let count = 0;
/** A shelf of its own, as one tab and another have it. */
function tabs(): (writing?: typeof codec.encode) => ShelfStorage {
  const database = `octavo-shelf-test-${Date.now()}-${count++}`;
  return (encode = encodeEntry) => new ShelfStorage({ ...codec, encode }, database);
}

describe('drivers in the browser', () => {
  it('are kept as they were typed, and removed one by one', async () => {
    const open = tabs();
    await open().put([entry('a', '38,0 Hz'), entry('b', '40 Hz')], []);
    expect(await open().list()).to.deep.equal({ entries: [entry('a', '38,0 Hz'), entry('b', '40 Hz')], refused: [] });
    await open().remove('a');
    expect((await open().list()).entries).to.deep.equal([entry('b', '40 Hz')]);
  });

  it('that another tab changed are not written over, and given back', async () => {
    const open = tabs();
    await open().put([entry('a', '38 Hz')], []);
    const read = (await open().list()).entries;
    expect(await open().put([entry('a', '39 Hz')], read)).to.deep.equal([]);
    expect(await open().put([entry('a', '45 Hz'), entry('c', '50 Hz')], read)).to.deep.equal([entry('a', '45 Hz')]);
    expect((await open().list()).entries).to.deep.equal([entry('a', '39 Hz'), entry('c', '50 Hz')]);
  });

  it('that cannot be read are told, and the others are there', async () => {
    const open = tabs();
    await open().put([entry('a', '38 Hz')], []);
    await open(() => ({ name: 3 })).put([entry('b', '40 Hz')], []);
    const { entries, refused } = await open().list();
    expect(entries).to.deep.equal([entry('a', '38 Hz')]);
    expect(refused.join()).to.contain('name: a text is wanted');
  });
});

import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { typedDriver } from '../references/demo-drivers.ts';
import { pairs } from '../references/pairs.ts';
import { octaves, type Person, twoPercent } from './person.ts';
import { leave, visit, type Session } from './visit.ts';

let session: Session;
let person: Person;

beforeAll(async () => {
  ({ session, person } = await visit());
});

afterAll(() => leave(session));

const woofer = (id: string): Promise<void> => person.type('B4', ...typedDriver(id));
const tweeter = (id: string): Promise<void> => person.type('C4', ...typedDriver(id));

describe.each(pairs)('%s with %s', (low, high, width, word) => {
  test(`share ${width} octaves: ${word}`, async () => {
    await woofer(low);
    await tweeter(high);
    await person.expectNumber('D43', width, octaves);
    await person.expectText('E41', new RegExp(`^${word}`));
    expect(await person.shownIn('E41')).toMatch(/resonance|travel/i);
    expect(await person.shownIn('E41')).toMatch(/narrowing|break-up|spacing/i);
  });
});

describe('another target', () => {
  test('at 109 dB the travel of the tweeter binds, and the reason says so', async () => {
    await woofer('W-165 A');
    await tweeter('T-25 A');
    await person.expectNumber('C42', 1700, twoPercent(1700));
    await person.expectText('E41', /resonance/i);
    await person.type('D22', '109');
    await person.expectNumber('C42', 1753, twoPercent(1753));
    await person.expectNumber('D43', 0.13, octaves);
    await person.expectText('E41', /travel/i);
    await tweeter('T-28 B');
    await person.expectNumber('C42', 1208, twoPercent(1208));
  });

  test('at 103 dB and second order the limit by travel is √2 times that of fourth order', async () => {
    await person.type('D22', '103 dB', 'LR2');
    await person.expectNumber('C34', 1209, twoPercent(1209));
    await tweeter('T-25 A');
    await person.expectNumber('C34', 1755, twoPercent(1755));
  });

  test('at 30° off axis the spacing binds instead of the narrowing', async () => {
    await person.type('D22', '100 dB', 'LR4');
    await person.type('D25', '30');
    await person.expectNumber('C36', 2719, twoPercent(2719));
    await person.expectNumber('C37', 2600, twoPercent(2600));
    await person.expectNumber('C38', 2469, twoPercent(2469));
    await person.expectNumber('D42', 2469, twoPercent(2469));
    await person.expectNumber('D43', 0.54, octaves);
    await person.expectText('E41', /^Comfortable.*spacing/i);
  });
});

import { afterAll, beforeAll, describe, test } from 'vitest';
import { decibels, lastDigit, type Person, twoPercent } from './person.ts';
import { leave, visit, type Session } from './visit.ts';

let session: Session;
let person: Person;

beforeAll(async () => {
  ({ session, person } = await visit());
});

afterAll(() => leave(session));

const near = (cell: string, expected: number): Promise<void> =>
  person.expectNumber(cell, expected, twoPercent(expected));

describe('a closed box and the coil', () => {
  test('without a coil 12.1 L give a Qtc of 0.707', async () => {
    await person.openTemplate('Closed-box bench');
    await near('C23', 12.1);
    await person.type('B24', '12,1');
    await near('C29', 69.6);
    await near('C31', 69.6);
    await near('C33', 40.2);
  });

  test('0.6 Ω in series raises the Qtc and asks for a larger box', async () => {
    await person.type('B21', '0.6');
    await person.expectNumber('C27', 0.774, lastDigit);
    await person.expectNumber('C34', 0.12, decibels);
    await near('C31', 64.1);
    await person.expectNumber('C35', 0.86, decibels);
    await near('C23', 15.85);
    await person.type('B24', '15.85 L');
    await near('C31', 63.6);
  });

  test('fill makes the box act larger', async () => {
    await person.type('B21', '0 ohm', '1.15');
    await person.type('B24', '12.1');
    await person.expectNumber('C27', 0.674, lastDigit);
    await near('C29', 66.3);
    await near('C31', 69.7);
  });

  test('9 L', async () => {
    await person.type('B22', '1');
    await person.type('B24', '9 L');
    await person.expectNumber('C27', 0.789, lastDigit);
    await near('C31', 70.4);
    await near('C33', 43.4);
  });

  test('the cone ends long before the coil is hot', async () => {
    await person.type('B24', '12.1 L');
    await person.expectNumber('C39', 20, decibels);
    await near('C42', 98);
    await near('C43', 10.9);
    await person.expectText('D43', /cone limit/);
  });
});

describe('a port that will not fit', () => {
  test('the tuning without ripple', async () => {
    await person.openTemplate('Vented box with a port that fits');
    await near('C23', 22.3);
    await near('C24', 39.6);
    await near('C29', 41.2);
    await near('C31', 30.6);
    await near('C51', 19.4);
    await near('C52', 58);
  });

  // 102.0 dB is the level of 19.4 W on a flat response. At 58 Hz the response of this box is 0.3 dB down, and the sheet
  // gives what arrives, 101.7 dB.
  test.fails('102.0 dB at the limit of the cone', async () => {
    await person.expectNumber('C53', 102, decibels);
  });

  test.each([
    [50, 131, 43, 26.9],
    [60, 197, 30, 18.7],
    [68, 260, 23.3, 14.5],
    [75, 322, 19.2, 11.9],
  ] as const)(
    '%d mm wants %d mm of length; %d m/s, and %d at the power of the cone',
    async (wide, long, fast, clean) => {
      await person.type('B35', String(wide));
      await near('C40', long);
      await near('C50', fast);
      await near('C54', clean);
      await person.expectText('D54', clean <= 17 ? /^Good/ : /^(?!Good)./);
    },
  );

  test('68 mm fails by 78 mm, and says what to do', async () => {
    await person.type('B35', '68 mm');
    await person.expectNumber('C41', -78, twoPercent(328));
    await person.expectText('D41', /elbow/);
  });

  test('16 L at 45 Hz want a longer port', async () => {
    await person.type('B25', '16 L', '45');
    await person.expectNumber('C32', 0.9, decibels);
    await near('C29', 47.4);
    await near('C40', 285);
    await person.type('B25', '22.3 L', '39.6 Hz');
  });

  test('the high-pass keeps the cone below its limit no longer than it can', async () => {
    await near('C61', 27.7);
    await near('C62', 6.9);
  });

  test('0.6 Ω in series lifts the bass and asks for another box', async () => {
    await person.type('B22', '0.6 ohm');
    await person.expectNumber('C32', 0.65, decibels);
    await near('C23', 32.4);
    await near('C24', 36.6);
  });
});

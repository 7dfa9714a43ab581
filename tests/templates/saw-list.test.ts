import { describe, expect, test } from 'vitest';
import { openTemplate } from './open-template.ts';

describe('saw list', () => {
  const near = (actual: number, expected: number, share = 0.02): void =>
    expect(Math.abs(actual / expected - 1), `${String(actual)}, not ${String(expected)}`).toBeLessThanOrEqual(share);

  test.each([
    ['15 mm', 15.68, 14.53, 63.6, 0.73],
    ['18 mm', 14.55, 13.4, 63.8, 0.75],
  ] as const)('in %s: %d L bare, %d L net, F3 %d Hz, Qtc %d', async (thickness, gross, net, fall, qtc) => {
    const opened = await openTemplate('saw-list');
    await opened.write({ Thickness: thickness, SeriesOhms: '0.6 ohm' });
    near(opened.number('GrossVolume') * 1000, gross);
    near(opened.number('NetVolume') * 1000, net);
    near(opened.number('Fall3'), fall);
    expect(opened.number('Qtc')).toBeCloseTo(qtc, 2);
  });

  test('1.15 L are displaced', async () => {
    near((await openTemplate('saw-list')).number('Displaced') * 1000, 1.15);
  });

  test('the side of 18 mm rings at 353 Hz, braced off the middle at 659 Hz', async () => {
    const opened = await openTemplate('saw-list');
    await opened.write({ Thickness: '18 mm', BraceAt: '198 mm' });
    near(opened.number('SideMode'), 353);
    near(opened.number('BracedMode'), 659);
  });

  test('thicker panels miss the litres; the depth that it names brings them back', async () => {
    const opened = await openTemplate('saw-list');
    await opened.write({ Thickness: '18 mm' });
    expect(opened.text('D33')).toMatch(/^Caution.*depth/);
    await opened.write({ CabinetDepth: `${String(opened.number('DepthWanted') * 1000)} mm` });
    // A deeper cabinet has a deeper brace, a few per mille of the litres.
    near(opened.number('NetVolume'), opened.number('Volume'), 0.005);
    expect(opened.text('D33')).toMatch(/^Good/);
  });

  test('the panels on the sheets are all the wood there is', async () => {
    const opened = await openTemplate('saw-list');
    // Outer shell of 360 × 220 × 280 less its inside, and a brace that is half open: 4.84 + 0.36 litres of board each.
    const board = 36 * 22 * 28 - 33 * 19 * 25 + 0.5 * 19 * 25 * 1.5;
    near(opened.number('SheetUsed'), (2 * board) / (250 * 125 * 1.5), 0.001);
  });

  test.each(['front covers', 'sides cover', 'mitred'])(
    'the section shows the panels as the cut list cuts them: %s',
    async (joint) => {
      const opened = await openTemplate('saw-list');
      await opened.write({ Joint: joint, PortLength: '150 mm' });
      const row = (part: RegExp): number =>
        [50, 51, 52, 53].find((each) => part.test(opened.text(`A${String(each)}`))) ?? 0;
      // The cut list gives the longer side first: panels of 360 mm of height.
      near(opened.number('D100'), opened.number(`C${String(row(/front and back$/))}`), 1e-9);
      near(opened.number('E102'), opened.number(`C${String(row(/side$/))}`), 1e-9);
      // Front, sides and back fill the outside, whichever covers which.
      const [front, side, thick] = ['D100', 'E102', 'Thickness'].map((cell) => opened.number(cell)) as [
        number,
        number,
        number,
      ];
      near(front + (joint === 'front covers' ? 0 : 2 * thick), opened.number('Width'), 1e-9);
      near(side + (joint === 'front covers' ? 2 * thick : 0), opened.number('CabinetDepth'), 1e-9);
      expect([opened.text('D105'), opened.text('E105')]).toEqual(['68 mm', '150 mm']);
    },
  );

  test.each([
    [{ Height: '1200 mm' }, 'D93', /^Caution.*Tip risk/],
    [{ FittedMass: '30 kg' }, 'D92', /^Caution.*Two people/],
    [{ CabinetDepth: '120 mm' }, 'D42', /^Caution|^Fail/],
    [{ PortLength: '260 mm' }, 'D47', /^Fail.*elbow/],
  ] as const)('%o is pointed out', async (set, cell, words) => {
    const opened = await openTemplate('saw-list');
    await opened.write(set);
    expect(opened.text(cell)).toMatch(words);
  });
});

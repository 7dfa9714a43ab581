import { describe, expect, test } from 'vitest';
import { openTemplate } from './open-template.ts';

describe('front panel and padding', () => {
  test.each([
    ['19 mm', 2300],
    ['6 mm', 7200],
  ] as const)('a radius of %s helps above %d Hz', async (radius, hertz) => {
    const opened = await openTemplate('front-panel');
    await opened.write({ Radius: radius });
    expect(Math.abs(opened.number('RadiusFrequency') - hertz)).toBeLessThanOrEqual(hertz * 0.02);
  });

  test('equal distances to three edges are pointed out, with the frequency', async () => {
    const opened = await openTemplate('front-panel');
    const verdict = (): string => opened.text('E40');
    expect(verdict()).toMatch(/^(?!Edges add up)/);
    await opened.write({ TweeterLeft: '110 mm', TweeterUp: '250 mm' });
    expect(verdict()).toMatch(/^Edges add up.*three edges.*Hz/i);
  });

  test('6 dB of make-up near the wall is called boomy, 4.5 dB is not, and far from it neither is', async () => {
    const opened = await openTemplate('front-panel');
    const verdict = async (wall: string, makeUp: string): Promise<string> => {
      await opened.write({ WallDistance: wall, MakeUp: makeUp });
      return opened.text('E48');
    };
    expect(await verdict('0.2 m', '6 dB')).toMatch(/^Caution.*boomy/);
    expect(await verdict('0.2 m', '4.5 dB')).toMatch(/^Good/);
    expect(await verdict('0.5 m', '6 dB')).toMatch(/^Good/);
  });

  test('flanges that overlap or reach over the edge fail', async () => {
    const opened = await openTemplate('front-panel');
    await opened.write({ TweeterUp: '230 mm' });
    expect(opened.text('E34')).toMatch(/^Fail.*overlap/);
    await opened.write({ TweeterUp: '340 mm' });
    expect(opened.text('E32')).toMatch(/^Fail.*over the edge/);
  });

  test('the shelf fills the step: what is left is less than the step itself', async () => {
    const opened = await openTemplate('front-panel');
    await opened.write({ MakeUp: '6 dB', PartValues: 'E24' });
    expect(opened.number('D59')).toBeLessThan(2);
  });
});

import { expect, test } from 'vitest';
import { askedBy } from '../../src/app/asked.ts';
import { openTemplate } from '../templates/open-template.ts';

test('what a driver cannot do with a number is said where that is typed, once, with its remedy', async () => {
  const { workbook, sheet, write } = await openTemplate('two-driver-check');
  const asked = async (text: string): Promise<string[]> => {
    await write({ C14: text });
    const fed = await workbook.dependents({ sheet: sheet().id, cell: 'C14' });
    return fed.flatMap((place) => askedBy(workbook, sheet(), place));
  };
  expect(await asked('90 dB')).toEqual([]);
  expect(await asked('91 dB at 1 W')).toEqual([
    expect.stringMatching(
      /^C20, Driver, completed, Tweeter: .*“Level at 1 m” needs a number, but holds “91 dB at 1 W”: type/,
    ),
  ]);
  expect((await asked('109 dB'))[0]).toMatch(/^C20, .*Level is given as 109\.0 dB/);
});

import { expect, test } from 'vitest';
import { windowData } from '../../src/app/plots/plot-source.ts';
import { windowCsv } from '../../src/app/plots/window-csv.ts';
import { openTemplate } from '../templates/open-template.ts';

test('a shared window as a table has each rule with its side, in hertz, and the band itself', async () => {
  const { workbook, sheet } = await openTemplate('two-driver-check');
  const plot = sheet().plots.find(({ kind }) => kind === 'window');
  const data = plot && windowData(workbook, sheet(), plot);
  const rows = data
    ? windowCsv(data)
        .trimEnd()
        .split('\r\n')
        .map((line) => line.split(','))
    : [];
  expect(rows.slice(0, 2)).toEqual([
    ['Rule', 'Side', 'Limit', 'Stretched'],
    ['', '', 'Hz', 'Hz'],
  ]);
  expect(rows.slice(2).map(([rule, side]) => `${rule} ${side}`)).toEqual([
    'travel from',
    'resonance from',
    'break-up up to',
    'spacing up to',
    'narrowing up to',
    'Shared window from',
    'Shared window up to',
  ]);
  // Twice the resonance of the tweeter, and stretched one and a half times.
  expect(rows[3]).toEqual(['resonance', 'from', '1700', '1275']);
  expect(rows[7]).toEqual(['Shared window', 'from', '1700', '1275']);
  // Half the break-up of the woofer.
  expect(rows[4]?.slice(0, 3)).toEqual(['break-up', 'up to', '2600']);
  expect(Number(rows[8]?.[2])).toBeCloseTo(Number(rows[6]?.[2]), 9);
});

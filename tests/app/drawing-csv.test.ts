import { expect, test } from 'vitest';
import { drawingCsv } from '../../src/app/plots/drawing-csv.ts';
import { drawingData } from '../../src/app/plots/drawing-source.ts';
import { openTemplate } from '../templates/open-template.ts';

/** The table of a plot of a starter sheet, line by line. */
async function linesOf(id: string, plot: string, set: Readonly<Record<string, string>> = {}): Promise<string[]> {
  const opened = await openTemplate(id);
  await opened.write(set);
  const found = opened.sheet().plots.find((each) => each.id === plot);
  const data = found && drawingData(opened.workbook, opened.sheet(), found);
  return data ? drawingCsv(data).trimEnd().split('\r\n') : [];
}

test('bars as a table have a column for each part, in the unit of the plot', async () => {
  const lines = await linesOf('shopping-basket', 'cost');
  expect(lines.slice(0, 3)).toEqual([
    'Name,Drivers,Crossover,Wood,Used up,Shipping',
    ',¤,¤,¤,¤,¤',
    'As chosen,192,74,70,41,15',
  ]);
});

test('lines as a table have a row for each point', async () => {
  const lines = await linesOf('loud-enough', 'distance');
  expect(lines.slice(0, 2)).toEqual(['Series,Name,Across,Up', ',,m,dB']);
  expect(lines.filter((line) => line.startsWith('In the room,'))).not.toHaveLength(0);
});

test('shapes as a table have their places and sizes in the unit of the drawing', async () => {
  const lines = await linesOf('front-panel', 'panel', { TweeterLeft: '90 mm' });
  expect(lines.slice(0, 2)).toEqual(['Name,Form,From left,From below,Width,Height,Ground', ',,mm,mm,mm,mm,']);
  expect(lines).toContain('Tweeter,"circle, by its middle",90,246,104,104,1');
});

test('a plot has the baseline behind it', async () => {
  const opened = await openTemplate('front-panel');
  await opened.workbook.pin(new Date(0));
  await opened.write({ TweeterLeft: '90 mm' });
  const [plot] = opened.sheet().plots;
  const data = plot && drawingData(opened.workbook, opened.sheet(), plot);
  const places = data?.form === 'shapes' ? [data.grounds, data.ghost] : [];
  const left = places.map((grounds) => grounds?.[0]?.find(({ name }) => name === 'Tweeter')?.left);
  expect(left).toEqual([0.09, 0.095]);
});

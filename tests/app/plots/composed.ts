import { checkPlot, type Checked } from '../../../src/app/plots/form/check.ts';
import { emptyDraft, emptySeries } from '../../../src/app/plots/form/draft.ts';
import { SheetCells } from '../../../src/app/plots/form/sheet-cells.ts';
import type { PlotDraft, SeriesDraft } from '../../../src/components/plot-form/data.ts';
import { newSheet } from '../../../src/document/create.ts';
import type { Cell, Sheet } from '../../../src/document/types.ts';
import { Workbook } from '../../../src/document/workbook.ts';
import { createEngine } from '../../../src/engine/direct.ts';

const driver = 'DRIVER.OF("38 Hz", 4.8, 0.42, "28.52 L", "5.8 ohm", "132 cm2", "5.5 mm", "0.55 mH", "70 W")';

const texts: Readonly<Record<string, string>> = {
  A1: 'Own box',
  A2: 'Response, small box',
  B2: `=BOX.RESPONSE(CLOSED.BOX(${driver}, "12 L"))`,
  A3: 'Response, large box',
  B3: `=BOX.RESPONSE(CLOSED.BOX(${driver}, "30 L"))`,
  A4: 'Lowest level',
  B4: '80 dB',
  A5: 'Hand-over',
  B5: '2 kHz',
  A7: 'Distance',
  B7: 'Level',
  C7: 'Floor',
  A8: '1 m',
  B8: '90 dB',
  C8: '60 dB',
  A9: '2 m',
  B9: '84 dB',
  C9: '60 dB',
  A10: '4 m',
  B10: '78 dB',
  C10: '60 dB',
  A12: 'Part',
  B12: 'Price',
  A13: 'Woofer',
  B13: '62 ¤',
  A14: 'Tweeter',
  B14: '34 ¤',
  A16: 'Loop',
  B16: '=B17',
  B17: '=B16',
  A20: 'Sheet width',
  B20: '600 mm',
  A21: 'Sheet height',
  B21: '400 mm',
  A23: 'Woofer hole',
  B23: '100 mm',
  C23: '100 mm',
  D23: '150 mm',
};

const looks: Readonly<Record<string, Cell['look']>> = { A1: 'section' };

const sheet: Sheet = {
  ...newSheet('Own'),
  id: 's',
  names: new Map([
    ['Response', 'B2'],
    ['Levels', 'B8:B10'],
  ]),
  cells: new Map(
    Object.entries(texts).map(([cell, text]) => {
      const look = looks[cell];
      return [cell, { text, ...(look && { look }) }];
    }),
  ),
};

/** A sheet that someone has composed: two curves, numbers over distance, prices, a panel, and a loop. */
export async function ownSheet(
  change: Partial<Sheet> = {},
): Promise<{ readonly workbook: Workbook; readonly sheet: Sheet; readonly cells: SheetCells }> {
  const own = { ...sheet, ...change };
  const other = { ...newSheet('Other'), id: 'o' };
  const workbook = new Workbook(createEngine(), { id: 'd', title: 'Own', system: 'metric', sheets: [own, other] });
  await workbook.ready;
  return { workbook, sheet: own, cells: new SheetCells(workbook, own) };
}

/** A draft of the parts that matter to a test. */
export const draftWith = ({
  series = [],
  ...part
}: Omit<Partial<PlotDraft>, 'series'> & { readonly series?: readonly Partial<SeriesDraft>[] }): PlotDraft => ({
  ...emptyDraft,
  id: 'plot',
  title: 'Plot',
  ...part,
  series: series.map((each) => ({ ...emptySeries, ...each })),
});

/** What is said at a field. */
export const saidAt = ({ remarks }: Checked, at: string): string => remarks.get(at)?.text ?? '';

export const wrongIn = ({ remarks }: Checked): string[] =>
  [...remarks].filter(([, { isWrong }]) => isWrong).map(([at]) => at);

export const check = (cells: SheetCells, draft: Parameters<typeof draftWith>[0]): Checked =>
  checkPlot(cells, draftWith(draft), 'metric');

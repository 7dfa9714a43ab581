import { html, type TemplateResult } from 'lit';
import { icon } from '../../components/icons.ts';
import '../../components/menu/pop-menu.ts';
import type { MenuItem, PopMenu } from '../../components/menu/pop-menu.ts';
import type { CellPlot } from '../../components/drawing/cell-plot.ts';
import type { CurvePlot } from '../../components/plot/curve-plot.ts';
import type { WindowPlot } from '../../components/plot/window-plot.ts';
import type { Plot, Sheet } from '../../document/types.ts';
import type { Workbook } from '../../document/workbook.ts';
import type { PlotAct } from './plot-acts.ts';

const itemsOf = (first: boolean, last: boolean, drawn: boolean): readonly MenuItem[] => [
  { name: 'change', label: 'Change this plot…' },
  { name: 'up', label: 'Move up', disabled: first },
  { name: 'down', label: 'Move down', disabled: last },
  { name: 'delete', label: 'Delete' },
  { name: 'svg', label: 'Save as a drawing (SVG)', separated: true, disabled: !drawn },
  { name: 'png', label: 'Save as a picture (PNG)', disabled: !drawn },
  { name: 'csv', label: 'Save its numbers as a table (CSV)', disabled: !drawn },
];

/** What can be done with a plot; stands in its heading. One that draws nothing cannot be saved. */
export const plotMenu = (workbook: Workbook, sheet: Sheet, plot: Plot, isDrawn: boolean): TemplateResult =>
  html`<pop-menu
    slot="verdict"
    bare
    label=${`More for ${plot.title}`}
    .items=${itemsOf(sheet.plots[0] === plot, sheet.plots.at(-1) === plot, isDrawn)}
    @choose=${(event: CustomEvent<{ name: string }>) => {
      const { name } = event.detail;
      const menu = event.currentTarget as PopMenu;
      if (!['svg', 'png', 'csv'].includes(name)) {
        askOfPlot(menu, { name, plot: plot.id, menu });
        return;
      }
      const drawn = menu.closest<CurvePlot | WindowPlot | CellPlot>('curve-plot, window-plot, cell-plot');
      void save(name, drawn?.svgText() ?? '', { workbook, sheet, plot });
    }}
    >${icon('more')}</pop-menu
  >`;

/** Lets the page hear what is asked of a plot. */
export function askOfPlot(where: EventTarget, detail: PlotAct): void {
  where.dispatchEvent(new CustomEvent('plot-act', { detail, bubbles: true, composed: true }));
}

async function save(
  name: string,
  svg: string,
  { workbook, sheet, plot }: { readonly workbook: Workbook; readonly sheet: Sheet; readonly plot: Plot },
): Promise<void> {
  if (name === 'csv') {
    const { plotToCsv } = await import('./csv-files.ts');
    plotToCsv(workbook, sheet, plot);
    return;
  }
  const { savePicture } = await import('./picture-files.ts');
  if (svg !== '') await savePicture(svg, plot.title, name === 'png' ? 'png' : 'svg');
}

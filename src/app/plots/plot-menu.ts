import { html, type TemplateResult } from 'lit';
import { icon } from '../../components/icons.ts';
import '../../components/menu/pop-menu.ts';
import type { MenuItem } from '../../components/menu/pop-menu.ts';
import type { CellPlot } from '../../components/drawing/cell-plot.ts';
import type { CurvePlot } from '../../components/plot/curve-plot.ts';
import type { WindowPlot } from '../../components/plot/window-plot.ts';
import type { Plot, Sheet } from '../../document/types.ts';
import type { Workbook } from '../../document/workbook.ts';

const items: readonly MenuItem[] = [
  { name: 'svg', label: 'Save as a drawing (SVG)' },
  { name: 'png', label: 'Save as a picture (PNG)' },
  { name: 'csv', label: 'Save its numbers as a table (CSV)' },
];

/** What can be taken away from a plot; stands in its heading. */
export const plotMenu = (workbook: Workbook, sheet: Sheet, plot: Plot): TemplateResult =>
  html`<pop-menu
    slot="verdict"
    bare
    label=${`Save ${plot.title}`}
    .items=${items}
    @choose=${(event: CustomEvent<{ name: string }>) => {
      const drawn = (event.currentTarget as HTMLElement).closest<CurvePlot | WindowPlot | CellPlot>(
        'curve-plot, window-plot, cell-plot',
      );
      void save(event.detail.name, drawn?.svgText() ?? '', { workbook, sheet, plot });
    }}
    >${icon('more')}</pop-menu
  >`;

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

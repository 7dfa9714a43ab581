import type { AppHost } from '../app-host.ts';
import type { PopMenu } from '../../components/menu/pop-menu.ts';

/** What is asked of a plot of the sheet, or of a sheet without one. */
export interface PlotAct {
  readonly name: string;
  /** The plot's id; empty for a new one. */
  readonly plot: string;
  /** Where it was asked. */
  readonly menu?: PopMenu;
}

/** The id of the plot whose form opens next; empty for a new one. */
let asked = '';
export const plotAsked = (): string => asked;

export function openPlotForm(app: AppHost, plot = ''): void {
  asked = plot;
  app.open('plot');
}

/** Does what was chosen from the menu of a plot, or asked for in its dock. */
export async function actOnPlot(app: AppHost, { name, plot: id, menu }: PlotAct): Promise<void> {
  const { sheet } = app;
  const at = sheet?.plots.findIndex((each) => each.id === id) ?? -1;
  const plot = sheet?.plots[at];
  if (name === 'add' || name === 'change') openPlotForm(app, id);
  else if (!sheet || !plot) return;
  else if (name === 'delete') {
    if (!(await app.acts.do({ kind: 'delete-plot', sheet: sheet.id, plot: id }))) return;
    app.begin();
  } else {
    const to = name === 'up' ? at - 1 : at + 1;
    await app.acts.do({ kind: 'put-plot', sheet: sheet.id, plot, at: to });
    // The plot has gone elsewhere, and its menu with it; whoever has pressed the next key by then is left where he is.
    requestAnimationFrame(() => {
      if (document.activeElement === document.body) menu?.focus();
    });
  }
}

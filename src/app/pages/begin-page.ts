import type { AppHost } from '../app-host.ts';
import { actOnPlot, type PlotAct } from '../plots/plot-acts.ts';
import { answerStyles } from '../sheet-answer.ts';
import { offersTour } from '../tour-offer.ts';

/** The page stands: as soon as the sheet is drawn it takes what is typed, unless the reader is elsewhere by then. Tells whether to
 *  offer the tour. What is asked of plots is heard from now on. */
export function beginPage(app: AppHost & HTMLElement): boolean {
  if (answerStyles.styleSheet) app.shadowRoot?.adoptedStyleSheets.push(answerStyles.styleSheet);
  app.addEventListener('plot-act', (event) => void actOnPlot(app, (event as CustomEvent<PlotAct>).detail));
  const begin = (): void => {
    if (!app.workbook) requestAnimationFrame(begin);
    else if (document.activeElement === document.body) app.begin();
  };
  requestAnimationFrame(begin);
  return offersTour();
}

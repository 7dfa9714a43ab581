import type { AppHost } from '../app-host.ts';
import { offersTour } from '../tour-offer.ts';

/** The page stands: as soon as the sheet is drawn it takes what is typed, unless the reader is elsewhere by then. Tells whether to
 *  offer the tour. */
export function beginPage(app: AppHost): boolean {
  const begin = (): void => {
    if (!app.workbook) requestAnimationFrame(begin);
    else if (document.activeElement === document.body) app.begin();
  };
  requestAnimationFrame(begin);
  return offersTour();
}

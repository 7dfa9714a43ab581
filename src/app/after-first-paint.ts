/** Everything that the page needs only once it stands: fetched in one go after the first paint. */
import '../components/dialog/ask-dialog.ts';
import '../components/formula-editor/formula-editor.ts';
import '../components/ruler/value-ruler.ts';
import { fitRows } from '../components/grid/fit-rows.ts';
import { keepLabels } from '../components/grid/label-strip.ts';
import type { SheetGrid } from '../components/grid/sheet-grid.ts';
import { actions } from './actions.ts';
import { learnPasting } from './grid/acts.ts';
import { opensAsSheet } from './grid/pasted-sheet.ts';
import './plots/plot-dock.ts';
import { learnActions } from './run-action.ts';
export { askedBy } from './asked.ts';
export { gridMenu } from './grid/menu.ts';
export { runGridMenu } from './grid/menu-acts.ts';
export { openPage } from './open-pages.ts';
export { beginPage } from './pages/begin-page.ts';
export { passesOf } from './passes.ts';
export { sheetCommand } from './sheet-acts.ts';
export { sheetAnswer } from './sheet-answer.ts';

/** What a grid gets once it stands: rows as high as their words need, and labels that stay beside its numbers. */
export function fitGrid(grid: SheetGrid): void {
  fitRows(grid);
  keepLabels(grid);
}

learnActions(actions);
learnPasting(opensAsSheet);

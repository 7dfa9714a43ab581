/** Everything that the page needs only once it stands: fetched in one go after the first paint. */
import '../components/formula-editor/formula-editor.ts';
import '../components/ruler/value-ruler.ts';
import { actions } from './actions.ts';
import { learnPasting } from './grid-acts.ts';
import { opensAsSheet } from './pasted-sheet.ts';
import './plot-dock.ts';
import { learnActions } from './run-action.ts';
export { fitRows } from '../components/grid/fit-rows.ts';
export { runGridMenu } from './grid-menu-acts.ts';
export { openPage } from './open-pages.ts';
export { beginPage } from './begin-page.ts';

learnActions(actions);
learnPasting(opensAsSheet);

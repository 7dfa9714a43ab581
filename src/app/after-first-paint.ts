/** Everything that the page needs only once it stands: fetched in one go after the first paint. */
import '../components/formula-editor/formula-editor.ts';
import '../components/function-guide/function-guide.ts';
import '../components/ruler/value-ruler.ts';
import './guide-dialog.ts';
import './plot-dock.ts';
export { templateList } from './template-list.ts';

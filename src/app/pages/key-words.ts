import type { GridAct, Step } from '../../components/grid/keys.ts';
import type { ActionName } from '../key-bindings.ts';

/** What the keys of the app do. */
export const actionWords: Readonly<Record<ActionName, string>> = {
  undo: 'Undo',
  redo: 'Redo',
  'save-file': 'Save a copy to a file',
  'open-file': 'Open a file',
  'go-to': 'Go to a cell or a name',
  gallery: 'Starter sheets: begin a new document',
  pin: 'Pin the baseline, or let it go',
  compare: 'Compare with the baseline or another sheet',
  review: 'Review page: to print, or to copy as text',
  'open-cell': 'Open the cell in full',
  shelf: 'Driver shelf: put another driver where the selection is',
  shortlist: 'Shortlist: which drivers go together under your limits',
  'add-plot': 'Add a plot of what is selected',
  guide: 'Function guide',
  keys: 'This list of keys',
  ask: 'Ask the sheet: which value gives this, the best, the cheapest change, how sure, what drives it',
};

/** What the keys of the grid do. */
export const gridWords: Readonly<Record<Step | GridAct, string>> = {
  up: 'The cell above',
  down: 'The cell below',
  left: 'The cell before',
  right: 'The next cell',
  'edge-up': 'Up to the edge of data',
  'edge-down': 'Down to the edge of data',
  'edge-left': 'Left to the edge of data',
  'edge-right': 'Right to the edge of data',
  'row-start': 'The first cell of the row',
  'row-end': 'The last filled cell of the row',
  start: 'The first cell of the sheet',
  end: 'The last cell of the sheet',
  'page-up': 'A page up',
  'page-down': 'A page down',
  edit: 'Edit the cell',
  clear: 'Clear the cells',
  all: 'Select everything',
  'fill-down': 'Fill down',
  'fill-right': 'Fill right',
  menu: 'What can be done with the cells',
  'nudge-up': 'A step up in the number, or the next choice',
  'nudge-down': 'A step down in the number, or the choice before',
  narrower: 'A narrower column',
  wider: 'A wider column',
};

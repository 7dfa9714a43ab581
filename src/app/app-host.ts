import type { AskDialog } from '../components/dialog/ask-dialog.ts';
import type { Selection } from '../components/grid/model.ts';
import type { Place } from '../engine/types.ts';
import type { Sheet } from '../document/types.ts';
import type { Workbook } from '../document/workbook.ts';
import type { GridActs } from './grid/acts.ts';
import type { Session } from './session.ts';

/** The pages that open over the sheet: the selected cell in full, all keys, the function guide, the starter sheets. */
export type Page =
  | 'cell'
  | 'keys'
  | 'guide'
  | 'gallery'
  | 'take-over'
  | 'three-way'
  | 'lesson'
  | 'tour'
  | 'shelf'
  | 'shortlist'
  | 'ask'
  | 'review'
  | 'compare'
  | 'link'
  | 'plot'
  | 'looks';

/** What menus, keys and the grid act upon: the page, seen from its actions. */
export interface AppHost {
  readonly session: Session | undefined;
  readonly workbook: Workbook | undefined;
  readonly sheet: Sheet | undefined;
  /** The address of the active cell. */
  readonly cell: string;
  readonly guideAt: string;
  readonly selection: Selection;
  readonly acts: GridActs;
  readonly grid: HTMLElement;
  readonly dialog: AskDialog;
  drawer: boolean;
  /** Shows a sentence until it is closed. */
  tell(message: string): void;
  go(place: Place): void;
  openGuide(at?: string): void;
  /** Opens a page over the sheet. */
  open(page: Page): void;
  /** Selects, or points at cells for the formula being written. */
  select(selection: Selection): void;
  /** Begins to edit the formula line. */
  edit(text?: string): void;
  /** Moves the number of the cell by a step, or its choice to the next word. */
  nudge(direction: 1 | -1, coarse: boolean): void;
  /** Shows a sheet from where one begins on it. */
  show(sheet: string): void;
  /** The sheet takes what is typed, and is seen from its beginning. */
  begin(): void;
  requestUpdate(): void;
  /** Kept when an edit is drawn together with what follows from it; nothing where none is waited for. */
  readonly due: () => Promise<void> | undefined;
}

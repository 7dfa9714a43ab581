import type { AskDialog } from '../components/dialog/ask-dialog.ts';
import type { Selection } from '../components/grid/model.ts';
import type { Place } from '../engine/types.ts';
import type { Sheet } from '../document/types.ts';
import type { Workbook } from '../document/workbook.ts';
import type { GridActs } from './grid-acts.ts';
import type { Session } from './session.ts';

/** What menus, keys and the grid act upon: the page, seen from its actions. */
export interface AppHost {
  readonly session: Session | undefined;
  readonly workbook: Workbook | undefined;
  readonly sheet: Sheet | undefined;
  /** The address of the active cell. */
  readonly cell: string;
  readonly selection: Selection;
  readonly acts: GridActs;
  readonly dialog: AskDialog;
  drawer: boolean;
  /** Shows a sentence until it is closed. */
  tell(message: string): void;
  go(place: Place): void;
  openGuide(at?: string): void;
  requestUpdate(): void;
}

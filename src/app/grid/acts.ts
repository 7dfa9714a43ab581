import type { Command, Refusal } from '../../document/command.ts';
import type { Sheet } from '../../document/types.ts';
import { formatAddress } from '../../formula/address.ts';
import { Clipboard } from './clipboard.ts';
import type { Session } from '../session.ts';
import type { Selection } from '../../components/grid/model.ts';
import { cellsOf } from './selection.ts';

/** What the grid's events act upon. */
export interface GridHost {
  readonly session: Session | undefined;
  readonly sheet: Sheet | undefined;
  /** The address of the active cell. */
  readonly cell: string;
  readonly selection: Selection;
  open(page: 'shelf'): void;
  /** Shows why something was not done. */
  tell(message: string): void;
}

/** Takes a pasted text otherwise than cell by cell, and tells whether it did; known once the page stands. */
type PasteReader = (host: GridHost, text: string) => boolean;
let reader: PasteReader | undefined;
export const learnPasting = (given: PasteReader): void => {
  reader = given;
};

/** Turns what the reader does in the grid into commands. */
export class GridActs {
  readonly #host: GridHost;
  readonly #clipboard = new Clipboard();

  constructor(host: GridHost) {
    this.#host = host;
  }

  async do(command: Command, group?: string): Promise<boolean> {
    const refusal: Refusal | undefined = await this.#host.session?.workbook?.do(command, group);
    if (refusal) this.#host.tell(refusal.refused);
    return !refusal;
  }

  get #sheet(): string {
    return this.#host.sheet?.id ?? '';
  }

  get #area(): { readonly sheet: string; readonly cells: string } {
    return { sheet: this.#sheet, cells: cellsOf(this.#host.selection) };
  }

  commit(row: number, column: number, text: string): Promise<boolean> {
    const cell = formatAddress({ row, column });
    return this.do({ kind: 'write', sheet: this.#sheet, texts: new Map([[cell, text]]) });
  }

  clear(): Promise<boolean> {
    return this.do({ kind: 'clear', ...this.#area });
  }

  fill(direction: 'down' | 'right'): Promise<boolean> {
    return this.do({ kind: 'fill', direction, ...this.#area });
  }

  resize(column: number, width: number): Promise<boolean> {
    return this.do({ kind: 'column', sheet: this.#sheet, column, attributes: { width } });
  }

  copy(event: ClipboardEvent, cut: boolean): void {
    const workbook = this.#host.session?.workbook;
    if (!workbook) return;
    event.preventDefault();
    event.clipboardData?.setData('text/plain', this.#clipboard.take(workbook, this.#area, cut));
  }

  paste(event: ClipboardEvent): void {
    const text = event.clipboardData?.getData('text/plain') ?? '';
    if (text === '') return;
    event.preventDefault();
    const command = this.#clipboard.paste(text, this.#area, this.#host.session?.workbook?.document.sheets);
    if (command.kind !== 'paste-text' || !reader?.(this.#host, text)) void this.do(command);
  }

  /** Rows or columns of the selection: inserted before it, or deleted. */
  restructure(kind: 'insert' | 'delete', axis: 'rows' | 'columns'): Promise<boolean> {
    const { anchor, focus } = this.#host.selection;
    const [a, b] = axis === 'rows' ? [anchor.row, focus.row] : [anchor.column, focus.column];
    return this.do({ kind, sheet: this.#sheet, axis, at: Math.min(a, b), count: Math.abs(a - b) + 1 });
  }
}

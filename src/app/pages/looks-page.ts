import { LitElement, html, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import '../../components/dialog/page-dialog.ts';
import '../../components/looks-form/looks-form.ts';
import type { Looks } from '../../components/looks-form/looks-form.ts';
import { addressesIn, rectangleOf } from '../../document/area.ts';
import type { Command } from '../../document/command.ts';
import type { Sheet } from '../../document/types.ts';
import { columnLetters } from '../../formula/address.ts';
import type { AppHost } from '../app-host.ts';
import { cellsOf } from '../grid/selection.ts';

/** More columns than these are not titled in one go. */
const MOST_COLUMNS = 12;

/** How the selected cells and their columns look, to be changed.
 *  @fires close - It was closed. */
@customElement('looks-page')
export class LooksPage extends LitElement {
  @property({ attribute: false }) app!: AppHost;
  @property({ attribute: false }) sheet!: Sheet;

  protected override render(): TemplateResult {
    const cells = cellsOf(this.app.selection);
    const present = looksOf(this.sheet, cells);
    return html`<page-dialog heading="Looks and column titles" @close=${this.#close}>
      <looks-form
        cells=${cells}
        .looks=${present}
        @keep=${(event: CustomEvent<{ looks: Looks }>) => void this.#keep(cells, present, event.detail.looks)}
        @leave=${() => this.#leave()}
      ></looks-form>
    </page-dialog>`;
  }

  protected override firstUpdated(): void {
    this.renderRoot.querySelector('looks-form')?.focus();
  }

  async #keep(cells: string, present: Looks, chosen: Looks): Promise<void> {
    const commands = changesOf(this.sheet, cells, present, chosen);
    this.#leave();
    if (commands.length > 0) await this.app.acts.do({ kind: 'all', commands });
  }

  /** What had the focus has it again. */
  #leave(): void {
    this.renderRoot.querySelector('page-dialog')?.close();
  }

  readonly #close = (): void => {
    this.dispatchEvent(new CustomEvent('close'));
  };
}

function looksOf(sheet: Sheet, cells: string): Looks {
  const area = rectangleOf(cells);
  const looks = new Set<Looks['look']>();
  for (const address of addressesIn(area)) {
    const cell = sheet.cells.get(address);
    if (cell && cell.text !== '') looks.add(cell.look ?? 'plain');
    if (looks.size > 1) break;
  }
  const [only = 'plain'] = looks;
  return {
    look: looks.size > 1 ? undefined : only,
    columns: sheet.columns
      .slice(area.left, Math.min(area.right + 1, area.left + MOST_COLUMNS))
      .map(({ title, line }, index) => ({
        letters: columnLetters(area.left + index),
        title: title ?? '',
        line,
      })),
  };
}

/** What is to be done so that cells and columns look as chosen. */
function changesOf(sheet: Sheet, cells: string, present: Looks, chosen: Looks): Command[] {
  const { id } = sheet;
  const { left } = rectangleOf(cells);
  const look = chosen.look === 'plain' ? undefined : chosen.look;
  const commands: Command[] =
    chosen.look === present.look ? [] : [{ kind: 'describe', sheet: id, cells, attributes: { look } }];
  for (const [index, { title, line }] of chosen.columns.entries()) {
    const before = present.columns[index];
    if (title.trim() === before?.title && line === before.line) continue;
    const attributes = { title: title.trim() || undefined, line };
    commands.push({ kind: 'column', sheet: id, column: left + index, attributes });
  }
  return commands;
}

declare global {
  interface HTMLElementTagNameMap {
    'looks-page': LooksPage;
  }
}

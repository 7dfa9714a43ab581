import { LitElement, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import '../components/dialog/page-dialog.ts';
import '../components/take-over/taken-list.ts';
import { takeOver, type TakeOver } from '../document/take-over/command.ts';
import type { Sheet } from '../document/types.ts';
import type { Workbook } from '../document/workbook.ts';
import type { AppHost } from './app-host.ts';
import './gallery-page.ts';
import { openTemplate } from './template-list.ts';

/** Takes a sheet over into a new one made from a starter sheet: first the gallery, where none is given, then what was taken and
 *  what found no place.
 *  @fires close - It was closed. */
@customElement('take-over-page')
export class TakeOverPage extends LitElement {
  @property({ attribute: false }) app: AppHost | undefined;
  @property({ attribute: false }) workbook: Workbook | undefined;
  /** The sheet to take over; the one first given, whatever is shown later. */
  @property({ attribute: false }) from: Sheet | undefined;
  /** The id of the starter sheet; asked for where it is empty. */
  @property() into = '';
  @state() private done: TakeOver | undefined;
  #source: Sheet | undefined;

  protected override willUpdate(): void {
    this.#source ??= this.from;
  }

  protected override firstUpdated(): void {
    if (this.into !== '') void this.#take(this.into);
  }

  protected override render(): TemplateResult | typeof nothing {
    const { done } = this;
    const from = this.#source;
    if (!from) return nothing;
    if (done) {
      return html`<page-dialog heading=${`“${from.name}” taken over into “${done.name}”`} @close=${this.#close}>
        <taken-list
          .taken=${done.taken}
          .left=${done.left}
          .told=${done.told}
          @go=${(event: CustomEvent<{ cell: string }>) => this.#go(done, event.detail.cell)}
        ></taken-list>
      </page-dialog>`;
    }
    if (this.into !== '') return nothing;
    return html`<gallery-page
      heading=${`Take “${from.name}” over into…`}
      @choose=${(event: CustomEvent<{ id: string }>) => void this.#take(event.detail.id)}
      @close=${this.#close}
    ></gallery-page>`;
  }

  async #take(id: string): Promise<void> {
    const { workbook, app } = this;
    const from = this.#source;
    if (!workbook || !from || !app) return;
    const typedAs = (cell: string): string | undefined => {
      const shown = workbook.shown(from.id, cell);
      if (shown?.kind === 'text') return shown.text;
      return shown?.kind === 'number' ? `${shown.number.replaceAll('\u2009', '')} ${shown.unit}`.trim() : undefined;
    };
    const pickedAt = (cell: string): string | undefined => {
      const value = workbook.state(from.id, cell)?.value;
      return value?.kind === 'record' && value.record.kind === 'driver' ? value.record.name : undefined;
    };
    const taking = takeOver(workbook.document, from.id, await openTemplate(id), typedAs, pickedAt);
    if (!(await app.acts.do(taking.command))) return this.#close();
    app.show(taking.sheet);
    this.done = taking;
  }

  #go({ sheet }: TakeOver, cell: string): void {
    this.#close();
    this.app?.go({ sheet, cell });
  }

  readonly #close = (): void => {
    this.dispatchEvent(new CustomEvent('close'));
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'take-over-page': TakeOverPage;
  }
}

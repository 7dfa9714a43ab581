import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import '../../components/dialog/page-dialog.ts';
import { formStyles } from '../../components/form-styles.ts';
import '../../components/take-over/taken-list.ts';
import '../../components/take-over/taken-stages.ts';
import { changedOf } from '../../document/take-over/as-made.ts';
import { takeOver, type TakeOver } from '../../document/take-over/command.ts';
import { driverIn, goTheWay, typedIn, type Stage } from '../../document/take-over/whole-way.ts';
import type { Left, PickedAt } from '../../document/take-over/types.ts';
import type { Sheet } from '../../document/types.ts';
import type { Workbook } from '../../document/workbook.ts';
import type { Place } from '../../engine/types.ts';
import type { AppHost } from '../app-host.ts';
import './gallery-page.ts';
import { openTemplate, templateDocuments } from '../template-list.ts';
import { waysOn, type Way } from './ways-on.ts';

/** Takes a sheet over into a new one made from a starter sheet, or into all that follow as far as the basket: first the
 *  gallery, where none is given, then what was taken and what found no place.
 *  @fires close - It was closed. */
@customElement('take-over-page')
export class TakeOverPage extends LitElement {
  static override styles = [
    formStyles,
    css`
      section {
        margin-bottom: 20px;
      }
      h3 {
        margin: 0;
      }
      p {
        margin: 4px 0 8px;
      }
      section button {
        margin: 0 8px 8px 0;
      }
    `,
  ];

  @property({ attribute: false }) app: AppHost | undefined;
  @property({ attribute: false }) workbook: Workbook | undefined;
  /** The sheet to take over; the one first given, whatever is shown later. */
  @property({ attribute: false }) from: Sheet | undefined;
  /** The id of the starter sheet; asked for where it is empty. */
  @property() into = '';
  @state() private done: (TakeOver & { readonly changed: readonly Left[]; readonly asMade: number }) | undefined;
  @state() private stages: readonly Stage[] | undefined;
  @state() private ways: readonly Way[] = [];
  #source: Sheet | undefined;

  protected override willUpdate(): void {
    this.#source ??= this.from;
  }

  protected override firstUpdated(): void {
    if (this.into !== '') void this.#take(this.into);
    // Where the starter sheets cannot be fetched, the gallery says so.
    else if (this.#source)
      waysOn(this.#source, this.#pickedAt).then(
        (ways) => (this.ways = ways),
        () => undefined,
      );
  }

  protected override render(): TemplateResult | typeof nothing {
    const { done, stages } = this;
    const from = this.#source;
    if (!from) return nothing;
    if (done) {
      return html`<page-dialog heading=${`“${from.name}” taken over into “${done.name}”`} @close=${this.#close}>
        <taken-list
          .taken=${done.taken}
          .left=${done.changed}
          asMade=${done.asMade}
          .told=${done.told}
          @go=${({ detail: { cell } }: CustomEvent<{ cell: string }>) => this.#go({ sheet: done.sheet, cell })}
        ></taken-list>
      </page-dialog>`;
    }
    if (stages) {
      return html`<page-dialog
        heading=${`“${from.name}” taken as far as “${stages.at(-1)?.name ?? ''}”`}
        @close=${this.#close}
      >
        <taken-stages .stages=${stages} @go=${(event: CustomEvent<Place>) => this.#go(event.detail)}></taken-stages>
      </page-dialog>`;
    }
    if (this.into !== '') return nothing;
    return html`<gallery-page
      heading=${`Take “${from.name}” over into…`}
      @choose=${(event: CustomEvent<{ id: string }>) => void this.#take(event.detail.id)}
      @close=${this.#close}
      >${this.ways.length > 0 ? this.#offers() : nothing}</gallery-page
    >`;
  }

  #offers(): TemplateResult {
    return html`<section aria-labelledby="whole-way">
      <h3 id="whole-way">All the way to the basket</h3>
      <p>
        Box, panel, parts and saw list, each filled from the one before. Those that stand behind this sheet already are
        filled anew with what has changed.
      </p>
      ${this.ways.map(
        ({ label, starters }) => html`<button @click=${() => void this.#goTheWay(starters)}>${label}</button>`,
      )}
    </section>`;
  }

  async #take(id: string): Promise<void> {
    const { workbook, app } = this;
    const from = this.#source;
    if (!workbook || !from || !app) return;
    const typedAs = (cell: string, sheet: string): string | undefined => typedIn(workbook, cell, sheet);
    const taking = takeOver(workbook.document, from.id, await openTemplate(id), typedAs, this.#pickedAt);
    if (!(await app.acts.do(taking.command))) return this.#close();
    app.show(taking.sheet);
    // Where the starter sheets cannot be fetched, nobody can tell what still stands as they gave it.
    const starters = await templateDocuments().catch(() => new Map<string, never>());
    this.done = { ...taking, ...changedOf(taking.left, from, starters.values()) };
  }

  async #goTheWay(starters: Way['starters']): Promise<void> {
    const { workbook, app } = this;
    const from = this.#source;
    if (!workbook || !from || !app) return;
    this.stages = await goTheWay(workbook, from.id, starters);
    if (this.stages.length === 0) this.#close();
  }

  readonly #pickedAt: PickedAt = (cell, sheet) => this.workbook && driverIn(this.workbook, cell, sheet);

  #go(place: Place): void {
    this.#close();
    this.app?.go(place);
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

import { LitElement, html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import '../../components/dialog/page-dialog.ts';
import type { PlotDraft } from '../../components/plot-form/data.ts';
import '../../components/plot-form/plot-form.ts';
import { rectangleOf, type Rectangle } from '../../document/area.ts';
import { isRefusal } from '../../document/command.ts';
import { newId } from '../../document/create.ts';
import type { Sheet } from '../../document/types.ts';
import type { Workbook } from '../../document/workbook.ts';
import type { AppHost } from '../app-host.ts';
import { FollowWorkbook } from '../follow-workbook.ts';
import { cellsOf } from '../grid/selection.ts';
import { checkPlot, type Checked } from '../plots/form/check.ts';
import { draftOf } from '../plots/form/draft.ts';
import { followed } from '../plots/form/follow.ts';
import { SheetOffers } from '../plots/form/offers.ts';
import { SheetCells } from '../plots/form/sheet-cells.ts';
import { kindsOf, suggested } from '../plots/form/suggest.ts';
import { plotAsked } from '../plots/plot-acts.ts';
import { plotPicture } from '../plots/plot-picture.ts';

/** A plot of the sheet to be composed from what is selected, or to be changed.
 *  @fires close - It was closed. */
@customElement('plot-page')
export class PlotPage extends LitElement {
  @property({ attribute: false }) app!: AppHost;
  @property({ attribute: false }) workbook: Workbook | undefined;
  @property({ attribute: false }) sheet!: Sheet;
  @state() private draft: PlotDraft | undefined;
  /** The cells that the draft was suggested from. */
  #source: Rectangle | undefined;
  #said = '';
  #cells!: SheetCells;
  #offers!: SheetOffers;
  readonly #asked = plotAsked();

  constructor() {
    super();
    this.addController(new FollowWorkbook(this));
  }

  /** The cells are looked through again when they have changed, not for each letter that is typed. */
  protected override willUpdate(changed: PropertyValues): void {
    if (!this.workbook || (changed.size > 0 && !changed.has('sheet'))) return;
    this.#cells = new SheetCells(this.workbook, this.sheet);
    this.#offers = new SheetOffers(this.#cells);
    this.draft ??= this.#begun();
  }

  protected override render(): TemplateResult | typeof nothing {
    const { workbook, sheet, draft } = this;
    if (!workbook || !draft) return nothing;
    const cells = this.#cells;
    const checked = checkPlot(cells, draft, workbook.document.system);
    const isNew = !sheet.plots.some(({ id }) => id === draft.id);
    return html`<page-dialog
      wide
      heading=${isNew ? 'Add a plot' : `Change “${sheet.plots.find(({ id }) => id === draft.id)?.title ?? ''}”`}
      @close=${this.#close}
    >
      <plot-form
        .draft=${draft}
        .offers=${this.#offers.for(draft, checked.measured, checked.labels)}
        .remarks=${checked.remarks}
        said=${this.#said}
        act=${isNew ? 'Add the plot' : 'Keep the changes'}
        @draft=${(event: CustomEvent<{ draft: PlotDraft }>) => (this.draft = followed(cells, draft, event.detail.draft, this.#source))}
        @keep=${() => void this.#keep(checked)}
        @leave=${() => this.#leave()}
        >${this.#picture(workbook, checked)}</plot-form
      >
    </page-dialog>`;
  }

  protected override firstUpdated(): void {
    this.renderRoot.querySelector('plot-form')?.focus();
  }

  /** The draft that the form opens with. */
  #begun(): PlotDraft {
    const cells = this.#cells;
    const plot = this.sheet.plots.find(({ id }) => id === this.#asked);
    if (plot) {
      const found = cells.find(plot.series[0]?.cell ?? '');
      this.#source = isRefusal(found) ? undefined : found.area;
      return draftOf(plot);
    }
    const selected = cellsOf(this.app.selection);
    const area = rectangleOf(selected);
    const [kind] = kindsOf(cells, area);
    const [possible = 'curves'] = this.#offers.kinds;
    this.#source = area;
    if (kind) return { ...suggested(cells, kind, area), id: newId() };
    const { kind: held, words } = cells.held(selected);
    if (held === 'problem') this.#said = `${selected} has no result now, so nothing is drawn from it: ${words}`;
    else
      this.#said = `${selected} holds nothing that a plot draws: a curve, a shared window, numbers or a table. Say below which cells it draws.`;
    return { ...suggested(cells, possible, area), id: newId() };
  }

  #picture(workbook: Workbook, { plot }: Checked): TemplateResult {
    const needsGround = plot.kind === 'shapes' && plot.series.length > 0 && !plot.ground;
    const picture = plot.series.length > 0 ? plotPicture(workbook, this.sheet, plot) : undefined;
    switch (picture?.kind) {
      case 'curves':
        return html`<curve-plot .data=${picture.data}></curve-plot>`;
      case 'window':
        return html`<window-plot .data=${picture.data}></window-plot>`;
      case 'drawing':
        return html`<cell-plot .data=${picture.data}></cell-plot>`;
      case undefined:
        return html`<p>
          ${needsGround ? 'It is drawn here as soon as it has a width and a height.' : 'The plot is drawn here as soon as it has something to draw.'}
        </p>`;
    }
  }

  async #keep({ plot }: Checked): Promise<void> {
    this.#leave();
    await this.app.acts.do({ kind: 'put-plot', sheet: this.sheet.id, plot });
  }

  /** What had the focus has it again. */
  #leave(): void {
    this.renderRoot.querySelector('page-dialog')?.close();
  }

  readonly #close = (): void => {
    this.dispatchEvent(new CustomEvent('close'));
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'plot-page': PlotPage;
  }
}

import { LitElement, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { formStyles } from '../form-styles.ts';
import { pictureStyles } from '../plot/picture-styles.ts';
import { kinds, type Offers, type PlotDraft, type PlotKind, type Remark, type Remarks } from './data.ts';
import { offerList, textField, wordField } from './fields.ts';
import {
  addButton,
  axisFields,
  groundFields,
  limitFields,
  markFields,
  nextLine,
  seriesFields,
  type Filling,
  type PartList,
} from './parts.ts';
import { plotFormStyles } from './styles.ts';

/** A plot to be composed or changed: its title, kind, series, limits, marks and axes. What is wrong is said where it stands.
 *  @slot - The picture of the plot as it is filled in.
 *  @fires draft - `detail.draft` as it stands now.
 *  @fires keep - The plot is to be kept; never while something is wrong.
 *  @fires leave - Nothing is to be kept. */
@customElement('plot-form')
export class PlotForm extends LitElement {
  static override styles = [formStyles, pictureStyles, plotFormStyles];

  @property({ attribute: false }) draft!: PlotDraft;
  @property({ attribute: false }) offers!: Offers;
  @property({ attribute: false }) remarks: Remarks = new Map();
  /** Said above the fields, where it must be. */
  @property() said = '';
  /** The words of the button that keeps it. */
  @property() act = 'Add the plot';
  /** Keeping it was asked for: from then on what is empty is said to be wrong too. */
  @state() private isTried = false;

  override focus(): void {
    void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLInputElement>('#title')?.select());
  }

  protected override render(): TemplateResult {
    const { draft, offers } = this;
    const fields = kinds[draft.kind];
    const filling: Filling = {
      draft,
      offers,
      remark: this.#remark,
      change: this.#change,
      add: this.#add,
      leaveOut: this.#leaveOut,
    };
    return html`<form novalidate @submit=${this.#keep}>
      <div>
        ${this.said === '' ? nothing : html`<p class="said">${this.said}</p>`}
        <div class="pairs">
          ${textField(
            {
              at: 'title',
              label: 'Title',
              value: draft.title,
              remark: this.#remark('title'),
              change: (title) => this.#change({ title }),
            },
            { placeholder: offers.labels.get('title') ?? '' },
          )}
          ${wordField(
            {
              at: 'kind',
              label: 'Kind',
              value: draft.kind,
              remark: undefined,
              change: (kind) => this.#change({ kind: kind as PlotKind }),
            },
            offers.kinds.map((kind) => [kind, kinds[kind].words]),
          )}
        </div>
        <h3>What it draws</h3>
        ${draft.series.map((_, index) => seriesFields(filling, index))}
        ${fields.several ? addButton(filling, 'series', fields.add, fields.hint) : html`<p class="hint quiet">${fields.hint}</p>`}
        ${fields.ground ? groundFields(filling) : nothing} ${fields.limits ? limitFields(filling) : nothing}
        ${fields.marks ? markFields(filling) : nothing} ${axisFields(filling)}
      </div>
      <div class="picture"><slot></slot></div>
      <div class="end">
        <button class="main">${this.act}</button>
        <button type="button" @click=${() => this.#tell('leave', {})}>Cancel</button>
        <p class="wrong" role="alert">${this.isTried ? this.#waiting() : ''}</p>
      </div>
      ${offerList('offered-series', offers.series)} ${offerList('offered-beside', offers.beside)}
      ${offerList('offered-limits', offers.limits)} ${offerList('offered-marks', offers.marks)}
      ${offerList('offered-sizes', offers.sizes)}
    </form>`;
  }

  /** What nobody has filled in yet is not called wrong while the form is being filled. */
  readonly #remark = (at: string): Remark | undefined =>
    this.isTried || valueAt(this.draft, at) !== '' ? this.remarks.get(at) : undefined;

  #waiting(): string {
    const wrong = [...this.remarks.values()].filter(({ isWrong }) => isWrong);
    if (wrong.length === 0) return '';
    return wrong.length === 1
      ? 'One field must be put right first.'
      : `${wrong.length} fields must be put right first.`;
  }

  readonly #change = (change: Partial<PlotDraft>): void => {
    this.draft = { ...this.draft, ...change };
    this.#tell('draft', { draft: this.draft });
  };

  readonly #add = (list: PartList): void => {
    const { draft } = this;
    const index = draft[list].length;
    const empty = { cell: '', label: '' };
    if (list === 'series') {
      const first = draft.series[0];
      const beside = { column: '', across: first?.across ?? '', names: first?.names ?? '' };
      this.#change({ series: [...draft.series, { ...empty, ...beside, line: nextLine(draft.series) }] });
    } else if (list === 'limits') this.#change({ limits: [...draft.limits, { ...empty, forbidden: 'above' }] });
    else this.#change({ marks: [...draft.marks, empty] });
    void this.updateComplete.then(() => this.#go(`#${list}-${String(index)}-cell`));
  };

  readonly #leaveOut = (list: PartList, index: number): void => {
    this.#change({ [list]: this.draft[list].toSpliced(index, 1) });
    void this.updateComplete.then(() => this.#go(`#add-${list}`));
  };

  readonly #keep = async (event: Event): Promise<void> => {
    event.preventDefault();
    this.isTried = true;
    await this.updateComplete;
    if (this.#waiting() === '') this.#tell('keep', {});
    else this.#go('[aria-invalid=true]');
  };

  #go(selector: string): void {
    this.renderRoot.querySelector<HTMLElement>(selector)?.focus();
  }

  #tell(what: string, detail: object): void {
    this.dispatchEvent(new CustomEvent(what, { detail }));
  }
}

/** What stands in a field. */
function valueAt(draft: PlotDraft, at: string): unknown {
  return at
    .split('.')
    .reduce<unknown>(
      (held, name) => (typeof held === 'object' && held ? (held as Record<string, unknown>)[name] : ''),
      draft,
    );
}

declare global {
  interface HTMLElementTagNameMap {
    'plot-form': PlotForm;
  }
}

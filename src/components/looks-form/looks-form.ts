import { LitElement, css, html, nothing, svg, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Cell, Line } from '../../document/types.ts';
import { formStyles } from '../form-styles.ts';
import { pictureStyles } from '../plot/picture-styles.ts';

type Look = Cell['look'];

/** A column of the selection: its letters, its title and the line that stands for what it describes. */
export interface ColumnLooks {
  readonly letters: string;
  readonly title: string;
  readonly line: Line | undefined;
}

/** How cells and their columns look. */
export interface Looks {
  /** Nothing where the cells differ: then each keeps its own. */
  readonly look: Look | 'plain' | undefined;
  readonly columns: readonly ColumnLooks[];
}

const looks: Readonly<Record<NonNullable<Look> | 'plain', string>> = {
  plain: 'no heading, no small print',
  section: 'a heading over the rows below; in column A it counts their verdicts',
  label: 'small, for headings of columns and words beside numbers',
  note: 'small, and runs on over the cells to its right',
};

const lines: Readonly<Record<Line, string>> = {
  woofer: 'woofer',
  tweeter: 'tweeter',
  system: 'system, both together',
  other: 'other',
};

/** The look of the selected cells, and titles and line styles of their columns.
 *  @fires keep - `detail.looks` as chosen.
 *  @fires leave - Nothing is to be changed. */
@customElement('looks-form')
export class LooksForm extends LitElement {
  static override styles = [
    formStyles,
    pictureStyles,
    css`
      fieldset {
        margin: 0 0 16px;
        padding: 0;
        border: 0;
      }
      legend {
        padding: 0 0 4px;
        font-weight: 600;
      }
      .look {
        display: grid;
        grid-template-columns: 20px 64px minmax(0, 1fr);
        gap: 0 8px;
        align-items: center;
        min-height: 32px;
      }
      .look small {
        grid-column: 3;
      }
      .look input {
        justify-self: start;
        margin: 0;
        accent-color: var(--accent);
      }
      .section b {
        font-size: 15px;
      }
      .look b {
        font-weight: 400;
      }
      .look.section b {
        font-weight: 600;
      }
      .look.label b,
      .look.note b {
        color: var(--ink2);
        font-size: 12.5px;
      }
      .column {
        display: grid;
        grid-template-columns: 28px minmax(0, 1fr) 180px 40px;
        gap: 4px 10px;
        align-items: center;
        margin-bottom: 8px;
      }
      svg {
        width: 36px;
        height: 8px;
        fill: none;
      }
      @media (pointer: coarse), (max-width: 1023px) {
        .look {
          min-height: 44px;
        }
      }
      @media (max-width: 500px) {
        .column {
          grid-template-columns: 28px minmax(0, 1fr) 40px;
        }
        .column select {
          grid-column: 2;
        }
        .column svg {
          grid-column: 3;
        }
      }
    `,
  ];

  /** The cells, as `B4:C18`. */
  @property() cells = '';
  @property({ attribute: false }) looks!: Looks;
  @state() private chosen: Looks | undefined;

  override focus(): void {
    void this.updateComplete.then(() => {
      const [first] = this.renderRoot.querySelectorAll<HTMLInputElement>('[name=look]');
      (this.renderRoot.querySelector<HTMLInputElement>('[name=look]:checked') ?? first)?.focus();
    });
  }

  protected override render(): TemplateResult {
    const { look, columns } = this.chosen ?? this.looks;
    return html`<form @submit=${this.#keep}>
      <fieldset>
        <legend>${this.cells}</legend>
        ${
          this.looks.look === undefined
            ? html`<p class="quiet">These cells differ; each keeps its look unless one is chosen.</p>`
            : nothing
        }
        ${Object.entries(looks).map(
          ([name, words]) =>
            html`<label class="look ${name}"
              ><input
                type="radio"
                name="look"
                .checked=${name === look}
                @change=${() => this.#choose({ look: name as Looks['look'] })}
              /><b>${name.charAt(0).toUpperCase() + name.slice(1)}</b><small class="quiet">${words}</small></label
            >`,
        )}
      </fieldset>
      <fieldset>
        <legend>${columns.length === 1 ? 'Its column' : 'Their columns'}</legend>
        <p class="quiet">
          The title stands over the column, and names its cells in lists and plots. The line is that of its curves.
        </p>
        ${columns.map((column, index) => this.#column(column, index))}
      </fieldset>
      <div class="bar">
        <button class="main">Set</button>
        <button type="button" @click=${() => this.dispatchEvent(new CustomEvent('leave'))}>Cancel</button>
      </div>
    </form>`;
  }

  #column({ letters, title, line }: ColumnLooks, index: number): TemplateResult {
    const change = (part: Partial<ColumnLooks>): void => {
      const { columns } = this.chosen ?? this.looks;
      this.#choose({ columns: columns.map((each, at) => (at === index ? { ...each, ...part } : each)) });
    };
    return html`<div class="column">
      <b>${letters}</b>
      <input
        aria-label=${`Title of column ${letters}`}
        placeholder="No title"
        autocomplete="off"
        .value=${title}
        @input=${(event: Event) => change({ title: (event.target as HTMLInputElement).value })}
      />
      <select
        aria-label=${`Line of column ${letters}`}
        @change=${(event: Event) => {
          const { value } = event.target as HTMLSelectElement;
          change({ line: value === '' ? undefined : (value as Line) });
        }}
      >
        <option value="" ?selected=${line === undefined}>no line</option>
        ${Object.entries(lines).map(
          ([name, words]) => html`<option value=${name} ?selected=${name === line}>${words}</option>`,
        )}
      </select>
      ${
        line
          ? html`<svg viewBox="0 0 36 8" aria-hidden="true">${svg`<path class="curve ${line}" d="M0 4H36" />`}</svg>`
          : nothing
      }
    </div>`;
  }

  #choose(part: Partial<Looks>): void {
    this.chosen = { ...(this.chosen ?? this.looks), ...part };
  }

  readonly #keep = (event: Event): void => {
    event.preventDefault();
    this.dispatchEvent(new CustomEvent('keep', { detail: { looks: this.chosen ?? this.looks } }));
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'looks-form': LooksForm;
  }
}

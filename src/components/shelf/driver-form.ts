import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { driverParameters, type DriverParameter } from '../../../functions/driver/parameters.ts';
import { unreadable } from '../../document/shelf/driver-of.ts';
import { bases, meaningOf, type DriverEntry, type DriverRow, type DriverTable } from '../../document/shelf/entry.ts';
import type { TableMeaning } from '../../document/shelf/table-sheet.ts';
import type { UnitSystem } from '../../document/types.ts';
import { defaultUnit } from '../../units/defaults.ts';
import { speak } from '../../units/show.ts';
import { auditView } from './audit-view.ts';
import { shelved } from './shelved.ts';
import { formStyles } from '../form-styles.ts';

/** One driver in full, to be typed or changed: every row as text with its unit, the source, the measured tables, and what the
 *  numbers say about one another while they are typed.
 *  @fires draft - `detail.entry` as it stands now.
 *  @fires keep - `detail.entry` is to be kept.
 *  @fires use-table - `detail.table` of `detail.driver` is to become a curve; `detail.meaning` says of what.
 *  @fires put-driver - `detail.entry` is to stand in the sheet.
 *  @fires remove - it is to be taken off the shelf.
 *  @fires leave - back to the list. */
@customElement('driver-form')
export class DriverForm extends LitElement {
  static override styles = [
    formStyles,
    css`
      .fields {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(210px, 1fr));
        gap: 10px 16px;
      }
      label {
        display: flex;
        flex-direction: column;
        justify-content: flex-end;
      }
      textarea.source {
        font: inherit;
      }
      .end {
        margin-top: 20px;
      }
      .wide {
        margin: 12px 0;
      }
      .table {
        margin: 8px 0;
        padding: 10px 12px;
        border: 1px solid var(--line);
        border-radius: 5px;
        display: grid;
        gap: 8px;
      }
      .table button {
        justify-self: start;
      }
    `,
  ];

  @property({ attribute: false }) entry: DriverEntry | undefined;
  /** It stands on the shelf already. */
  @property({ type: Boolean }) kept = false;
  /** What the driver's place in the sheet is called; empty where none is selected. */
  @property() place = '';
  @property() system: UnitSystem = 'metric';
  @state() private complaint = '';

  protected override render(): TemplateResult | typeof nothing {
    const { entry } = this;
    if (!entry) return nothing;
    const rest = entry.rows.filter((row) => !isPlain(entry.rows, row));
    const hasNumbers = entry.rows.some(({ text }) => text.trim() !== '');
    return html`
      <div class="bar">
        <button @click=${() => this.#fire('leave')}>Back to the list</button>
        ${
          this.kept && this.place
            ? html`<button @click=${() => this.#fire('put-driver')}>Put it into ${this.place}</button>`
            : nothing
        }
        ${
          entry.invented
            ? html`<span class="quiet">An invented example: changing it makes a driver of your own.</span>`
            : nothing
        }
      </div>
      <label class="wide"
        ><span class="quiet">Name</span>
        <input
          id="name"
          autocomplete="off"
          .value=${entry.name}
          aria-describedby="complaint"
          @input=${(event: InputEvent) => this.#change({ name: valueOf(event) })}
      /></label>
      <p id="complaint" class="wrong" role="alert">${this.complaint}</p>
      ${hasNumbers ? auditView(shelved(entry).audit, this.system) : nothing}
      <div class="fields">
        ${driverParameters.map((parameter) => [
          this.#field(entry, parameter),
          parameter.field === 'level' ? this.#basis(entry) : nothing,
        ])}
      </div>
      ${
        rest.length === 0
          ? nothing
          : html`<h3>Other rows</h3>
              <div class="fields">${rest.map((row) => this.#input(row.label, '', row, row.label))}</div>`
      }
      <label class="wide"
        ><span class="quiet">Source: where these numbers come from</span>
        <textarea
          class="source"
          rows="2"
          .value=${entry.source}
          @input=${(event: InputEvent) => this.#change({ source: valueOf(event) })}
        ></textarea>
      </label>
      <h3>Measured tables</h3>
      <p class="quiet">Response or impedance as text, a line a frequency; kept with the driver word for word.</p>
      ${entry.tables.map((table, index) => this.#table(table, index))}
      <button @click=${() => this.#tables([...entry.tables, { title: `Table ${entry.tables.length + 1}`, text: '' }])}>
        Add a table
      </button>
      <div class="bar end">
        <button class="main" @click=${this.#keep}>
          ${this.kept && !entry.invented ? 'Keep the changes' : 'Put it on the shelf'}
        </button>
        ${this.kept && !entry.invented ? html`<button @click=${() => this.#fire('remove')}>Take it off the shelf</button>` : nothing}
      </div>
    `;
  }

  #field(entry: DriverEntry, { field, symbol, summary, quantity }: DriverParameter): TemplateResult {
    const row = entry.rows.find(({ label }) => meaningOf(label) === field);
    const hint =
      field === 'level' ? 'Level at 1 m, as printed' : symbol === summary ? symbol : `${symbol}, ${lower(summary)}`;
    return this.#input(hint, defaultUnit(quantity, this.system), row, symbol);
  }

  #input(hint: string, unit: string, row: DriverRow | undefined, label: string): TemplateResult {
    const [bad] = row ? unreadable([row]) : [];
    return html`<label
      ><span class="quiet">${hint}</span>
      <input
        autocomplete="off"
        placeholder=${unit}
        aria-invalid=${bad ? 'true' : nothing}
        .value=${row?.text ?? ''}
        @input=${(event: InputEvent) => this.#type(row, label, valueOf(event))}
      />
      ${bad ? html`<small class="wrong">${speak(bad.why, this.system)}</small>` : nothing}
    </label>`;
  }

  #basis(entry: DriverEntry): TemplateResult {
    const row = entry.rows.find(({ label }) => meaningOf(label) === 'basis');
    const offered = row && row.text !== '' && !bases.some((each) => each === row.text) ? [row.text, ...bases] : bases;
    return html`<label
      ><span class="quiet">Basis of that level</span>
      <select @change=${(event: Event) => this.#type(row, 'Level basis', (event.target as HTMLSelectElement).value)}>
        <option value="" ?selected=${!row?.text}>Not said</option>
        ${offered.map((each) => html`<option ?selected=${row?.text === each}>${each}</option>`)}
      </select>
    </label>`;
  }

  #table(table: DriverTable, index: number): TemplateResult {
    const tables = this.entry?.tables ?? [];
    const changed = (change: Partial<DriverTable>): void =>
      this.#tables(tables.map((each, at) => (at === index ? { ...each, ...change } : each)));
    return html`<div class="table">
      <label
        ><span class="quiet">What it holds</span>
        <input
          autocomplete="off"
          .value=${table.title}
          @input=${(event: InputEvent) => changed({ title: valueOf(event) })}
      /></label>
      <label
        ><span class="quiet">The table</span>
        <textarea
          rows="5"
          .value=${table.text}
          @input=${(event: InputEvent) => changed({ text: valueOf(event) })}
        ></textarea>
      </label>
      <div class="bar">
        ${(['level', 'impedance'] as const).map(
          (meaning) =>
            html`<button
              aria-label=${`Use ${table.title} as a curve of ${meaning}`}
              ?disabled=${table.text.trim() === ''}
              @click=${() => this.#use(table, meaning)}
            >
              As a curve of ${meaning}
            </button>`,
        )}
      </div>
      <button
        aria-label=${`Take the table ${table.title} away`}
        @click=${() => this.#tables(tables.filter((_, at) => at !== index))}
      >
        Take it away
      </button>
    </div>`;
  }

  #use(table: DriverTable, meaning: TableMeaning): void {
    const detail = { driver: this.entry?.name ?? '', table, meaning };
    this.dispatchEvent(new CustomEvent('use-table', { detail, bubbles: true, composed: true }));
  }

  #tables(tables: readonly DriverTable[]): void {
    this.#change({ tables });
  }

  #type(row: DriverRow | undefined, label: string, text: string): void {
    const rows = this.entry?.rows ?? [];
    this.#change({
      rows: row ? rows.map((each) => (each === row ? { ...row, text } : each)) : [...rows, { label, text }],
    });
  }

  #change(change: Partial<DriverEntry>): void {
    if (!this.entry) return;
    this.entry = { ...this.entry, ...change };
    this.complaint = '';
    this.#fire('draft');
  }

  #keep = (): void => {
    const { entry } = this;
    if (!entry) return;
    if (entry.name.trim() === '') {
      this.complaint = 'A driver needs a name to be found by.';
      this.renderRoot.querySelector<HTMLInputElement>('#name')?.focus();
      return;
    }
    const rows = entry.rows.filter(({ text }) => text.trim() !== '');
    this.entry = { ...entry, name: entry.name.trim(), rows };
    this.#fire('keep');
  };

  #fire(name: string): void {
    this.dispatchEvent(new CustomEvent(name, { detail: { entry: this.entry } }));
  }
}

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
const valueOf = (event: Event): string => (event.target as HTMLInputElement | HTMLTextAreaElement).value;

/** The first row of a known number has a field of its own; a second one and what is not known stand below. */
const isPlain = (rows: readonly DriverRow[], row: DriverRow): boolean => {
  const meaning = meaningOf(row.label);
  return meaning !== undefined && meaning !== 'name' && rows.find(({ label }) => meaningOf(label) === meaning) === row;
};

declare global {
  interface HTMLElementTagNameMap {
    'driver-form': DriverForm;
  }
}

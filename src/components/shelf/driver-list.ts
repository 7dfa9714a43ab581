import { LitElement, css, html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { parameterOf, type NumberField } from '../../../functions/driver/parameters.ts';
import type { Driver } from '../../../functions/values/driver.ts';
import { isRefusal } from '../../document/command.ts';
import type { DriverEntry } from '../../document/shelf/entry.ts';
import { matches, readQuery } from '../../document/shelf/find.ts';
import type { UnitSystem } from '../../document/types.ts';
import { defaultUnit } from '../../units/defaults.ts';
import { show } from '../../units/show.ts';
import { aligned, alignedStyles } from '../aligned.ts';
import '../verdict-chip/verdict-chip.ts';
import { shelved } from './shelved.ts';
import { listStyles } from './list-styles.ts';
import { formStyles } from '../form-styles.ts';

/** The numbers by which one driver is told from another; the first three are all that a narrow page has room for. */
const figures: readonly NumberField[] = ['fs', 'sd', 'level', 'qts', 'vas', 're', 'xmax', 'nominal', 'price'];
const BRIEF = 3;
/** So many rows are drawn at a time: thousands would weigh hundreds of megabytes. */
const PAGE = 200;

/** The drivers of the shelf with a search over names and numbers.
 *  @fires open-driver - `detail.entry` is to be seen in full.
 *  @fires put-driver - `detail.entry` is to stand in the sheet. */
@customElement('driver-list')
export class DriverList extends LitElement {
  static override styles = [
    formStyles,
    listStyles,
    alignedStyles,
    css`
      label.search {
        display: block;
        margin-bottom: 8px;
      }
      label.search input {
        margin-top: 4px;
      }
      .check {
        display: inline-flex;
        gap: 6px;
        align-items: center;
        margin-inline-start: auto;
      }
      table {
        margin-top: 8px;
      }
      th,
      td {
        text-align: end;
        white-space: nowrap;
      }
      thead th {
        vertical-align: bottom;
      }
      th:first-child {
        text-align: start;
        white-space: normal;
      }
      td.chip,
      thead th.chip {
        text-align: start;
      }
      .unit {
        color: var(--ink2);
        font-size: 12.5px;
      }
      @media (max-width: 640px) {
        .check {
          margin-inline-start: 0;
        }
      }
    `,
  ];

  @property({ attribute: false }) entries: readonly DriverEntry[] = [];
  /** What the driver's place in the sheet is called; empty where none is selected. */
  @property() place = '';
  @property() system: UnitSystem = 'metric';
  @property() search = '';
  @state() private invented = true;
  @state() private most = PAGE;
  @query('input[type=search]') private field!: HTMLInputElement;
  @query('.more') private more!: HTMLButtonElement | null;

  override focus(): void {
    this.field.focus();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('search')) this.most = PAGE;
  }

  protected override render(): TemplateResult {
    const query = readQuery(this.search);
    const shown = isRefusal(query)
      ? []
      : this.entries.filter((entry) => (this.invented || !entry.invented) && matches(shelved(entry), query));
    const said = isRefusal(query)
      ? query.refused
      : shown.length === 0
        ? 'No driver on the shelf is like that.'
        : `${shown.length} of ${this.entries.length} drivers`;
    return html`
      <label class="search"
        ><span class="quiet">Find by name or by any number, such as Fs &lt; 900, Sd &gt; 100 cm²</span>
        <input
          type="search"
          autocomplete="off"
          .value=${this.search}
          aria-describedby="said"
          @input=${(event: Event) => (this.search = (event.target as HTMLInputElement).value)}
          @keydown=${this.#fromSearch}
      /></label>
      <div class="bar">
        <span id="said" class=${isRefusal(query) ? 'wrong' : 'quiet'} role="status">${said}</span>
        <label class="check quiet"
          ><input
            type="checkbox"
            .checked=${this.invented}
            @change=${(event: Event) => (this.invented = (event.target as HTMLInputElement).checked)}
          />Show the invented examples</label
        >
      </div>
      ${shown.length === 0 ? nothing : this.#table(shown)}
    `;
  }

  #table(shown: readonly DriverEntry[]): TemplateResult {
    return html`<table @keydown=${this.#step}>
        <thead>
          <tr>
            <th scope="col">Driver</th>
            ${figures.map(
              (field, index) =>
                html`<th scope="col" class=${classOf(index)} title=${parameterOf(field).summary}>
                  ${parameterOf(field).symbol}
                </th>`,
            )}
            <th scope="col" class="chip">Audit</th>
            ${this.place ? html`<th scope="col"><span class="quiet">Into ${this.place}</span></th>` : nothing}
          </tr>
        </thead>
        <tbody>
          ${this.#listed(shown.slice(0, this.most))}
        </tbody>
      </table>
      ${
        shown.length > this.most
          ? html`<button class="more" @click=${() => (this.most += PAGE)}>
              Show ${Math.min(PAGE, shown.length - this.most)} more of the other ${shown.length - this.most}
            </button>`
          : nothing
      }`;
  }

  #listed(entries: readonly DriverEntry[]): readonly TemplateResult[] {
    const columns = figures.map((field) => columnOf(entries, field, this.system));
    return entries.map((entry, index) =>
      this.#row(
        entry,
        columns.map((column) => column[index]),
      ),
    );
  }

  #row(entry: DriverEntry, cells: readonly unknown[]): TemplateResult {
    const { driver, audit } = shelved(entry);
    const brief = figures.slice(0, BRIEF).map((field) => textOf(driver, field, this.system));
    return html`<tr>
      <th scope="row">
        <button class="link" @click=${() => this.#fire('open-driver', entry)}>${entry.name || 'Without a name'}</button>
        ${entry.invented ? html` <span class="quiet">invented</span>` : nothing}
        <small class="brief">${brief.filter(Boolean).join(', ')}</small>
      </th>
      ${cells.map((cell, index) => html`<td class=${classOf(index)}>${cell}</td>`)}
      <td class="chip"><verdict-chip .status=${audit.status} word=${audit.word}></verdict-chip></td>
      ${
        this.place
          ? html`<td>
              <button
                aria-label=${`Put here: ${entry.name} into ${this.place}`}
                @click=${() => this.#fire('put-driver', entry)}
              >
                Put here
              </button>
            </td>`
          : nothing
      }
    </tr>`;
  }

  get #rows(): HTMLElement[] {
    return [...this.renderRoot.querySelectorAll<HTMLElement>('tbody tr')];
  }

  #fromSearch = (event: KeyboardEvent): void => {
    if (event.key !== 'ArrowDown') return;
    event.preventDefault();
    focusIn(this.#rows[0]);
  };

  /** The arrows go from driver to driver, on the button that is likeliest wanted. */
  #step = (event: KeyboardEvent): void => {
    const by = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    const row = (event.target as HTMLElement).closest('tr');
    if (by === undefined || !row) return;
    event.preventDefault();
    const next = this.#rows[this.#rows.indexOf(row) + by];
    if (next) focusIn(next);
    else if (by < 0) this.field.focus();
    else this.more?.focus();
  };

  #fire(name: string, entry: DriverEntry): void {
    this.dispatchEvent(new CustomEvent(name, { detail: { entry } }));
  }
}

const focusIn = (row: HTMLElement | undefined): void => [...(row?.querySelectorAll('button') ?? [])].at(-1)?.focus();

const classOf = (index: number): string => (index < BRIEF ? 'figure' : 'figure rest');

/** One unit to a column and its decimals below one another, so that its numbers can be compared. */
function columnOf(entries: readonly DriverEntry[], field: NumberField, system: UnitSystem): readonly unknown[] {
  const { quantity } = parameterOf(field);
  const shown = entries.map((entry) => {
    const value = shelved(entry).driver?.[field];
    return value === undefined ? undefined : show(value, { quantity, system, unit: defaultUnit(quantity, system) });
  });
  const numbers = aligned(shown.map((each) => each?.number ?? ''));
  return shown.map((each, index) => (each ? html`${numbers[index]} <span class="unit">${each.unit}</span>` : ''));
}

function textOf(driver: Driver | undefined, field: NumberField, system: UnitSystem): string {
  const value = driver?.[field];
  if (value === undefined) return '';
  const { symbol, quantity } = parameterOf(field);
  const { number, unit } = show(value, { quantity, system });
  return `${field === 'level' ? '' : `${symbol} `}${number} ${unit}`;
}

declare global {
  interface HTMLElementTagNameMap {
    'driver-list': DriverList;
  }
}

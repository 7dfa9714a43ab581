import { LitElement, html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../document/create.ts';
import { auditOf } from '../../document/shelf/audit.ts';
import type { DriverEntry } from '../../document/shelf/entry.ts';
import { answered, type Reading, type ReadRow } from '../../document/shelf/reading.ts';
import type { UnitSystem } from '../../document/types.ts';
import { auditView } from './audit-view.ts';
import { pasteStyles } from './paste-styles.ts';
import { formStyles } from '../form-styles.ts';

/** What was typed beside one driver of the sheet. */
interface Answers {
  readonly name?: string;
  readonly rows: ReadonlyMap<number, string>;
}

const NO_ANSWERS: Answers = { rows: new Map() };

/** A datasheet pasted as text: what was understood, what is asked, what was not understood and what looks wrong, before
 *  anything is taken.
 *  @fires draft - `detail.text` as it stands now.
 *  @fires take - `detail.entries` are to be kept; with `detail.put` the one stands in the sheet, too.
 *  @fires leave - back to the list. */
@customElement('sheet-paste')
export class SheetPaste extends LitElement {
  static override styles = [formStyles, pasteStyles];

  @property() text = '';
  /** What the driver's place in the sheet is called; empty where none is selected. */
  @property() place = '';
  /** Reads a text; given by the page, so that this element knows no format. */
  @property({ attribute: false }) read: (text: string) => readonly Reading[] = () => [];
  @property() system: UnitSystem = 'metric';
  @state() private answers: readonly Answers[] = [];
  @state() private complaint = '';
  #readings: readonly Reading[] = [];

  override focus(): void {
    this.renderRoot.querySelector('textarea')?.focus();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('text') && !changed.has('read')) return;
    this.#readings = this.text.trim() === '' ? [] : this.read(this.text);
    // Answers belong to a row of the text; after a change of the text only names are sure to be meant still.
    this.answers = this.#readings.map((_, index) => {
      const name = this.answers[index]?.name;
      return name === undefined ? NO_ANSWERS : { name, rows: new Map() };
    });
  }

  protected override render(): TemplateResult {
    const found = this.#readings.filter(({ rows }) => rows.length > 0);
    return html`
      <button @click=${() => this.#fire('leave')}>Back to the list</button>
      <label class="text"
        ><span class="quiet">Paste a datasheet as text: one driver, or several in columns</span>
        <textarea
          rows="9"
          spellcheck="false"
          .value=${this.text}
          @input=${(event: Event) => {
            this.text = (event.target as HTMLTextAreaElement).value;
            this.#fire('draft', { text: this.text });
          }}
        ></textarea>
      </label>
      <p class="quiet" role="status">${this.#summary(found)}</p>
      ${this.#readings.map((reading, index) => this.#driver(reading, index))}
      <p id="complaint" class="wrong" role="alert">${this.complaint}</p>
      ${found.length === 0 ? nothing : this.#ends(found.length)}
    `;
  }

  #ends(count: number): TemplateResult {
    const isFor = count === 1 && this.place !== '';
    return html`
      ${isFor ? html`<button class="main" @click=${() => this.#take(true)}>Put it on the shelf and into ${this.place}</button>` : nothing}
      <button class=${isFor ? '' : 'main'} @click=${() => this.#take(false)}>
        ${count === 1 ? 'Put it on the shelf' : `Put these ${count} drivers on the shelf`}
      </button>
    `;
  }

  #summary(found: readonly Reading[]): string {
    if (this.text.trim() === '') return 'Nothing is taken before you have seen how it was understood.';
    if (found.length === 0) return 'No number of a driver was understood.';
    const rows = found.flatMap((each) => each.rows);
    const open = found.flatMap(({ rows }, index) => rows.filter((row, at) => row.question && !this.#answer(index, at)));
    const unread = this.#readings.reduce((sum, each) => sum + each.unread.length, 0);
    const count = (number: number, what: string): string => `${number} ${what}${number === 1 ? '' : 's'}`;
    return `${count(rows.length - open.length, 'row')} understood, ${open.length} open, ${count(unread, 'line')} not taken.`;
  }

  #answer(driver: number, row: number): string {
    return this.answers[driver]?.rows.get(row) ?? '';
  }

  #driver(reading: Reading, index: number): TemplateResult {
    const suggested = reading.rows.filter(({ question }, at) => question?.suggested && !this.#answer(index, at));
    const name = this.#nameOf(reading, index);
    const taken = answered(reading, this.answers[index]?.rows ?? new Map());
    return html`<section aria-label=${name || `Driver ${index + 1}`}>
      ${
        reading.rows.length === 0
          ? nothing
          : html`<label class="name"
                ><span class="quiet">Name</span>
                <input
                  class="driver-name"
                  autocomplete="off"
                  aria-describedby="complaint"
                  .value=${name}
                  @input=${(event: Event) => this.#change(index, { name: (event.target as HTMLInputElement).value })}
              /></label>
              ${
                name === '' && reading.heading
                  ? html`<button @click=${() => this.#change(index, { name: reading.heading ?? '' })}>
                      Call it “${reading.heading}”
                    </button>`
                  : nothing
              }
              <table>
                <thead>
                  <tr>
                    <th scope="col">Row</th>
                    <th scope="col">Understood as</th>
                    <th scope="col">As it stands in the text</th>
                  </tr>
                </thead>
                <tbody>
                  ${reading.rows.map((row, at) => this.#row(row, index, at))}
                </tbody>
              </table>
              ${
                suggested.length > 0
                  ? html`<button @click=${() => this.#suggest(reading, index)}>
                      Answer ${suggested.length} as suggested
                    </button>`
                  : nothing
              }
              ${taken.length > 0 ? auditView(auditOf({ name, rows: taken }), this.system) : nothing}`
      }
      ${
        reading.unread.length === 0
          ? nothing
          : html`<h3>Not taken</h3>
              <ul>
                ${reading.unread.map(
                  ({ line, text, why }) =>
                    html`<li><span class="found">${text}</span> <small>Line ${line}: ${why}.</small></li>`,
                )}
              </ul>`
      }
    </section>`;
  }

  #row({ label, text, remark, question, found, line }: ReadRow, driver: number, at: number): TemplateResult {
    const answer = this.#answer(driver, at);
    return html`<tr>
      <th scope="row">${label}</th>
      <td>
        ${
          question
            ? html`<span class=${answer === '' ? 'open' : 'quiet'}>${question.words}</span>
                <select
                  aria-label=${`${label}: ${question.words}`}
                  @change=${(event: Event) => this.#choose(driver, at, (event.target as HTMLSelectElement).value)}
                >
                  <option value="" ?selected=${answer === ''}>Not chosen</option>
                  ${question.choices.map(
                    (choice) =>
                      html`<option value=${choice.text} ?selected=${answer === choice.text}>
                        ${choice.text}${choice.words ? `, ${choice.words}` : ''}${
                          choice.text === question.suggested ? ' (suggested)' : ''
                        }
                      </option>`,
                  )}
                </select>`
            : text
        }
        ${remark ? html`<small>${remark}</small>` : nothing}
      </td>
      <td class="found" title=${`Line ${line}`}>${found}</td>
    </tr>`;
  }

  #nameOf(reading: Reading, index: number): string {
    return this.answers[index]?.name ?? reading.name;
  }

  #choose(driver: number, row: number, text: string): void {
    const rows = new Map(this.answers[driver]?.rows);
    rows.set(row, text);
    this.#change(driver, { rows });
  }

  #suggest({ rows }: Reading, driver: number): void {
    const answers = new Map(this.answers[driver]?.rows);
    for (const [at, { question }] of rows.entries()) {
      if (question?.suggested && !answers.get(at)) answers.set(at, question.suggested);
    }
    this.#change(driver, { rows: answers });
  }

  #change(driver: number, change: Partial<Answers>): void {
    this.complaint = '';
    this.answers = this.answers.map((each, index) => (index === driver ? { ...each, ...change } : each));
  }

  #take(put: boolean): void {
    const drivers = this.#readings.flatMap((reading, index) =>
      reading.rows.length === 0 ? [] : [{ reading, index, name: this.#nameOf(reading, index).trim() }],
    );
    const nameless = drivers.findIndex(({ name }) => name === '');
    if (nameless >= 0) {
      this.complaint = 'A driver needs a name to be found by.';
      this.renderRoot.querySelectorAll<HTMLInputElement>('.driver-name')[nameless]?.focus();
      return;
    }
    const entries = drivers.map(({ reading, index, name }): DriverEntry => ({
      id: newId(),
      name,
      rows: answered(reading, this.answers[index]?.rows ?? new Map()),
      source: 'From a pasted datasheet.',
      // Nothing that stood in it is lost, understood or not.
      tables: [{ title: 'Datasheet as pasted', text: this.text }],
      invented: false,
    }));
    this.#fire('take', { entries, put });
  }

  #fire(name: string, detail: object = {}): void {
    this.dispatchEvent(new CustomEvent(name, { detail }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'sheet-paste': SheetPaste;
  }
}

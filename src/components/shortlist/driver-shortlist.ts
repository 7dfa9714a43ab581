import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { UnitSystem } from '../../document/types.ts';
import { formStyles } from '../form-styles.ts';
import './best-rows.ts';
import type { Finding, ListedRow, PlaceChoice, RuleShown, Wanted, WishShown } from './data.ts';
import './shortlist-form.ts';
import './shortlist-rules.ts';
import './shortlist-table.ts';
import './shortlist-wish.ts';
import './trade-offs.ts';

const plural = { woofer: 'Woofers', mid: 'Mids', tweeter: 'Tweeters', sub: 'Subs', mains: 'Mains' } as const;

/** Drivers that go together under some limits: what is asked, what was found, who may take part, who has no partner and why.
 *  @fires wish - `detail.text` is what is wanted in plain words.
 *  @fires ask - `detail.wanted` is to be found.
 *  @fires take - `detail.place` and `detail.id`: a driver is to take part there, or no longer, as `detail.isTaken` says.
 *  @fires open-rows - `detail.rows` are to be opened, each as a sheet.
 *  @fires stop - It need not be looked for any longer. */
@customElement('driver-shortlist')
export class DriverShortlist extends LitElement {
  static override styles = [
    formStyles,
    css`
      shortlist-wish {
        margin-bottom: 14px;
      }
      .said {
        margin: 12px 0 4px;
        min-height: 32px;
      }
      progress {
        width: 160px;
        accent-color: var(--accent);
      }
      summary {
        cursor: pointer;
        padding: 6px 0;
      }
      details {
        border-top: 1px solid var(--line);
        margin-top: 8px;
      }
      .places {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(min(220px, 100%), 1fr));
        gap: 4px 20px;
      }
      fieldset {
        margin: 0;
        padding: 0;
        border: 0;
        min-width: 0;
      }
      legend,
      h4 {
        margin: 4px 0;
        padding: 0;
        font: 600 14px/20px var(--sans);
      }
      .choices {
        max-height: 220px;
        overflow-y: auto;
      }
      .choices label {
        display: flex;
        gap: 8px;
        align-items: center;
        min-height: 28px;
      }
    `,
  ];

  @property({ attribute: false }) wanted!: Wanted;
  @property({ attribute: false }) finding!: Finding;
  @property({ attribute: false }) places: readonly PlaceChoice[] = [];
  @property({ attribute: false }) rules: readonly RuleShown[] = [];
  @property() wish = '';
  @property({ attribute: false }) taken: WishShown | undefined;
  @property() system: UnitSystem = 'metric';
  /** A shelf may hold thousands, so that they are drawn only where they are looked at. */
  @state() private isChoosing = false;

  /** Into the line for the wish, as soon as it is drawn. */
  override focus(): void {
    const begin = async (): Promise<void> => {
      await this.updateComplete;
      const form = this.renderRoot.querySelector('shortlist-wish');
      await form?.updateComplete;
      form?.focus();
    };
    void begin();
  }

  protected override render(): TemplateResult {
    const { rows, best, front, said, nearest = [], wrong, progress } = this.finding;
    return html`<shortlist-wish text=${this.wish} .taken=${this.taken} @wish=${this.#pass}></shortlist-wish>
      <shortlist-form .wanted=${this.wanted} @ask=${this.#pass}></shortlist-form>
      ${this.#rules()}
      <div class="bar said">
        <span role="status" class=${wrong === undefined ? '' : 'wrong'}>${wrong ?? said}</span>
        ${
          progress === undefined
            ? nothing
            : html`<progress max="1" .value=${progress} aria-label="Looked at"></progress>
                <button @click=${() => this.dispatchEvent(new CustomEvent('stop'))}>Stop</button>`
        }
      </div>
      ${
        nearest.length === 0
          ? nothing
          : html`<ul aria-label="Nearest">
              ${nearest.map((each) => html`<li>${each}</li>`)}
            </ul>`
      }
      ${best.length === 0 ? nothing : html`<best-rows .best=${best} @open-rows=${this.#pass}></best-rows>`}
      ${
        rows.length === 0
          ? nothing
          : html`<h3>All that were found</h3>
              <shortlist-table .rows=${rows} system=${this.system} @open-row=${this.#openRow}></shortlist-table>`
      }
      ${
        front.length < 2
          ? nothing
          : html`<details open>
              <summary>Best trade-offs: ${front.length} that no other beats in window, level, reach and price</summary>
              <trade-offs .rows=${front} system=${this.system} @open-row=${this.#openRow}></trade-offs>
            </details>`
      }
      ${this.#alone()} ${this.#choices()}
      <p class="quiet">
        The verdict is on the shared window and, with subs, on their levels: load, pad and the rest the sheets judge.
        ${
          this.wanted.ways === 'subs'
            ? 'The mains stand in closed boxes. Reach is the lowest note that the subs play at their level, by travel, heat and the air in a port whose area is given; a room adds to it.'
            : 'Reach is the 3 dB point in the box. How loud the deepest notes can be, and what room the mid needs behind it, the sheets tell.'
        }
        Boxes are as flat as the Qts allows, or closed with the Qtc of the rules, where these set no other. Predicted
        from datasheets: measure before you buy. Loud music harms hearing.
      </p>`;
  }

  #rules(): TemplateResult {
    const { rules } = this.wanted;
    const own = Object.keys(rules).length;
    return html`<details>
      <summary>Rules: ${own === 0 ? 'the usual ones of the sheets' : `${own} of your own`}</summary>
      <p class="quiet">
        Common practice, no law: set each as you see it. They go with the pair into its sheet. One that is emptied is
        the usual again.
      </p>
      <shortlist-rules
        .rules=${this.rules}
        .typed=${rules}
        @rules=${(event: CustomEvent<{ rules: Wanted['rules'] }>) =>
          this.dispatchEvent(
            new CustomEvent('ask', { detail: { wanted: { ...this.wanted, rules: event.detail.rules } } }),
          )}
      ></shortlist-rules>
    </details>`;
  }

  #alone(): TemplateResult | typeof nothing {
    const alone = this.finding.alone.filter(({ drivers }) => drivers.length > 0);
    const count = alone.reduce((sum, { drivers }) => sum + drivers.length, 0);
    if (count === 0) return nothing;
    return html`<details ?open=${this.finding.rows.length === 0}>
      <summary>Without a partner: ${count}, and why</summary>
      ${alone.map(
        ({ place, drivers }) =>
          html`<h4>${plural[place]}</h4>
            <ul>
              ${drivers.map(({ name, why }) => html`<li><b>${name}</b>: ${why}</li>`)}
            </ul>`,
      )}
    </details>`;
  }

  #choices(): TemplateResult {
    const taken = this.places.map(
      ({ place, drivers }) => `${drivers.filter(({ isTaken }) => isTaken).length} ${plural[place].toLowerCase()}`,
    );
    return html`<details @toggle=${(event: Event) => (this.isChoosing = (event.target as HTMLDetailsElement).open)}>
      <summary>Who takes part: ${taken.join(', ')}</summary>
      ${this.isChoosing ? this.#places() : nothing}
    </details>`;
  }

  #places(): TemplateResult {
    return html` <p class="quiet">
        Guessed from resonance, size and first break-up. Tick otherwise as you like; drivers of your own come from the
        shelf.
      </p>
      <div class="places">
        ${this.places.map(
          ({ place, drivers }) =>
            html`<fieldset>
              <legend>${plural[place]}</legend>
              <div class="choices">
                ${drivers.map(
                  ({ id, name, isTaken }) =>
                    html`<label
                      ><input
                        type="checkbox"
                        .checked=${isTaken}
                        @change=${(event: Event) => this.#take(place, id, (event.target as HTMLInputElement).checked)}
                      />${name}</label
                    >`,
                )}
              </div>
            </fieldset>`,
        )}
      </div>`;
  }

  #take(place: PlaceChoice['place'], id: string, isTaken: boolean): void {
    this.dispatchEvent(new CustomEvent('take', { detail: { place, id, isTaken } }));
  }

  #openRow = (event: CustomEvent<{ row: ListedRow }>): void => {
    this.dispatchEvent(new CustomEvent('open-rows', { detail: { rows: [event.detail.row] } }));
  };

  #pass = (event: CustomEvent): void => {
    this.dispatchEvent(new CustomEvent(event.type, { detail: event.detail }));
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'driver-shortlist': DriverShortlist;
  }
}

import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { UnitSystem } from '../../document/types.ts';
import { shelfStyles } from '../shelf/styles.ts';
import type { Finding, PlaceChoice, Wanted } from './data.ts';
import './shortlist-form.ts';
import './shortlist-table.ts';
import './trade-offs.ts';

const plural = { woofer: 'Woofers', mid: 'Mids', tweeter: 'Tweeters' } as const;

/** Drivers that go together under some limits: what is asked, what was found, who may take part, who has no partner and why.
 *  @fires ask - `detail.wanted` is to be found.
 *  @fires take - `detail.place` and `detail.id`: a driver is to take part there, or no longer, as `detail.isTaken` says.
 *  @fires open-row - `detail.row` is to be opened as a sheet.
 *  @fires stop - It need not be looked for any longer. */
@customElement('driver-shortlist')
export class DriverShortlist extends LitElement {
  static override styles = [
    shelfStyles,
    css`
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
  @property() system: UnitSystem = 'metric';

  /** Into the first gap, as soon as it is drawn. */
  override focus(): void {
    const begin = async (): Promise<void> => {
      await this.updateComplete;
      const form = this.renderRoot.querySelector('shortlist-form');
      await form?.updateComplete;
      form?.focus();
    };
    void begin();
  }

  protected override render(): TemplateResult {
    const { rows, front, said, wrong, progress } = this.finding;
    return html`<shortlist-form .wanted=${this.wanted} @ask=${this.#pass}></shortlist-form>
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
        rows.length === 0
          ? nothing
          : html`<shortlist-table .rows=${rows} system=${this.system} @open-row=${this.#pass}></shortlist-table>`
      }
      ${
        front.length < 2
          ? nothing
          : html`<details open>
              <summary>Best trade-offs: ${front.length} that no other beats in window, level, reach and price</summary>
              <trade-offs .rows=${front} system=${this.system} @open-row=${this.#pass}></trade-offs>
            </details>`
      }
      ${this.#alone()} ${this.#choices()}
      <p class="quiet">
        Judged by the usual rules of the two-driver check (common practice): hand-over at 2 × Fs or above, 70 % of the
        travel at the level asked (100 dB where none is), 3 dB loss at 45°, half the first break-up, one wavelength
        between centres. The verdict is on the shared window alone: load, pad and the rest the sheets judge. Reach is
        the 3 dB point in a vented box as flat as the Qts allows, or a closed one with a Qtc of 0.707. How loud the
        deepest notes can be, and what room the mid needs behind it, the sheets tell. Predicted from data sheets:
        measure before you buy. Loud music harms hearing.
      </p>`;
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
    return html`<details>
      <summary>Who takes part: ${taken.join(', ')}</summary>
      <p class="quiet">
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
      </div>
    </details>`;
  }

  #take(place: PlaceChoice['place'], id: string, isTaken: boolean): void {
    this.dispatchEvent(new CustomEvent('take', { detail: { place, id, isTaken } }));
  }

  #pass = (event: CustomEvent): void => {
    this.dispatchEvent(new CustomEvent(event.type, { detail: event.detail }));
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'driver-shortlist': DriverShortlist;
  }
}

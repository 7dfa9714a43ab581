import { LitElement, css, html, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { formStyles } from '../form-styles.ts';
import type { Wanted } from './data.ts';

const boxes = ['vented', 'closed'] as const;

/** What a pair or a team must keep, as one sentence with gaps, and what ranks it. An empty gap asks nothing.
 *  @fires ask - `detail.wanted` is what stands there now. */
@customElement('shortlist-form')
export class ShortlistForm extends LitElement {
  static override shadowRootOptions: ShadowRootInit = { ...LitElement.shadowRootOptions, delegatesFocus: true };
  static override styles = [
    formStyles,
    css`
      form {
        display: grid;
        gap: 8px;
      }
      .sentence {
        display: flex;
        flex-wrap: wrap;
        gap: 8px;
        align-items: center;
        margin: 0;
        max-width: none;
      }
      .sentence label {
        display: inline-flex;
        gap: 8px;
        align-items: center;
        white-space: nowrap;
      }
      .sentence input:not([type='checkbox']) {
        width: 92px;
      }
      .sentence select {
        width: auto;
      }
      .sentence .wide {
        flex: 1 1 320px;
      }
      .sentence .wide input:not([type='checkbox']) {
        width: auto;
        flex: 1 1 200px;
        font-family: var(--mono);
      }
    `,
  ];

  @property({ attribute: false }) wanted!: Wanted;

  protected override render(): TemplateResult {
    const { ways, price, reach, plays, ranking } = this.wanted;
    const isSubs = ways === 'subs';
    return html`<form @change=${this.#ask} @submit=${this.#submit}>
      <div class="sentence">
        <label
          >A
          <select name="ways">
            <option value="2" .selected=${ways === 2}>two-way</option>
            <option value="3" .selected=${ways === 3}>three-way</option>
            <option value="subs" .selected=${isSubs}>pair of mains with subs</option>
          </select></label
        >
        <label>under <input name="price" autocomplete="off" placeholder="any price" .value=${price} /></label>
        <label
          >${isSubs ? 'for all drivers' : 'for a pair'}, that reaches
          <input name="reach" autocomplete="off" placeholder="any depth" .value=${reach}
        /></label>
        <label
          >${isSubs ? 'with the subs in' : 'in a'}
          <select name="box">
            ${boxes.map((each) => html`<option .selected=${each === this.#box}>${each}</option>`)}
          </select>
          ${isSubs ? 'boxes' : 'box'}</label
        >
        <label
          >and plays <input name="plays" autocomplete="off" placeholder="any level" .value=${plays} /> at 1 m</label
        >
      </div>
      <div class="sentence">
        <label class="wide"
          >ranked by
          <input name="ranking" autocomplete="off" spellcheck="false" .value=${ranking} aria-describedby="names"
        /></label>
      </div>
      <small id="names"
        >The ranking may name window, stretched (octaves), level, plays, pad (dB), price (a pair), reach, resonance (Hz)
        and ohms; the larger the result, the better. For mains with subs the pad is how much louder the subs are.</small
      >
    </form>`;
  }

  get #box(): (typeof boxes)[number] {
    return this.wanted.box ?? (this.wanted.ways === 'subs' ? 'closed' : 'vented');
  }

  #submit = (event: Event): void => {
    event.preventDefault();
    this.#ask();
  };

  #ask = (): void => {
    const form = this.renderRoot.querySelector('form');
    if (!form) return;
    const read = new FormData(form);
    const text = (name: string): string => {
      const held = read.get(name);
      return typeof held === 'string' ? held.trim() : '';
    };
    const wanted: Wanted = {
      ...this.wanted,
      ways: text('ways') === 'subs' ? 'subs' : text('ways') === '3' ? 3 : 2,
      price: text('price'),
      reach: text('reach'),
      // What only stood there as the usual one was not asked for.
      box: text('box') === this.#box ? this.wanted.box : boxes.find((each) => each === text('box')),
      plays: text('plays'),
      ranking: text('ranking'),
    };
    this.dispatchEvent(new CustomEvent('ask', { detail: { wanted } }));
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'shortlist-form': ShortlistForm;
  }
}

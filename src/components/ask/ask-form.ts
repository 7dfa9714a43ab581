import { LitElement, html, type TemplateResult } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import { formStyles } from '../form-styles.ts';
import { kinds, type Choices, type Kind, type Wish } from './data.ts';
import {
  addField,
  cellField,
  endFields,
  givenField,
  resultField,
  targetField,
  textField,
  tickField,
  wordField,
} from './fields.ts';
import { bestFields, cheapestFields, combineFields } from './many-fields.ts';
import { askStyles } from './styles.ts';

const acts: Readonly<Record<Kind, string>> = {
  seek: 'Find',
  best: 'Find',
  cheapest: 'Find',
  combine: 'Compute',
  sweep: 'Draw',
  map: 'Draw',
  scatter: 'Run',
  drives: 'Show',
  follows: 'Show',
};

/** A question over a sheet: a line in plain words, and the same as choices.
 *  @fires read - `detail.sentence` is a question in plain words.
 *  @fires wish - The form changed; `detail.wish`.
 *  @fires spread - `detail.id` is to spread too.
 *  @fires vary - `detail.id` may be set too.
 *  @fires ask - What stands in the form is asked. */
@customElement('ask-form')
export class AskForm extends LitElement {
  static override styles = [formStyles, askStyles];

  @property({ attribute: false }) wish!: Wish;
  @property({ attribute: false }) choices!: Choices;
  @query('.line input') private line!: HTMLInputElement;

  /** Whether something is being typed that is not told yet. */
  get isTyping(): boolean {
    return this.shadowRoot?.activeElement?.matches('.fields input') === true;
  }

  override focus(): void {
    void this.updateComplete.then(() => this.line.focus());
  }

  protected override render(): TemplateResult {
    const { wish } = this;
    return html`<form class="line" @submit=${this.#read}>
        <label
          >In plain words
          <input
            autocomplete="off"
            spellcheck="false"
            placeholder="which litres give Qtc 0.707?"
            aria-describedby="words"
        /></label>
        <button>Ask</button>
        <small id="words"
          >Name a number to reach, or say “good”: which Xmax makes every verdict good at 106 dB? Also: smallest box that
          keeps every verdict, or with F3 below 50 Hz; flattest response between 50 Hz and 200 Hz by volume; cheapest
          change at 106 dB. What was understood stands below, to be changed.</small
        >
      </form>
      <fieldset class="kinds">
        <legend class="quiet">Or choose</legend>
        ${(Object.entries(kinds) as [Kind, string][]).map(
          ([kind, words]) =>
            html`<label
              ><input
                type="radio"
                name="kind"
                .checked=${kind === wish.kind}
                @change=${() => this.#wish({ kind })}
              />${words}</label
            >`,
        )}
      </fieldset>
      <form class="fields" @submit=${this.#ask}>
        ${this.#fields()}<button class="main">${acts[wish.kind]}</button>
      </form>`;
  }

  #fields(): TemplateResult {
    const { wish, choices } = this;
    const change = this.#wish;
    const steps = (label: string): TemplateResult => textField(label, wish.steps, (value) => change({ steps: value }));
    const result = (): TemplateResult => resultField('Result', choices, wish, change);
    const many = { wish, choices, change, vary: (id: string) => this.#tell('vary', { id }) };
    switch (wish.kind) {
      case 'seek':
        return html`${result()}
        ${
          choices.isVerdict
            ? wordField(
                'Shall be',
                { good: 'good', clear: 'clear of failure' },
                wish.target === 'clear' ? 'clear' : 'good',
                (target) => change({ target }),
              )
            : targetField(choices, wish, change)
        }
        ${this.#moved('By moving', 'input')} ${givenField(wish, change)}`;
      case 'best':
        return bestFields(many);
      case 'cheapest':
        return cheapestFields(many);
      case 'combine':
        return combineFields(many);
      case 'sweep':
        return html`${this.#moved('Move', 'input')} ${steps('Values')} ${result()}
        ${tickField('every number of the sheet in the table', wish.isWhole, (isWhole) => change({ isWhole }))}`;
      case 'map':
        return html`${this.#moved('Across', 'input')} ${this.#moved('Upwards', 'second')} ${steps('Points each way')}
        ${result()}`;
      case 'scatter':
        return html`${result()} ${textField('Runs', wish.runs, (runs) => change({ runs }))}
        ${textField('Seed', wish.seed, (seed) => change({ seed }))} ${this.#spreads()}`;
      case 'drives':
        return result();
      case 'follows':
        return cellField('Input', choices.inputs, wish.input.id, (id) => change({ input: { id, from: '', to: '' } }));
    }
  }

  #moved(label: string, field: 'input' | 'second'): TemplateResult {
    const moved = this.wish[field];
    return html`${cellField(label, this.choices.inputs, moved.id, (id) =>
      this.#wish({ [field]: { id, from: '', to: '' } }),
    )}
    ${endFields(label, moved, (end) => this.#wish({ [field]: { ...moved, ...end } }))}`;
  }

  #spreads(): TemplateResult {
    const { spreads } = this.wish;
    const without = (id: string): Wish['spreads'] => spreads.filter((each) => each.id !== id);
    return html`${spreads.map(
      (spread) =>
        html`<fieldset>
          <legend>${spread.label}: one standard deviation</legend>
          <div class="bar">
            ${spread.texts.map(({ name, label, text }) =>
              textField(
                label,
                text,
                (typed) => {
                  const texts = spread.texts.map((each) => (each.name === name ? { ...each, text: typed } : each));
                  this.#wish({ spreads: spreads.map((each) => (each.id === spread.id ? { ...spread, texts } : each)) });
                },
                `${spread.label}, ${label}`,
              ),
            )}
            <button
              type="button"
              aria-label=${`Leave out ${spread.label}`}
              @click=${() => this.#wish({ spreads: without(spread.id) })}
            >
              Leave out
            </button>
          </div>
        </fieldset>`,
    )}
    ${addField('Spreads too', this.choices.spreads, (id) => this.#tell('spread', { id }))}`;
  }

  #wish = (change: Partial<Wish>): void => this.#tell('wish', { wish: { ...this.wish, ...change } });

  #tell(what: string, detail: object): void {
    this.dispatchEvent(new CustomEvent(what, { detail }));
  }

  #read = (event: Event): void => {
    event.preventDefault();
    this.#tell('read', { sentence: this.line.value });
  };

  #ask = (event: Event): void => {
    event.preventDefault();
    this.#tell('ask', {});
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'ask-form': AskForm;
  }
}

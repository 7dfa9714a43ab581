import { LitElement, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import { shelfStyles } from '../shelf/styles.ts';
import { kinds, type CellChoice, type Choices, type Kind, type Moved, type Wish } from './data.ts';
import { askStyles } from './styles.ts';

const acts: Readonly<Record<Kind, string>> = {
  seek: 'Find',
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
 *  @fires ask - What stands in the form is asked. */
@customElement('ask-form')
export class AskForm extends LitElement {
  static override styles = [shelfStyles, askStyles];

  @property({ attribute: false }) wish!: Wish;
  @property({ attribute: false }) choices!: Choices;
  @query('.line input') private line!: HTMLInputElement;

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
          >Name a number to reach, or say “good”: which Xmax makes every verdict good at 106 dB? What was understood
          stands below, to be changed.</small
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
    switch (wish.kind) {
      case 'seek':
        return html`${this.#result()} ${this.#target()} ${this.#moved('By moving', wish.input, 'input')}
        ${
          wish.given === ''
            ? nothing
            : html`<span class="bar"
                >with ${wish.given}
                <button type="button" @click=${() => this.#wish({ given: '' })}>Leave that out</button></span
              >`
        }`;
      case 'sweep':
        return html`${this.#moved('Move', wish.input, 'input')} ${this.#text('Values', wish.steps, 'steps')}
          ${this.#result()}
          <label class="tick"
            ><input
              type="checkbox"
              .checked=${wish.isWhole}
              @change=${(event: Event) => this.#wish({ isWhole: (event.target as HTMLInputElement).checked })}
            />
            every number of the sheet in the table</label
          >`;
      case 'map':
        return html`${this.#moved('Across', wish.input, 'input')} ${this.#moved('Upwards', wish.second, 'second')}
        ${this.#text('Points each way', wish.steps, 'steps')} ${this.#result()}`;
      case 'scatter':
        return html`${this.#result()} ${this.#text('Runs', wish.runs, 'runs')} ${this.#text('Seed', wish.seed, 'seed')}
        ${this.#spreads()}`;
      case 'drives':
        return this.#result();
      case 'follows':
        return this.#select('Input', choices.inputs, wish.input.id, (id) =>
          this.#wish({ input: { id, from: '', to: '' } }),
        );
    }
  }

  #result(): TemplateResult {
    return this.#select('Result', this.choices.results, this.wish.result, (result) =>
      this.#wish({ result, target: '' }),
    );
  }

  #target(): TemplateResult {
    const { wish, choices } = this;
    if (!choices.isVerdict)
      return this.#text(choices.unit === '' ? 'Shall be' : `Shall be, in ${choices.unit}`, wish.target, 'target');
    return html`<label
      >Shall be
      <select @change=${(event: Event) => this.#wish({ target: (event.target as HTMLSelectElement).value })}>
        <option value="good" ?selected=${wish.target !== 'clear'}>good</option>
        <option value="clear" ?selected=${wish.target === 'clear'}>clear of failure</option>
      </select></label
    >`;
  }

  #moved(label: string, moved: Moved, field: 'input' | 'second'): TemplateResult {
    return html`${this.#select(label, this.choices.inputs, moved.id, (id) =>
      this.#wish({ [field]: { id, from: '', to: '' } }),
    )}
    ${(['from', 'to'] as const).map(
      (end) =>
        html`<label class="short"
          >${end}
          <input
            autocomplete="off"
            aria-label=${`${label}, ${end}`}
            .value=${moved[end]}
            @change=${(event: Event) =>
              this.#wish({ [field]: { ...moved, [end]: (event.target as HTMLInputElement).value } })}
        /></label>`,
    )}`;
  }

  #text(label: string, value: string, field: 'target' | 'steps' | 'runs' | 'seed'): TemplateResult {
    return html`<label class="short"
      >${label}
      <input
        autocomplete="off"
        .value=${value}
        @change=${(event: Event) => this.#wish({ [field]: (event.target as HTMLInputElement).value })}
    /></label>`;
  }

  #select(
    label: string,
    options: readonly CellChoice[],
    present: string,
    choose: (id: string) => void,
  ): TemplateResult {
    const groups = [...new Set(options.map(({ group }) => group))];
    return html`<label
      >${label}
      <select @change=${(event: Event) => choose((event.target as HTMLSelectElement).value)}>
        ${groups.map(
          (group) =>
            html`<optgroup label=${group}>
              ${options
                .filter((each) => each.group === group)
                .map(({ id, label: words }) => html`<option value=${id} ?selected=${id === present}>${words}</option>`)}
            </optgroup>`,
        )}
      </select></label
    >`;
  }

  #spreads(): TemplateResult {
    const { spreads } = this.wish;
    const without = (id: string): Wish['spreads'] => spreads.filter((each) => each.id !== id);
    return html`${spreads.map(
      (spread) =>
        html`<fieldset>
          <legend>${spread.label}: one standard deviation</legend>
          <div class="bar">
            ${spread.texts.map(
              ({ name, label, text }) =>
                html`<label class="short"
                  >${label}
                  <input
                    autocomplete="off"
                    aria-label=${`${spread.label}, ${label}`}
                    .value=${text}
                    @change=${(event: Event) => {
                      const typed = (event.target as HTMLInputElement).value;
                      const texts = spread.texts.map((each) => (each.name === name ? { ...each, text: typed } : each));
                      this.#wish({
                        spreads: spreads.map((each) => (each.id === spread.id ? { ...spread, texts } : each)),
                      });
                    }}
                /></label>`,
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
    ${this.#select(
      'Spreads too',
      [{ id: '', label: 'Choose…', group: 'Add' }, ...this.choices.spreads],
      '',
      (id) => id !== '' && this.dispatchEvent(new CustomEvent('spread', { detail: { id } })),
    )}`;
  }

  #wish(change: Partial<Wish>): void {
    this.dispatchEvent(new CustomEvent('wish', { detail: { wish: { ...this.wish, ...change } } }));
  }

  #read = (event: Event): void => {
    event.preventDefault();
    this.dispatchEvent(new CustomEvent('read', { detail: { sentence: this.line.value } }));
  };

  #ask = (event: Event): void => {
    event.preventDefault();
    this.dispatchEvent(new CustomEvent('ask'));
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'ask-form': AskForm;
  }
}

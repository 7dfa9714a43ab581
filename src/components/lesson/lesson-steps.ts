import { LitElement, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { shownText } from '../../document/show-cell.ts';
import { unbroken } from '../../units/show.ts';
import '../drawing/cell-plot.ts';
import { formStyles } from '../form-styles.ts';
import '../plot/curve-plot.ts';
import '../plot/window-plot.ts';
import '../verdict-chip/verdict-chip.ts';
import type { LessonInput, LessonStep } from './data.ts';
import { lessonStyles } from './styles.ts';

/** A lesson, one step at a time: guess, reveal, why, next. A step is answered once its guess stands in its cell; the answer can
 *  be seen without a guess, too.
 *  @fires answer - `detail.text` was given for `detail.cell`.
 *  @fires again - All guesses are to be taken away.
 *  @fires finish - The reader is through, or wants to see the sheet. */
@customElement('lesson-steps')
export class LessonSteps extends LitElement {
  static override styles = [formStyles, lessonStyles];

  @property({ attribute: false }) steps: readonly LessonStep[] = [];
  /** The step that is shown, from 0; the first without a guess where none was chosen. */
  @state() private chosen: number | undefined;
  @state() private peeked: ReadonlySet<number> = new Set();

  get #at(): number {
    const open = this.steps.findIndex(({ guess }) => guess.text === '');
    return this.chosen ?? (open < 0 ? this.steps.length - 1 : open);
  }

  protected override willUpdate(): void {
    // From then on the reader leads: an answered step stays in view.
    if (this.chosen === undefined && this.steps.length > 0) this.chosen = this.#at;
  }

  protected override render(): TemplateResult | typeof nothing {
    const at = this.#at;
    const step = this.steps[at];
    if (!step) return nothing;
    const isOpen = step.guess.text !== '' || this.peeked.has(at);
    return html`<nav aria-label="Steps">
        ${this.steps.map(
          ({ title, guess }, index) =>
            html`<button
              class=${guess.text === '' ? '' : 'answered'}
              aria-current=${index === at ? 'step' : nothing}
              aria-label="Step ${index + 1}: ${title}${guess.text === '' ? '' : ', answered'}"
              @click=${() => this.#show(index)}
            >
              ${index + 1}
            </button>`,
        )}
      </nav>
      <p class="place">Step ${at + 1} of ${this.steps.length}</p>
      <h3 tabindex="-1">${step.title}</h3>
      <p>${step.text}</p>
      ${step.asked.map((input) => this.#input(input, false))}
      <form @submit=${(event: Event) => this.#guess(event, step)}>
        ${this.#input(step.guess, true)}
        <button type="submit" class=${isOpen ? '' : 'main'}>${step.guess.text === '' ? 'Guess' : 'Guess again'}</button>
        ${isOpen ? nothing : html`<button type="button" @click=${() => this.#peek(at)}>Show me</button>`}
      </form>
      <div role="status">${isOpen ? this.#answer(step) : nothing}</div>
      ${this.#foot(at, isOpen)}`;
  }

  #input(input: LessonInput, isGuess: boolean): TemplateResult {
    const label = isGuess ? 'Your guess' : input.label;
    if (input.choices) {
      return html`<label class=${isGuess ? 'guess' : 'asked'}
        >${label}
        <select name=${input.cell} @change=${isGuess ? nothing : (event: Event) => this.#asked(event, input)}>
          ${isGuess && input.text === '' ? html`<option value="">choose</option>` : nothing}
          ${input.choices.map((choice) => html`<option ?selected=${choice === input.text}>${choice}</option>`)}
        </select></label
      >`;
    }
    const unit = input.unit === '' ? '' : ` in ${input.unit}`;
    return html`<label class="guess"
      >${label}${unit}<input name=${input.cell} .value=${input.text} autocomplete="off" inputmode="text"
    /></label>`;
  }

  #answer({ reveal, why, next, curves, window, drawing }: LessonStep): TemplateResult {
    return html`<dl>
        ${reveal.map(
          ({ label, shown }) =>
            html`<div>
              <dt>${label}</dt>
              <dd>
                ${
                  shown.kind === 'verdict'
                    ? html`<verdict-chip status=${shown.status} word=${shown.word}></verdict-chip>
                        ${unbroken(shown.reason)}`
                    : shownText(shown)
                }
              </dd>
            </div>`,
        )}
      </dl>
      ${curves ? html`<curve-plot .data=${curves}></curve-plot>` : nothing}
      ${window ? html`<window-plot .data=${window}></window-plot>` : nothing}
      ${drawing ? html`<cell-plot .data=${drawing}></cell-plot>` : nothing}
      <h3 class="why">Why</h3>
      <p>${why}</p>
      <p class="next">${next}</p>`;
  }

  #foot(at: number, isOpen: boolean): TemplateResult {
    const isLast = at === this.steps.length - 1;
    const isThrough = this.steps.every(({ guess }) => guess.text !== '');
    return html`<div class="foot">
      <button ?disabled=${at === 0} @click=${() => this.#show(at - 1)}>Back</button>
      ${this.steps.some(({ guess }) => guess.text !== '') ? html`<button @click=${this.#again}>Begin again</button>` : nothing}
      <span></span>
      ${
        isLast
          ? html`<button class=${isOpen ? 'main' : ''} @click=${() => this.#fire('finish', {})}>
              ${isThrough ? 'Finish' : 'Leave'}
            </button>`
          : html`<button class=${isOpen ? 'main' : ''} @click=${() => this.#show(at + 1)}>
              ${isOpen ? 'Next' : 'Skip'}
            </button>`
      }
    </div>`;
  }

  #show(index: number): void {
    this.chosen = index;
    void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>('h3')?.focus());
  }

  #peek(at: number): void {
    this.peeked = new Set([...this.peeked, at]);
  }

  #guess(event: Event, { guess }: LessonStep): void {
    event.preventDefault();
    const field = this.renderRoot.querySelector<HTMLInputElement | HTMLSelectElement>(`[name="${guess.cell}"]`);
    const text = field?.value.trim() ?? '';
    if (text === '') field?.focus();
    else this.#fire('answer', { cell: guess.cell, text, unit: guess.unit });
  }

  #asked(event: Event, { cell, unit }: LessonInput): void {
    this.#fire('answer', { cell, unit, text: (event.target as HTMLSelectElement).value });
  }

  readonly #again = (): void => {
    this.peeked = new Set();
    this.#fire('again', {});
    this.#show(0);
  };

  #fire(name: string, detail: object): void {
    this.dispatchEvent(new CustomEvent(name, { detail }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'lesson-steps': LessonSteps;
  }
}

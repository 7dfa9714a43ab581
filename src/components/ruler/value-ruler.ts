import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { QuantityName } from '../../../functions/quantities.ts';
import type { UnitSystem } from '../../document/types.ts';
import { familyOf, textWidth } from '../plot/measure-text.ts';
import { whenDiffering } from '../plot/same-data.ts';
import { Width } from '../plot/width.ts';
import { MARGIN, rulePicture } from './rule-picture.ts';
import { decimalsOf, roundInward, type Scale, scaleOf, snap, stepAt, stepFrom } from './scale.ts';
import { Scrub } from './scrub.ts';
import { rulerStyles } from './styles.ts';
import { type Digits, digitsOf } from './digits.ts';
import { spoken } from './words.ts';

/** A window in which named checks pass; ends in SI. */
export interface RulerPass {
  readonly from: number;
  readonly to: number;
  /** "crossover checks pass". */
  readonly label: string;
}

/** What ruler events carry. */
export interface RulerDetail {
  /** SI. */
  readonly value: number;
  /** As one would type it into the cell: `2150 Hz`. */
  readonly text: string;
  readonly address: string;
}

/** Nearer than this to the needle, a press grabs the needle and does not move it. */
const GRIP = 14;

/** The number of the selected input on a rule of its plausible range, to be dragged or stepped: Left and Right a step,
 *  with Shift ten, Home and End to the ends, Enter keeps, Escape puts back.
 *  @fires input - The value moves; at most once a frame.
 *  @fires change - The value was let go, or put back to the baseline after it had been kept.
 *  @fires cancel - The value was put back before it was kept; the detail is what it was. */
@customElement('value-ruler')
export class ValueRuler extends LitElement {
  static override styles = rulerStyles;

  @property() address = '';
  @property() name = '';
  /** SI. */
  @property({ type: Number }) value = 0;
  /** The value at the baseline, SI. */
  @property({ attribute: false }) baseline: number | undefined;
  /** Ends of the rule, SI. */
  @property(whenDiffering) range: readonly [number, number] = [0, 1];
  @property() quantity: QuantityName = 'ratio';
  /** The unit of the cell. */
  @property() unit = '';
  @property() system: UnitSystem = 'metric';
  @property(whenDiffering) passes: readonly RulerPass[] = [];
  /** A step in SI; about a two-hundredth of the rule where absent. */
  @property({ attribute: false }) step: number | undefined;

  @state() private live: number | undefined;
  @state() private held = false;

  #scrub = this.#newScrub('');
  #digits: Digits = digitsOf('ratio', '', 0, 'metric');
  #scale: Scale = scaleOf(0, 1);
  /** Where "put back" leads: the baseline, or the value when the cell was selected. */
  #first: number | undefined;
  #grip = 0;
  #width = new Width(this, '.rule');

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#scrub.settle();
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('address')) {
      this.#scrub.settle();
      this.#scrub = this.#newScrub(this.address);
      this.#first = this.value;
      this.live = undefined;
    }
    if (changed.has('value') && this.#scrub.live === undefined) this.live = undefined;
    this.#digits = digitsOf(this.quantity, this.unit, this.value, this.system);
    this.#scale = scaleOf(this.#digits.of(this.range[0]), this.#digits.of(this.range[1]));
  }

  /** The value shown, in the unit shown. */
  get #now(): number {
    return this.live ?? this.#digits.of(this.value);
  }

  #stepAt(value: number): number {
    if (this.step !== undefined) return Math.abs(this.#digits.of(this.step) - this.#digits.of(0));
    const step = stepAt(this.#scale, value);
    return this.#digits.whole ? Math.max(1, step) : step;
  }

  override render(): TemplateResult {
    const { symbol } = this.#digits;
    const now = this.#now;
    const step = this.#stepAt(now);
    const before = this.baseline === undefined ? undefined : this.#digits.of(this.baseline);
    const moved = before !== undefined && Math.abs(before - now) > step * 1e-6;
    const was = moved ? this.#number(before) : undefined;
    const amount = (times: number): string => [this.#number(step * times), symbol].join(' ').trim();
    return html`
      <div class="dial">
        <div class="paper"></div>
        <div class="readout">
          <div class="name"><b>${this.address}</b><span>${this.name}</span></div>
          <div class="number">
            <strong>${this.#number(now, this.live !== undefined)}</strong>
            <span class="unit">${symbol}</span>
            ${was === undefined ? nothing : html`<span class="was">was ${was}</span>`}
          </div>
        </div>
        <div class="side">
          <div class="keys">
            <span class="hints far"><kbd>Alt</kbd><kbd>↑</kbd><kbd>↓</kbd>${amount(1)}</span>
            <span class="hints near"><kbd>←</kbd><kbd>→</kbd>${amount(1)}</span>
            <span class="hints"><kbd>Shift</kbd>${amount(10)}</span>
            <span class="hints near"><kbd>Esc</kbd>put back</span>
            <span class="buttons">
              <button type="button" aria-label="Less by ${amount(1)}" @click=${() => this.nudge(-1)}>
                − ${this.#number(step)}
              </button>
              <button type="button" aria-label="More by ${amount(1)}" @click=${() => this.nudge(1)}>
                + ${this.#number(step)}
              </button>
              <button type="button" ?disabled=${!this.#canPutBack(now)} @click=${this.#putBack}>Put back</button>
            </span>
          </div>
          <div
            class="rule"
            role="slider"
            tabindex="0"
            aria-label=${[this.name, this.address].filter(Boolean).join(', ') || 'Value'}
            aria-orientation="horizontal"
            aria-valuemin=${Math.min(this.#scale.from, now)}
            aria-valuemax=${Math.max(this.#scale.to, now)}
            aria-valuenow=${now}
            aria-valuetext=${spoken(this.#number(now), symbol) + (was === undefined ? '' : `, was ${spoken(was, '')}`)}
            @keydown=${this.#key}
            @blur=${() => this.#scrub.settle()}
            @pointerdown=${this.#grab}
            @pointermove=${this.#drag}
            @pointerup=${this.#release}
            @pointercancel=${this.#drop}
          >
            ${this.#rule(now, moved ? before : undefined)}
          </div>
        </div>
      </div>
    `;
  }

  /** The moving number keeps the decimals of the step, so that it does not jump about. */
  #number(value: number, moving = false): string {
    const needed = this.#digits.decimals(value);
    return this.#digits.number(value, moving ? Math.max(needed, decimalsOf(this.#stepAt(value))) : needed);
  }

  #rule(now: number, before: number | undefined): ReturnType<typeof rulePicture> {
    const fontFamily = familyOf(this);
    return rulePicture({
      scale: this.#scale,
      now,
      before,
      passes: this.passes.map(({ from, to, label }) => ({
        low: this.#digits.of(from),
        high: this.#digits.of(to),
        label,
      })),
      symbol: this.#digits.symbol,
      whole: this.#digits.whole,
      width: this.#width.pixels,
      number: (value) => this.#number(value),
      inward: (value, side) => this.#number(roundInward(this.#stepAt(value), value, side)),
      measure: (text) => textWidth(text, `600 12px ${fontFamily}`),
    });
  }

  #newScrub(address: string): Scrub {
    const tell = (type: string, shown: number): void => {
      const value = this.#digits.si(shown);
      const detail: RulerDetail = { value, text: this.#digits.typed(shown), address };
      this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
    };
    return new Scrub({
      input: (value) => tell('input', value),
      change: (value) => tell('change', value),
      cancel: (origin) => {
        this.live = undefined;
        tell('cancel', origin);
      },
    });
  }

  #move(value: number): void {
    this.#scrub.move(this.#digits.of(this.value), value);
    this.live = value;
  }

  /** Moves the value to the next step in a direction, or by ten; kept by itself when no further move comes. */
  nudge(direction: 1 | -1, coarse = false): void {
    const now = this.#now;
    const step = this.#stepAt(now) * (coarse ? 10 : 1);
    this.#move(stepFrom(this.#scale, now, step, direction));
    this.#scrub.settleSoon();
  }

  #canPutBack(now: number): boolean {
    const rest = this.baseline ?? this.#first;
    return this.#scrub.live !== undefined || (rest !== undefined && this.#digits.of(rest) !== now);
  }

  #putBack = (): void => {
    const rest = this.baseline ?? this.#first;
    this.held = false;
    if (this.#scrub.live !== undefined) this.#scrub.cancel();
    else if (rest !== undefined && rest !== this.value) {
      this.#move(this.#digits.of(rest));
      this.#scrub.settle();
    }
    this.requestUpdate();
  };

  #key = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const coarse = event.shiftKey;
    const scale = this.#scale;
    const actions: Readonly<Record<string, () => void>> = {
      ArrowLeft: () => this.nudge(-1, coarse),
      ArrowDown: () => this.nudge(-1, coarse),
      ArrowRight: () => this.nudge(1, coarse),
      ArrowUp: () => this.nudge(1, coarse),
      PageDown: () => this.nudge(-1, true),
      PageUp: () => this.nudge(1, true),
      Home: () => this.#goTo(scale.from),
      End: () => this.#goTo(scale.to),
      Enter: () => this.#scrub.settle(),
      Escape: this.#putBack,
    };
    const action = actions[event.key];
    if (!action) return;
    event.preventDefault();
    event.stopPropagation();
    action();
  };

  #goTo(value: number): void {
    this.#move(value);
    this.#scrub.settleSoon();
  }

  #valueUnder(event: PointerEvent): number {
    const box = (event.currentTarget as Element).getBoundingClientRect();
    const pixels = box.width - 2 * MARGIN;
    const raw = this.#scale.value((event.clientX - this.#grip - box.left - MARGIN) / pixels);
    return snap(this.#scale, raw, this.#stepAt(raw));
  }

  #grab = (event: PointerEvent): void => {
    if (event.button !== 0) return;
    const rule = event.currentTarget as HTMLElement;
    const box = rule.getBoundingClientRect();
    const needle =
      box.left + MARGIN + Math.min(Math.max(this.#scale.place(this.#now), 0), 1) * (box.width - 2 * MARGIN);
    const off = event.clientX - needle;
    this.#grip = Math.abs(off) <= GRIP ? off : 0;
    rule.setPointerCapture(event.pointerId);
    this.held = true;
    if (this.#grip === 0) this.#move(this.#valueUnder(event));
  };

  #drag = (event: PointerEvent): void => {
    if (this.held) this.#move(this.#valueUnder(event));
  };

  #release = (): void => {
    if (!this.held) return;
    this.held = false;
    this.#scrub.settle();
  };

  #drop = (): void => {
    if (!this.held) return;
    this.held = false;
    this.#scrub.cancel();
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'value-ruler': ValueRuler;
  }
}

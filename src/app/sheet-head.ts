import { LitElement, css, html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { FormulaEditor } from '../components/formula-editor/formula-editor.ts';
import type { PointStep } from '../components/formula-editor/pointing.ts';
import { extended, stepped } from '../components/grid/keys.ts';
import type { Selection } from '../components/grid/model.ts';
import type { RulerDetail, RulerPass } from '../components/ruler/value-ruler.ts';
import { isRefusal } from '../document/command.ts';
import { labelOf } from '../document/labels.ts';
import type { ShownCell } from '../document/shown.ts';
import type { Cell, Sheet } from '../document/types.ts';
import type { Workbook } from '../document/workbook.ts';
import { formatAddress, parseAddress } from '../formula/address.ts';
import { parseQuantity } from '../units/parse.ts';
import './cell-head.ts';
import { nextChoice } from './choices.ts';
import { rangeOf } from './plausible-range.ts';
import { cellsOf } from './grid/selection.ts';

/** The head of the sheet: the selected cell on its rule or in words, and below it what was typed, to be edited. */
@customElement('sheet-head')
export class SheetHead extends LitElement {
  static override styles = css`
    :host {
      display: block;
      font: 14px/20px var(--sans);
      color: var(--ink);
    }
    value-ruler {
      display: block;
      border-top: 1px solid var(--line2);
    }
    .line {
      display: flex;
      align-items: center;
      gap: 12px;
      min-height: 34px;
      padding: 0 20px;
      border-top: 1px solid var(--line2);
      background: var(--panel);
    }
    .line > label,
    .line > span.word {
      color: var(--ink2);
      font-size: 12.5px;
      white-space: nowrap;
    }
    formula-editor,
    input,
    select {
      flex: 1;
      min-width: 0;
    }
    input,
    select {
      font: 14px/20px var(--mono);
      color: var(--ink);
      background: var(--paper);
      border: 1px solid var(--line2);
      border-radius: 5px;
      padding: 3px 8px;
    }
    select {
      flex: 0 1 260px;
    }
    .finding {
      padding: 4px 20px;
      margin: 0;
      border-top: 1px solid var(--line);
      font-size: 12.5px;
      line-height: 18px;
      color: var(--caution);
      background: var(--caution-bg);
    }
    .finding.error {
      color: var(--fail);
      background: var(--fail-bg);
    }
    :focus-visible {
      outline: 2px solid var(--accent);
      outline-offset: 1px;
    }
  `;

  @property({ attribute: false }) workbook!: Workbook;
  @property({ attribute: false }) sheet!: Sheet;
  @property() cell = '';
  @property({ type: Number }) revision = 0;
  @property({ type: Boolean }) rest = false;
  /** What follows from the cell, and where on its rule the checks pass, is being found out. */
  scanning = false;
  @state() private passes: readonly RulerPass[] = [];
  @state() private feeds = 0;
  /** What the cells that an input feeds ask about it. */
  @state() private asked: readonly string[] = [];
  #scanned = '';
  /** The cells that a formula being edited points at. */
  #pointed: Selection | undefined;

  /** Begins editing the formula line, with this text instead of what is there. */
  edit(text?: string): void {
    const editor = this.renderRoot.querySelector<FormulaEditor>('formula-editor');
    if (editor && text !== undefined) editor.begin(text);
    else (editor ?? this.renderRoot.querySelector<HTMLElement>('input, select'))?.focus();
  }

  /** Moves a number by a step, or a choice to the next word. */
  nudge(direction: 1 | -1, coarse: boolean): void {
    const ruler = this.renderRoot.querySelector('value-ruler');
    const choice = nextChoice(this.#held, direction);
    if (choice !== undefined) void this.#commit(choice, 'stay');
    else ruler?.nudge(direction, coarse);
  }

  /** Takes a cell that is pointed at into the formula being edited; says whether there is one. */
  point(selection: Selection, isByKey = false): boolean {
    const editor = this.renderRoot.querySelector<FormulaEditor>('formula-editor');
    if (!editor?.isPointing) return false;
    this.#pointed = selection;
    editor.insertReference(cellsOf(selection), isByKey);
    return true;
  }

  /** What was typed stays with the cell for which it was typed, wherever the reader goes. */
  protected override willUpdate(changed: PropertyValues<this>): void {
    const sheet = changed.get('sheet')?.id ?? this.sheet.id;
    const cell = changed.get('cell') ?? this.cell;
    if (!this.hasUpdated || (sheet === this.sheet.id && cell === this.cell)) return;
    const draft = this.renderRoot.querySelector<FormulaEditor>('formula-editor')?.takeDraft();
    if (draft !== undefined) void this.#write(sheet, cell, draft);
  }

  protected override updated(): void {
    void this.#scan();
  }

  protected override render(): TemplateResult {
    const { workbook, sheet, cell } = this;
    const held = this.#held;
    const state = workbook.state(sheet.id, cell);
    // What the readout says already is not said again.
    const told = state?.value.kind === 'problem' ? state.value.message : '';
    const findings = (state?.findings ?? []).filter(({ message, fix }) => fix || message !== told);
    return html`
      ${this.#readout(held)}
      <div class="line">
        <span class="word">${held?.text.startsWith('=') ? 'Formula' : 'Entered'}</span>
        ${this.#entry(held)}
        ${this.feeds > 0 ? html`<span class="word">feeds ${this.feeds} ${this.feeds === 1 ? 'cell' : 'cells'}</span>` : nothing}
      </div>
      ${findings.map(
        ({ level, message, fix }) =>
          html`<p class="finding ${level}" role="status">${message}${fix ? html` Fix: <b>${fix}</b>` : nothing}</p>`,
      )}
      ${this.asked.map((words) => html`<p class="finding" role="status">${words}</p>`)}
    `;
  }

  get #held(): Cell | undefined {
    return this.sheet.cells.get(this.cell);
  }

  get #name(): string {
    return [...this.sheet.names].find(([, at]) => at === this.cell)?.[0] ?? '';
  }

  #readout(held: Cell | undefined): TemplateResult {
    const { workbook, sheet, cell } = this;
    const state = workbook.state(sheet.id, cell);
    const label = labelOf(sheet, cell);
    const range = held && rangeOf(held, state);
    if (this.rest && range && state?.value.kind === 'number' && state.type.kind === 'number') {
      const before = workbook.baselineState({ sheet: sheet.id, cell });
      return html`<value-ruler
        address=${cell}
        name=${label}
        .value=${state.value.value}
        .baseline=${before?.value.kind === 'number' ? before.value.value : undefined}
        .range=${range}
        quantity=${state.type.quantity ?? 'ratio'}
        unit=${parseQuantity(held.text)?.unit ?? ''}
        system=${workbook.document.system}
        .passes=${this.passes}
        @input=${this.#try}
        @change=${this.#keep}
        @cancel=${() => void workbook.cancel()}
      ></value-ruler>`;
    }
    const shown: ShownCell = workbook.shown(sheet.id, cell) ?? { kind: 'waiting', text: held?.text ?? '' };
    return html`<cell-head address=${cell} label=${label} name=${this.#name} .shown=${shown}></cell-head>`;
  }

  #entry(held: Cell | undefined): TemplateResult {
    if (held?.choices) {
      return html`<select
        aria-label="Choice for ${this.cell}"
        @change=${(event: Event) => void this.#commit((event.target as HTMLSelectElement).value, 'stay')}
      >
        ${held.choices.map((choice) => html`<option ?selected=${choice === held.text}>${choice}</option>`)}
        ${held.choices.includes(held.text) ? nothing : html`<option selected>${held.text}</option>`}
      </select>`;
    }
    if (!this.rest) {
      return html`<input
        aria-label="Text of ${this.cell}"
        .value=${held?.text ?? ''}
        @change=${(event: Event) => void this.#commit((event.target as HTMLInputElement).value, 'down')}
      />`;
    }
    return html`<formula-editor
      label="Text of ${this.cell}"
      .text=${held?.text ?? ''}
      .scope=${this.workbook.scope(this.sheet.id)}
      .sheets=${this.workbook.document.sheets}
      @point=${(event: CustomEvent<PointStep>) => this.#lead(event.detail)}
      @commit=${(event: CustomEvent<{ text: string; move: string }>) => void this.#commit(event.detail.text, event.detail.move)}
      @cancel=${() => this.#fire('committed', { move: 'stay' })}
    ></formula-editor>`;
  }

  async #commit(text: string, move: string): Promise<void> {
    const done = this.#write(this.sheet.id, this.cell, text);
    if (move !== 'leave') this.#fire('committed', { move });
    await done;
  }

  async #write(sheet: string, cell: string, text: string): Promise<void> {
    const refusal = await this.workbook.do({ kind: 'write', sheet, texts: new Map([[cell, text]]) });
    if (refusal && isRefusal(refusal)) this.#fire('refused', { message: refusal.refused });
  }

  readonly #try = (event: CustomEvent<RulerDetail>): void => {
    void this.workbook.preview({ sheet: this.sheet.id, cell: event.detail.address }, event.detail.text);
  };

  readonly #keep = (event: CustomEvent<RulerDetail>): void => {
    void this.workbook.preview({ sheet: this.sheet.id, cell: event.detail.address }, event.detail.text);
    void this.workbook.settle();
  };

  /** Finds, when the page is at rest, what follows from the cell and where on its rule all of it passes. */
  async #scan(): Promise<void> {
    const key = `${this.sheet.id}!${this.cell}@${String(this.revision)}`;
    if (!this.rest || this.#scanned === key || this.workbook.previewed) return;
    const isNew = !this.#scanned.startsWith(`${this.sheet.id}!${this.cell}@`);
    this.#scanned = key;
    if (isNew) {
      this.passes = [];
      this.feeds = 0;
    }
    this.scanning = true;
    await this.#find(key);
    if (this.#scanned === key) this.scanning = false;
  }

  async #find(key: string): Promise<void> {
    await new Promise((resolve) => setTimeout(resolve, 150));
    if (this.#scanned !== key || this.workbook.previewed) return;
    const place = { sheet: this.sheet.id, cell: this.cell };
    const { askedBy, passesOf } = await import('./after-first-paint.ts');
    const fed = await this.workbook.dependents(place);
    if (this.#scanned !== key) return;
    this.feeds = fed.length;
    this.asked = this.#held?.text.startsWith('=')
      ? []
      : fed.flatMap((each) => askedBy(this.workbook, this.sheet, each));
    const range = this.#held && rangeOf(this.#held, this.workbook.state(place.sheet, place.cell));
    if (!range || fed.length === 0) return;
    const passes = await passesOf(this.workbook, place, range, () => this.#scanned === key && !this.workbook.previewed);
    if (passes && this.#scanned === key) this.passes = passes;
  }

  /** Leads over the cells from the one that is edited, or from the one pointed at last. */
  #lead({ toward, isEdge, isExtending, isFirst }: PointStep): void {
    const { sheet } = this;
    const here = parseAddress(this.cell);
    if (!here) return;
    const from = (isFirst ? undefined : this.#pointed) ?? { anchor: here, focus: here };
    const cells = {
      ...sheet,
      cell: (row: number, column: number) => sheet.cells.get(formatAddress({ row, column })),
    };
    const to = stepped(from.focus, isEdge ? `edge-${toward}` : toward, cells, 1);
    this.point(extended(from, to, isExtending && !isFirst), true);
    this.#fire('pointed', to);
  }

  #fire(name: string, detail: object): void {
    this.dispatchEvent(new CustomEvent(name, { detail }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'sheet-head': SheetHead;
  }
}

import { LitElement, html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import type { EditorView } from '@codemirror/view';
import { catalogue } from '../../../functions/index.ts';
import { callAt } from '../../formula/call-at.ts';
import { compile } from '../../formula/compile.ts';
import type { Scope } from '../../formula/types.ts';
import { parameterWords } from '../function-guide/parameter-words.ts';
import { createEditor, isChoosing, putMarks, putText, putWord } from './editor-view.ts';
import { referenceColours } from './reference-colours.ts';
import { editorStyles } from './styles.ts';
import { suggestionsAt } from './suggestions.ts';

/** Where a move after an edit leads; `leave` is an edit kept because the reader went elsewhere. */
type Move = 'down' | 'up' | 'left' | 'right' | 'leave';

/** The line in which the text of a cell is edited: completion, the argument at hand, coloured references, findings in place.
 *  @fires commit - The text is to be kept; `detail.text`, `detail.move`.
 *  @fires cancel - The edit was taken back.
 *  @fires references - The cells that the text refers to on its own sheet, each `{ cells, colour }`; bubbles.
 *  @fires guide - The guide is wanted at a function; `detail.name`; bubbles. */
@customElement('formula-editor')
export class FormulaEditor extends LitElement {
  static override styles = editorStyles;

  @property() label = 'Formula';
  @property() text = '';
  @property({ attribute: false }) scope: Scope | undefined;
  @property({ attribute: false }) sheets: readonly { readonly name: string }[] = [];
  @state() private position = 0;
  @state() private draft: string | undefined;
  @query('.field') private field!: HTMLElement;
  #view: EditorView | undefined;
  #word: { readonly from: number; readonly to: number } | undefined;
  #pointed = false;
  #told = '';

  override focus(): void {
    this.#view?.focus();
    this.#view?.dispatch({ selection: { anchor: this.#view.state.doc.length } });
  }

  /** Begins an edit with this text in place of what is there. */
  begin(text: string): void {
    if (!this.#view) return;
    putText(this.#view, text);
    this.draft = text;
    this.focus();
  }

  /** What was typed and not yet committed; it counts as taken then. */
  takeDraft(): string | undefined {
    const { draft } = this;
    this.draft = undefined;
    return draft === this.text ? undefined : draft;
  }

  /** Whether a reference can stand where the caret is: a click on a cell then means that cell. */
  get isPointing(): boolean {
    if (this.draft === undefined || !this.draft.startsWith('=')) return false;
    return this.#word !== undefined || /[=+\-*/^&<>(,;:]\s*$/.test(this.draft.slice(0, this.position));
  }

  /** Writes a reference at the caret; one after another replaces it. */
  insertReference(cells: string): void {
    if (!this.#view) return;
    const { from, to } = this.#word ?? { from: this.position, to: this.position };
    putWord(this.#view, from, to, cells);
    this.#word = { from, to: from + cells.length };
    // The press that pointed takes the focus to the sheet after this; it comes back at once.
    this.#pointed = true;
    setTimeout(() => {
      this.#pointed = false;
      this.#view?.focus();
    });
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#view?.destroy();
    this.#view = undefined;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    if (this.hasUpdated) this.#create();
  }

  protected override firstUpdated(): void {
    this.#create();
  }

  protected override updated(changed: PropertyValues<this>): void {
    const view = this.#view;
    if (!view) return;
    if (
      (changed.has('text') || changed.has('label')) &&
      this.draft === undefined &&
      view.state.doc.toString() !== this.text
    )
      putText(view, this.text);
    view.contentDOM.setAttribute('aria-label', this.label);
    this.#mark();
  }

  protected override render(): TemplateResult {
    return html`<div class="field" @focusout=${this.#left}></div>
      ${this.#hint()}`;
  }

  #create(): void {
    this.#view = createEditor(this.field, this.renderRoot as ShadowRoot, {
      label: () => this.label,
      changed: (text, position, byReader) => {
        if (byReader) this.draft = text;
        this.#word = undefined;
        this.position = position;
      },
      commit: (move) => this.#commit(move),
      cancel: () => this.#cancel(),
      guide: () => this.#guide(),
      suggest: (text, position) =>
        this.scope &&
        suggestionsAt(
          text,
          position,
          this.scope,
          this.sheets.map(({ name }) => name),
        ),
    });
    putText(this.#view, this.text);
  }

  #hint(): TemplateResult | typeof nothing {
    if (this.draft === undefined || (this.#view && isChoosing(this.#view))) return nothing;
    const call = callAt(this.draft, this.position);
    const definition = this.draft.startsWith('=') && catalogue.find(({ name }) => name === call?.name);
    if (!call || !definition) return nothing;
    const parameters = Object.entries(definition.parameters);
    const at = Math.min(call.argument, parameters.length - 1);
    const current = parameters[at];
    return html`<div class="hint">
      <p>
        <code
          >${definition.name}(${parameters.map(([name], index) => html`${index > 0 ? ', ' : ''}${index === at ? html`<b>${name}</b>` : name}`)})</code
        >
        <button tabindex="-1" @mousedown=${(event: Event) => event.preventDefault()} @click=${() => this.#guide()}>
          Guide, F1
        </button>
      </p>
      ${current ? html`<p>${current[1].summary}: ${parameterWords(current[1])}</p>` : nothing}
    </div>`;
  }

  /** Colours the references, underlines what is wrong away from the caret, and tells the sheet which cells are meant. */
  #mark(): void {
    const { scope, draft } = this;
    const view = this.#view;
    if (!scope || !view) return;
    const text = draft ?? this.text;
    const references = referenceColours(text, scope);
    const findings = text.startsWith('=') && text.length > 1 ? compile(text, scope).findings : [];
    const outlines =
      draft === undefined
        ? []
        : references.filter(({ sheet }) => sheet === scope.sheet).map(({ cells, colour }) => ({ cells, colour }));
    const key = JSON.stringify([text, draft === undefined, this.position, outlines]);
    if (key === this.#told) return;
    this.#told = key;
    const placed = findings.filter(({ from, to }) => draft === undefined || this.position < from || this.position > to);
    putMarks(
      view,
      [...references, ...placed].filter(({ to }) => to <= view.state.doc.length),
    );
    this.dispatchEvent(new CustomEvent('references', { detail: outlines, bubbles: true, composed: true }));
  }

  #commit(move: Move): void {
    const text = this.draft ?? this.text;
    this.draft = undefined;
    this.dispatchEvent(new CustomEvent('commit', { detail: { text, move } }));
  }

  #cancel(): void {
    this.draft = undefined;
    if (this.#view) putText(this.#view, this.text);
    this.dispatchEvent(new CustomEvent('cancel'));
  }

  #guide(): void {
    const name = callAt(this.draft ?? this.text, this.position)?.name ?? '';
    this.dispatchEvent(new CustomEvent('guide', { detail: { name }, bubbles: true, composed: true }));
  }

  readonly #left = (event: FocusEvent): void => {
    if (this.#pointed) {
      this.#view?.focus();
      return;
    }
    if (event.relatedTarget instanceof Node && this.renderRoot.contains(event.relatedTarget)) return;
    if (this.draft !== undefined && this.draft !== this.text && !this.isPointing) this.#commit('leave');
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'formula-editor': FormulaEditor;
  }
}

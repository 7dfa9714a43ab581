import { LitElement, html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { callAt } from '../../formula/call-at.ts';
import { withClosing } from '../../formula/closing.ts';
import type { Scope } from '../../formula/types.ts';
import { completionList, LIST, optionId } from './completion-list.ts';
import { Completion } from './completion.ts';
import { keyAct, type Move } from './keys.ts';
import { marksOf, NO_MARKS, outlinesOf } from './marks.ts';
import { oneLine } from './one-line.ts';
import { letters } from './letters.ts';
import { pinned } from './pinned.ts';
import { Pointing, type PointStep } from './pointing.ts';
import { problemList, PROBLEMS } from './problem-list.ts';
import { signatureAt } from './signature.ts';
import { editorStyles } from './styles.ts';
import { suggestionsAt } from './suggestions.ts';
import { TextHistory, type Written } from './text-history.ts';

/** The line in which the text of a cell is edited: completion, the argument at hand, coloured references, findings in place.
 *  The letters are those of a native text field, drawn by a layer behind it that follows them.
 *  @fires commit - The text is to be kept; `detail.text`, `detail.move`.
 *  @fires cancel - The edit was taken back.
 *  @fires point - An arrow leads to another cell for the reference that is pointed at; `detail` a PointStep.
 *  @fires references - The cells that the text refers to on its own sheet, each `{ cells, colour }`; bubbles.
 *  @fires guide - The guide is wanted at a function; `detail.name`; bubbles. */
@customElement('formula-editor')
export class FormulaEditor extends LitElement {
  static override styles = editorStyles;

  @property() label = 'Formula';
  @property() text = '';
  @property({ attribute: false }) scope: Scope | undefined;
  @property({ attribute: false }) sheets: readonly { readonly name: string }[] = [];
  /** What stands in the field. */
  @state() private value = '';
  @state() private position = 0;
  @state() private isEditing = false;
  @state() private isComposing = false;
  @query('textarea') private field!: HTMLTextAreaElement;
  readonly #history = new TextHistory();
  readonly #completion = new Completion();
  #marks = NO_MARKS;
  readonly #pointing = new Pointing();
  #keepsFocus = false;
  #told = '[]';

  override focus(): void {
    this.field.focus();
    this.#place(this.value.length);
  }

  /** Begins an edit with this text in place of what is there. */
  begin(text: string): void {
    if (!this.hasUpdated) return;
    this.#put(text);
    this.#pointing.wrote();
    this.isEditing = true;
    this.focus();
  }

  /** What was typed and not yet committed; it counts as taken then. */
  takeDraft(): string | undefined {
    const { isEditing, value } = this;
    this.isEditing = false;
    return isEditing && value !== this.text ? value : undefined;
  }

  /** Whether a reference can stand where the caret is: a click on a cell then means that cell. */
  get isPointing(): boolean {
    return this.isEditing && this.#pointing.isOpen(this.value, this.position);
  }

  /** Writes a reference at the caret; one after another replaces it. */
  insertReference(cells: string, isByKey = false): void {
    const { from, to } = this.#pointing.word ?? { from: this.position, to: this.position };
    this.#replace(from, to, cells);
    this.#pointing.wrote({ from, to: from + cells.length });
    if (isByKey) return;
    // The press that pointed takes the focus to the sheet after this; it comes back at once.
    this.#keepsFocus = true;
    setTimeout(() => {
      this.#keepsFocus = false;
      if (this.isEditing) this.field.focus();
    });
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if ((changed.has('text') || changed.has('label')) && !this.isEditing && this.value !== this.text)
      this.#put(this.text);
    const { scope, value, position, isEditing } = this;
    this.#marks = scope ? marksOf(value, scope, isEditing ? position : undefined) : NO_MARKS;
  }

  protected override updated(): void {
    if (this.field.value !== this.value) this.field.value = this.value;
    const detail = this.isEditing ? outlinesOf(this.#marks, this.scope?.sheet) : [];
    const key = JSON.stringify(detail);
    if (key === this.#told) return;
    this.#told = key;
    this.dispatchEvent(new CustomEvent('references', { detail, bubbles: true, composed: true }));
  }

  protected override render(): TemplateResult {
    const { isOpen, at } = this.#completion;
    const { findings } = this.#marks;
    const isShown = this.isEditing && !isOpen;
    const problems = isShown ? findings : [];
    const hint = isShown ? signatureAt(this.value, this.position, this.scope, () => this.#guide()) : nothing;
    return html`<div class=${this.isComposing ? 'field composing' : 'field'} @focusout=${this.#left}>
        <div class="line" aria-hidden="true">${letters(this.value, this.#marks)}</div>
        <textarea
          rows="1"
          spellcheck="false"
          autocomplete="off"
          autocapitalize="off"
          aria-label=${this.label}
          aria-autocomplete="list"
          aria-haspopup="listbox"
          aria-controls=${isOpen ? LIST : nothing}
          aria-activedescendant=${isOpen ? optionId(at) : nothing}
          aria-invalid=${findings.some(({ level }) => level === 'error') ? 'true' : nothing}
          aria-describedby=${problems.length > 0 ? PROBLEMS : nothing}
          @input=${this.#typed}
          @beforeinput=${this.#before}
          @paste=${this.#pasted}
          @keydown=${this.#pressed}
          @keyup=${this.#moved}
          @pointerup=${this.#moved}
          @selectionchange=${this.#moved}
          @compositionstart=${() => (this.isComposing = true)}
          @compositionend=${this.#composed}
        ></textarea>
      </div>
      ${completionList(this.#completion, (index) => this.#accept(index))}
      <div class="below">${hint}${problemList(problems)}</div>`;
  }

  /** Puts a text in place of all there is, as given and not as typed. */
  #put(text: string): void {
    this.value = oneLine(text);
    this.position = this.value.length;
    this.#pointing.end();
    this.#completion.close();
    this.#history.reset({ text: this.value, caret: this.position });
    if (this.hasUpdated) this.field.value = this.value;
  }

  /** Takes what the reader made of the text. */
  #take({ text, caret }: Written): void {
    this.value = text;
    this.isEditing = true;
    this.#pointing.wrote();
    this.#completion.close();
    if (this.field.value !== text) this.field.value = text;
    this.#place(caret);
  }

  #place(caret: number): void {
    this.position = caret;
    if (this.field.selectionStart !== caret || this.field.selectionEnd !== caret)
      this.field.setSelectionRange(caret, caret);
  }

  /** Writes in place of a part of the text. */
  #replace(from: number, to: number, words: string): void {
    const written = { text: this.value.slice(0, from) + words + this.value.slice(to), caret: from + words.length };
    this.#take(written);
    this.#history.note(written, false);
  }

  readonly #typed = (event: InputEvent): void => {
    const { value, selectionStart } = this.field;
    const wasOpen = this.#completion.isOpen;
    const text = oneLine(value);
    const written = { text, caret: oneLine(value.slice(0, selectionStart)).length };
    this.#take(written);
    this.#history.note(written, event.inputType === 'insertText' || event.isComposing);
    if (!event.isComposing && (wasOpen || event.inputType.startsWith('insert'))) this.#suggest(false);
  };

  readonly #before = (event: InputEvent): void => {
    const act = {
      insertLineBreak: () => this.#commit('down'),
      historyUndo: () => this.#step('undo'),
      historyRedo: () => this.#step('redo'),
    }[event.inputType];
    if (!act) return;
    event.preventDefault();
    act();
  };

  readonly #pasted = (event: ClipboardEvent): void => {
    event.preventDefault();
    const { selectionStart, selectionEnd } = this.field;
    this.#replace(selectionStart, selectionEnd, oneLine(event.clipboardData?.getData('text/plain').trim() ?? ''));
  };

  readonly #pressed = (event: KeyboardEvent): void => {
    if (event.isComposing) return; // Keys of an input method are its own.
    const act = keyAct(event, this.#completion, {
      commit: (move) => this.#commit(move),
      cancel: () => this.#cancel(),
      guide: () => this.#guide(),
      // With nothing being written, undo is that of the sheet.
      step: this.isEditing ? (way) => this.#step(way) : undefined,
      suggest: () => this.#suggest(true),
      accept: () => this.#accept(this.#completion.at),
      pin: () => this.#pin(),
      point: this.#point,
    });
    if (!act) return;
    event.preventDefault();
    act();
    void this.#show();
  };

  readonly #moved = (): void => {
    const { selectionStart } = this.field;
    if (selectionStart === this.position) return;
    this.position = selectionStart;
    this.#pointing.end();
    this.#completion.close();
  };

  readonly #composed = (): void => {
    this.isComposing = false;
    this.#suggest(false);
  };

  #suggest(isAsked: boolean): void {
    const { scope, value, position } = this;
    const found = scope && suggestionsAt(value, position, scope, this.sheets, isAsked);
    this.#completion.offer(found, value.slice(found?.from, position));
    this.requestUpdate();
  }

  #accept(index: number): void {
    const option = this.#completion.options[index];
    if (!option) return;
    const word = option.insert ?? option.label;
    const isOpened = word.endsWith('(') && this.value.charAt(this.position) === '(';
    this.#replace(this.#completion.from, this.position, isOpened ? word.slice(0, -1) : word);
  }

  /** Brings the option at hand into view. */
  async #show(): Promise<void> {
    this.requestUpdate();
    await this.updateComplete;
    this.renderRoot.querySelector('[aria-selected=true]')?.scrollIntoView({ block: 'nearest' });
  }

  #step(way: 'undo' | 'redo'): void {
    const written = this.#history[way]();
    if (written) this.#take(written);
  }

  #commit(move: Move): void {
    this.isEditing = false;
    this.#completion.close();
    this.dispatchEvent(new CustomEvent('commit', { detail: { text: withClosing(this.value), move } }));
  }

  #cancel(): void {
    this.isEditing = false;
    this.#put(this.text);
    this.dispatchEvent(new CustomEvent('cancel'));
  }

  /** The arrow that leads over the cells where it does not lead the caret. */
  readonly #point = (event: KeyboardEvent): (() => void) | undefined => {
    const detail = this.isEditing ? this.#pointing.step(event, this.value, this.position) : undefined;
    return detail && (() => this.dispatchEvent(new CustomEvent<PointStep>('point', { detail })));
  };

  #pin(): void {
    const { position } = this;
    const at = this.#marks.references.find(({ from, to }) => from <= position && position <= to);
    if (at) this.#replace(at.from, at.to, pinned(this.value.slice(at.from, at.to)));
  }

  #guide(): void {
    const detail = { name: callAt(this.value, this.position)?.name ?? '' };
    this.dispatchEvent(new CustomEvent('guide', { detail, bubbles: true, composed: true }));
  }

  readonly #left = (event: FocusEvent): void => {
    if (this.#keepsFocus) return this.field.focus();
    if (event.relatedTarget instanceof Node && this.renderRoot.contains(event.relatedTarget)) return;
    this.#completion.close();
    this.requestUpdate();
    if (this.isEditing && this.value !== this.text && !this.isPointing) this.#commit('leave');
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'formula-editor': FormulaEditor;
  }
}

import { LitElement, html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { createWorkerAnalyst } from '../../analysis/client.ts';
import { pooledAnalyst } from '../../analysis/pool.ts';
import { EVERY, type SeekQuestion } from '../../analysis/seek/types.ts';
import type { Subject } from '../../analysis/subject/types.ts';
import { subjectOf } from '../../analysis/subject/subject.ts';
import type { Analyst } from '../../analysis/types.ts';
import '../../components/ask/ask-answer.ts';
import '../../components/ask/ask-form.ts';
import '../../components/ask/ask-told.ts';
import { kinds, variedIn, type Answer, type Setting, type Wish } from '../../components/ask/data.ts';
import '../../components/dialog/page-dialog.ts';
import type { Command } from '../../document/command.ts';
import type { Sheet } from '../../document/types.ts';
import type { Workbook } from '../../document/workbook.ts';
import { keyOf, placeOf } from '../../engine/cell-index.ts';
import type { Place } from '../../engine/types.ts';
import type { AppHost } from '../app-host.ts';
import { answerTo } from './analyst.ts';
import { readSentence } from './sentence.ts';
import { setWords } from './found.ts';
import { sheetOfAnswer } from './sheet.ts';
import { choicesOf, firstWish, inputOf, movedOf, resultOf, spreadOf, variedFirst, variedOf } from './wish.ts';

/** On a page as narrow as this the form fills the view. */
const NARROW = 600;
/** More cells than these are not told one by one. */
const MOST_TOLD = 4;
const MOST_THREADS = 4;

/** Kept from page to page: its thread is there at once the next time. */
let analyst: Analyst | undefined;

/** Questions over a whole sheet, opened from the cell that they concern.
 *  @fires close - It was closed. */
@customElement('ask-page')
export class AskPage extends LitElement {
  @property({ attribute: false }) app!: AppHost;
  @property({ attribute: false }) workbook!: Workbook;
  @property({ attribute: false }) sheet!: Sheet;
  @state() private wish: Wish | undefined;
  @state() private answer: Answer | undefined;
  @state() private said = '';
  @state() private isWrong = false;
  /** From 0 to 1 while an answer is looked for. */
  @state() private progress: number | undefined;
  /** Inputs behind a result, biggest effect first. */
  @state() private behind: { readonly of: string; readonly ids: readonly string[] } | undefined;
  #subject: Subject = { inputs: [], results: [] };
  /** What it was opened with. */
  #opened: Wish | undefined;
  /** What the answer is called when it is kept. */
  #title = '';
  #given: SeekQuestion['given'] = [];
  #asking = new AbortController();
  #ordering = new AbortController();

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#asking.abort();
    this.#ordering.abort();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('workbook')) return;
    const { workbook, sheet, app } = this;
    this.#subject = subjectOf(workbook.document, (place) => workbook.state(place.sheet, place.cell));
    const at = { sheet: sheet.id, cell: app.cell };
    const wish = firstWish(workbook.document, this.#subject, at);
    this.#opened = wish;
    const isInput = inputOf(this.#subject, keyOf(at)) !== undefined;
    this.wish = isInput ? { ...wish, kind: 'seek' } : wish;
    void this.#order(wish.result, !isInput);
  }

  protected override firstUpdated(): void {
    // After the dialog has opened, which gives the focus to its cross.
    void this.updateComplete.then(() => this.renderRoot.querySelector('ask-form')?.focus());
  }

  protected override render(): TemplateResult {
    const { wish, answer, workbook } = this;
    const { system } = workbook.document;
    const of = this.behind?.of === wish?.result ? this.behind?.ids : undefined;
    return html`<page-dialog wide heading="Ask the sheet" @close=${this.#close}>
      ${
        answer
          ? html`<button slot="tools" type="button" @click=${() => void this.#keep(answer)}>Keep as a sheet</button>`
          : nothing
      }
      ${
        wish
          ? html`<ask-form
              .wish=${wish}
              .choices=${choicesOf(this.#subject, workbook.document, wish, of)}
              @wish=${(event: CustomEvent<{ wish: Wish }>) => this.#change(event.detail.wish)}
              @spread=${(event: CustomEvent<{ id: string }>) => this.#spread(event.detail.id)}
              @vary=${(event: CustomEvent<{ id: string }>) => this.#vary(event.detail.id)}
              @read=${(event: CustomEvent<{ sentence: string }>) => void this.#read(event.detail.sentence)}
              @ask=${() => void this.#ask()}
            ></ask-form>`
          : nothing
      }
      <ask-told
        said=${this.said}
        ?wrong=${this.isWrong}
        .progress=${this.progress}
        @stop=${() => this.#asking.abort()}
      ></ask-told>
      ${
        answer
          ? html`<ask-answer
              .answer=${answer}
              system=${system}
              @set=${(event: CustomEvent<{ sets: readonly Setting[] }>) => void this.#set(event.detail.sets)}
              @go=${(event: CustomEvent<Place>) => {
                this.#close();
                this.app.go(event.detail);
              }}
            ></ask-answer>`
          : nothing
      }
    </page-dialog>`;
  }

  get #analyst(): Analyst {
    return (analyst ??= pooledAnalyst(createWorkerAnalyst, Math.min(MOST_THREADS, navigator.hardwareConcurrency || 1)));
  }

  #close = (): void => {
    this.dispatchEvent(new CustomEvent('close'));
  };

  /** What was typed or chosen: a newly chosen input comes with its plausible ends. */
  #change(wish: Wish): void {
    const filled = (moved: Wish['input']): Wish['input'] =>
      moved.from === '' && moved.to === '' ? movedOf(inputOf(this.#subject, moved.id)) : moved;
    if (wish.given === '') this.#given = [];
    if (wish.kind !== this.wish?.kind) {
      this.#asking.abort();
      this.answer = undefined;
      this.#tell('');
    }
    const isOther = wish.result !== this.wish?.result;
    const offered = choicesOf(this.#subject, this.workbook.document, wish, undefined).results;
    const isOffered = (result: string): boolean => offered.some(({ id }) => id === result);
    const result = [wish.result, this.#opened?.result ?? ''].find(isOffered) ?? offered[0]?.id ?? '';
    this.wish = { ...wish, result, input: filled(wish.input), second: filled(wish.second) };
    if (isOther || result !== wish.result) void this.#order(result, false);
    // A line is drawn anew while one changes what is asked.
    if (this.answer && wish.kind === 'sweep') void this.#ask();
  }

  /** Puts the inputs behind a result first.
   *  @param takes - The first of them is to be moved. */
  async #order(result: string, takes: boolean): Promise<void> {
    this.#ordering.abort();
    this.#ordering = new AbortController();
    const { signal } = this.#ordering;
    if (result === EVERY || !resultOf(this.#subject, result)) return;
    const { document } = this.workbook;
    // What cannot be told stays in the order of the sheet.
    const drives = await this.#analyst.drives({ document, at: placeOf(result) }, { signal }).catch(() => undefined);
    const movable = drives?.inputs.filter(({ input }) => typeof input.present === 'number') ?? [];
    if (signal.aborted || movable.length === 0) return;
    const before = this.wish;
    this.behind = { of: result, ids: movable.map(({ input }) => keyOf(input)) };
    const isTyping = this.renderRoot.querySelector('ask-form')?.isTyping;
    if (!takes || !before || before.result !== result || this.progress !== undefined || isTyping) return;
    const given = movable.filter(({ input }) => input.isRangeGiven).map(({ input }) => input);
    const [first, second] = given;
    this.wish = {
      ...before,
      // What was chosen meanwhile stays.
      ...(first && before.input === this.#opened?.input && { input: movedOf(first) }),
      ...(second && before.second === this.#opened?.second && { second: movedOf(second) }),
      ...(before.varied === this.#opened?.varied && variedFirst(document, given)),
    };
  }

  #spread(id: string): void {
    const cell = inputOf(this.#subject, id) ?? resultOf(this.#subject, id);
    if (cell && this.wish) this.wish = { ...this.wish, spreads: [...this.wish.spreads, spreadOf(cell)] };
  }

  #vary(id: string): void {
    const input = inputOf(this.#subject, id);
    if (!input || !this.wish) return;
    const list = variedIn(this.wish.kind);
    this.wish = { ...this.wish, [list]: [...this.wish[list], variedOf(input)] };
  }

  async #read(sentence: string): Promise<void> {
    const { wish, workbook } = this;
    if (!wish) return;
    await this.#answered(async () => {
      const read = await readSentence(this.#analyst, workbook.document, this.#subject, sentence);
      this.#given = read.given;
      this.wish = { ...wish, ...read.wish };
      void this.#order(this.wish.result, false);
      return this.#answerTo(this.wish);
    });
  }

  async #ask(): Promise<void> {
    const { wish } = this;
    if (wish) await this.#answered(() => this.#answerTo(wish));
  }

  #answerTo(wish: Wish): Promise<Answer> {
    const name = ['follows', 'cheapest'].includes(wish.kind)
      ? ''
      : ((resultOf(this.#subject, wish.result) ?? inputOf(this.#subject, wish.result))?.label ?? '');
    this.#title = [kinds[wish.kind], ...(name === '' ? [] : [name])].join(': ');
    const { signal } = this.#asking;
    return answerTo(
      this.#analyst,
      { document: this.workbook.document, subject: this.#subject, wish },
      this.#given ?? [],
      {
        signal,
        progress: ({ done, of }) => {
          if (!signal.aborted) this.progress = of === 0 ? 0 : done / of;
        },
      },
      async () => {
        const { wholeShelf } = await import('../pages/shelf-drivers.ts');
        const shelf = await wholeShelf();
        return wish.isOwnShelf ? shelf.filter(({ invented }) => !invented) : shelf;
      },
    );
  }

  /** Shows what comes of a question; one that was given up or asked anew shows nothing. */
  async #answered(act: () => Promise<Answer>): Promise<void> {
    this.#asking.abort();
    this.#asking = new AbortController();
    const { signal } = this.#asking;
    this.#tell('Looking…');
    this.progress = 0;
    if (this.wish?.kind !== 'sweep') this.answer = undefined;
    try {
      const answer = await act();
      if (signal.aborted) return;
      this.answer = answer;
      this.#tell(answer.said);
    } catch (error) {
      if (this.#asking.signal !== signal) return;
      if (signal.aborted) this.#tell('Given up: nothing was changed.');
      else {
        this.answer = undefined;
        this.#tell(error instanceof Error ? error.message : String(error), true);
      }
    } finally {
      if (this.#asking.signal === signal) {
        this.progress = undefined;
        await this.updateComplete;
        const block = innerWidth < NARROW && !this.isWrong ? 'start' : 'nearest';
        this.renderRoot.querySelector('ask-told')?.scrollIntoView({ block });
      }
    }
  }

  #tell(said: string, isWrong = false): void {
    this.said = said;
    this.isWrong = isWrong;
  }

  /** Types the values into their cells, in one step back, and shows where. */
  async #set(sets: readonly Setting[]): Promise<void> {
    const { app } = this;
    const commands = sets.map(({ sheet, cell, text }): Command => ({
      kind: 'write',
      sheet,
      texts: new Map([[cell, text]]),
    }));
    const [first] = sets;
    this.#close();
    if (!first || !(await app.acts.do({ kind: 'all', commands }))) return;
    app.go(first);
    const words = sets.length > MOST_TOLD ? `${sets.length} cells` : setWords(sets);
    app.tell(`Set: ${words}. Ctrl Z takes it back.`);
  }

  async #keep(answer: Answer): Promise<void> {
    const { app, workbook } = this;
    const { command, sheet } = sheetOfAnswer(workbook.document, this.sheet.id, this.#title, answer, workbook.functions);
    this.#close();
    if (!(await app.acts.do(command))) return;
    app.go({ sheet, cell: 'A1' });
    app.tell('Kept as a sheet of its own.');
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ask-page': AskPage;
  }
}

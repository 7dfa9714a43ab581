import { LitElement, html, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import { isPointerCoarse } from '../coarse-pointer.ts';
import { Geometry, HEAD_WIDTH } from './geometry.ts';
import { heads } from './heads.ts';
import { Held } from './held.ts';
import { extended, keyFor, stepped, type GridKey } from './keys.ts';
import type { CellAt, GridModel, Outline, Selection } from './model.ts';
import { InlineInput, type Leaving } from './inline-input.ts';
import { drawOverlays } from './overlays.ts';
import { pointed, same } from './pointed.ts';
import { GridPointer } from './pointer.ts';
import { ColumnResize } from './column-resize.ts';
import { KeptInView, reveal } from './reveal.ts';
import { RowPool } from './row-pool.ts';
import { cellStyles } from './cell-styles.ts';
import { gridStyles } from './styles.ts';
import { Surroundings } from './surroundings.ts';
import { viewOf, visibleIn, type View } from './view.ts';

const FIRST: CellAt = { row: 0, column: 0 };

/** The sheet: a virtual grid of cells with keyboard, pointer and clipboard, after the WAI-ARIA grid pattern.
 *  @fires selection-change - `detail` is the new Selection.
 *  @fires cell-commit - A text was typed into a cell: `detail` row, column, text.
 *  @fires formula-start - A formula is to be edited elsewhere; `detail.text` where typing began it.
 *  @fires clear - @fires fill - `detail.direction` - @fires nudge - `detail.direction`, `detail.coarse`
 *  @fires column-resize - `detail.column`, `detail.width` - @fires menu - `detail.x`, `detail.y` */
@customElement('sheet-grid')
export class SheetGrid extends LitElement {
  static override styles = [gridStyles, cellStyles];

  @property({ attribute: false }) model!: GridModel;
  @property({ attribute: false }) selection: Selection = { anchor: FIRST, focus: FIRST };
  /** Rectangles outlined in the colours of a formula being edited. */
  @property({ attribute: false }) references: readonly Outline[] = [];
  /** Of the rows whose words need more than a line. */
  @property({ attribute: false }) heights: ReadonlyMap<number, number> | undefined;
  /** Finds those heights; comes after the first paint. */
  @property({ attribute: false }) fit: ((grid: SheetGrid) => void) | undefined;
  /** Kept when the page around it has drawn an edit together with what follows from it; nothing where none is waited for. */
  @property({ attribute: false }) due: (() => Promise<void> | undefined) | undefined;
  @property() label = 'Sheet';
  /** Which sheet it is, whatever it is called. */
  @property({ attribute: false }) of = '';
  @query('.scroller') private scroller!: HTMLElement;
  @query('.body') private body!: HTMLElement;
  #pool: RowPool | undefined;
  #geometry: Geometry | undefined;
  /** Measured anew once it may be another. */
  #view: View | undefined;
  readonly #held = new Held({
    press: (event) => this.scroller.dispatchEvent(new KeyboardEvent(event.type, event)),
    type: (text) => this.#type(text),
  });
  readonly #inline = new InlineInput({
    write: (at, text) => {
      this.#emit('cell-commit', { ...at, text });
      return this.due?.() !== undefined;
    },
    left: (leaving) => this.#left(leaving),
    held: this.#held,
  });
  readonly #resize = new ColumnResize(
    (column, width) => this.#emit('column-resize', { column, width }),
    (column) => this.#geometry?.widthOf(column) ?? 0,
  );
  readonly #pointer = new GridPointer({
    seen: () => {
      const { model, selection, scroller } = this;
      return this.#geometry && { model, selection, scroller, geometry: this.#geometry };
    },
    isTaken: (event, target) => this.#resize.begin(event, target),
    settle: () => this.#inline.settle(),
    select: (selection, isStill) => this.#select(selection, isStill),
    edit: () => this.#edit(),
    menu: (at) => this.#emit('menu', at),
  });
  readonly #kept = new KeptInView();
  readonly #around = new Surroundings(this, () => this.#resized());
  /** The next selection is seen where it is, or need not be seen as a whole. */
  #isStill = false;

  /** Unless told to stand still, the active cell comes into view. */
  override focus({ preventScroll = false }: FocusOptions = {}): void {
    this.scroller.focus({ preventScroll: true });
    if (!preventScroll) this.reveal(this.selection.focus);
  }

  /** Takes the focus, with the next draw where an edit waits for that. */
  focusWhenDrawn(): void {
    if (!this.due?.()) return this.focus();
    this.#held.hold((isHere) => {
      if (isHere) this.focus();
    });
  }

  /** Does what waits for the page to be drawn. */
  release(): void {
    this.#held.release();
  }

  /** Draws what changed; the pool leaves alone what looks the same. */
  refresh(): void {
    this.requestUpdate();
  }

  protected override async scheduleUpdate(): Promise<void> {
    await this.due?.();
    await super.scheduleUpdate();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.get('of') !== undefined) this.heights = undefined;
    if (!changed.has('model') && !changed.has('heights')) return;
    const former = this.#geometry;
    this.#geometry = new Geometry(this.model, isPointerCoarse(), this.heights);
    if (former?.width !== this.#geometry.width || former.height !== this.#geometry.height) this.#view = undefined;
    this.#inline.follow(this.model, this.#geometry);
  }

  protected override updated(changed: PropertyValues<this>): void {
    this.#pool ??= new RowPool(this.body);
    // Another sheet is read from its beginning.
    if (changed.get('of') !== undefined) this.scroller.scrollTo(0, 0);
    else if (changed.get('selection') !== undefined && !this.#isStill) this.#reveal(this.selection.focus);
    this.#isStill = false;
    if (changed.has('of')) this.#view = undefined;
    this.#draw();
    this.fit?.(this);
  }

  protected override render(): TemplateResult {
    const { model, selection } = this;
    const geometry = this.#geometry;
    if (!geometry) return html``;
    return html`<div
      class="scroller"
      role="grid"
      tabindex="0"
      aria-label=${this.label}
      aria-multiselectable="true"
      aria-rowcount=${model.rows + 1}
      aria-colcount=${model.columns.length + 1}
      aria-activedescendant=${RowPool.idOf(selection.focus)}
      @scroll=${this.#scrolled}
      @keydown=${this.#key}
      @pointerdown=${this.#pointer.press}
      @pointermove=${this.#pointer.drag}
      @pointerup=${this.#pointer.release}
      @pointercancel=${this.#pointer.release}
      @dblclick=${this.#pointer.double}
      @contextmenu=${this.#pointer.context}
    >
      ${heads(model, geometry, selection.focus.column)}
      <div
        class="body"
        role="rowgroup"
        .style=${`width:${String(HEAD_WIDTH + geometry.width)}px;height:${String(geometry.height)}px`}
      ></div>
    </div>`;
  }

  #draw(isFresh = true): void {
    const geometry = this.#geometry;
    if (!geometry || !this.#pool || !this.isConnected) return;
    this.#view ??= viewOf(this.scroller);
    const visible = visibleIn(this.#view, geometry, this.model.rows);
    this.#pool.draw(visible, this.model, geometry, this.selection, isFresh);
    if (isFresh) drawOverlays(this.body, geometry, this.selection, this.references);
  }

  #resized(): void {
    this.#view = undefined;
    if (this.#geometry && this.scroller) this.#kept.follow(this.scroller, this.#geometry, this.selection.focus);
    this.#draw(false);
  }

  readonly #scrolled = (): void => {
    this.#view = undefined;
    this.#draw(false);
    this.#pool?.orderSoon();
  };

  /** Scrolls just so far that a cell is seen; the page as well, where it is longer than the window. */
  reveal(at: CellAt): void {
    this.#view = undefined;
    this.#reveal(at);
  }

  /** The same from where it stood when it was last drawn: to measure anew would lay the page out. */
  #reveal(at: CellAt): void {
    if (!this.#geometry) return;
    this.#view ??= viewOf(this.scroller);
    if (reveal(this.scroller, this.#view, this.#geometry, at)) this.#view = undefined;
    if (!this.#around.isWhole) this.scrollIntoView({ block: 'nearest' });
  }

  /** Selects, and brings the active cell into view unless the grid is to stand still. */
  #select(selection: Selection, isStill = false): void {
    const { focus, anchor } = this.selection;
    if (same(focus, selection.focus) && same(anchor, selection.anchor)) return;
    this.selection = selection;
    this.#isStill = isStill;
    this.#emit('selection-change', selection);
  }

  readonly #key = (event: KeyboardEvent): void => {
    if (event.target !== this.scroller || event.isComposing) return;
    const bound = keyFor(event);
    if (bound) {
      event.preventDefault();
      this.#run(bound, event.shiftKey);
      return;
    }
    const isPlain = !event.ctrlKey && !event.metaKey && (!event.altKey || /[^ -~]/.test(event.key)); // € by Option
    if (event.key === 'Enter' || event.key === 'Tab') {
      const step = event.key === 'Enter' ? (event.shiftKey ? 'up' : 'down') : event.shiftKey ? 'left' : 'right';
      const to = stepped(this.selection.focus, step, this.model, 1);
      // At the border Tab leaves the grid, so that nobody is held in it.
      if (event.key === 'Tab' && same(to, this.selection.focus)) return;
      event.preventDefault();
      this.#select(extended(this.selection, to, false));
    } else if (isPlain && event.key.length === 1) {
      event.preventDefault();
      this.#type(event.key);
    }
  };

  #run({ step, act }: GridKey, isShift: boolean): void {
    const { model, selection } = this;
    if (step) {
      const page = Math.max(1, Math.floor(this.scroller.clientHeight / (this.#geometry?.rowHeight ?? 28)) - 2);
      this.#select(extended(selection, stepped(selection.focus, step, model, page), isShift));
      return;
    }
    switch (act) {
      case 'edit':
        this.#edit();
        break;
      case 'clear':
        this.#emit('clear', {});
        break;
      case 'all':
        this.#select(pointed('all', selection.focus, model, selection, false), true);
        break;
      case 'fill-down':
      case 'fill-right':
        this.#emit('fill', { direction: act === 'fill-down' ? 'down' : 'right' });
        break;
      case 'nudge-up':
      case 'nudge-down':
        this.#emit('nudge', { direction: act === 'nudge-up' ? 1 : -1, coarse: isShift });
        break;
      case 'narrower':
      case 'wider':
        this.#resize.step(selection.focus.column, act === 'wider' ? 1 : -1);
        break;
      case 'menu': {
        const box = this.shadowRoot?.getElementById(RowPool.idOf(selection.focus))?.getBoundingClientRect();
        this.#emit('menu', { x: box?.left ?? 0, y: box?.bottom ?? 0 });
        break;
      }
      case undefined:
    }
  }

  #type(text: string): void {
    if (text.startsWith('=')) this.#emit('formula-start', { text });
    else this.#edit(text);
  }

  /** Opens the input over the active cell; a formula is edited in the formula line. */
  #edit(typed?: string): void {
    const { focus } = this.selection;
    const text = this.model.cell(focus.row, focus.column)?.text ?? '';
    if (typed === undefined && text.startsWith('=')) this.#emit('formula-start', {});
    else if (this.#geometry) {
      this.reveal(focus);
      this.#inline.open(this.body, focus, this.#geometry, text, typed);
    }
  }

  #left({ at, step, isByKey }: Leaving): void {
    if (step) this.#select(extended(this.selection, stepped(at, step, this.model, 1), false));
    // A cell that it leads on to comes into view when it is drawn.
    if (isByKey) this.focus({ preventScroll: step !== undefined });
  }

  #emit(name: string, detail: object): void {
    this.dispatchEvent(new CustomEvent(name, { detail }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'sheet-grid': SheetGrid;
  }
}

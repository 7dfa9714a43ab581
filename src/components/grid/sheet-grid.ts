import { LitElement, html, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { columnLetters } from '../../formula/address.ts';
import { Geometry, HEAD_HEIGHT, HEAD_WIDTH } from './geometry.ts';
import { extended, keyFor, stepped, type GridKey } from './keys.ts';
import type { CellAt, GridModel, Outline, Selection } from './model.ts';
import { InlineInput } from './inline-input.ts';
import { drawOverlays } from './overlays.ts';
import { ColumnResize } from './column-resize.ts';
import { RowPool } from './row-pool.ts';
import { gridStyles } from './styles.ts';

const MARGIN_ROWS = 3;

/** The sheet: a virtual grid of cells with keyboard, pointer and clipboard, after the WAI-ARIA grid pattern.
 *  @fires selection-change - `detail` is the new Selection.
 *  @fires cell-commit - A text was typed into a cell: `detail` row, column, text.
 *  @fires formula-start - A formula is to be edited elsewhere; `detail.text` where typing began it.
 *  @fires clear - @fires fill - `detail.direction` - @fires nudge - `detail.direction`, `detail.coarse`
 *  @fires column-resize - `detail.column`, `detail.width` - @fires menu - `detail.x`, `detail.y` */
@customElement('sheet-grid')
export class SheetGrid extends LitElement {
  static override styles = gridStyles;

  @property({ attribute: false }) model!: GridModel;
  @property({ attribute: false }) selection: Selection = {
    anchor: { row: 0, column: 0 },
    focus: { row: 0, column: 0 },
  };
  /** Rectangles outlined in the colours of a formula being edited. */
  @property({ attribute: false }) references: readonly Outline[] = [];
  @property() label = 'Sheet';
  @state() private isTouch = false;
  @query('.scroller') private scroller!: HTMLElement;
  @query('.body') private body!: HTMLElement;
  #pool: RowPool | undefined;
  #geometry: Geometry | undefined;
  #frame = 0;
  readonly #inline = new InlineInput((at, text, step) => this.#committed(at, text, step));
  readonly #resize = new ColumnResize(
    (column, width) => this.#emit('column-resize', { column, width }),
    (column) => this.#geometry?.widthOf(column) ?? 0,
  );
  #size = new ResizeObserver(() => this.#draw());
  #dragging = false;

  override connectedCallback(): void {
    super.connectedCallback();
    this.#size.observe(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#size.disconnect();
    cancelAnimationFrame(this.#frame);
  }

  override focus(): void {
    this.scroller.focus({ preventScroll: true });
    this.#reveal(this.selection.focus);
  }

  /** Draws what changed, at most once a frame; the pool leaves alone what looks the same. */
  refresh(_cells?: readonly string[]): void {
    if (this.#frame !== 0) return;
    this.#frame = requestAnimationFrame(() => {
      this.#frame = 0;
      this.#draw();
    });
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('model')) return;
    this.isTouch = matchMedia('(pointer: coarse)').matches;
    this.#geometry = new Geometry(this.model, this.isTouch);
    this.#inline.close();
  }

  protected override updated(changed: PropertyValues<this>): void {
    this.#pool ??= new RowPool(this.body);
    if (changed.has('selection') && this.shadowRoot?.activeElement === this.scroller)
      this.#reveal(this.selection.focus);
    this.#draw();
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
      @pointerdown=${this.#press}
      @pointermove=${this.#drag}
      @pointerup=${this.#release}
      @dblclick=${this.#double}
      @contextmenu=${this.#context}
    >
      <div class="heads" role="row" aria-rowindex="1" .style=${`width:${String(HEAD_WIDTH + geometry.width)}px`}>
        <div class="corner" role="columnheader" aria-colindex="1"><span class="hidden">Row</span></div>
        ${model.columns.map(
          ({ title, line }, column) =>
            html`<div
              class=${column === selection.focus.column ? 'head active' : 'head'}
              role="columnheader"
              aria-colindex=${column + 2}
              data-column=${column}
              .style=${`left:${String(HEAD_WIDTH + geometry.left(column))}px;width:${String(geometry.widthOf(column))}px`}
            >
              <small>${columnLetters(column)}</small>
              ${line && line !== 'other' ? html`<span class="swatch ${line}" aria-hidden="true"></span>` : ''}${title ?? ''}
              <span class="grip" data-grip=${column}></span>
            </div>`,
        )}
      </div>
      <div
        class="body"
        role="rowgroup"
        .style=${`width:${String(HEAD_WIDTH + geometry.width)}px;height:${String(geometry.height)}px`}
      ></div>
    </div>`;
  }

  #draw(): void {
    const geometry = this.#geometry;
    if (!geometry || !this.#pool || !this.isConnected) return;
    const { scrollTop, scrollLeft, clientHeight, clientWidth } = this.scroller;
    const visible = {
      top: Math.max(0, geometry.rowAt(scrollTop) - MARGIN_ROWS),
      bottom: Math.min(this.model.rows - 1, geometry.rowAt(scrollTop + clientHeight) + MARGIN_ROWS),
      left: geometry.columnAt(scrollLeft),
      right: geometry.columnAt(scrollLeft + clientWidth),
    };
    this.#pool.draw(visible, this.model, geometry, this.selection);
    drawOverlays(this.body, geometry, this.selection, this.references);
  }

  readonly #scrolled = (): void => this.#draw();

  /** Scrolls just so far that a cell is seen. */
  #reveal({ row, column }: CellAt): void {
    const geometry = this.#geometry;
    if (!geometry) return;
    const { scroller } = this;
    const top = geometry.top(row);
    const bottom = top + geometry.heightOf(row);
    const left = geometry.left(column);
    const right = left + geometry.widthOf(column);
    const height = scroller.clientHeight - HEAD_HEIGHT;
    const width = scroller.clientWidth - HEAD_WIDTH;
    if (top < scroller.scrollTop) scroller.scrollTop = top;
    else if (bottom > scroller.scrollTop + height) scroller.scrollTop = bottom - height;
    if (left < scroller.scrollLeft) scroller.scrollLeft = left;
    else if (right > scroller.scrollLeft + width) scroller.scrollLeft = Math.min(left, right - width);
  }

  #select(selection: Selection): void {
    const { focus, anchor } = this.selection;
    if (same(focus, selection.focus) && same(anchor, selection.anchor)) return;
    this.selection = selection;
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
    const isPlain = !event.ctrlKey && !event.metaKey && !event.altKey;
    if (event.key === 'Enter' || event.key === 'Tab') {
      const step = event.key === 'Enter' ? (event.shiftKey ? 'up' : 'down') : event.shiftKey ? 'left' : 'right';
      const to = stepped(this.selection.focus, step, this.model, 1);
      // At the border Tab leaves the grid, so that nobody is held in it.
      if (event.key === 'Tab' && same(to, this.selection.focus)) return;
      event.preventDefault();
      this.#select(extended(this.selection, to, false));
    } else if (isPlain && event.key.length === 1) {
      event.preventDefault();
      if (event.key === '=') this.#emit('formula-start', { text: '=' });
      else this.#edit(event.key);
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
        this.#select({
          anchor: { row: 0, column: 0 },
          focus: { row: model.rows - 1, column: model.columns.length - 1 },
        });
        break;
      case 'fill-down':
      case 'fill-right':
        this.#emit('fill', { direction: act === 'fill-down' ? 'down' : 'right' });
        break;
      case 'nudge-up':
      case 'nudge-down':
        this.#emit('nudge', { direction: act === 'nudge-up' ? 1 : -1, coarse: isShift });
        break;
      case 'menu': {
        const box = this.shadowRoot?.getElementById(RowPool.idOf(selection.focus))?.getBoundingClientRect();
        this.#emit('menu', { x: box?.left ?? 0, y: box?.bottom ?? 0 });
        break;
      }
      case undefined:
    }
  }

  /** Opens the input over the active cell; a formula is edited in the formula line. */
  #edit(typed?: string): void {
    const { focus } = this.selection;
    const text = this.model.cell(focus.row, focus.column)?.text ?? '';
    if (typed === undefined && text.startsWith('=')) this.#emit('formula-start', {});
    else if (this.#geometry) {
      this.#reveal(focus);
      this.#inline.open(this.body, focus, this.#geometry, typed ?? text, typed === undefined);
    }
  }

  #committed(at: CellAt, text: string | undefined, step: 'up' | 'down' | 'left' | 'right' | undefined): void {
    if (text !== undefined) this.#emit('cell-commit', { ...at, text });
    if (step) this.#select(extended(this.selection, stepped(at, step, this.model, 1), false));
    if (step || text === undefined) this.focus();
  }

  #at(event: PointerEvent | MouseEvent): CellAt | undefined {
    const geometry = this.#geometry;
    if (!geometry) return undefined;
    const box = this.scroller.getBoundingClientRect();
    const y = event.clientY - box.top - HEAD_HEIGHT + this.scroller.scrollTop;
    const x = event.clientX - box.left - HEAD_WIDTH + this.scroller.scrollLeft;
    return { row: geometry.rowAt(y), column: geometry.columnAt(x) };
  }

  readonly #press = (event: PointerEvent): void => {
    const target = event.composedPath()[0] as HTMLElement;
    if (event.button !== 0 || target instanceof HTMLInputElement) return;
    if (this.#resize.begin(event, target)) return;
    const at = this.#at(event);
    if (!at || target === this.scroller) return;
    this.#inline.settle();
    const head = target.closest<HTMLElement>('.head');
    const { rows, columns } = this.model;
    if (head) {
      const column = Number(head.dataset['column']);
      this.#select({ anchor: { row: rows - 1, column }, focus: { row: 0, column } });
    } else if (target.closest('.rowhead')) {
      this.#select({ anchor: { row: at.row, column: columns.length - 1 }, focus: { row: at.row, column: 0 } });
    } else {
      this.#dragging = true;
      this.#select(extended(this.selection, at, event.shiftKey));
    }
  };

  readonly #drag = (event: PointerEvent): void => {
    if (!this.#dragging || event.buttons === 0) return;
    const at = this.#at(event);
    if (at) this.#select(extended(this.selection, at, true));
  };

  readonly #release = (): void => {
    this.#dragging = false;
  };

  readonly #double = (event: MouseEvent): void => {
    const target = event.composedPath()[0] as HTMLElement;
    if (target.closest('.cell')) this.#edit();
  };

  readonly #context = (event: MouseEvent): void => {
    event.preventDefault();
    const at = this.#at(event);
    const { anchor, focus } = this.selection;
    const isInside =
      at !== undefined &&
      at.row >= Math.min(anchor.row, focus.row) &&
      at.row <= Math.max(anchor.row, focus.row) &&
      at.column >= Math.min(anchor.column, focus.column) &&
      at.column <= Math.max(anchor.column, focus.column);
    if (at && !isInside) this.#select(extended(this.selection, at, false));
    this.#emit('menu', { x: event.clientX, y: event.clientY });
  };

  #emit(name: string, detail: object): void {
    this.dispatchEvent(new CustomEvent(name, { detail }));
  }
}

const same = (a: CellAt, b: CellAt): boolean => a.row === b.row && a.column === b.column;

declare global {
  interface HTMLElementTagNameMap {
    'sheet-grid': SheetGrid;
  }
}

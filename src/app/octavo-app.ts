import { LitElement, html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import type { AskDialog } from '../components/dialog/ask-dialog.ts';
import type { SheetGrid } from '../components/grid/sheet-grid.ts';
import type { Sheet } from '../document/types.ts';
import type { Workbook } from '../document/workbook.ts';
import type { WorkbookChange } from '../document/workbook-change.ts';
import { formatAddress, parseAddress } from '../formula/address.ts';
import { runAction } from './run-action.ts';
import { clock } from './clock.ts';
import { isDark } from './colours.ts';
import { noticeBar } from './notice-bar.ts';
import { appStyles } from './app-styles.ts';
import { controlStyles } from '../components/control-styles.ts';
import type * as Rest from './after-first-paint.ts';
import type { AppHost, Page } from './app-host.ts';
import { GridActs } from './grid/acts.ts';
import { gridView } from './grid/grid-view.ts';
import { hear } from './heard.ts';
import { Pace } from './pace.ts';
import { railView } from './rail-view.ts';
import { stepped } from '../components/grid/keys.ts';
import type { CellAt, Selection } from '../components/grid/model.ts';
import { START, startOf } from './grid/selection.ts';
import type { Session } from './session.ts';
import './sheet-head.ts';
import type { SheetHead } from './sheet-head.ts';
import { SheetModel } from './grid/sheet-model.ts';
import { sheetTitle } from './sheet-title.ts';
import { tally } from './tally.ts';
import './top-bar.ts';

/** The whole page: bar, rail, sheet with its head, dock. Holds what is selected; everything else is in the session. */
@customElement('octavo-app')
export class OctavoApp extends LitElement implements AppHost {
  static override styles = [appStyles, controlStyles];

  @property({ attribute: false }) session: Session | undefined;
  /** The rail is drawn over the sheet, where there is no room beside it. */
  @property({ type: Boolean, reflect: true }) drawer = false;
  @state() sheetId = '';
  @state() selection: Selection = START;
  /** What can come after the first paint has come: plots, ruler, formula editor, guide. */
  @state() private rest: typeof Rest | undefined;
  @state() private notice = '';
  @state() private tourOffered = false;
  @state() private revision = 0;
  @state() private page: Page | undefined;
  guideAt = '';
  @query('sheet-grid') grid!: SheetGrid;
  @query('ask-dialog') dialog!: AskDialog;
  readonly acts = new GridActs(this);
  #model: SheetModel | undefined;
  #timing = '';
  readonly #pace = new Pace();
  readonly due = (): Promise<void> | undefined => this.#pace.due;
  #deafen: (() => void) | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.#deafen = hear(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#deafen?.();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    this.grid?.release();
    if (!changed.has('session')) return;
    changed.get('session')?.removeEventListener('opened', this.#opened);
    changed.get('session')?.removeEventListener('change', this.#changed);
    this.session?.addEventListener('opened', this.#opened);
    this.session?.addEventListener('change', this.#changed);
    if (this.session?.workbook) this.#opened();
  }

  get workbook(): Workbook | undefined {
    return this.session?.workbook;
  }

  get sheet(): Sheet | undefined {
    const sheets = this.workbook?.document.sheets;
    return sheets?.find(({ id }) => id === this.sheetId) ?? sheets?.[0];
  }

  get cell(): string {
    return formatAddress(this.selection.focus);
  }

  tell(message: string): void {
    this.notice = message;
  }

  /** Shows a place and selects it. */
  go(place: { readonly sheet: string; readonly cell: string }): void {
    const at = parseAddress(place.cell);
    if (!at) return;
    this.sheetId = place.sheet;
    this.selection = { anchor: at, focus: at };
    void this.updateComplete.then(() => this.grid.focus());
  }

  openGuide(at = ''): void {
    this.guideAt = at;
    this.open('guide');
  }

  open(page: Page): void {
    if (page === 'tour') this.tourOffered = false;
    this.page = page;
  }

  show(id: string): void {
    this.sheetId = id;
    this.selection = startOf(this.sheet);
    this.drawer = false;
  }

  begin(): void {
    void this.updateComplete.then(() => this.grid.focus({ preventScroll: true }));
  }

  select(selection: Selection): void {
    this.drawer = false;
    if (!this.#head?.point(selection)) this.selection = selection;
  }

  edit(text?: string): void {
    void this.updateComplete.then(() => this.#head?.edit(text));
  }

  nudge(direction: 1 | -1, coarse: boolean): void {
    this.#head?.nudge(direction, coarse);
  }

  get #head(): SheetHead | null {
    return this.renderRoot.querySelector('sheet-head');
  }

  protected override async scheduleUpdate(): Promise<void> {
    await this.#pace.turn();
    await super.scheduleUpdate();
  }

  /** Who waits for what is due does not wait for the frame: the next key is pressed before it. */
  protected override async getUpdateComplete(): Promise<boolean> {
    if (this.isConnected) this.performUpdate();
    await Promise.resolve();
    return !this.isUpdatePending;
  }

  protected override updated(changed: PropertyValues): void {
    if (changed.has('revision')) this.grid?.refresh();
    this.#pace.drawn();
  }

  protected override firstUpdated(): void {
    requestAnimationFrame(() => setTimeout(() => void this.#fetchRest()));
  }

  protected override render(): TemplateResult {
    const { session, workbook, sheet } = this;
    if (!session || !workbook || !sheet) return html`<main aria-busy="true"></main>`;
    const { document } = workbook;
    const counts = tally(workbook, sheet);
    return html`
      <top-bar
        .title=${document.title}
        ?canUndo=${workbook.canUndo}
        ?canRedo=${workbook.canRedo}
        pinned=${document.baseline ? clock(document.baseline.pinned) : ''}
        system=${document.system}
        ?dark=${isDark()}
        @act=${(event: CustomEvent<{ name: string }>) => void runAction(event.detail.name, this)}
      ></top-bar>
      ${railView(this, session, workbook)}
      <main>
        ${sheetTitle(sheet, counts)} ${this.rest?.sheetAnswer(this, workbook, sheet)}
        <sheet-head
          .workbook=${workbook}
          .sheet=${sheet}
          cell=${this.cell}
          .revision=${this.revision}
          ?rest=${this.rest !== undefined}
          @committed=${(event: CustomEvent<{ move: Move }>) => this.#afterEdit(event.detail.move)}
          @refused=${(event: CustomEvent<{ message: string }>) => this.tell(event.detail.message)}
          @guide=${(event: CustomEvent<{ name: string }>) => this.openGuide(event.detail.name)}
          @open-record=${() => this.open('cell')}
          @pointed=${(event: CustomEvent<CellAt>) => this.grid.reveal(event.detail)}
          @references=${(event: CustomEvent<SheetGrid['references']>) => (this.grid.references = event.detail)}
        ></sheet-head>
        ${gridView(this, sheet, this.#modelOf(workbook, sheet), this.rest)}
        ${
          this.tourOffered && this.notice === ''
            ? noticeBar(
                'New here? A short tour shows where things are.',
                { 'Take the tour': () => this.open('tour'), close: () => (this.tourOffered = false) },
                true,
              )
            : nothing
        }
        ${this.notice === '' ? nothing : noticeBar(this.notice, { close: () => (this.notice = '') })}
        ${
          session.saving.status === 'conflict'
            ? noticeBar(session.saving.text, {
                'Keep mine as a copy': () => void session.keepBoth(),
                'Replace theirs': () => void session.overwrite(),
              })
            : nothing
        }
      </main>
      <aside aria-label="Plots and consequences">
        ${
          this.rest
            ? html`<plot-dock
                .workbook=${workbook}
                .sheet=${sheet}
                cell=${this.cell}
                .revision=${this.revision}
                @go=${(event: CustomEvent<{ sheet: string; cell: string }>) => this.go(event.detail)}
              ></plot-dock>`
            : nothing
        }
      </aside>
      <footer class="foot">
        <span>${this.cell} · ${sheet.rows} rows, ${sheet.columns.length} columns</span>
        <span>${this.#timing}</span>
      </footer>
      <ask-dialog></ask-dialog>
      ${
        this.page && this.rest
          ? this.rest.openPage(this.page, this, { workbook, sheet, close: () => (this.page = undefined) })
          : nothing
      }
    `;
  }

  #modelOf(workbook: Workbook, sheet: Sheet): SheetModel {
    if (this.#model?.workbook !== workbook || this.#model.sheet !== sheet) {
      this.#model = new SheetModel(workbook, sheet, this.session?.remembered.get(sheet.id) ?? new Map());
    }
    return this.#model;
  }

  #afterEdit(move: Move): void {
    if (move !== 'stay' && this.#model) {
      const at = stepped(this.selection.focus, move, this.#model, 1);
      this.selection = { anchor: at, focus: at };
    }
    this.grid.selection = this.selection;
    this.grid.focusWhenDrawn();
  }

  async #fetchRest(): Promise<void> {
    this.rest = await import('./after-first-paint.ts');
    this.tourOffered = this.rest.beginPage(this);
  }

  readonly #opened = (): void => {
    this.workbook?.addEventListener('change', this.#edited);
    // Another tab's newer version of the same document: the reader stays where he is.
    const { sheets = [] } = this.workbook?.document ?? {};
    if (!sheets.some(({ id }) => id === this.sheetId)) {
      this.show(sheets[0]?.id ?? '');
      if (this.rest) this.begin();
    }
    this.requestUpdate();
  };

  readonly #changed = (): void => {
    this.requestUpdate();
  };

  readonly #edited = (event: Event): void => {
    const change = (event as CustomEvent<WorkbookChange>).detail;
    const { places, timing } = change;
    this.#pace.hear(change);
    if (timing && places !== 'all' && places.length > 0) {
      const took = timing.compile + timing.evaluate;
      this.#timing = `${String(places.length)} ${places.length === 1 ? 'cell' : 'cells'} followed in ${took < 10 ? took.toFixed(1) : took.toFixed(0)} ms`;
    }
    this.revision++;
  };
}

/** Where the selection goes after an edit. */
export type Move = 'down' | 'up' | 'right' | 'left' | 'stay';

declare global {
  interface HTMLElementTagNameMap {
    'octavo-app': OctavoApp;
  }
}

import { LitElement, html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import '../components/dialog/ask-dialog.ts';
import type { AskDialog } from '../components/dialog/ask-dialog.ts';
import '../components/grid/sheet-grid.ts';
import type { SheetGrid } from '../components/grid/sheet-grid.ts';
import '../components/menu/pop-menu.ts';
import type { PopMenu } from '../components/menu/pop-menu.ts';
import type { Sheet } from '../document/types.ts';
import type { Workbook, WorkbookChange } from '../document/workbook.ts';
import { formatAddress, parseAddress } from '../formula/address.ts';
import { runAction } from './actions.ts';
import { clock } from './clock.ts';
import { isDark } from './colours.ts';
import { noticeBar } from './notice-bar.ts';
import { appStyles } from './app-styles.ts';
import type { AppHost } from './app-host.ts';
import { GridActs } from './grid-acts.ts';
import { gridMenu, runGridMenu } from './grid-menu.ts';
import { actionOf } from './key-bindings.ts';
import { stepped } from '../components/grid/keys.ts';
import type { CellAt, Selection } from '../components/grid/model.ts';
import { cellsOf, START, startOf } from './selection.ts';
import type { Session } from './session.ts';
import { sheetCommand } from './sheet-acts.ts';
import './sheet-head.ts';
import { SheetModel } from './sheet-model.ts';
import { sheetTitle } from './sheet-title.ts';
import './sheet-rail.ts';
import { countVerdicts } from './tally.ts';
import type { RailEntry } from './sheet-rail.ts';
import './top-bar.ts';

/** The whole page: bar, rail, sheet with its head, dock. Holds what is selected; everything else is in the session. */
@customElement('octavo-app')
export class OctavoApp extends LitElement implements AppHost {
  static override styles = appStyles;

  @property({ attribute: false }) session: Session | undefined;
  /** The rail is drawn over the sheet, where there is no room beside it. */
  @property({ type: Boolean, reflect: true }) drawer = false;
  @state() sheetId = '';
  @state() selection: Selection = START;
  /** What can come after the first paint has come: plots, ruler, formula editor, guide. */
  @state() private rest = false;
  @state() private templates: readonly RailEntry[] = [];
  @state() private notice = '';
  @state() private revision = 0;
  @state() private guide: { readonly open: boolean; readonly at: string } = { open: false, at: '' };
  @query('sheet-grid') grid!: SheetGrid;
  @query('ask-dialog') dialog!: AskDialog;
  @query('#grid-menu') private menu!: PopMenu;
  readonly acts = new GridActs(this);
  #model: SheetModel | undefined;
  #timing = '';

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener('keydown', this.#key);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    removeEventListener('keydown', this.#key);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
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
    this.guide = { open: true, at };
  }

  protected override firstUpdated(): void {
    requestAnimationFrame(() => setTimeout(() => void this.#fetchRest()));
  }

  protected override render(): TemplateResult {
    const { session, workbook, sheet } = this;
    if (!session || !workbook || !sheet) return html`<main aria-busy="true"></main>`;
    const { document } = workbook;
    const counts = countVerdicts(workbook, sheet);
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
      <sheet-rail
        .sheets=${document.sheets.map((each) => ({ id: each.id, name: each.name, counts: countVerdicts(workbook, each) }))}
        current=${sheet.id}
        .templates=${this.templates}
        .documents=${session.documents}
        document=${document.id}
        .saving=${session.saving}
        @sheet=${(event: CustomEvent<{ id: string }>) => this.#show(event.detail.id)}
        @sheet-act=${(event: CustomEvent<{ id: string; name: string }>) => void this.#sheetAct(event.detail)}
        @template=${(event: CustomEvent<{ id: string }>) => void runAction('template', this, event.detail.id)}
        @document=${(event: CustomEvent<{ id: string }>) => void runAction('document', this, event.detail.id)}
        @forget=${(event: CustomEvent<{ id: string }>) => void runAction('forget', this, event.detail.id)}
      ></sheet-rail>
      <main>
        ${sheetTitle(sheet, counts)}
        <sheet-head
          .workbook=${workbook}
          .sheet=${sheet}
          cell=${this.cell}
          .revision=${this.revision}
          ?rest=${this.rest}
          @committed=${(event: CustomEvent<{ move: Move }>) => this.#afterEdit(event.detail.move)}
          @refused=${(event: CustomEvent<{ message: string }>) => this.tell(event.detail.message)}
          @guide=${(event: CustomEvent<{ name: string }>) => this.openGuide(event.detail.name)}
          @open-record=${() => void this.renderRoot.querySelector('plot-dock')?.openCard()}
          @references=${(event: CustomEvent<SheetGrid['references']>) => (this.grid.references = event.detail)}
        ></sheet-head>
        <sheet-grid
          .model=${this.#modelOf(workbook, sheet)}
          .selection=${this.selection}
          label=${sheet.name}
          @selection-change=${this.#selected}
          @cell-commit=${(event: CustomEvent<CellAt & { text: string }>) =>
            void this.acts.commit(event.detail.row, event.detail.column, event.detail.text)}
          @formula-start=${(event: CustomEvent<{ text?: string }>) => this.#editFormula(event.detail.text)}
          @clear=${() => void this.acts.clear()}
          @copy=${(event: ClipboardEvent) => this.acts.copy(event, false)}
          @cut=${(event: ClipboardEvent) => this.acts.copy(event, true)}
          @paste=${(event: ClipboardEvent) => this.acts.paste(event)}
          @fill=${(event: CustomEvent<{ direction: 'down' | 'right' }>) => void this.acts.fill(event.detail.direction)}
          @column-resize=${(event: CustomEvent<{ column: number; width: number }>) =>
            void this.acts.do({
              kind: 'column',
              sheet: sheet.id,
              column: event.detail.column,
              attributes: { width: event.detail.width },
            })}
          @nudge=${(event: CustomEvent<{ direction: 1 | -1; coarse: boolean }>) =>
            this.renderRoot.querySelector('sheet-head')?.nudge(event.detail.direction, event.detail.coarse)}
          @menu=${(event: CustomEvent<{ x: number; y: number }>) => this.menu.open(event.detail)}
        ></sheet-grid>
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
                .selected=${workbook.state(sheet.id, this.cell)}
                formula=${sheet.cells.get(this.cell)?.text ?? ''}
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
      <pop-menu
        id="grid-menu"
        class="floating"
        label="Cells"
        .items=${gridMenu}
        @choose=${(event: CustomEvent<{ name: string }>) => void runGridMenu(event.detail.name, this)}
      ></pop-menu>
      <ask-dialog></ask-dialog>
      ${
        this.guide.open && this.rest
          ? html`<guide-dialog
              at=${this.guide.at}
              .functions=${workbook.functions}
              @use-example=${(event: CustomEvent<{ formula: string }>) => {
                this.guide = { open: false, at: '' };
                void this.updateComplete.then(() => this.#editFormula(event.detail.formula));
              }}
              @close=${() => (this.guide = { open: false, at: '' })}
            ></guide-dialog>`
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

  #show(id: string): void {
    this.sheetId = id;
    this.selection = startOf(this.sheet);
    this.drawer = false;
  }

  async #sheetAct(act: { readonly id: string; readonly name: string }): Promise<void> {
    if (!this.workbook) return;
    const outcome = await sheetCommand(act, this.workbook.document, this.dialog);
    if (outcome && (await this.acts.do(outcome.command)) && outcome.show) this.#show(outcome.show);
  }

  #editFormula(text?: string): void {
    this.renderRoot.querySelector('sheet-head')?.edit(text);
  }

  #afterEdit(move: Move): void {
    if (move !== 'stay' && this.#model) {
      const at = stepped(this.selection.focus, move, this.#model, 1);
      this.selection = { anchor: at, focus: at };
    }
    this.grid.selection = this.selection;
    void this.updateComplete.then(() => this.grid.focus());
  }

  async #fetchRest(): Promise<void> {
    const { templateList } = await import('./after-first-paint.ts');
    this.templates = templateList;
    this.rest = true;
  }

  readonly #selected = (event: CustomEvent<Selection>): void => {
    if (!this.renderRoot.querySelector('sheet-head')?.point(cellsOf(event.detail))) this.selection = event.detail;
  };

  readonly #key = (event: KeyboardEvent): void => {
    const action = event.defaultPrevented ? undefined : actionOf(event);
    if (!action) return;
    event.preventDefault();
    void runAction(action, this);
  };

  readonly #opened = (): void => {
    this.workbook?.addEventListener('change', this.#edited);
    this.#show(this.workbook?.document.sheets[0]?.id ?? '');
    this.requestUpdate();
  };

  readonly #changed = (): void => {
    this.requestUpdate();
  };

  readonly #edited = (event: Event): void => {
    const { places, timing } = (event as CustomEvent<WorkbookChange>).detail;
    if (timing && places !== 'all') {
      const took = timing.compile + timing.evaluate;
      this.#timing = `${String(places.length)} cells followed in ${took < 10 ? took.toFixed(1) : took.toFixed(0)} ms`;
    }
    this.revision++;
    const here = places === 'all' ? undefined : places.filter(({ sheet }) => sheet === this.sheet?.id);
    this.grid?.refresh(here?.map(({ cell }) => cell));
  };
}

/** Where the selection goes after an edit. */
export type Move = 'down' | 'up' | 'right' | 'left' | 'stay';

declare global {
  interface HTMLElementTagNameMap {
    'octavo-app': OctavoApp;
  }
}

import type { CellState, Place, SheetEngine } from '../engine/types.ts';
import { functionsByName, type Functions, type Scope } from '../formula/types.ts';
import { parseQuantity } from '../units/parse.ts';
import { isRefusal, type Command, type Refusal } from './command.ts';
import { completed, withUnit } from './complete.ts';
import { Comparison, type Before, type Moment } from './comparison.ts';
import { baselineCell, momentsOfBaseline } from './moments.ts';
import { listConsequences, type Consequence } from './consequences.ts';
import { difference, textsOf } from './difference.ts';
import { EngineLink, type Answer } from './engine-link.ts';
import { History } from './history.ts';
import { keyOf, samePlace, type Preview } from './preview.ts';
import { copiedText, textsBySheet } from './copied-text.ts';
import { scopeOf } from './scope.ts';
import { cellIn } from './sheets.ts';
import { showCell } from './show-cell.ts';
import type { ShownCell } from './shown.ts';
import type { Cell, OctavoDocument } from './types.ts';
import { Unseen } from './unseen.ts';
import type { WorkbookChange } from './workbook-change.ts';

const EMPTY = { kind: 'empty' } as const;

/** A document on the page: with its history, what the engine makes of it, and what is being tried out. Edits are in the
 *  document at once; the engine follows in order, and the promises of the methods are kept when it has answered.
 *  @fires change - `detail` is a {@link WorkbookChange}. */
export class Workbook extends EventTarget {
  readonly #link: EngineLink;
  #history: History;
  #preview: Preview | undefined;
  /** The newest text that waits for the engine while an earlier one is computed. */
  #waiting: (Preview & { readonly edit: Comparison }) | undefined;
  readonly #unseen = new Unseen();
  #edit = new Comparison([]);
  #editBeforePreview: Comparison | undefined;
  #consequences: readonly Consequence[] | undefined;
  #distance: readonly Consequence[] | undefined;
  #functions: Functions = new Map();

  constructor(engine: SheetEngine, document: OctavoDocument) {
    super();
    this.#link = new EngineLink(engine);
    this.#history = new History(document);
    this.ready = Promise.all([this.#follow(this.#edit, []), this.#learnFunctions()]).then(() => undefined);
  }

  /** Kept when the engine has answered for the first time. */
  readonly ready: Promise<void>;

  get document(): OctavoDocument {
    return this.#history.document;
  }

  get canUndo(): boolean {
    return this.#history.canUndo;
  }

  get canRedo(): boolean {
    return this.#history.canRedo;
  }

  /** The text being tried out, if any. */
  get previewed(): Preview | undefined {
    return this.#preview;
  }

  /** Does a command; gives the refusal where it is not possible, and then nothing has changed. Commands of one `group`
   *  that follow one another are undone together. */
  async do(command: Command, group?: string): Promise<Refusal | undefined> {
    const settled = this.settle();
    const next = this.#history.do(completed(command, this.#unitShown), group);
    await Promise.all([settled, ...(isRefusal(next) ? [] : [this.#advance(next)])]);
    return isRefusal(next) ? next : undefined;
  }

  /** Takes the last step back; while something is tried out, that. */
  async undo(): Promise<void> {
    if (this.#preview) await this.cancel();
    else await this.#advance(this.#history.undo());
  }

  async redo(): Promise<void> {
    await Promise.all([this.settle(), this.#advance(this.#history.redo())]);
  }

  /** Puts another document in the place of this one, with a history of its own. */
  async replace(document: OctavoDocument): Promise<void> {
    this.#preview = this.#waiting = undefined;
    await this.#advance(new History(document));
  }

  /** Tries a text out in a cell: everything follows, the document stays. While one text is computed only the newest of
   *  those that come after it is kept. */
  async preview(place: Place, text: string): Promise<void> {
    const settled = this.#preview && !samePlace(this.#preview.place, place) ? this.settle() : undefined;
    const preview: Preview = { place, text: withUnit(text, this.#unitShown(place)) };
    if (!this.#preview) {
      this.#editBeforePreview = this.#edit;
      this.#edit = new Comparison([place]);
    }
    this.#preview = preview;
    const edit = this.#edit;
    const isAsked = this.#waiting?.edit === edit;
    this.#waiting = { ...preview, edit };
    if (isAsked) return;
    const tried = this.#link.inOrder(async () => {
      const newest = this.#waiting;
      if (newest?.edit !== edit) return;
      this.#waiting = undefined;
      this.#heard(await this.#link.tryOut(newest), edit, this.#link.told);
    });
    await Promise.all([settled, tried]);
  }

  /** Makes the text that is tried out a command. */
  async settle(): Promise<void> {
    const preview = this.#preview;
    if (!preview) return;
    this.#preview = this.#waiting = undefined;
    const { sheet, cell } = preview.place;
    const next = this.#history.do({ kind: 'write', sheet, texts: new Map([[cell, preview.text]]) });
    if (!isRefusal(next)) await this.#advance(next, this.#edit);
  }

  /** Puts back what was there before the trying out. */
  async cancel(): Promise<void> {
    if (!this.#preview) return;
    this.#preview = this.#waiting = undefined;
    this.#edit = this.#editBeforePreview ?? new Comparison([]);
    await this.#follow(new Comparison([]), []);
  }

  /** Remembers the present texts as what later ones are compared with. */
  async pin(now = new Date()): Promise<Refusal | undefined> {
    const settled = this.settle();
    const baseline = { pinned: now.toISOString(), cells: textsOf(this.document) };
    const [refusal] = await Promise.all([this.do({ kind: 'pin', baseline }), settled]);
    return refusal;
  }

  unpin(): Promise<Refusal | undefined> {
    return this.do({ kind: 'unpin' });
  }

  /** The verdicts that another text in a cell would change; nothing is changed, and nothing shown moves. */
  probe(place: Place, text: string): Promise<readonly CellState[]> {
    return this.#link.inOrder(() => this.#link.probe(place, withUnit(text, this.#unitShown(place))));
  }

  /** The state of a formula that stands nowhere, computed as if typed into the sheet. */
  evaluate(sheet: string, text: string): Promise<CellState> {
    return this.#link.inOrder((engine) => engine.evaluate(sheet, text));
  }

  /** The cells that follow directly from a cell. */
  dependents(place: Place): Promise<readonly Place[]> {
    return this.#link.inOrder((engine) => engine.dependents(place));
  }

  /** What the engine made of a cell; nothing where it has not answered or the cell is empty. */
  state(sheet: string, cell: string): CellState | undefined {
    return this.#link.states.get({ sheet, cell });
  }

  /** What a reader sees of a cell; nothing before the engine has first answered. A formula that it has seen may give nothing. */
  shown(sheet: string, cell: string): ShownCell | undefined {
    const place = { sheet, cell };
    const [held, state] = [this.#cellAt(place), this.#link.states.get(place)];
    if (held && !held.text.startsWith('=') && this.#unseen.has(keyOf(place)))
      return { kind: 'waiting', text: held.text };
    if (state) return showCell(state, held, this.document);
    if (!this.#link.answered) return undefined;
    const text = held?.text ?? '';
    return text === '' || text === cellIn(this.#link.answered, place)?.text ? EMPTY : { kind: 'waiting', text };
  }

  /** A cell as one line of text, to be copied out; a record with all its fields. */
  asText(sheet: string, cell: string): string {
    return copiedText(this.state(sheet, cell), this.shown(sheet, cell) ?? EMPTY, this.document.system);
  }

  baselineState(place: Place): CellState | undefined {
    return this.#link.baselineState(this.document.baseline, place);
  }

  baselineShown(place: Place): ShownCell | undefined {
    const state = this.baselineState(place);
    return state && showCell(state, baselineCell(this.document, place), this.document);
  }

  /** The cells that the last edit changed, in order of weight. */
  get consequences(): readonly Consequence[] {
    this.#consequences ??= this.#list(this.#edit, ({ place }) => this.#edit.causes.has(keyOf(place)));
    return this.#consequences;
  }

  /** The cells that differ from the baseline, in order of weight; empty where none is pinned. */
  get distance(): readonly Consequence[] {
    this.#distance ??= this.#list(momentsOfBaseline(this.document, this.#link), ({ place, moment }) => {
      const text = this.#cellAt(place)?.text ?? '';
      return !text.startsWith('=') && text !== (moment.cell?.text ?? '');
    });
    return this.#distance;
  }

  /** What formulas can call, in the order of the guide; nothing before the engine has told. */
  get functions(): Functions {
    return this.#functions;
  }

  /** Learns what is said of the functions, for whoever reads of them. */
  async learnWords(): Promise<void> {
    await this.ready;
    this.#functions = functionsByName(this.#functions.values(), await this.#link.words());
    this.#changed({ document: false, places: [] });
  }

  /** What a formula of the sheet sees around it, for completion and checks while it is typed. */
  scope(sheet: string): Scope {
    return scopeOf(this.document, sheet, this.#functions, (id, cell) => this.state(id, cell)?.type ?? EMPTY);
  }

  /** The cells of a sheet that hold a verdict, or should and cannot. */
  readonly judged = (sheet: string): Iterable<string> => this.#link.states.judged(sheet);

  /** The texts now shown, of all cells that hold something where none are named. */
  shownTexts(places: Iterable<Place> = this.#link.states): ReadonlyMap<string, ReadonlyMap<string, string>> {
    return textsBySheet(this.document, places, ({ sheet, cell }) => this.shown(sheet, cell) ?? EMPTY);
  }

  dispose(): void {
    this.#link.dispose();
  }

  /** A workbook whose engine tells nothing still shows and keeps what is typed. */
  async #learnFunctions(): Promise<void> {
    const told = await this.#link.inOrder((engine) => engine.functions()).catch(() => []);
    this.#functions = functionsByName(told);
    this.#changed({ document: false, places: [] });
  }

  /** Takes the next history and lets the engine follow; changed texts begin an edit where none is given. */
  async #advance(next: History, edit?: Comparison): Promise<void> {
    const before = this.document;
    this.#history = next;
    const step = difference(before, next.document);
    const isText = step.kind === 'texts';
    const causes = isText ? step.writings.map(({ sheet, cell }) => ({ sheet, cell })) : [];
    if (edit) this.#edit = edit;
    else if (!isText || causes.length > 0) this.#edit = new Comparison(causes);
    this.#unseen.add(causes.map(keyOf));
    if (next.document !== before) {
      const isAll = !isText || before.system !== next.document.system || before.baseline !== next.document.baseline;
      this.#changed({ document: true, places: isAll ? 'all' : causes });
    }
    await this.#follow(this.#edit, causes);
  }

  /** Brings the engine to the present document. */
  #follow(edit: Comparison, causes: readonly Place[]): Promise<void> {
    const { document } = this;
    return this.#link.inOrder(async () => {
      const before = this.#link.told;
      const answer = await this.#link.tell(document);
      this.#unseen.remove(causes.map(keyOf));
      this.#heard(answer, edit, before);
    });
  }

  #heard(answer: Answer, edit: Comparison, before: OctavoDocument | undefined): void {
    if (!answer.isReload) edit.take(answer, (place) => cellIn(before, place));
    const places = answer.isReload ? 'all' : answer.cells.map(({ place }) => place);
    this.#changed({ document: false, places, timing: answer.timing });
  }

  #changed(change: WorkbookChange): void {
    this.#consequences = this.#distance = undefined;
    this.dispatchEvent(new CustomEvent('change', { detail: change }));
  }

  readonly #unitShown = (place: Place): string | undefined => {
    const shown = this.shown(place.sheet, place.cell);
    return shown?.kind === 'number' ? shown.unit : parseQuantity(this.#cellAt(place)?.text ?? '')?.unit;
  };

  /** What a cell holds, with the text that is tried out in it. */
  #cellAt(place: Place): Cell | undefined {
    const cell = cellIn(this.document, place);
    const tried = this.#preview && samePlace(this.#preview.place, place) ? this.#preview.text : undefined;
    return tried === undefined ? cell : { ...cell, text: tried };
  }

  #nowAt(place: Place): Moment {
    return { state: this.#link.states.get(place), cell: this.#cellAt(place) };
  }

  #list(moments: Iterable<Before>, isCause: (before: Before) => boolean): readonly Consequence[] {
    return listConsequences(this.document, moments, (place) => this.#nowAt(place), isCause);
  }
}

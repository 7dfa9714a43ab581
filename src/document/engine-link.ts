import type { CellState, Changes, Place, SheetEngine } from '../engine/types.ts';
import { CellStates } from './cell-states.ts';
import { contentOf, difference } from './difference.ts';
import type { Preview } from './preview.ts';
import { keyOf, samePlace } from './preview.ts';
import type { Baseline, OctavoDocument, Sheet } from './types.ts';

/** What the engine answered. */
export interface Answer {
  readonly cells: readonly { readonly place: Place; readonly before: CellState | undefined }[];
  /** The whole document was loaded anew, so that the states before say nothing about an edit. */
  readonly isReload: boolean;
  readonly timing: Changes['timing'];
}

const NOTHING: Changes = { cells: [], timing: { compile: 0, evaluate: 0 } };

/** Keeps the engine in step with the document: one request at a time, in the order asked. Holds what the engine said of
 *  every cell, now and in the baseline. */
export class EngineLink {
  readonly states = new CellStates();
  readonly #engine: SheetEngine;
  readonly #baselines = new WeakMap<Baseline, CellStates>();
  /** The document that the engine holds; nothing before the first answer and after a failure. */
  #told: OctavoDocument | undefined;
  /** A text that the engine holds in place of the document's, while it is tried out. */
  #tried: Preview | undefined;
  #answered: OctavoDocument | undefined;
  #queue: Promise<unknown> = Promise.resolve();

  constructor(engine: SheetEngine) {
    this.#engine = engine;
  }

  /** The document for which the engine answered last, without its sheets once their states are forgotten; nothing before the
   *  first answer, when no cell is known to be empty. */
  get answered(): OctavoDocument | undefined {
    return this.#answered;
  }

  /** The document for which the states hold, apart from a text being tried out. */
  get told(): OctavoDocument | undefined {
    return this.#told;
  }

  /** Does something with the engine after everything asked before. A failure reaches who asked and holds up no one else. */
  inOrder<T>(task: (engine: SheetEngine) => Promise<T>): Promise<T> {
    const run = this.#queue.then(() => task(this.#engine));
    this.#queue = run.catch(() => undefined);
    return run;
  }

  /** What is said of functions; no edit waits for it. Nothing from an engine that broke off. */
  async words(): Promise<Awaited<ReturnType<SheetEngine['words']>> | undefined> {
    return this.#engine.words().catch(() => undefined);
  }

  /** Brings the engine to a document. To be called in order. */
  async tell(document: OctavoDocument): Promise<Answer> {
    const told = this.#told;
    const step = told ? difference(told, document) : ({ kind: 'all' } as const);
    this.#told = undefined;
    if (!told) await this.#forget();
    const changes = step.kind === 'all' ? await this.#load(document) : await this.#write(step.writings, document);
    const cells = this.states.take(changes);
    this.#told = document;
    this.#answered = document;
    this.#tried = undefined;
    if (step.kind === 'all') this.states.keep(new Set(document.sheets.map(({ id }) => id)));
    await this.#learnBaseline(document);
    return { cells, isReload: step.kind === 'all', timing: changes.timing };
  }

  /** Lets the engine hold a text in place of the document's, until told a document again. To be called in order. */
  async tryOut(preview: Preview): Promise<Answer> {
    const earlier = this.#tried && !samePlace(this.#tried.place, preview.place) ? [this.#putBack(this.#tried)] : [];
    const told = this.#told;
    this.#told = undefined;
    const changes = await this.#engine.write([...earlier, { ...preview.place, text: preview.text }]);
    this.#told = told;
    this.#tried = preview;
    return { cells: this.states.take(changes), isReload: false, timing: changes.timing };
  }

  /** The verdicts that another text would change; one being tried out stays. To be called in order. */
  async probe(place: Place, text: string): Promise<readonly CellState[]> {
    const told = this.#told;
    this.#told = undefined;
    const verdicts = await this.#engine.probe({ ...place, text });
    this.#told = told;
    return verdicts;
  }

  /** What a cell was in the baseline; nothing where none is pinned or it is not known yet. */
  baselineState(baseline: Baseline | undefined, place: Place): CellState | undefined {
    return baseline && this.#baselines.get(baseline)?.get(place);
  }

  /** All places that hold something in the baseline, or nothing where its states are not known. */
  baselineStates(baseline: Baseline | undefined): CellStates | undefined {
    return baseline && this.#baselines.get(baseline);
  }

  dispose(): void {
    this.#engine.dispose();
  }

  /** An engine that served another document, or that failed half-way, tells only what differs from what it last said; with
   *  nothing in it, it tells all. */
  async #forget(): Promise<void> {
    this.#answered &&= { ...this.#answered, sheets: [] };
    await this.#engine.load([]);
    this.states.keep(new Set());
  }

  #load(document: OctavoDocument): Promise<Changes> {
    return this.#engine.load(contentOf(document.sheets));
  }

  async #write(
    writings: readonly { readonly sheet: string; readonly cell: string; readonly text: string }[],
    document: OctavoDocument,
  ): Promise<Changes> {
    const tried = this.#tried;
    const isWritten = tried && writings.some((each) => keyOf(each) === keyOf(tried.place));
    const all = tried && !isWritten ? [...writings, this.#putBack(tried, document)] : writings;
    return all.length === 0 ? NOTHING : this.#engine.write(all);
  }

  #putBack({ place }: Pick<Preview, 'place'>, document = this.#told): Place & { text: string } {
    const sheet = document?.sheets.find(({ id }) => id === place.sheet);
    return { ...place, text: sheet?.cells.get(place.cell)?.text ?? '' };
  }

  /** A baseline pinned just now is what is shown; any other is computed by loading its texts and going back. */
  async #learnBaseline(document: OctavoDocument): Promise<void> {
    const { baseline } = document;
    if (!baseline || this.#baselines.has(baseline)) return;
    if (document.sheets.every((sheet) => holdsTexts(sheet, baseline.cells.get(sheet.id)))) {
      this.#baselines.set(baseline, this.states.copy());
      return;
    }
    const remembered = document.sheets.map((sheet) => withTexts(sheet, baseline.cells.get(sheet.id)));
    const states = this.states.copy();
    this.#told = undefined;
    states.take(await this.#engine.load(contentOf(remembered)));
    this.states.take(await this.#load(document));
    this.#told = document;
    this.#baselines.set(baseline, states);
  }
}

type Texts = ReadonlyMap<string, string>;

function holdsTexts({ cells }: Sheet, texts: Texts | undefined): boolean {
  let filled = 0;
  for (const [address, { text }] of cells) {
    if (text === '') continue;
    filled++;
    if (texts?.get(address) !== text) return false;
  }
  return filled === (texts?.size ?? 0);
}

const withTexts = (sheet: Sheet, texts: Texts | undefined): Sheet =>
  texts ? { ...sheet, cells: new Map([...texts].map(([address, text]) => [address, { text }])) } : sheet;

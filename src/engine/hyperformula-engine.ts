import {
  DetailedCellError,
  ErrorType,
  ExportedCellChange,
  type CellValue as EngineValue,
  type HyperFormula,
} from 'hyperformula';
import { catalogue } from '../../functions/index.ts';
import type { AnyFunction, FunctionDescription } from '../../functions/define.ts';
import { compile } from '../formula/compile.ts';
import { functionsByName } from '../formula/types.ts';
import { bareEngine } from './bare-engine.ts';
import { CellIndex, keyOf, placeOf } from './cell-index.ts';
import { CellReader } from './cell-reader.ts';
import { emptyAt, isNothing, ownDoubts, problem, withDoubts, withNumber } from './cell-state.ts';
import { columnOwners, type Outcome as Done } from './column-owners.ts';
import { Doubts } from './doubts.ts';
import { Loops } from './loops.ts';
import { failedText, isAt, withoutMarks } from './problem-text.ts';
import { Probing } from './probing.ts';
import { rawOf, unsound } from './raw-content.ts';
import { RecordStore } from './record-store.ts';
import { sameFrame } from './same-frame.ts';
import { sameState } from './same-state.ts';
import { columnRuns, Spots, type Spot } from './spots.ts';
import type { CellState, Changes, Place, SheetContent, SheetEngine, Writing } from './types.ts';
import { wordsOf } from './words.ts';

type Outcome = Done<ExportedCellChange>;

/** What is learnt from one calculation leads to another, so often at most. */
const MOST_ROUNDS = 5;

/** The engine on HyperFormula: this file and the plugin are all that know it. Sheets go by their ids there. */
export class HyperFormulaEngine implements SheetEngine {
  readonly #store: RecordStore;
  readonly #definitions: readonly AnyFunction[];
  readonly #index: CellIndex;
  readonly #spots = new Spots();
  /** Cells that the engine could not calculate, and did not get; tried again with every edit. */
  readonly #failed = new Set<string>();
  /** Formulas that stand in a loop. */
  #circular: ReadonlySet<string> = new Set();
  /** Formulas whose columns have no room. */
  readonly #crowded = new Set<string>();
  readonly #doubts = new Doubts(this.#spots);
  readonly #loops: Loops;
  readonly #reader: CellReader;
  readonly #probing = new Probing((writing) => this.#calculate([writing], false, performance.now()).cells);
  #sheets: readonly SheetContent[] = [];
  readonly #hf: HyperFormula;

  /** @param definitions - Functions in place of the catalogue's. */
  constructor(store = new RecordStore(), definitions: readonly AnyFunction[] = catalogue) {
    this.#definitions = definitions;
    this.#store = store;
    this.#index = new CellIndex(functionsByName(definitions));
    this.#loops = new Loops(this.#index);
    this.#reader = new CellReader(store, this.#index, this.#loops, (id) => this.#nameOf(id));
    this.#hf = bareEngine(definitions, {
      store,
      doubt: (at, messages) => this.#doubts.hear(at, messages),
      nameOf: (sheet) => this.#nameOf(this.#hf.getSheetName(sheet) ?? ''),
    });
  }

  async load(sheets: readonly SheetContent[]): Promise<Changes> {
    this.#probing.end();
    const started = performance.now();
    const isFramed = sameFrame(this.#sheets, sheets);
    const writings = [...this.#index.differences(sheets)];
    this.#sheets = sheets;
    const gone = this.#adopt(sheets);
    this.#index.frame(sheets);
    const { cells, timing } = this.#calculate(writings, !isFramed, started);
    return { cells: [...gone, ...cells], timing };
  }

  async write(writings: readonly Writing[]): Promise<Changes> {
    this.#probing.end();
    return this.#calculate(writings, false, performance.now());
  }

  async probe(writing: Writing): Promise<readonly CellState[]> {
    return this.#probing.verdicts(writing, this.#index.get(keyOf(writing))?.text ?? '');
  }

  async evaluate(sheet: string, text: string): Promise<CellState> {
    this.#probing.end();
    const place = { sheet, cell: '' };
    const typed = text.startsWith('=') ? text : `=${text}`;
    const { text: formula, type, findings } = compile(typed, this.#index.scope(sheet));
    const id = this.#spots.numberOf(sheet);
    const error = findings.find(({ level }) => level === 'error');
    if (error || id === undefined)
      return { ...place, value: problem(error?.message ?? 'There is no such sheet.'), type, findings };
    try {
      const { result, doubts } = this.#doubts.tryOut(() => this.#hf.calculateFormula(withoutMarks(formula), id));
      const read = this.#reader.read(Array.isArray(result) ? (result[0]?.[0] ?? null) : result, place);
      return { ...place, value: read, type, findings: withDoubts(findings, [...doubts, ...ownDoubts(read)], typed) };
    } catch (failure) {
      return { ...place, value: problem(failedText(failure)), type, findings };
    }
  }

  async functions(): Promise<readonly FunctionDescription[]> {
    // Without compute, for a function cannot leave its thread.
    return this.#definitions.map(({ name, parameters, returns }) => ({ name, parameters, returns }));
  }

  readonly words = (): ReturnType<SheetEngine['words']> => wordsOf(this.#definitions);

  async dependents(place: Place): Promise<readonly Place[]> {
    this.#probing.end();
    return [...this.#index.users(keyOf(place))].map(placeOf);
  }

  dispose(): void {
    this.#probing.end();
    this.#hf.destroy();
  }

  /** Makes the engine's sheets those of the document; gives the cells that go with a sheet, empty. */
  #adopt(sheets: readonly SheetContent[]): CellState[] {
    const wanted = new Set(sheets.map(({ id }) => id));
    const gone: CellState[] = [];
    for (const id of this.#spots.sheets) {
      if (wanted.has(id)) continue;
      this.#hf.removeSheet(this.#spots.numberOf(id) ?? -1);
      for (const { place, told } of this.#spots.dropSheet(id)) if (told) gone.push(emptyAt(place));
    }
    for (const id of wanted) {
      if (this.#spots.numberOf(id) !== undefined) continue;
      this.#hf.addSheet(id);
      this.#spots.addSheet(this.#hf.getSheetId(id) ?? -1, id);
    }
    return gone;
  }

  #calculate(writings: readonly Writing[], isFrameNew: boolean, started: number): Changes {
    this.#doubts.beginCalculation();
    this.#loops.forget();
    const keys = this.#index.write(writings, isFrameNew);
    for (const key of this.#failed) keys.add(key);
    this.#failed.clear();
    const compiled = performance.now();
    const cells = this.#changes(this.#settle(this.#set(keys)));
    if (this.#store.isWorthSweeping) this.#store.sweep(this.#spots.handles());
    return { cells, timing: { compile: compiled - started, evaluate: performance.now() - compiled } };
  }

  /** What the engine has found out may give formulas another meaning, and room for columns that had none. */
  #settle(first: Outcome): Outcome {
    let outcome = first;
    let last = first;
    for (let round = 0; round < MOST_ROUNDS; round++) {
      const keys = this.#learn(last);
      if (keys.size === 0) break;
      last = this.#set(keys);
      outcome = { spots: [...outcome.spots, ...last.spots], changes: [...outcome.changes, ...last.changes] };
    }
    return outcome;
  }

  /** Notes into which cells columns spill, which formulas stand in loops, and which columns have no room; gives the cells to
   *  be set anew. */
  #learn(outcome: Outcome): ReadonlySet<string> {
    const { spots, changes } = outcome;
    const anew = this.#index.spill(columnOwners(outcome, this.#index, this.#spots, this.#hf));
    const isFreed = spots.some(({ key }) => !this.#index.get(key));
    if (isFreed) for (const key of this.#crowded) anew.add(key);
    const circular = new Set(this.#circular);
    const isWatching = circular.size > 0 || this.#crowded.size > 0;
    const note = (spot: Spot | undefined, value: unknown): void => {
      if (!spot) return;
      const error = value instanceof DetailedCellError ? value : undefined;
      mark(this.#crowded, spot.key, error?.type === ErrorType.SPILL && isAt(error, spot.place));
      mark(circular, spot.key, error?.type === ErrorType.CYCLE && isAt(error, spot.place));
    };
    for (const spot of spots) note(spot, this.#hf.getCellValue(spot.address));
    for (const change of changes) {
      if (isWatching || change.newValue instanceof DetailedCellError)
        note(this.#spots.at(change.address), change.newValue);
    }
    if (circular.size === 0 && this.#circular.size === 0) return anew;
    this.#circular = circular;
    for (const key of this.#index.circle(circular)) anew.add(key);
    return anew;
  }

  /** Hands what is compiled to the engine; gives every cell whose value or meaning may have changed. */
  #set(keys: ReadonlySet<string>): Outcome {
    const spots = this.#spotsOf(keys);
    try {
      return { spots, changes: this.#batch(() => this.#setCells(spots)) };
    } catch (failure) {
      return this.#recover(spots, failure);
    }
  }

  #batch(set: () => void): readonly ExportedCellChange[] {
    return this.#hf.batch(set).filter((change) => change instanceof ExportedCellChange);
  }

  #setCells(spots: readonly Spot[], refused?: ReadonlySet<Spot>, message = ''): void {
    for (const run of columnRuns(spots)) {
      const contents = run.map((spot) => {
        this.#doubts.clear(spot);
        return [refused?.has(spot) ? unsound(message) : rawOf(this.#index.get(spot.key))];
      });
      const [first] = run;
      if (first) this.#hf.setCellContents(first.address, contents);
    }
  }

  /** The engine failed inside, and what it has not got round to is old. That is taken back, and done again without the
   *  formulas that may be at fault: first those written, then all that follow from what was written. */
  #recover(spots: readonly Spot[], failure: unknown): Outcome {
    const message = failedText(failure);
    const formulas = (among: readonly Spot[]): Set<Spot> =>
      new Set(among.filter(({ key }) => this.#index.get(key)?.content.kind === 'formula'));
    const all = this.#spotsOf(this.#index.followers(spots.map(({ key }) => key)));
    for (const tried of [spots, all]) {
      if (this.#hf.isThereSomethingToUndo()) this.#hf.undo();
      const refused = formulas(tried);
      try {
        const changes = this.#batch(() => this.#setCells(tried, refused, message));
        for (const { key } of refused) this.#failed.add(key);
        // Whatever the failed attempt computed may be anywhere below.
        return { spots: all, changes };
      } catch {
        continue;
      }
    }
    throw failure;
  }

  #spotsOf(keys: Iterable<string>): Spot[] {
    return [...keys].flatMap((key) => this.#spots.of(placeOf(key)) ?? []);
  }

  /** The states that are others than those last told. */
  #changes({ spots, changes }: Outcome): CellState[] {
    const cells: CellState[] = [];
    const rest = new Set([...spots, ...this.#doubts.takeChanged()]);
    for (const change of changes) {
      const spot = this.#spots.at(change.address);
      if (!spot) continue;
      const isSet = rest.size > 0 && rest.delete(spot);
      const { told, doubts, isTyped } = spot;
      const isPlain = isTyped && !isSet && doubts.length === 0;
      if (isPlain && told?.value.kind === 'number' && typeof change.newValue === 'number') {
        // Its formula is the same, so all but the number is: that is most cells of most edits.
        if (told.value.value === change.newValue) continue;
        this.#probing.hear(spot.key, told);
        spot.told = withNumber(told, change.newValue);
        cells.push(spot.told);
        continue;
      }
      this.#doubts.calculated(spot);
      this.#tell(spot, change.newValue, cells);
    }
    for (const spot of rest) this.#tell(spot, this.#hf.getCellValue(spot.address), cells);
    // A column may have another type now and the same numbers.
    const below = spots.flatMap(({ key }) => [...this.#index.membersOf(key)]);
    for (const spot of this.#spotsOf(below)) this.#tell(spot, this.#hf.getCellValue(spot.address), cells);
    return cells;
  }

  #tell(spot: Spot, raw: EngineValue, cells: CellState[]): void {
    const state = this.#reader.stateAt(spot, raw);
    if (spot.told ? sameState(spot.told, state) : isNothing(state)) return;
    this.#probing.hear(spot.key, spot.told);
    spot.told = isNothing(state) ? undefined : state;
    cells.push(state);
  }

  #nameOf(id: string): string {
    return this.#sheets.find((sheet) => sheet.id === id)?.name ?? id;
  }
}

function mark(set: Set<string>, key: string, isIn: boolean): void {
  if (isIn) set.add(key);
  else if (set.size > 0) set.delete(key);
}

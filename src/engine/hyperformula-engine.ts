import {
  DetailedCellError,
  ExportedCellChange,
  HyperFormula,
  type CellValue as EngineValue,
  type RawCellContent,
} from 'hyperformula';
import { catalogue } from '../../functions/index.ts';
import type { CellRecord } from '../../functions/values/record.ts';
import { columnLetters, formatAddress, parseAddress } from '../formula/address.ts';
import { compile } from '../formula/compile.ts';
import { UNKNOWN } from '../formula/type-of.ts';
import type { CellType, Compiled, Finding } from '../formula/types.ts';
import { speak } from '../units/show.ts';
import { CellIndex, keyOf, placeOf, type Entry } from './cell-index.ts';
import { language } from './language.ts';
import { loopText, originOf, problemText } from './problem-text.ts';
import { pluginFor, type EngineContext } from './plugin.ts';
import { RecordStore } from './record-store.ts';
import type { CellState, CellValue, Changes, Place, SheetContent, SheetEngine, Writing } from './types.ts';

const EMPTY: CellType = { kind: 'empty' };
const NOTHING: readonly Finding[] = [];

/** The engine on HyperFormula: this file and the plugin are all that know it. Sheets go by their ids there. */
export class HyperFormulaEngine implements SheetEngine {
  readonly #store = new RecordStore();
  readonly #doubts = new Map<string, Map<string, string>>();
  readonly #handles = new Map<string, string>();
  readonly #index = new CellIndex();
  #sheets: readonly SheetContent[] = [];
  readonly #hf: HyperFormula;

  constructor() {
    const context: EngineContext = {
      store: this.#store,
      doubt: ({ sheet, row, col }, topic, message) =>
        this.#doubt(sheet, formatAddress({ row, column: col }), topic, message),
    };
    this.#hf = HyperFormula.buildEmpty({
      licenseKey: 'gpl-v3',
      language: language(catalogue),
      functionPlugins: [...HyperFormula.getAllFunctionPlugins(), pluginFor(catalogue)],
      context,
      dateFormats: [],
      timeFormats: [],
      precisionRounding: 15,
      undoLimit: 1,
      maxRows: 1_048_576,
      maxColumns: 18_278,
    });
  }

  async load(sheets: readonly SheetContent[]): Promise<Changes> {
    const started = performance.now();
    const isFramed = sameFrame(this.#sheets, sheets);
    const writings = [...this.#index.differences(sheets)];
    this.#sheets = sheets;
    this.#adopt(sheets);
    this.#index.frame(sheets);
    const touched = this.#index.write(writings, !isFramed);
    const compiled = performance.now();
    return this.#changes(this.#set(touched), compiled - started, performance.now() - compiled);
  }

  async write(writings: readonly Writing[]): Promise<Changes> {
    const started = performance.now();
    const touched = this.#index.write(writings);
    const compiled = performance.now();
    return this.#changes(this.#set(touched), compiled - started, performance.now() - compiled);
  }

  async evaluate(sheet: string, text: string): Promise<CellState> {
    const place = { sheet, cell: '' };
    const typed = text.startsWith('=') ? text : `=${text}`;
    const compiled = compile(typed, this.#index.scope(sheet));
    const id = this.#hf.getSheetId(sheet);
    const error = compiled.findings.find(({ level }) => level === 'error');
    if (error || id === undefined)
      return stateOf(place, problem(error?.message ?? 'There is no such sheet.'), compiled);
    const value = this.#hf.calculateFormula(compiled.text, id);
    const first = Array.isArray(value) ? (value[0]?.[0] ?? null) : value;
    return stateOf(place, this.#read(first, place), compiled);
  }

  async dependents(place: Place): Promise<readonly Place[]> {
    return [...this.#index.users(keyOf(place))].map(placeOf);
  }

  dispose(): void {
    this.#hf.destroy();
  }

  /** Makes the engine's sheets those of the document. */
  #adopt(sheets: readonly SheetContent[]): void {
    const wanted = new Set(sheets.map(({ id }) => id));
    for (const name of this.#hf.getSheetNames()) {
      const id = this.#hf.getSheetId(name);
      if (!wanted.has(name) && id !== undefined) this.#hf.removeSheet(id);
    }
    for (const id of wanted) if (!this.#hf.doesSheetExist(id)) this.#hf.addSheet(id);
    for (const key of this.#handles.keys()) if (!wanted.has(placeOf(key).sheet)) this.#handles.delete(key);
  }

  /** Hands what is compiled to the engine; gives every cell whose value or meaning changed. */
  #set(touched: ReadonlySet<string>): Set<string> {
    const changed = new Set(touched);
    const set = (): void => {
      for (const key of touched) this.#setCell(key);
    };
    try {
      for (const change of this.#hf.batch(set)) {
        if (change instanceof ExportedCellChange) {
          const { sheet, row, col } = change.address;
          changed.add(`${this.#hf.getSheetName(sheet) ?? ''}!${formatAddress({ row, column: col })}`);
        }
      }
    } catch (error) {
      this.#recover(touched, error);
    }
    return changed;
  }

  #setCell(key: string): void {
    const { sheet, cell } = placeOf(key);
    const id = this.#hf.getSheetId(sheet);
    const at = parseAddress(cell);
    if (id === undefined || !at) return;
    this.#doubts.delete(key);
    this.#hf.setCellContents({ sheet: id, row: at.row, col: at.column }, [[rawOf(this.#index.get(key))]]);
  }

  /** The engine failed inside: the written cells say so, everything else is as before. */
  #recover(touched: ReadonlySet<string>, error: unknown): void {
    if (this.#hf.isThereSomethingToUndo()) this.#hf.undo();
    const message = `The calculation engine failed here (${String(error)}). Undo the edit, or write the formula in another way.`;
    this.#hf.batch(() => {
      for (const key of touched) {
        const { sheet, cell } = placeOf(key);
        const id = this.#hf.getSheetId(sheet);
        const at = parseAddress(cell);
        if (id !== undefined && at && this.#index.get(key)?.content.kind === 'formula') {
          this.#hf.setCellContents({ sheet: id, row: at.row, col: at.column }, [[unsound(message)]]);
        }
      }
    });
  }

  #changes(changed: Iterable<string>, compileTime: number, evaluateTime: number): Changes {
    const cells: CellState[] = [];
    for (const key of new Set(changed)) cells.push(this.#stateAt(key));
    if (this.#store.isWorthSweeping) this.#store.sweep(new Set(this.#handles.values()));
    return { cells, timing: { compile: compileTime, evaluate: evaluateTime } };
  }

  #stateAt(key: string): CellState {
    const place = placeOf(key);
    const id = this.#hf.getSheetId(place.sheet);
    const at = parseAddress(place.cell);
    const entry = this.#index.get(key);
    const raw = id === undefined || !at ? null : this.#hf.getCellValue({ sheet: id, row: at.row, col: at.column });
    if (RecordStore.isHandle(raw)) this.#handles.set(key, raw);
    else this.#handles.delete(key);
    const value = this.#read(raw, place);
    const findings = this.#findings(key, entry, value);
    const type = entry?.type ?? this.#typeOfSpilled(place, value);
    const unit = entry?.content.kind === 'quantity' ? entry.content.unit : undefined;
    return { ...place, value, type, findings, ...(unit !== undefined && { unit }) };
  }

  #read(value: EngineValue, place: Place): CellValue {
    if (value === null || value === undefined) return { kind: 'empty' };
    if (value instanceof DetailedCellError) return this.#problem(value, place);
    if (typeof value === 'number') return { kind: 'number', value };
    if (typeof value === 'boolean') return { kind: 'truth', truth: value };
    const record = RecordStore.isHandle(value) ? this.#store.record(value) : undefined;
    if (record) return { kind: 'record', record };
    return { kind: 'text', text: this.#store.readable(String(value), titleOf) };
  }

  #problem(error: DetailedCellError, place: Place): CellValue {
    const { type, message, address } = error;
    if (String(type) === 'CYCLE') {
      const loop = this.#index.loopOf(keyOf(place));
      const nameOf = (id: string): string => this.#sheets.find((sheet) => sheet.id === id)?.name ?? id;
      return problem(
        loop
          ? loopText(loop.map(placeOf), place.sheet, nameOf)
          : 'A cell that this formula needs depends on itself: look for the loop there.',
      );
    }
    const origin = originOf({ type, message, address });
    const isElsewhere = origin && keyOf(origin) !== keyOf(place);
    return { ...problem(problemText({ type, message })), ...(isElsewhere && { origin }) };
  }

  #findings(key: string, entry: Entry | undefined, value: CellValue): readonly Finding[] {
    const compiled = entry?.compiled?.findings ?? NOTHING;
    const doubts = [...(this.#doubts.get(key)?.values() ?? [])];
    const own =
      value.kind === 'record' && value.record.kind === 'driver'
        ? value.record.doubts.map((doubt) => speak(doubt, 'metric'))
        : [];
    if (doubts.length === 0 && own.length === 0) return compiled;
    const to = entry?.text.length ?? 0;
    return [...compiled, ...[...doubts, ...own].map((message) => ({ level: 'doubt' as const, message, from: 0, to }))];
  }

  /** A cell into which a column spills has the type of the formula above. */
  #typeOfSpilled({ sheet, cell }: Place, value: CellValue): CellType {
    const at = parseAddress(cell);
    if (value.kind === 'empty' || !at) return EMPTY;
    for (let row = at.row - 1; row >= 0; row--) {
      const above = this.#index.get(`${sheet}!${columnLetters(at.column)}${String(row + 1)}`);
      if (above) return above.type;
    }
    return UNKNOWN;
  }

  #doubt(sheet: number, cell: string, topic: string, message: string | undefined): void {
    const key = `${this.#hf.getSheetName(sheet) ?? ''}!${cell}`;
    const held = this.#doubts.get(key);
    if (message === undefined) held?.delete(topic);
    else this.#doubts.set(key, (held ?? new Map<string, string>()).set(topic, message));
  }
}

/** What the engine is told of a cell. A leading apostrophe keeps a text a text. */
function rawOf(entry: Entry | undefined): RawCellContent {
  switch (entry?.content.kind) {
    case undefined:
    case 'empty':
      return null;
    case 'number':
    case 'quantity':
      return entry.content.value;
    case 'truth':
      return entry.content.truth;
    case 'text':
      return `'${entry.content.text}`;
    case 'formula': {
      const error = entry.compiled?.findings.find(({ level }) => level === 'error');
      return error ? unsound(error.message) : (entry.compiled?.text ?? null);
    }
  }
}

const unsound = (message: string): string => `=UNSOUND("${message.replaceAll('"', '""')}")`;

const problem = (message: string): CellValue & { kind: 'problem' } => ({ kind: 'problem', message });

const stateOf = (place: Place, value: CellValue, { type, findings }: Compiled): CellState => ({
  ...place,
  value,
  type,
  findings,
});

const titleOf = (record: CellRecord): string =>
  'name' in record ? record.name : 'title' in record ? record.title : record.kind;

const sameFrame = (a: readonly SheetContent[], b: readonly SheetContent[]): boolean =>
  a.length === b.length &&
  a.every((sheet, index) => {
    const other = b[index];
    return other?.id === sheet.id && other.name === sheet.name && sameNames(sheet.names, other.names);
  });

const sameNames = (a: ReadonlyMap<string, string>, b: ReadonlyMap<string, string>): boolean =>
  a === b || (a.size === b.size && [...a].every(([name, cells]) => b.get(name) === cells));

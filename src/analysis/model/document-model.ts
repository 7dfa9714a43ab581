import { catalogue } from '../../../functions/index.ts';
import { contentOf } from '../../document/difference.ts';
import type { OctavoDocument } from '../../document/types.ts';
import { Refused } from '../../engine/arguments.ts';
import { CellIndex, keyOf } from '../../engine/cell-index.ts';
import { createEngine } from '../../engine/direct.ts';
import type { CellState, CellValue, Changes, Place, SheetEngine, Writing } from '../../engine/types.ts';
import { functionsByName } from '../../formula/types.ts';
import { compileFormula, type Cells } from './compile-formula.ts';
import { heldOf, sameResult, type Held } from './datum.ts';
import { Graph } from './graph.ts';
import type { Run } from './plain-calls.ts';
import { execute, type Program, type Step } from './runner.ts';
import { settingText } from '../subject/setting-text.ts';
import { subjectOf } from '../subject/subject.ts';
import type { Input, Result, Setting, Subject } from '../subject/types.ts';

const NOTHING: CellValue = { kind: 'empty' };
const functions = new Map(catalogue.map((each) => [each.name, each]));

/** A document that answers "results at these inputs", on an engine of its own. */
export class DocumentModel {
  readonly document: OctavoDocument;
  readonly subject: Subject;
  readonly graph: Graph;
  readonly #engine: SheetEngine;
  readonly #index: CellIndex;
  readonly #present: ReadonlyMap<string, CellState>;
  readonly #now: Map<string, CellState>;
  /** Texts that the engine holds in place of the document's. */
  readonly #written = new Map<string, Writing>();

  private constructor(document: OctavoDocument, engine: SheetEngine, index: CellIndex, { cells }: Changes) {
    this.document = document;
    this.#engine = engine;
    this.#index = index;
    this.#present = new Map(cells.map((state) => [keyOf(state), state]));
    this.#now = new Map(this.#present);
    this.subject = subjectOf(document, (place) => this.#present.get(keyOf(place)));
    this.graph = new Graph(index, functions, (key) => this.#present.has(key));
  }

  static async open(document: OctavoDocument): Promise<DocumentModel> {
    const engine = createEngine();
    const content = contentOf(document.sheets);
    const index = new CellIndex(functionsByName(catalogue));
    index.frame(content);
    index.write([...index.differences(content)]);
    return new DocumentModel(document, engine, index, await engine.load(content));
  }

  /** What a cell holds as the document stands. */
  present(place: Place): CellValue {
    return this.#present.get(keyOf(place))?.value ?? NOTHING;
  }

  input(place: Place): Input | undefined {
    return this.subject.inputs.find((each) => keyOf(each) === keyOf(place));
  }

  result(place: Place): Result | undefined {
    return this.subject.results.find((each) => keyOf(each) === keyOf(place));
  }

  get verdicts(): readonly Result[] {
    return this.subject.results.filter(({ kind }) => kind === 'verdict');
  }

  /** What cells hold with some texts in place of the document's, as the engine calculates it. */
  async read(texts: readonly Writing[], places: readonly Place[]): Promise<CellValue[]> {
    const wanted = new Map(texts.map((writing) => [keyOf(writing), writing]));
    const writings: Writing[] = [];
    for (const [key, writing] of this.#written)
      if (!wanted.has(key)) writings.push({ ...writing, text: this.#typed(writing) });
    for (const [key, writing] of wanted)
      if ((this.#written.get(key)?.text ?? this.#typed(writing)) !== writing.text) writings.push(writing);
    this.#written.clear();
    for (const [key, writing] of wanted) this.#written.set(key, writing);
    if (writings.length > 0)
      for (const state of (await this.#engine.write(writings)).cells) this.#now.set(keyOf(state), state);
    return places.map((place) => this.#now.get(keyOf(place))?.value ?? NOTHING);
  }

  #typed({ sheet, cell }: Place): string {
    return this.document.sheets.find(({ id }) => id === sheet)?.cells.get(cell)?.text ?? '';
  }

  /** Prepares many runs over the same inputs and results. */
  async runner(inputs: readonly Place[], results: readonly Place[]): Promise<Runner> {
    const found = inputs.map((place) => this.input(place) ?? unknownInput(place));
    const runner = new Runner(this, found, results, this.#compile(found, results));
    await runner.check();
    return runner;
  }

  /** Compiles what lies between inputs and results; nothing where any of it is left to the engine. */
  #compile(inputs: readonly Place[], results: readonly Place[]): Program | undefined {
    const starts = new Set(inputs.map(keyOf));
    const ends = results.map(keyOf);
    const behind = this.graph.ancestors(ends);
    if (!this.graph.inOrder(behind)) return undefined;
    const affected = this.graph.following(starts, behind);
    for (const key of starts) affected.delete(key);
    const order = this.graph.inOrder(affected);
    if (!order || order.some((key) => this.graph.spills(key))) return undefined;
    const slots = new Map([...starts, ...order].map((key, index) => [key, index]));
    const memory: Held[] = [...slots.keys()].map(() => null);
    const cells: Cells = { functions, reader: (sheet, cell) => this.#reader(keyOf({ sheet, cell }), slots, memory) };
    const steps: Step[] = [];
    for (const key of order) {
      const run = this.#compileCell(key, cells);
      const slot = slots.get(key);
      if (!run || slot === undefined) return undefined;
      steps.push({ slot, run });
    }
    const placed = inputs.flatMap((place) => {
      const slot = slots.get(keyOf(place));
      const type = this.#index.get(keyOf(place))?.type;
      return slot === undefined || !type ? [] : [{ slot, type }];
    });
    const readers = ends.map((key) => this.#reader(key, slots, memory));
    return placed.length === inputs.length ? { memory, steps, inputs: placed, results: readers } : undefined;
  }

  #reader(key: string, slots: ReadonlyMap<string, number>, memory: readonly Held[]): () => Held {
    const slot = slots.get(key);
    if (slot !== undefined) return () => memory[slot] ?? null;
    const held = heldOf(this.#present.get(key)?.value);
    return () => held;
  }

  #compileCell(key: string, cells: Cells): Run | undefined {
    const entry = this.#index.get(key);
    const compiled = entry?.compiled;
    if (!entry || !compiled) return undefined;
    const error = compiled.findings.find(({ level }) => level === 'error');
    if (!error) return compileFormula(compiled.text, entry.place.sheet, cells);
    const refused = new Refused(error.message);
    return () => refused;
  }

  dispose(): void {
    this.#engine.dispose();
  }
}

const unknownInput = ({ sheet, cell }: Place): Input => ({
  sheet,
  cell,
  label: cell,
  quantity: 'ratio',
  unit: '',
  present: '',
  range: [0, 0],
  isRangeGiven: false,
});

/** How far inputs are moved to see whether the compiled sheet gives what the engine gives. */
const PROBES = [0, 0.01, -0.03] as const;

/** Many runs of one part of a sheet: compiled where that gives exactly what the engine gives, else by the engine. */
export class Runner {
  readonly inputs: readonly Input[];
  readonly results: readonly Place[];
  readonly #model: DocumentModel;
  #program: Program | undefined;

  constructor(model: DocumentModel, inputs: readonly Input[], results: readonly Place[], program: Program | undefined) {
    this.#model = model;
    this.inputs = inputs;
    this.results = results;
    this.#program = program;
  }

  get isCompiled(): boolean {
    return this.#program !== undefined;
  }

  /** Gives up the compiled sheet where it differs from the engine at the present values or near them. */
  async check(): Promise<void> {
    for (const share of PROBES) {
      if (!this.#program) return;
      const values = this.inputs.map(({ present }, index) =>
        typeof present === 'number' ? present * (1 + share * (1 + (index % 3))) : present,
      );
      const ours = execute(this.#program, values);
      const engine = await this.exact(values);
      if (!ours || !ours.every((value, index) => sameResult(value, engine[index] ?? NOTHING)))
        this.#program = undefined;
    }
  }

  /** The results at some values; SI. */
  async at(values: readonly Setting[]): Promise<readonly CellValue[]> {
    return this.quick(values) ?? this.exact(values);
  }

  /** The same at once; nothing where the engine must be asked. */
  quick(values: readonly Setting[]): readonly CellValue[] | undefined {
    return this.#program && execute(this.#program, values);
  }

  /** The results as the sheet itself gives them.
   *  @param digits - Types numbers with so many significant digits. */
  exact(values: readonly Setting[], digits?: number): Promise<readonly CellValue[]> {
    const texts = this.inputs.map((input, index) => ({
      sheet: input.sheet,
      cell: input.cell,
      text: settingText(input, values[index] ?? '', digits),
    }));
    return this.#model.read(texts, this.results);
  }
}

/** Does something with a model of a document, which is disposed of afterwards. */
export async function withModel<T>(document: OctavoDocument, task: (model: DocumentModel) => Promise<T>): Promise<T> {
  const model = await DocumentModel.open(document);
  try {
    return await task(model);
  } finally {
    model.dispose();
  }
}

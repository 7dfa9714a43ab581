import { compile } from '../formula/compile.ts';
import { readRectangle } from '../formula/area.ts';
import { formatAddress, parseAddress } from '../formula/address.ts';
import { readContent, type Content } from '../formula/content.ts';
import { sameType, typeOfContent, UNKNOWN } from '../formula/type-of.ts';
import type { CellType, Compiled, Functions, Scope } from '../formula/types.ts';
import { AreaUsers } from './area-users.ts';
import { Spills } from './spills.ts';
import { Types } from './types-met.ts';
import type { Place, SheetContent, Writing } from './types.ts';

export const keyOf = ({ sheet, cell }: Place): string => `${sheet}!${cell}`;

export function placeOf(key: string): Place {
  const cut = key.lastIndexOf('!');
  return { sheet: key.slice(0, cut), cell: key.slice(cut + 1) };
}

/** What is known of one cell without computing it. */
export interface Entry {
  readonly place: Place;
  readonly text: string;
  readonly content: Content;
  readonly compiled: Compiled | undefined;
  readonly type: CellType;
}

const EMPTY: CellType = { kind: 'empty' };
/** A formula whose type is still another after being compiled so often goes round in a circle. */
const MOST_TIMES = 50;
/** So many formulas are compiled inside one another; a longer chain is taken up from its far end, or the stack overflows. */
const DEEPEST = 60;

/** What was typed in all cells, compiled, with who refers to whom. Types are found through formulas, in any order. */
export class CellIndex {
  readonly #entries = new Map<string, Entry>();
  readonly #cellUsers = new Map<string, Set<string>>();
  readonly #areaUsers = new AreaUsers();
  readonly #compiling = new Set<string>();
  readonly #waiting = new Set<string>();
  #circular: ReadonlySet<string> = new Set();
  readonly #spills = new Spills();
  /** The formulas that wait for one further down their chain of types. */
  readonly #chain = new Set<string>();
  /** A formula too far down the chain to be compiled within the one that asks. */
  #tooDeep: string | undefined;
  readonly #types = new Types();
  readonly #functions: Functions;
  #sheets: readonly SheetContent[] = [];
  #idByName = new Map<string, string>();
  #names = new Map<string, Map<string, string>>();

  constructor(functions: Functions) {
    this.#functions = functions;
  }

  /** Tells which sheets there are and what is called what; formulas must be compiled anew after that. */
  frame(sheets: readonly SheetContent[]): void {
    this.#sheets = sheets;
    this.#idByName = new Map(sheets.map(({ id, name }) => [name.toLowerCase(), id]));
    this.#names = new Map(
      sheets.map(({ id, names }) => [id, new Map([...names].map(([name, cells]) => [name.toLowerCase(), cells]))]),
    );
  }

  get(key: string): Entry | undefined {
    return this.#entries.get(key);
  }

  /** What must be written so that the index holds exactly these sheets. */
  *differences(sheets: readonly SheetContent[]): Generator<Writing> {
    const cellsOf = new Map(sheets.map(({ id, cells }) => [id, cells]));
    for (const { place } of this.#entries.values()) {
      if (!cellsOf.get(place.sheet)?.get(place.cell)) yield { ...place, text: '' };
    }
    for (const [sheet, cells] of cellsOf) {
      for (const [cell, text] of cells)
        if (this.#entries.get(`${sheet}!${cell}`)?.text !== text) yield { sheet, cell, text };
    }
  }

  /** Takes in texts. Gives the cells whose formula or type is another now, the written ones among them. */
  write(writings: readonly Writing[], all = false): Set<string> {
    const touched = new Set<string>();
    const formulas: string[] = [];
    for (const { sheet, cell, text } of writings) {
      const key = `${sheet}!${cell}`;
      const before = this.#entries.get(key);
      touched.add(key);
      const content = readContent(text);
      this.#forget(key, before);
      if (content.kind === 'empty') {
        this.#entries.delete(key);
        if (before && before.type.kind !== 'empty') this.#enqueueUsers(key);
        continue;
      }
      const type = content.kind === 'formula' ? (before?.type ?? EMPTY) : typeOfContent(content);
      this.#entries.set(key, { place: { sheet, cell }, text, content, compiled: undefined, type });
      if (content.kind === 'formula') formulas.push(key);
      // A text may be a label that says what a number is.
      else if (!before || !sameType(before.type, type) || content.kind === 'text') this.#enqueueUsers(key);
    }
    if (all) for (const [key, { content }] of this.#entries) if (content.kind === 'formula') formulas.push(key);
    for (const key of formulas) this.#waiting.add(key);
    this.#settle(touched);
    return touched;
  }

  /** Tells which formulas stand in a loop: what they give is not known. Gives the cells that mean something else now. */
  circle(keys: ReadonlySet<string>): Set<string> {
    for (const key of keys) if (!this.#circular.has(key)) this.#waiting.add(key);
    for (const key of this.#circular) if (!keys.has(key)) this.#waiting.add(key);
    this.#circular = new Set(keys);
    const touched = new Set<string>();
    this.#settle(touched);
    return touched;
  }

  /** Tells to which formula cells belong into which a column spills, `undefined` where none does any more. Gives the cells
   *  that mean something else now. */
  spill(owners: ReadonlyMap<string, string | undefined>): Set<string> {
    for (const [key, owner] of owners) if (this.#spills.give(key, owner)) this.#enqueueUsers(key);
    const touched = new Set<string>();
    this.#settle(touched);
    return touched;
  }

  /** The cells into which the column of a formula spills. */
  membersOf(key: string): Iterable<string> {
    return this.#spills.membersOf(key);
  }

  /** The formula whose column spills into a cell. */
  ownerOf(key: string): Entry | undefined {
    return this.#entries.get(this.#spills.ownerOf(key) ?? '');
  }

  /** Compiles what waits until no type changes any more. */
  #settle(touched: Set<string>): void {
    const times = new Map<string, number>();
    // The set grows while it is gone through: what waits anew comes round again.
    for (const key of this.#waiting) {
      const time = (times.get(key) ?? 0) + 1;
      times.set(key, time);
      if (time > MOST_TIMES) this.#waiting.delete(key);
      else this.#compileChain(key, touched);
    }
  }

  /** Compiles a formula after those whose types it asks for, however many stand one behind another. */
  #compileChain(key: string, touched: Set<string>): void {
    const chain = [key];
    this.#chain.add(key);
    for (let next = chain.at(-1); next !== undefined; next = chain.at(-1)) {
      this.#tooDeep = undefined;
      this.#compile(next, touched);
      if (this.#tooDeep === undefined) this.#chain.delete(chain.pop() ?? '');
      else chain.push(this.#tooDeep);
      if (this.#tooDeep !== undefined) this.#chain.add(this.#tooDeep);
    }
  }

  #compile(key: string, touched: Set<string>): void {
    this.#waiting.delete(key);
    const entry = this.#entries.get(key);
    if (entry?.content.kind !== 'formula' || this.#compiling.has(key)) return;
    this.#compiling.add(key);
    const compiled = compile(entry.content.text, this.scope(entry.place.sheet, touched));
    this.#compiling.delete(key);
    if (this.#tooDeep !== undefined) {
      this.#waiting.add(key);
      return;
    }
    const isSound = !compiled.findings.some(({ level }) => level === 'error');
    const type = isSound && !this.#circular.has(key) ? this.#types.of(compiled.type) : UNKNOWN;
    this.#forget(key, entry);
    this.#remember(key, compiled);
    this.#entries.set(key, { ...entry, compiled, type });
    if (
      entry.compiled?.text !== compiled.text ||
      !sameFindings(entry.compiled, compiled) ||
      !sameType(entry.type, type)
    )
      touched.add(key);
    if (!sameType(entry.type, type)) this.#enqueueUsers(key);
  }

  /** What a formula of that sheet sees. A formula that is not compiled yet is compiled when its type is asked for. */
  scope(sheet: string, touched = new Set<string>()): Scope {
    return {
      functions: this.#functions,
      sheet,
      sheetNamed: (name) => this.#idByName.get(name.toLowerCase()),
      cellsNamed: (id, name) => this.#names.get(id)?.get(name.toLowerCase()),
      namesOf: (id) => [...(this.#sheets.find((each) => each.id === id)?.names.keys() ?? [])],
      typeOf: (id, cell) => {
        const own = `${id}!${cell}`;
        const key = this.#entries.has(own) ? own : (this.#spills.ownerOf(own) ?? own);
        if (this.#waiting.has(key) && !this.#chain.has(key)) this.#compileWithin(key, touched);
        return this.#entries.get(key)?.type ?? EMPTY;
      },
      textOf: (id, cell) => this.#entries.get(`${id}!${cell}`)?.text ?? '',
    };
  }

  #compileWithin(key: string, touched: Set<string>): void {
    if (this.#compiling.size < DEEPEST) this.#compile(key, touched);
    else this.#tooDeep ??= key;
  }

  /** The formulas that refer to a cell directly. */
  users(key: string): Set<string> {
    const users = new Set(this.#cellUsers.get(key));
    const { sheet, cell } = placeOf(key);
    const at = parseAddress(cell);
    if (!at) return users;
    for (const user of this.#areaUsers.of(sheet, at.row, at.column)) users.add(user);
    return users;
  }

  /** The cells themselves and all that follow from them, directly or not. */
  followers(keys: Iterable<string>): Set<string> {
    const all = new Set(keys);
    for (const key of all) for (const user of this.users(key)) all.add(user);
    return all;
  }

  /** The shortest loop in which a cell stands, itself first and last; nothing where it stands in none. */
  loopOf(key: string): readonly string[] | undefined {
    const before = new Map<string, string>();
    for (const queue = [key], at = queue.values(); ;) {
      const { value: from, done } = at.next();
      if (done) return undefined;
      for (const next of this.#used(from)) {
        if (next === key) return [...walkBack(before, from), key];
        if (before.has(next)) continue;
        before.set(next, from);
        queue.push(next);
      }
    }
  }

  *#used(key: string): Generator<string> {
    for (const { sheet, cells } of this.#entries.get(key)?.compiled?.references ?? []) {
      const area = readRectangle(cells);
      if (!area) continue;
      for (let row = area.top; row <= area.bottom; row++) {
        for (let column = area.left; column <= area.right; column++) {
          const next = `${sheet}!${formatAddress({ row, column })}`;
          if (this.#entries.get(next)?.content.kind === 'formula') yield next;
        }
      }
    }
  }

  #enqueueUsers(key: string): void {
    for (const user of this.users(key)) this.#waiting.add(user);
    for (const below of this.#spills.membersOf(key)) for (const user of this.users(below)) this.#waiting.add(user);
  }

  #remember(key: string, { references }: Compiled): void {
    for (const { sheet, cells } of references) {
      if (!cells.includes(':')) {
        const at = `${sheet}!${cells}`;
        const users = this.#cellUsers.get(at) ?? new Set<string>();
        this.#cellUsers.set(at, users.add(key));
        continue;
      }
      const area = readRectangle(cells);
      if (area) this.#areaUsers.add(key, sheet, area);
    }
  }

  #forget(key: string, entry: Entry | undefined): void {
    for (const { sheet, cells } of entry?.compiled?.references ?? []) {
      this.#cellUsers.get(`${sheet}!${cells}`)?.delete(key);
    }
    this.#areaUsers.forget(key);
  }
}

/** From the beginning, which nothing comes before, to a cell. */
function walkBack(before: ReadonlyMap<string, string>, end: string): string[] {
  const path = [end];
  for (let at = before.get(end); at !== undefined; at = before.get(at)) path.push(at);
  return path.toReversed();
}

const sameFindings = (a: Compiled | undefined, b: Compiled): boolean =>
  JSON.stringify(a?.findings ?? []) === JSON.stringify(b.findings);

import { compile } from '../formula/compile.ts';
import { formatAddress, parseAddress } from '../formula/address.ts';
import { readContent, type Content } from '../formula/content.ts';
import { sameType, typeOfContent, UNKNOWN } from '../formula/type-of.ts';
import type { CellType, Compiled, Scope } from '../formula/types.ts';
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

interface Area {
  readonly key: string;
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

const EMPTY: CellType = { kind: 'empty' };
/** A chain of types that has not settled after this many rounds goes round in a circle. */
const MOST_ROUNDS = 50;

/** What was typed in all cells, compiled, with who refers to whom. Types are found through formulas, in any order. */
export class CellIndex {
  readonly #entries = new Map<string, Entry>();
  readonly #cellUsers = new Map<string, Set<string>>();
  readonly #areaUsers = new Map<string, Map<string, readonly Area[]>>();
  readonly #compiling = new Set<string>();
  readonly #waiting = new Set<string>();
  #sheets: readonly SheetContent[] = [];
  #idByName = new Map<string, string>();
  #names = new Map<string, Map<string, string>>();

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
      const type = content.kind === 'formula' ? (before?.type ?? UNKNOWN) : typeOfContent(content);
      this.#entries.set(key, { place: { sheet, cell }, text, content, compiled: undefined, type });
      if (content.kind === 'formula') formulas.push(key);
      else if (!before || !sameType(before.type, type)) this.#enqueueUsers(key);
    }
    if (all) for (const [key, { content }] of this.#entries) if (content.kind === 'formula') formulas.push(key);
    for (const key of formulas) this.#waiting.add(key);
    this.#settle(touched);
    return touched;
  }

  /** Compiles what waits until no type changes any more. */
  #settle(touched: Set<string>): void {
    for (let round = 0; this.#waiting.size > 0 && round < MOST_ROUNDS; round++) {
      const now = [...this.#waiting];
      for (const key of now) if (this.#waiting.has(key)) this.#compile(key, touched);
    }
    this.#waiting.clear();
  }

  #compile(key: string, touched: Set<string>): void {
    this.#waiting.delete(key);
    const entry = this.#entries.get(key);
    if (entry?.content.kind !== 'formula' || this.#compiling.has(key)) return;
    this.#compiling.add(key);
    const compiled = compile(entry.content.text, this.scope(entry.place.sheet, touched));
    this.#compiling.delete(key);
    const isSound = !compiled.findings.some(({ level }) => level === 'error');
    const type = isSound ? compiled.type : UNKNOWN;
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
      sheet,
      sheetNamed: (name) => this.#idByName.get(name.toLowerCase()),
      cellsNamed: (id, name) => this.#names.get(id)?.get(name.toLowerCase()),
      namesOf: (id) => [...(this.#sheets.find((each) => each.id === id)?.names.keys() ?? [])],
      typeOf: (id, cell) => {
        const key = `${id}!${cell}`;
        if (this.#waiting.has(key)) this.#compile(key, touched);
        return this.#entries.get(key)?.type ?? EMPTY;
      },
    };
  }

  /** The formulas that refer to a cell directly. */
  users(key: string): Set<string> {
    const users = new Set(this.#cellUsers.get(key));
    const { sheet, cell } = placeOf(key);
    const at = parseAddress(cell);
    if (!at) return users;
    for (const areas of this.#areaUsers.get(sheet)?.values() ?? []) {
      for (const { key: user, top, left, bottom, right } of areas) {
        if (at.row >= top && at.row <= bottom && at.column >= left && at.column <= right) users.add(user);
      }
    }
    return users;
  }

  /** The loop in which a cell stands, itself first and last; nothing where it stands in none. */
  loopOf(key: string): readonly string[] | undefined {
    const seen = new Set<string>();
    const walk = (at: string, path: readonly string[]): readonly string[] | undefined => {
      for (const next of this.#used(at)) {
        if (next === key) return [...path, key];
        if (seen.has(next)) continue;
        seen.add(next);
        const found = walk(next, [...path, next]);
        if (found) return found;
      }
      return undefined;
    };
    return walk(key, [key]);
  }

  *#used(key: string): Generator<string> {
    for (const { sheet, cells } of this.#entries.get(key)?.compiled?.references ?? []) {
      const area = areaOf(key, cells);
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
  }

  #remember(key: string, { references }: Compiled): void {
    for (const { sheet, cells } of references) {
      if (!cells.includes(':')) {
        const at = `${sheet}!${cells}`;
        const users = this.#cellUsers.get(at) ?? new Set<string>();
        this.#cellUsers.set(at, users.add(key));
        continue;
      }
      const area = areaOf(key, cells);
      const onSheet = this.#areaUsers.get(sheet) ?? new Map<string, readonly Area[]>();
      if (area) onSheet.set(key, [...(onSheet.get(key) ?? []), area]);
      this.#areaUsers.set(sheet, onSheet);
    }
  }

  #forget(key: string, entry: Entry | undefined): void {
    for (const { sheet, cells } of entry?.compiled?.references ?? []) {
      this.#cellUsers.get(`${sheet}!${cells}`)?.delete(key);
      this.#areaUsers.get(sheet)?.delete(key);
    }
  }
}

function areaOf(key: string, cells: string): Area | undefined {
  const [first = '', last = first] = cells.split(':');
  const a = parseAddress(first);
  const b = parseAddress(last);
  if (!a || !b) return undefined;
  return {
    key,
    top: Math.min(a.row, b.row),
    left: Math.min(a.column, b.column),
    bottom: Math.max(a.row, b.row),
    right: Math.max(a.column, b.column),
  };
}

const sameFindings = (a: Compiled | undefined, b: Compiled): boolean =>
  JSON.stringify(a?.findings ?? []) === JSON.stringify(b.findings);

import { columnLetters, formatAddress, parseAddress } from '../../formula/address.ts';
import { functionsIn } from '../../formula/functions-in.ts';
import { keyOf, placeOf, type CellIndex } from '../../engine/cell-index.ts';
import type { AnyFunction } from '../../../functions/define.ts';

/** Functions of the engine whose results may fill more cells than their own. */
const SPILLING = new Set(['FILTER', 'SORT', 'UNIQUE']);

/** What depends on what in a document. A cell into which a column of results spills depends on the formula above it. */
export class Graph {
  readonly #index: CellIndex;
  readonly #functions: ReadonlyMap<string, AnyFunction>;
  readonly #isFilled: (key: string) => boolean;
  readonly #before = new Map<string, readonly string[]>();

  /** @param isFilled - Whether the engine gives a cell any content. */
  constructor(index: CellIndex, functions: ReadonlyMap<string, AnyFunction>, isFilled: (key: string) => boolean) {
    this.#index = index;
    this.#functions = functions;
    this.#isFilled = isFilled;
  }

  /** The typed cells that a formula refers to directly, in the order in which it does. */
  before(key: string): readonly string[] {
    const known = this.#before.get(key);
    if (known) return known;
    const found = new Set<string>();
    for (const { sheet, cells } of this.#index.get(key)?.compiled?.references ?? []) {
      for (const cell of cellsIn(cells)) {
        const source = this.#typed(keyOf({ sheet, cell }));
        if (source !== undefined) found.add(source);
      }
    }
    const all = [...found];
    this.#before.set(key, all);
    return all;
  }

  #typed(key: string): string | undefined {
    if (this.#index.get(key)) return key;
    if (!this.#isFilled(key)) return undefined;
    const { sheet, cell } = placeOf(key);
    const at = parseAddress(cell);
    if (!at) return undefined;
    for (let row = at.row - 1; row >= 0; row--) {
      const above = `${sheet}!${columnLetters(at.column)}${String(row + 1)}`;
      if (this.#index.get(above)) return above;
    }
    return undefined;
  }

  /** Cells and all that they depend on, directly or not. */
  ancestors(keys: Iterable<string>): Set<string> {
    const all = new Set(keys);
    for (const key of all) for (const each of this.before(key)) all.add(each);
    return all;
  }

  /** The formulas that follow from any of the cells, those that read a spilled column included. */
  following(keys: ReadonlySet<string>, among: Iterable<string>): Set<string> {
    const follows = new Map<string, boolean>();
    const visit = (key: string): boolean => {
      const known = follows.get(key);
      if (known !== undefined) return known;
      follows.set(key, false);
      const does = keys.has(key) || this.before(key).some(visit);
      follows.set(key, does);
      return does;
    };
    return new Set([...among].filter(visit));
  }

  /** Cells in an order in which each comes after what it depends on; nothing where some depend on themselves. */
  inOrder(keys: ReadonlySet<string>): readonly string[] | undefined {
    const ordered = new Set<string>();
    const open = new Set<string>();
    const visit = (key: string): boolean => {
      if (ordered.has(key) || !keys.has(key)) return true;
      if (open.has(key)) return false;
      open.add(key);
      const isSound = this.before(key).every(visit);
      ordered.add(key);
      return isSound;
    };
    return [...keys].every(visit) ? [...ordered] : undefined;
  }

  /** Whether a formula may fill cells beside its own. */
  spills(key: string): boolean {
    return functionsIn(this.#index.get(key)?.text ?? '').some((name) => {
      const returns = this.#functions.get(name)?.returns;
      return SPILLING.has(name) || (returns !== undefined && 'column' in returns);
    });
  }
}

function* cellsIn(cells: string): Generator<string> {
  const [first = '', last = first] = cells.split(':');
  const a = parseAddress(first);
  const b = parseAddress(last);
  if (!a || !b) return;
  for (let row = Math.min(a.row, b.row); row <= Math.max(a.row, b.row); row++) {
    for (let column = Math.min(a.column, b.column); column <= Math.max(a.column, b.column); column++)
      yield formatAddress({ row, column });
  }
}

import { formatSheet } from '../../document/formula-words.ts';
import { scopeOf } from '../../document/scope.ts';
import { sheetOf } from '../../document/sheets.ts';
import type { OctavoDocument } from '../../document/types.ts';
import { keyOf, placeOf } from '../../engine/cell-index.ts';
import type { Place } from '../../engine/types.ts';
import { formatAddress, parseAddress } from '../../formula/address.ts';
import { functionsIn } from '../../formula/functions-in.ts';
import { referencesIn, type PlacedReference } from '../../formula/references-in.ts';
import type { Functions } from '../../formula/types.ts';

/** Cells between inputs and results as they are copied into a row, at most. */
const MOST_BETWEEN = 12;
/** So many cells a range has at most to be followed. */
const MOST_CELLS = 2000;
/** What these give hangs on where they stand, or fills other cells. */
const STANDING = new Set(['ROW', 'COLUMN']);
const SPILLING = new Set(['FILTER', 'SORT', 'UNIQUE']);

/** The way from inputs to results, to be written anew for other values of the inputs. */
export interface LiveWay {
  /** The results that it leads to. */
  readonly results: readonly Place[];
  /** The cells between, each after what it depends on, the results among them. */
  readonly cells: readonly Place[];
  /** The formula of one of them, with `at` for the cells of the way and the inputs. */
  formula(cell: Place, at: (key: string) => string): string;
}

/** Follows formulas from results back to inputs. Results that cannot be written in one row are left out: where a range takes in
 *  what changes, a formula on the way fills more cells than its own, or there is too much between. */
export function liveWay(
  document: OctavoDocument,
  functions: Functions,
  inputs: readonly Place[],
  results: readonly Place[],
): LiveWay | undefined {
  const follower = new Follower(document, functions, inputs);
  const able = results.filter((result) => follower.leadsTo(keyOf(result)));
  for (const some of [able, able.slice(0, 1)]) {
    const cells = follower.between(some);
    if (cells.length > 0 && cells.length <= MOST_BETWEEN)
      return { results: some, cells: cells.map(placeOf), formula: (cell, at) => follower.formula(cell, at) };
  }
  return undefined;
}

interface Followed {
  readonly references: readonly PlacedReference[];
  /** The cells that it refers to which change with the inputs. */
  readonly moved: readonly string[];
  /** Whether it and all of them can stand in a row. */
  readonly fits: boolean;
}

class Follower {
  readonly #document: OctavoDocument;
  readonly #functions: Functions;
  readonly #starts: ReadonlySet<string>;
  readonly #followed = new Map<string, Followed>();
  readonly #spilling = new Map<string, boolean>();

  constructor(document: OctavoDocument, functions: Functions, inputs: readonly Place[]) {
    this.#document = document;
    this.#functions = functions;
    this.#starts = new Set(inputs.map(keyOf));
  }

  leadsTo(key: string): boolean {
    const { moved, fits } = this.#follow(key);
    return moved.length > 0 && fits;
  }

  /** The cells that change on the way to some results, each after what it depends on. */
  between(results: readonly Place[]): readonly string[] {
    const order = new Set<string>();
    const visit = (key: string): void => {
      if (this.#starts.has(key) || order.has(key)) return;
      for (const each of this.#follow(key).moved) visit(each);
      order.add(key);
    };
    for (const result of results) visit(keyOf(result));
    return [...order];
  }

  /** What changes is read from the row, everything else from where it stands. */
  formula(cell: Place, at: (key: string) => string): string {
    const text = this.#textAt(cell);
    const { references, moved } = this.#follow(keyOf(cell));
    let done = '';
    let from = 0;
    for (const { sheet, cells, ...place } of references) {
      const written = text.slice(place.from, place.to);
      const word = written.slice(written.lastIndexOf('!') + 1).trim();
      const key = keyOf({ sheet, cell: cells.replaceAll('$', '') });
      // `Woofer.price` keeps what follows the point; an address has none.
      const field = /^[^.]+(\..+)$/.exec(word)?.[1] ?? '';
      const now = moved.includes(key) ? at(key) + field : `${formatSheet(sheetOf(this.#document, sheet).name)}!${word}`;
      done += text.slice(from, place.from) + now;
      from = place.to;
    }
    return done + text.slice(from);
  }

  #textAt({ sheet, cell }: Place): string {
    return sheetOf(this.#document, sheet).cells.get(cell)?.text ?? '';
  }

  #follow(key: string): Followed {
    const known = this.#followed.get(key);
    if (known) return known;
    const place = placeOf(key);
    const text = this.#textAt(place);
    const scope = scopeOf(this.#document, place.sheet, this.#functions, () => ({ kind: 'unknown' }));
    const references = referencesIn(text, scope);
    // One that depends on itself meets this.
    this.#followed.set(key, { references, moved: [], fits: false });
    let fits = !this.#spills(text) && !functionsIn(text).some((name) => STANDING.has(name));
    const all: string[] = [];
    for (const { sheet, cells } of references) {
      const inside = cellsIn(cells);
      const moved = (inside ?? [])
        .map((cell) => keyOf({ sheet, cell }))
        .filter((each) => this.#starts.has(each) || this.#moves(each));
      if (inside === undefined || (inside.length > 1 && moved.length > 0)) fits = false;
      // An empty cell may be filled from another.
      if (inside?.some((cell) => this.#textAt({ sheet, cell }) === '') && this.#holdsSpilling(sheet)) fits = false;
      all.push(...moved);
    }
    const followed = {
      references,
      moved: all,
      fits: fits && all.every((each) => this.#starts.has(each) || this.#follow(each).fits),
    };
    this.#followed.set(key, followed);
    return followed;
  }

  #moves(key: string): boolean {
    return this.#follow(key).moved.length > 0;
  }

  #spills(text: string): boolean {
    return functionsIn(text).some((name) => {
      const returns = this.#functions.get(name)?.returns;
      return SPILLING.has(name) || (returns !== undefined && 'column' in returns);
    });
  }

  #holdsSpilling(sheet: string): boolean {
    const known = this.#spilling.get(sheet);
    if (known !== undefined) return known;
    const holds = [...sheetOf(this.#document, sheet).cells.values()].some(({ text }) => this.#spills(text));
    this.#spilling.set(sheet, holds);
    return holds;
  }
}

function cellsIn(cells: string): readonly string[] | undefined {
  const [a, b] = cells.split(':').map(parseAddress);
  if (!a) return undefined;
  if (!b) return [formatAddress(a)];
  const [rows, columns] = [Math.abs(b.row - a.row) + 1, Math.abs(b.column - a.column) + 1];
  if (rows * columns > MOST_CELLS) return undefined;
  const [top, left] = [Math.min(a.row, b.row), Math.min(a.column, b.column)];
  return Array.from({ length: rows * columns }, (_, index) =>
    formatAddress({ row: top + Math.floor(index / columns), column: left + (index % columns) }),
  );
}
